package org.cellfile.calculation;

import java.util.List;
import org.cellfile.quantity.Quantity;
import org.cellfile.trace.Count;
import org.cellfile.trace.Difference;
import org.cellfile.trace.Product;
import org.cellfile.trace.Quotient;
import org.cellfile.trace.Sum;
import org.cellfile.trace.Term;

/**
 * How often parts fail dangerously, and parts together. The formulas are published: Beckhoff, application guide for the calculation
 * of safety parameters, p. 16; JUMO, safety manuals; Schmersal, installation manual PSC1-C-10, p. 147 and 178; BBH, installation
 * manual SMX100, p. 248.
 */
public final class DangerousFailure {

    private static final Term ONE = new Count(Quantity.count(1));
    private static final Term TWO = new Count(Quantity.count(2));
    private static final Term THREE = new Count(Quantity.count(3));

    private DangerousFailure() {}

    /** Operations in a year: days in a year times hours in a day, by the time of a cycle. */
    public static Term operations(Term days, Term hours, Term cycle) {
        return new Quotient(new Product(days, hours), cycle);
    }

    /** The mean time to dangerous failure of a part that wears: the operations it lasts by the share that is worn then, a year. */
    public static Term ofWear(Term b10d, Term wornShare, Term operations) {
        return new Quotient(b10d, new Product(wornShare, operations));
    }

    /** Of parts that must all work: 1 / (1/M_1 + 1/M_2 + ...); of one part its own. */
    public static Term ofSeries(List<Term> parts) {
        return parts.size() == 1 ? parts.get(0) : new Quotient(ONE, inverse(parts));
    }

    private static Term inverse(List<Term> times) {
        return new Sum(times.stream().<Term>map(time -> new Quotient(ONE, time)).toList());
    }

    /** Two channels that fail at different times, as two that are alike: 2/3 (M_1 + M_2 - 1 / (1/M_1 + 1/M_2)). */
    public static Term symmetrised(Term first, Term second) {
        return new Product(
                new Quotient(TWO, THREE),
                new Difference(Sum.of(first, second), new Quotient(ONE, inverse(List.of(first, second)))));
    }

    /**
     * The average coverage, in which a part counts the more the sooner it fails.
     *
     * @param shares of each part's dangerous failures that are found
     * @param times mean time to dangerous failure of each part, in the same order
     */
    public static Term averageCoverage(List<Term> shares, List<Term> times) {
        List<Term> found = new java.util.ArrayList<>();
        for (int i = 0; i < shares.size(); i++) {
            found.add(new Quotient(shares.get(i), times.get(i)));
        }
        return new Quotient(new Sum(found), inverse(times));
    }
}
