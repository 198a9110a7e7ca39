package org.cellfile.subject.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cellfile.claim.Claim;
import org.cellfile.claim.Recomputed;
import org.cellfile.claim.Recorded;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.geometry.Between;
import org.cellfile.geometry.Point;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.subject.safeguard.Guarding;
import org.cellfile.subject.safeguard.Safeguard;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Difference;
import org.cellfile.trace.Drawing;
import org.cellfile.trace.Given;
import org.cellfile.trace.Least;

/**
 * The distance from a safeguard to its hazard zone as the plan has it, held against the one measured at the machine. Which two
 * points are nearest is found by geometry; their distance is computed from their coordinates like every other value.
 */
public final class PlanDistance implements Recomputed {

    /** Plan and tape differ by more than the plan's tolerance. */
    public static final FindingId DIFFERS = new FindingId("plan.tape-differs");

    /** The distance that counts of both is shorter than the separation distance. */
    public static final FindingId TOO_CLOSE = new FindingId("installed.too-close-on-plan");

    private final Guarding guarding;
    private final Plan plan;
    private final String zone;
    private final Between between;
    private final boolean whole;
    private final Recorded recorded;
    private final Derived distance;
    private final Derived counted;

    /**
     * @param zone tag of the hazard zone that is nearest
     * @param between from the safeguard to that zone
     * @param whole false when what the safeguard detects on the plan is not what it should, which is told by itself and once
     * @param where the safeguard is drawn, file, line and column
     * @param whereZone the zone is drawn
     */
    PlanDistance(
            Guarding guarding,
            Plan plan,
            String zone,
            Between between,
            boolean whole,
            String where,
            String whereZone,
            Recorded recorded) {
        this.guarding = guarding;
        this.plan = plan;
        this.zone = zone;
        this.between = between;
        this.whole = whole;
        this.recorded = recorded;
        String about = about(guarding.tag());
        Safeguard.Installed tape = guarding.safeguard().installed();
        Rounding down = Rounding.down(Quantity.millimetres("1"))
                .beside(guarding.safeguard().installed().distance().value());
        distance = new Derived(
                about,
                "distance",
                "distance on the plan",
                "d",
                "straight line from " + between.from() + " to " + between.to(),
                Straight.length(between, "the safeguard", where, "the hazard zone", whereZone),
                down);
        counted = new Derived(
                about,
                "counted",
                "distance that counts of plan and tape",
                "d_c",
                "the smaller of both, each less its uncertainty",
                Least.of(
                        new Difference(
                                new Given("d_m", "distance measured at the machine", tape.distance()),
                                new Given("u_m", "its uncertainty", tape.uncertainty())),
                        new Difference(distance, new Given("u_p", "uncertainty of the plan", plan.uncertainty()))),
                down);
    }

    /** Under what its values stand. */
    static String about(String safeguard) {
        return safeguard + ".plan";
    }

    public Guarding guarding() {
        return guarding;
    }

    /** Tag of the hazard zone that is nearest. */
    public String zone() {
        return zone;
    }

    /** From the point of the safeguard to that of its zone which are nearest. */
    public Between between() {
        return between;
    }

    public Derived distance() {
        return distance;
    }

    /** What is held against the separation distance. */
    public Derived counted() {
        return counted;
    }

    /** Of both points, for print. */
    public List<Point> points() {
        return List.of(between.from(), between.to());
    }

    @Override
    public String tag() {
        return guarding.tag();
    }

    @Override
    public List<Derived> derived() {
        return List.of(distance, counted);
    }

    @Override
    public Recorded recorded() {
        return recorded;
    }

    @Override
    public List<Claim> requirements() {
        return List.of();
    }

    @Override
    public List<Finding> faults() {
        if (!whole) {
            return List.of();
        }
        List<Finding> faults = new ArrayList<>();
        differs().ifPresent(faults::add);
        tooClose().ifPresent(faults::add);
        return faults;
    }

    /** By how much plan and tape differ, without sign; empty when one of them is not known. */
    public Optional<Quantity> difference() {
        return guarding.safeguard()
                .installed()
                .distance()
                .value()
                .flatMap(tape -> distance.value()
                        .map(drawn -> tape.compareTo(drawn) >= 0 ? tape.minus(drawn) : drawn.minus(tape)));
    }

    private Optional<Finding> differs() {
        Safeguard.Installed tape = guarding.safeguard().installed();
        boolean within = difference()
                .flatMap(apart -> plan.tolerance().value().map(allowed -> apart.compareTo(allowed) <= 0))
                .orElse(true);
        return within
                ? Optional.empty()
                : Optional.of(Finding.refuses(
                                DIFFERS,
                                tag(),
                                tape.distance().where(),
                                "the distance of `" + tag() + "` was measured at the machine as "
                                        + tape.distance().characters() + ", and the plan has "
                                        + distance.rounded()
                                                .map(Quantity::toString)
                                                .orElse("") + " from "
                                        + between.from() + " to " + between.to() + " of `" + zone
                                        + "`: they differ by more than the tolerance of "
                                        + plan.tolerance().characters(),
                                "measure once more at the machine, from the point of the safeguard that the plan names; then"
                                        + " correct whichever of both does not show what stands there")
                        .because(Drawing.of(distance).lines()));
    }

    /** True when what counts is less than the separation distance, whoever tells it. */
    boolean isTooShort() {
        return shorter(counted, guarding.separationDistance());
    }

    /** What the tape alone shows is told by the tape, and what is not the same on both has to be cleared up first. */
    private Optional<Finding> tooClose() {
        Derived needed = guarding.separationDistance();
        boolean close = shorter(counted, needed)
                && !shorter(guarding.budget().counted(), needed)
                && differs().isEmpty();
        return close
                ? Optional.of(Finding.refuses(
                                TOO_CLOSE,
                                tag(),
                                guarding.safeguard().installed().distance().where(),
                                "of the distances of `" + tag() + "` on the plan and at the machine "
                                        + counted.rounded()
                                                .map(Quantity::toString)
                                                .orElse("")
                                        + " count, less than the " + needed.words() + " of "
                                        + needed.rounded()
                                                .map(Quantity::toString)
                                                .orElse(""),
                                guarding.safeguard().device().whenTooClose(needed))
                        .because(Drawing.of(counted).lines()))
                : Optional.empty();
    }

    private boolean shorter(Derived distance, Derived needed) {
        return distance.value()
                .flatMap(counts -> needed.value()
                        .map(least -> guarding.governing().strict()
                                ? counts.compareTo(least) <= 0
                                : counts.compareTo(least) < 0))
                .orElse(false);
    }
}
