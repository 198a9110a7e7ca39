package org.cellfile.calculation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cellfile.quantity.Quantity;
import org.cellfile.trace.Case;
import org.cellfile.trace.Case.Branch;
import org.cellfile.trace.Condition;
import org.cellfile.trace.Condition.Comparison;
import org.cellfile.trace.Count;
import org.cellfile.trace.Difference;
import org.cellfile.trace.Formula;
import org.cellfile.trace.Product;
import org.cellfile.trace.Quotient;
import org.cellfile.trace.Sum;
import org.cellfile.trace.Term;
import org.cellfile.trace.Withheld;

/**
 * The separation distance with an allowance for a brake that wears: {@code D_s = K · (T_s + T_c + T_r + T_bm) + D_pf}. The
 * allowance is what a monitor of the brake lets pass, or a share of the time that machine and control take to stop.
 *
 * @param speed of the hand, in mm/s
 * @param machine time that machine and control take to stop, in s
 * @param device time that the protective device takes, in s; empty where nothing is said to be its own
 * @param additions to the distance, at least one, in mm
 */
public record BrakeAllowance(Term speed, Term machine, Optional<Term> device, List<Term> additions) {

    public BrakeAllowance {
        additions = List.copyOf(additions);
    }

    /**
     * What a monitor lets pass.
     *
     * @param setting the time at which it reports, in s
     */
    public static Term monitored(String symbol, Term setting, Term machine) {
        return new Case(
                List.of(new Branch(
                        new Condition(setting, Comparison.LESS, machine),
                        Withheld.noRule(
                                symbol,
                                "the brake monitor reports at " + Formula.shown(setting)
                                        + ", sooner than machine and control are stated to take to stop, "
                                        + Formula.shown(machine)))),
                new Difference(setting, machine));
    }

    /** The distance with an allowance, in s. */
    public Term distance(Term allowance) {
        List<Term> times = new ArrayList<>(List.of(machine));
        device.ifPresent(times::add);
        times.add(allowance);
        List<Term> parts = new ArrayList<>(List.of(new Product(speed, new Sum(times))));
        parts.addAll(additions);
        return new Sum(parts);
    }

    /** The longest overall response time beside an allowance that stays as it is. */
    public Term longestTimeBeside(Term allowance, Term installed) {
        return within(installed, allowance, new Difference(reached(installed), allowance));
    }

    /** The longest overall response time when the allowance is a share of what machine and control take of it. */
    public Term longestTimeWithShare(Term share, Term installed) {
        Term factor = Sum.of(new Count(Quantity.count(1)), share);
        return device.map(own -> within(
                        installed, own, Sum.of(new Quotient(new Difference(reached(installed), own), factor), own)))
                .orElseGet(() -> enough(installed, new Quotient(reached(installed), factor)));
    }

    /** The time in which the installed distance is covered. */
    private Term reached(Term installed) {
        return new Quotient(new Difference(installed, added()), speed);
    }

    private Term added() {
        return additions.size() == 1 ? additions.get(0) : new Sum(additions);
    }

    private Term enough(Term installed, Term longest) {
        return new Case(
                List.of(new Branch(
                        new Condition(installed, Comparison.LESS, added()),
                        new Withheld("T", "the additions alone are more than the installed distance"))),
                longest);
    }

    private Term within(Term installed, Term first, Term longest) {
        return enough(
                installed,
                new Case(
                        List.of(new Branch(
                                new Condition(reached(installed), Comparison.LESS, first),
                                new Withheld(
                                        "T",
                                        first.symbols()
                                                + " alone is longer than it takes to cover the installed distance"))),
                        longest));
    }
}
