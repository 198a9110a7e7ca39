package org.cellfile.subject.safeguard;

import java.util.List;
import java.util.Optional;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.trace.Case;
import org.cellfile.trace.Case.Branch;
import org.cellfile.trace.Condition;
import org.cellfile.trace.Condition.Comparison;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Difference;
import org.cellfile.trace.Sum;
import org.cellfile.trace.Term;
import org.cellfile.trace.Withheld;

/**
 * What is left of the installed distance, and how long the stop may take. Nothing is left of a distance of which only a lower bound
 * is known.
 *
 * @param own what is left of the safeguard's own distance
 * @param longestStop longest stopping time the installed distance allows; empty for what stops nothing
 */
public record Budget(Margin own, Optional<Derived> longestStop) {

    /**
     * @param about tag under which the values stand
     * @param links of the response time before the stop
     */
    Budget(String about, Safeguard.Installed installed, Derived counted, Governing governing, List<Term> links) {
        this(
                Margin.own(about, installed, counted, governing),
                governing.longestTime().map(longest -> longestStop(about, longest, links)));
    }

    /** The installed distance less its uncertainty. */
    public Derived counted() {
        return own.counted();
    }

    /** What the counted distance has over the separation distance. */
    public Derived margin() {
        return own.margin();
    }

    /** The nearest position still allowed, as it would be measured. */
    public Derived nearest() {
        return own.nearest();
    }

    private static Derived longestStop(String about, Derived longest, List<Term> links) {
        Term before = new Sum(links);
        return new Derived(
                about,
                "longest-stopping-time",
                "longest stopping time the installed distance allows",
                "t_2,max",
                "difference",
                new Case(
                        List.of(new Branch(
                                new Condition(longest, Comparison.LESS, before),
                                new Withheld("t_2,max", "the links before the stop alone take longer"))),
                        new Difference(longest, before)),
                Rounding.down(Quantity.seconds("0.001")));
    }
}
