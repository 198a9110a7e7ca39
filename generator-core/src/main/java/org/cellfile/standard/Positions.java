package org.cellfile.standard;

import java.util.List;
import org.cellfile.calculation.HeldGuard;
import org.cellfile.calculation.WalkingApproach;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.standard.PositioningStandard.InterlockedGuard;
import org.cellfile.standard.PositioningStandard.Mat;
import org.cellfile.trace.Case;
import org.cellfile.trace.Case.Branch;
import org.cellfile.trace.Clause;
import org.cellfile.trace.Condition;
import org.cellfile.trace.Condition.Comparison;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Formula;
import org.cellfile.trace.Greatest;
import org.cellfile.trace.Term;
import org.cellfile.trace.Withheld;

/**
 * What all positioning editions have in common: the names under which their values can be stated, and the positions that differ
 * between editions in nothing but figures. Distances are rounded up to the millimetre, times down to the millisecond.
 */
final class Positions {

    private static final Quantity STEP = Quantity.millimetres("1");
    private static final Rounding DISTANCE = Rounding.up(STEP);
    private static final Rounding TIME_ALLOWED = Rounding.down(Quantity.seconds("0.001"));

    /** Own reading, to the cautious side: where the rule of ISO 13855:2010 for fields along their plane ends. */
    private static final Quantity HIGHEST_STEP = Quantity.millimetres("1000");

    private Positions() {}

    /** The separation distance. */
    static Derived distance(Approach at, Clause clause, Term expression) {
        return length(at, "separation-distance", "separation distance", "S", clause, expression);
    }

    /** What the separation distance is not less than, where no more is known. */
    static Derived lowerBound(Approach at, Clause clause, Term expression) {
        return length(at, "lower-bound", "lower bound of the separation distance", "S_low", clause, expression);
    }

    /** The longest overall response time that the installed distance allows. */
    static Derived longest(Approach at, Clause clause, Term expression) {
        return new Derived(
                at.tag(),
                "longest-response-time",
                "longest overall response time the installed distance allows",
                "T_max",
                clause.toString(),
                expression,
                TIME_ALLOWED);
    }

    /** A length that the distance rests on, under a name of its own. */
    static Derived length(Approach at, String name, String words, String symbol, Clause clause, Term expression) {
        return new Derived(at.tag(), name, words, symbol, clause.toString(), expression, DISTANCE);
    }

    /** A bound on a figure of the device that the edition fixes. */
    static Derived limit(Approach at, String name, Fixed bound, Rounding.Side side) {
        return new Derived(
                at.tag(),
                name,
                bound.reference().name(),
                bound.symbol(),
                bound.reference().clause().toString(),
                bound,
                new Rounding(side, STEP));
    }

    /**
     * Somebody walks up.
     *
     * @param reach past the safeguard, in mm
     * @param supplements of the device, in mm; may be none
     */
    static Position walking(
            Approach at, Clause clause, Fixed speed, Derived reach, List<Term> supplements, List<Derived> limits) {
        WalkingApproach approach = new WalkingApproach(speed, reach, supplements);
        return Position.of(
                distance(at, clause, approach.distance(at.timing().overall())),
                longest(at, clause, approach.longestTime(at.installed())),
                List.of(reach),
                limits);
    }

    /**
     * What an edition counts for a mat; withheld where the step to it is so high that the mat is no longer stepped on.
     *
     * @param known for a step up to there
     */
    static Term stepped(Mat mat, String symbol, Clause clause, Term known) {
        return mat.step()
                .value()
                .filter(step -> step.compareTo(HIGHEST_STEP) > 0)
                .<Term>map(step -> Withheld.noRule(
                        symbol,
                        clause + " is read as having no rule for a mat behind a step of " + Formula.shown(mat.step())
                                + ": it ends at " + HIGHEST_STEP + ", as that for fields along their plane does"))
                .orElse(known);
    }

    /** The same position with a least distance that no time goes below. */
    static Position notBelow(Fixed least, Approach at, Clause clause, Position position) {
        Term longest = position.longestTime().orElseThrow().expression();
        return Position.of(
                distance(at, clause, Greatest.of(position.distance().expression(), least)),
                longest(
                        at,
                        clause,
                        new Case(
                                List.of(new Branch(
                                        new Condition(at.installed(), Comparison.LESS, least),
                                        new Withheld(
                                                "T",
                                                "the installed distance is below the least one, whatever the time"))),
                                longest)),
                position.parts(),
                position.limits());
    }

    /** Somebody opens a guard and reaches through; a guard that is held shortens the time that counts. */
    static Position guard(InterlockedGuard guard, Clause clause, Fixed speed) {
        Approach at = guard.approach();
        if (guard.held().isEmpty()) {
            WalkingApproach approach = new WalkingApproach(speed, guard.reach(), List.of());
            return Position.of(
                    distance(at, clause, approach.distance(at.timing().overall())),
                    longest(at, clause, approach.longestTime(at.installed())),
                    List.of(),
                    List.of());
        }
        HeldGuard held = new HeldGuard(speed, guard.reach(), guard.held().get());
        return Position.of(
                distance(at, clause, held.distance(at.timing().overall())),
                longest(at, clause, held.longestTime(at.installed())),
                List.of(),
                List.of());
    }
}
