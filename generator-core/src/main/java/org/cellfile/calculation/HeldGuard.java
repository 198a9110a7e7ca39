package org.cellfile.calculation;

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
 * The separation distance of a guard that a lock holds for a time after the stop was asked for: only what is left of the response
 * time when it lets go is a time in which somebody walks.
 *
 * @param speed of approach, in mm/s
 * @param reach through the opening left, in mm
 * @param held time, in s
 */
public record HeldGuard(Term speed, Term reach, Term held) {

    /** The distance for an overall response time. */
    public Term distance(Term responseTime) {
        return new Case(
                List.of(new Branch(new Condition(responseTime, Comparison.AT_MOST, held), reach)),
                Sum.of(new Product(speed, new Difference(responseTime, held)), reach));
    }

    /** The longest overall response time: the time held and the time to reach the hazard from the installed distance. */
    public Term longestTime(Term installed) {
        return new Case(
                List.of(new Branch(
                        new Condition(installed, Comparison.LESS, reach),
                        new Withheld("T", "the reach through the opening alone is more than the installed distance"))),
                Sum.of(held, new Quotient(new Difference(installed, reach), speed)));
    }
}
