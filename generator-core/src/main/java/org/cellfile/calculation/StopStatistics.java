package org.cellfile.calculation;

import java.util.List;
import org.cellfile.quantity.Quantity;
import org.cellfile.trace.Case;
import org.cellfile.trace.Case.Branch;
import org.cellfile.trace.Condition;
import org.cellfile.trace.Condition.Comparison;
import org.cellfile.trace.Count;
import org.cellfile.trace.Difference;
import org.cellfile.trace.Greatest;
import org.cellfile.trace.Product;
import org.cellfile.trace.Quotient;
import org.cellfile.trace.Root;
import org.cellfile.trace.Sum;
import org.cellfile.trace.Term;
import org.cellfile.trace.Withheld;

/**
 * Mean, sample standard deviation and highest of repeated readings taken under one condition.
 *
 * @param readings at least one
 */
public record StopStatistics(List<Term> readings) {

    /** The arithmetic mean. */
    public Term mean() {
        return new Quotient(new Sum(readings), count());
    }

    /**
     * The sample standard deviation, with one less than the number of readings below the line.
     *
     * @param mean the mean of the same readings
     */
    public Term deviation(Term mean) {
        Term one = new Count(Quantity.count(1));
        List<Term> squares = readings.stream()
                .<Term>map(reading -> {
                    Term apart = new Difference(reading, mean);
                    return new Product(apart, apart);
                })
                .toList();
        return new Case(
                List.of(new Branch(
                        new Condition(count(), Comparison.AT_MOST, one),
                        new Withheld("s", "one reading has no spread"))),
                new Root(new Quotient(new Sum(squares), new Difference(count(), one))));
    }

    /** The highest reading. */
    public Term highest() {
        return new Greatest(readings);
    }

    /** The mean and a multiple of the standard deviation. */
    public static Term meanAnd(Term multiple, Term deviation, Term mean) {
        return Sum.of(mean, new Product(multiple, deviation));
    }

    private Term count() {
        return new Count(Quantity.count(readings.size()));
    }
}
