package org.cellfile.subject.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cellfile.claim.Claim;
import org.cellfile.claim.Recomputed;
import org.cellfile.claim.Recorded;
import org.cellfile.claim.Workings;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.geometry.Arcs;
import org.cellfile.geometry.Between;
import org.cellfile.geometry.Shape;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.source.Stated;
import org.cellfile.standard.CrushingStandard;
import org.cellfile.subject.clearance.ClearanceGap;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Drawing;
import org.cellfile.trace.Given;
import org.cellfile.trace.Sum;

/**
 * The gap between the space of a robot and a structure as the plan has it. It has to hold a body, unless a gap was measured there
 * for another part of the body, or a measure is named. That a body has to have room between a robot and what stands fixed is from
 * memory of ISO 10218-2; how much room it needs is the row of the body in the edition in force about crushing.
 */
public final class PlanGap implements Recomputed {

    /** A robot and a structure leave no room for a body, and nothing else is named. */
    static final FindingId NO_CLEARANCE = new FindingId("installed.no-clearance-on-plan");

    private static final String BODY = "body";

    private final Structure structure;
    private final String zone;
    private final Between between;
    private final Plan plan;
    private final Optional<ClearanceGap> measured;
    private final Derived gap;
    private final Optional<Derived> needed;

    private PlanGap(Structure structure, Nearest nearest, Layout layout, Optional<ClearanceGap> measured) {
        this.structure = structure;
        this.zone = nearest.zone;
        this.between = nearest.between;
        this.plan = layout.plan();
        this.measured = measured;
        String about = PlanDistance.about(tag());
        Optional<Quantity> beside =
                measured.flatMap(one -> one.clearance().gap().value());
        gap = new Derived(
                about,
                "gap",
                "gap on the plan",
                "g",
                "straight line from " + between.from() + " to " + between.to(),
                Straight.length(
                        between,
                        "the structure",
                        "the robot's space",
                        structure.tag().where().position()),
                Rounding.down(Quantity.millimetres("1"))
                        .beside(beside.or(() -> plan.uncertainty().value())));
        needed = measured.isPresent() || structure.measure().value().isPresent()
                ? Optional.empty()
                : layout.around().crushing().map(standard -> needed(about, standard));
    }

    private Derived needed(String about, CrushingStandard standard) {
        return new Derived(
                about,
                "needed-gap",
                "gap a body needs on the plan",
                "a_n",
                "sum of the lengths",
                Sum.of(standard.leastGap(BODY), new Given("u_p", "uncertainty of the plan", plan.uncertainty())),
                Rounding.up(Quantity.millimetres("1")).beside(plan.uncertainty().value()));
    }

    private record Nearest(String zone, Between between) {}

    /**
     * Of each structure to the nearest space in which a robot moves; none where no robot is drawn. Of one that people get across too:
     * whoever stands on it or beside it is pressed against it all the same.
     */
    static List<PlanGap> of(Layout layout) {
        List<PlanGap> gaps = new ArrayList<>();
        for (Structure structure : layout.plan().structures()) {
            Optional<ClearanceGap> measured = layout.around().clearances().stream()
                    .filter(one -> structure.clearance().value().equals(Optional.of(one.tag())))
                    .findFirst();
            structure
                    .outline()
                    .map(outline -> outline.shape(Arcs.AROUND))
                    .flatMap(shape -> nearest(layout, shape, measured))
                    .ifPresent(nearest -> gaps.add(new PlanGap(structure, nearest, layout, measured)));
        }
        return List.copyOf(gaps);
    }

    /** To the zone in which the gap was measured, where one was. */
    private static Optional<Nearest> nearest(Layout layout, Shape structure, Optional<ClearanceGap> measured) {
        return layout.robotZones().stream()
                .filter(zone -> measured.map(one -> one.clearance().zone().characters())
                        .map(zone::equals)
                        .orElse(true))
                .flatMap(zone -> structure.nearest(layout.zone(zone)).map(way -> new Nearest(zone, way)).stream())
                .min(Comparator.comparing((Nearest one) -> one.between.square()).thenComparing(Nearest::zone));
    }

    Structure structure() {
        return structure;
    }

    /** Tag of the zone of the robot that comes nearest. */
    String zone() {
        return zone;
    }

    /** From the structure to that zone. */
    public Between between() {
        return between;
    }

    Derived gap() {
        return gap;
    }

    /** What a body needs; empty where something else is named for this gap. */
    Optional<Derived> needed() {
        return needed;
    }

    /** The gap measured at the machine, where one is named. */
    Optional<ClearanceGap> measured() {
        return measured;
    }

    @Override
    public String tag() {
        return structure.tag().characters();
    }

    @Override
    public List<Derived> derived() {
        List<Derived> derived = new ArrayList<>(List.of(gap));
        needed.ifPresent(derived::add);
        return derived;
    }

    /** Nothing: the coordinates are recorded, and the gap measured at the machine is. */
    @Override
    public Recorded recorded() {
        return new Recorded(PlanDistance.about(tag()), structure.tag().where(), Map.of());
    }

    @Override
    public List<Claim> requirements() {
        return List.of();
    }

    @Override
    public List<Finding> faults() {
        List<Finding> faults = new ArrayList<>();
        measured.flatMap(this::differs).ifPresent(faults::add);
        needed.filter(this::tooNarrow).map(this::noClearance).ifPresent(faults::add);
        return faults;
    }

    private boolean tooNarrow(Derived least) {
        return gap.value()
                .flatMap(is -> least.value().map(room -> is.compareTo(room) < 0))
                .orElse(false);
    }

    private Finding noClearance(Derived least) {
        return Finding.refuses(
                        NO_CLEARANCE,
                        tag(),
                        structure.tag().where(),
                        "between `" + tag() + "` and the robot's space `" + zone + "` the plan has a gap of "
                                + Workings.shown(gap) + " at " + between.from() + ", less than the "
                                + Workings.shown(least)
                                + " a body needs",
                        "move the structure or limit the robot; or name under `clearance` the gap that was measured there for the"
                                + " part of the body that gets in, or under `measure` what keeps people from being crushed there;"
                                + " until then a named person may state a deviation")
                .because(Drawing.of(least).lines());
    }

    private Optional<Finding> differs(ClearanceGap machine) {
        Stated<Quantity> tape = machine.clearance().gap();
        Optional<Quantity> apart = tape.value()
                .flatMap(one ->
                        gap.value().map(drawn -> one.compareTo(drawn) >= 0 ? one.minus(drawn) : drawn.minus(one)));
        boolean within = apart.flatMap(far -> plan.tolerance().value().map(allowed -> far.compareTo(allowed) <= 0))
                .orElse(true);
        return within
                ? Optional.empty()
                : Optional.of(Finding.refuses(
                                PlanDistance.DIFFERS,
                                tag(),
                                tape.where(),
                                "the gap `" + machine.tag() + "` was measured at the machine as " + tape.characters()
                                        + ", and the plan has " + Workings.shown(gap) + " from " + between.from()
                                        + " of `"
                                        + tag() + "` to " + between.to() + " of `" + zone
                                        + "`: they differ by more than the tolerance of "
                                        + plan.tolerance().characters(),
                                "measure once more at the machine, where the plan has the two nearest; then correct whichever of"
                                        + " both does not show what stands there")
                        .because(Drawing.of(gap).lines()));
    }
}
