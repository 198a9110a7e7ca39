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
import org.cellfile.trace.Given;
import org.cellfile.trace.Sum;
import org.cellfile.trace.Term;
import org.cellfile.trace.Withheld;

/**
 * What is left of the installed distance: the margin, how near the safeguard may come, and how long the stop may take. Nothing is
 * left of a distance of which only a lower bound is known.
 *
 * @param counted the installed distance less its uncertainty
 * @param margin of the counted distance over the separation distance
 * @param nearest position still allowed, as it would be measured
 * @param longestStop longest stopping time the installed distance allows; empty for what stops nothing
 */
public record Budget(Derived counted, Derived margin, Derived nearest, Optional<Derived> longestStop) {

    private static final Quantity STEP = Quantity.millimetres("1");

    /**
     * @param about tag under which the values stand
     * @param links of the response time before the stop
     */
    Budget(String about, Safeguard.Installed installed, Derived counted, Governing governing, List<Term> links) {
        this(
                counted,
                new Derived(
                        about,
                        "margin",
                        "margin of the installed distance",
                        "M",
                        "difference",
                        governing.bounded()
                                ? new Withheld("M", Governing.BOUNDED)
                                : new Difference(counted, governing.distance()),
                        Rounding.down(STEP).beside(installed.distance().value())),
                new Derived(
                        about,
                        "nearest-position",
                        "nearest position still allowed, as measured",
                        "X_min",
                        "sum",
                        governing.bounded()
                                ? new Withheld("X_min", Governing.BOUNDED)
                                : Sum.of(governing.distance(), uncertainty(installed)),
                        Rounding.up(STEP).beside(installed.distance().value())),
                governing.longestTime().map(longest -> longestStop(about, longest, links)));
    }

    /** The installed distance less its uncertainty. */
    static Derived counted(String about, Safeguard.Installed installed) {
        return new Derived(
                about,
                "counted-distance",
                "installed distance less its uncertainty",
                "X",
                "difference",
                new Difference(new Given("X_m", "installed distance", installed.distance()), uncertainty(installed)),
                Rounding.down(STEP).beside(installed.distance().value()));
    }

    private static Given uncertainty(Safeguard.Installed installed) {
        return new Given("u", "uncertainty of its measurement", installed.uncertainty());
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
