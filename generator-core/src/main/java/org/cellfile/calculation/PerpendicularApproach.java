package org.cellfile.calculation;

import java.util.List;
import org.cellfile.trace.Case;
import org.cellfile.trace.Case.Branch;
import org.cellfile.trace.Condition;
import org.cellfile.trace.Condition.Comparison;
import org.cellfile.trace.Difference;
import org.cellfile.trace.Greatest;
import org.cellfile.trace.Product;
import org.cellfile.trace.Quotient;
import org.cellfile.trace.Sum;
import org.cellfile.trace.Term;
import org.cellfile.trace.Withheld;

/**
 * The separation distance of a field that is approached at a right angle: first with the fast approach speed; when that gives
 * more than the far limit, again with the slow one, but never less than the far limit.
 *
 * @param intrusion how far a part of the body gets past the field before it is detected, in mm
 * @param fast speed of the arms, in mm/s
 * @param slow speed of walking, in mm/s
 * @param near the least distance whatever the time, in mm
 * @param far the distance above which walking speed is taken, in mm
 */
public record PerpendicularApproach(Term intrusion, Term fast, Term slow, Term near, Term far) {

    /** The distance for an overall response time. */
    public Term distance(Term responseTime) {
        Term withFast = Sum.of(new Product(fast, responseTime), intrusion);
        Term withSlow = Sum.of(new Product(slow, responseTime), intrusion);
        return new Case(
                List.of(
                        new Branch(new Condition(withFast, Comparison.LESS, near), near),
                        new Branch(new Condition(withFast, Comparison.AT_MOST, far), withFast)),
                Greatest.of(withSlow, far));
    }

    /**
     * The longest overall response time whose distance is not above the installed one.
     *
     * <p>From the far limit on, walking speed decides: there the distance by the fast speed is already above the limit.
     */
    public Term longestTime(Term installed) {
        return new Case(
                List.of(
                        new Branch(
                                new Condition(installed, Comparison.LESS, near),
                                new Withheld("T", "the installed distance is below the least one, whatever the time")),
                        new Branch(
                                new Condition(installed, Comparison.LESS, intrusion),
                                new Withheld("T", "the intrusion alone is more than the installed distance")),
                        new Branch(
                                new Condition(installed, Comparison.LESS, far),
                                new Quotient(new Difference(installed, intrusion), fast))),
                new Quotient(new Difference(installed, intrusion), slow));
    }
}
