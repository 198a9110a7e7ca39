package org.cellfile.calculation;

import java.util.ArrayList;
import java.util.List;
import org.cellfile.trace.Case;
import org.cellfile.trace.Case.Branch;
import org.cellfile.trace.Condition;
import org.cellfile.trace.Condition.Comparison;
import org.cellfile.trace.Difference;
import org.cellfile.trace.Product;
import org.cellfile.trace.Quotient;
import org.cellfile.trace.Sum;
import org.cellfile.trace.Term;
import org.cellfile.trace.Withheld;

/**
 * The separation distance where a person walks up: {@code S = K · T + C} and what the device adds.
 *
 * @param speed of walking, in mm/s
 * @param intrusion how far a part of the body gets past before it is detected, in mm
 * @param supplements of the device, in mm; may be none
 */
public record WalkingApproach(Term speed, Term intrusion, List<Term> supplements) {

    /** The distance for an overall response time. */
    public Term distance(Term responseTime) {
        List<Term> parts = new ArrayList<>();
        parts.add(new Product(speed, responseTime));
        parts.add(intrusion);
        parts.addAll(supplements);
        return new Sum(parts);
    }

    /** The longest overall response time whose distance is not above the installed one. */
    public Term longestTime(Term installed) {
        Term additions = intrusion;
        if (!supplements.isEmpty()) {
            List<Term> parts = new ArrayList<>(List.of(intrusion));
            parts.addAll(supplements);
            additions = new Sum(parts);
        }
        return new Case(
                List.of(new Branch(
                        new Condition(installed, Comparison.LESS, additions),
                        new Withheld("T", "the additions alone are more than the installed distance"))),
                new Quotient(new Difference(installed, additions), speed));
    }
}
