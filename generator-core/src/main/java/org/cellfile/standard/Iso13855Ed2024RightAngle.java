package org.cellfile.standard;

import static org.cellfile.standard.Iso13855Ed2024Values.PERPENDICULAR;
import static org.cellfile.standard.Positions.distance;
import static org.cellfile.standard.Positions.length;
import static org.cellfile.standard.Positions.limit;
import static org.cellfile.standard.Positions.longest;
import static org.cellfile.standard.Positions.lowerBound;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cellfile.calculation.PerpendicularApproach;
import org.cellfile.quantity.Rounding;
import org.cellfile.standard.Position.Open;
import org.cellfile.standard.PositioningStandard.Beams;
import org.cellfile.standard.PositioningStandard.PerpendicularField;
import org.cellfile.trace.Case;
import org.cellfile.trace.Case.Branch;
import org.cellfile.trace.Condition;
import org.cellfile.trace.Condition.Comparison;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Difference;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Formula;
import org.cellfile.trace.Greatest;
import org.cellfile.trace.NotPublic;
import org.cellfile.trace.Product;
import org.cellfile.trace.Reference;
import org.cellfile.trace.Sum;
import org.cellfile.trace.Term;
import org.cellfile.trace.Withheld;

/**
 * Fields and beams approached at a right angle under ISO 13855:2024, where the reaching distance comes from reaching through, over
 * and under. Of these only a part of the first is known, from memory. Without the three values from a copy the distance is a lower
 * bound; with them it is complete. That the greatest of the three counts, and each approach speed as in 2010, is from memory.
 */
final class Iso13855Ed2024RightAngle {

    private final Iso13855Ed2024Values values;
    private final CopyValues copy;

    Iso13855Ed2024RightAngle(Iso13855Ed2024Values values, CopyValues copy) {
        this.values = values;
        this.copy = copy;
    }

    Position field(PerpendicularField field) {
        Approach at = field.approach();
        ReadTable table = new ReadTable("D_DO", values.over, copy);
        Optional<Term> over = read(at, "D_DO", values.over)
                .or(() -> table.reach(at.zoneLowest(), at.zoneHighest(), field.upperEdge()));
        return position(at, knownThrough(field.resolution()), over, field.supplements());
    }

    Position beams(Beams beams) {
        Approach at = beams.approach();
        Fixed known = beams.heights().size() == 1 ? values.singleBeam : values.severalBeams;
        return position(at, known, read(at, "D_DO", values.over), List.of())
                .remark(
                        "At which heights this edition allows separate beams is not publicly known, but for that of the lowest one;"
                                + " those of the others are not held against anything.");
    }

    private Optional<Term> read(Approach at, String symbol, Reference asked) {
        return copy.forSafeguard(symbol, asked, at.safeguard()).map(fixed -> fixed);
    }

    /** What is known of reaching through, by the effective detection capability. */
    private Term knownThrough(Term capability) {
        if (capability
                .value()
                .filter(one -> one.compareTo(values.bodyDetection.quantity()) > 0)
                .isPresent()) {
            return Withheld.noRule(
                    "D_DT",
                    "no rule of " + PERPENDICULAR + " is known for a field of " + Formula.shown(capability)
                            + " detection capability that is approached at a right angle: what is known ends at "
                            + values.bodyDetection.quantity());
        }
        return new Case(
                List.of(
                        new Branch(
                                new Condition(capability, Comparison.AT_MOST, values.armDetection),
                                Greatest.of(
                                        new Product(values.resolutionFactor, new Difference(capability, values.finger)),
                                        values.noReach)),
                        // The formula in between is not public; it can hardly ask for less than that of the finer
                        // fields.
                        new Branch(
                                new Condition(capability, Comparison.LESS, values.unknownUntil),
                                new Product(
                                        values.resolutionFactor, new Difference(values.armDetection, values.finger)))),
                values.bodyReach);
    }

    private Position position(Approach at, Term knownThrough, Optional<Term> over, List<Term> supplements) {
        Optional<Term> through = read(at, "D_DT", values.through);
        Optional<Term> under = read(at, "D_DU", values.under);
        List<Reference> missing = Stream.of(
                        missing(through, values.through), missing(over, values.over), missing(under, values.under))
                .flatMap(Optional::stream)
                .toList();
        Derived reachThrough = length(
                at,
                "reach-through",
                through.isPresent() ? "reaching distance through it" : "known part of the reaching distance through it",
                "D_DT",
                PERPENDICULAR,
                through.orElse(knownThrough));
        Derived reachOver = length(
                at,
                "reach-over",
                "reaching distance over it",
                "D_DO",
                PERPENDICULAR,
                over.orElse(new NotPublic("D_DO", values.over)));
        Derived reachUnder = length(
                at,
                "reach-under",
                "reaching distance under it",
                "D_DU",
                PERPENDICULAR,
                under.orElse(new NotPublic("D_DU", values.under)));
        List<Term> known = new ArrayList<>(List.of(reachThrough));
        over.ifPresent(one -> known.add(reachOver));
        under.ifPresent(one -> known.add(reachUnder));
        Derived reach = length(
                at,
                "reaching-distance",
                missing.isEmpty() ? "reaching distance" : "lower bound of the reaching distance",
                missing.isEmpty() ? "D_DS" : "D_low",
                PERPENDICULAR,
                known.size() == 1 ? reachThrough : new Greatest(known));
        PerpendicularApproach approach = approach(reach, supplements);
        Term expression = approach.distance(at.timing().overall());
        List<Derived> parts = List.of(reachThrough, reachOver, reachUnder, reach);
        List<Derived> limits = List.of(
                limit(at, "greatest-lower-edge", values.lowestEdge, Rounding.Side.DOWN),
                limit(at, "greatest-gap-behind", values.gapBehind, Rounding.Side.DOWN));
        Position position = missing.isEmpty()
                ? Position.of(
                        distance(at, PERPENDICULAR, expression),
                        longest(at, PERPENDICULAR, approach.longestTime(at.installed())),
                        parts,
                        limits)
                : Position.of(
                                lowerBound(at, PERPENDICULAR, expression),
                                longest(at, PERPENDICULAR, NO_TIME),
                                parts,
                                limits)
                        .atLeast(open(at, missing));
        return position.remark("That the greatest of reaching through, over and under counts is from memory.");
    }

    private static final Withheld NO_TIME =
            new Withheld("T", "only a lower bound of the distance is known, so no time can be allowed");

    private static Optional<Reference> missing(Optional<Term> read, Reference asked) {
        return read.isPresent() ? Optional.empty() : Optional.of(asked);
    }

    private PerpendicularApproach approach(Term reach, List<Term> supplements) {
        List<Term> additions = new ArrayList<>(List.of(reach));
        additions.addAll(supplements);
        return new PerpendicularApproach(
                additions.size() == 1 ? reach : new Sum(additions),
                values.armSpeed,
                values.walkingSpeed,
                values.near,
                values.far);
    }

    private static Open open(Approach at, List<Reference> missing) {
        String names = missing.stream().map(Reference::name).collect(Collectors.joining("; "));
        String ids = missing.stream().map(one -> "`" + one.id() + "`").collect(Collectors.joining(", "));
        return new Open(
                "for an approach at a right angle it asks for values that are not public (" + names
                        + "), so that only a lower bound of the distance is known, and to stand further away than that"
                        + " proves nothing",
                "have a person who holds " + Iso13855Ed2024Values.ID + " read " + ids
                        + " there for this safeguard, and state each under `copy-values` with `for: " + at.safeguard()
                        + "`; or put in force the edition that the law of the place accepts, if its rule is known here");
    }
}
