package org.cellfile.subject.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cellfile.claim.Claim;
import org.cellfile.claim.Recomputed;
import org.cellfile.claim.Recorded;
import org.cellfile.claim.Workings;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.geometry.Arcs;
import org.cellfile.geometry.Between;
import org.cellfile.geometry.Point;
import org.cellfile.geometry.Shape;
import org.cellfile.geometry.Sight;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.standard.ReachStandard;
import org.cellfile.subject.complement.ComplementaryDevice;
import org.cellfile.subject.complement.Reset;
import org.cellfile.subject.safeguard.Device.Footprint;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Drawing;
import org.cellfile.trace.Greatest;
import org.cellfile.trace.Term;

/**
 * A reset where it is drawn: what of its zones somebody who stands at it sees, and whether somebody inside reaches it. Inside is floor
 * that nobody gets onto from outside without passing a safeguard, and on which no field and no mat detects anybody. Nobody presses it
 * from within a field or from a mat either: he would be past the edge over which he was to be detected. That a reset is
 * outside, out of reach from inside and in view of its zones is common practice.
 */
public final class ResetPlace implements Recomputed {

    /** Part of a zone cannot be seen from a reset. */
    static final FindingId BLIND = new FindingId("installed.reset-blind-on-plan");

    /** Somebody inside is at a reset, or reaches it. */
    static final FindingId WITHIN_REACH = new FindingId("installed.reset-within-reach-on-plan");

    private static final String HELP =
            "move it outside, so far that nobody inside reaches it; until then a named person may state a deviation";
    private static final String FREE_ARM = "shoulder";

    private final ComplementaryDevice device;
    private final Point at;
    private final List<Hidden> hidden;
    private final Optional<Inside> inside;
    private final Optional<Stood> stood;
    private final Optional<Derived> fromInside;
    private final Optional<Derived> arm;

    /** What nobody sees of a zone from there, and where somebody would not be seen. */
    record Hidden(String zone, Shape floor, String by) {}

    private record Inside(String zone, Between between) {}

    /** A field or a mat on which somebody stands who presses it. */
    private record Stood(String zone, String area) {}

    private ResetPlace(ComplementaryDevice device, DrawnDevice drawn, Point at, Layout layout) {
        this.device = device;
        this.at = at;
        List<String> zones = ((Reset) device.sort())
                .sees().stream()
                        .flatMap(zone -> zone.value().stream())
                        .distinct()
                        .toList();
        this.hidden =
                zones.stream().flatMap(zone -> hidden(layout, zone).stream()).toList();
        this.arm = arm(layout);
        this.inside = zones.stream()
                .flatMap(zone -> inside(layout, zone).stream())
                .min(Comparator.comparing((Inside one) -> one.between.square()).thenComparing(Inside::zone));
        this.stood =
                zones.stream().flatMap(zone -> stood(layout, zone).stream()).findFirst();
        this.fromInside = inside.map(one -> new Derived(
                PlanDistance.about(tag()),
                "from-inside",
                "distance to the reset from the nearest place inside",
                "l",
                "straight line from " + one.between.from() + " to " + one.between.to(),
                Straight.length(
                        one.between,
                        "the floor inside",
                        "the reset",
                        drawn.at().where().position()),
                Rounding.down(Quantity.millimetres("1"))
                        .beside(layout.plan().uncertainty().value())));
    }

    /** Of every drawn reset. */
    static List<ResetPlace> of(Layout layout) {
        List<ResetPlace> places = new ArrayList<>();
        for (DrawnDevice drawn : layout.plan().devices()) {
            layout.device(drawn.of())
                    .filter(device -> device.sort() instanceof Reset)
                    .ifPresent(device ->
                            drawn.at().value().ifPresent(at -> places.add(new ResetPlace(device, drawn, at, layout))));
        }
        return List.copyOf(places);
    }

    /** What is hidden and wide enough that somebody finds room there, with what hides most of it. */
    private Optional<Hidden> hidden(Layout layout, String zone) {
        List<Obstacle> hiding = Obstacle.hiding(layout);
        Shape floor = Sight.hidden(at, layout.zone(zone), Obstacle.together(hiding))
                .roomFor(layout.widestOpening().quantity().coherent());
        return floor.empty()
                ? Optional.empty()
                : hiding.stream()
                        .max(Comparator.comparing(
                                one -> Sight.hidden(at, floor, one.shape()).area()))
                        .map(most -> new Hidden(zone, floor, by(most)));
    }

    /** A thing inside which the reset is drawn hides all that is around it. */
    private String by(Obstacle most) {
        boolean around = !most.shape().empty() && most.shape().notAround(at).empty();
        return around ? "as the reset is drawn inside `" + most.tag() + "`" : "behind `" + most.tag() + "`";
    }

    private Optional<Derived> arm(Layout layout) {
        List<Term> reaches = layout.around().reaches().stream()
                .map(standard -> standard.around(FREE_ARM))
                .flatMap(Optional::stream)
                .toList();
        return reaches.isEmpty()
                ? Optional.empty()
                : Optional.of(new Derived(
                        PlanDistance.about(tag()),
                        "arm-reach",
                        "reach of an arm that nothing holds back",
                        "s_r",
                        layout.around().reaches().stream()
                                .map(ReachStandard::id)
                                .collect(Collectors.joining(" and ")),
                        reaches.size() == 1 ? reaches.get(0) : new Greatest(reaches),
                        Rounding.up(Quantity.millimetres("1"))
                                .beside(layout.plan().uncertainty().value())));
    }

    /** The nearest floor inside from which nothing bars the straight way to the reset, no further than an arm reaches. */
    private Optional<Inside> inside(Layout layout, String zone) {
        Shape floor = layout.inside(zone);
        Shape spot = Shape.spot(at);
        Shape near = arm.flatMap(Derived::value)
                .map(reach -> floor.common(Shape.circle(at, reach.coherent(), Arcs.AROUND))
                        .areas())
                .orElseGet(() -> floor.meets(spot) ? floor : Shape.nothing());
        return near.without(Sight.hidden(at, near, layout.barring().notAround(at)))
                .areas()
                .roomFor(Straight.NARROWEST)
                .nearest(spot)
                .map(way -> new Inside(zone, way));
    }

    private Optional<Stood> stood(Layout layout, String zone) {
        Shape spot = Shape.spot(at);
        return layout.guarding(zone).stream()
                .filter(guarding -> guarding.safeguard().device().footprint() == Footprint.AREA)
                .filter(guarding -> layout.effective(guarding.tag())
                        .grown(Straight.NARROWEST.negate())
                        .meets(spot))
                .findFirst()
                .map(guarding -> new Stood(zone, guarding.tag()));
    }

    ComplementaryDevice device() {
        return device;
    }

    /** Of each zone that is not in full view. */
    List<Hidden> hidden() {
        return hidden;
    }

    /** From the nearest place inside within an arm's reach; empty where there is none. */
    Optional<Derived> fromInside() {
        return fromInside;
    }

    /** How far an arm reaches; empty where no edition in force tells. */
    Optional<Derived> arm() {
        return arm;
    }

    @Override
    public String tag() {
        return device.tag().characters();
    }

    @Override
    public List<Derived> derived() {
        List<Derived> derived = new ArrayList<>(arm.stream().toList());
        fromInside.ifPresent(derived::add);
        return derived;
    }

    /** Nothing: the coordinates are recorded. */
    @Override
    public Recorded recorded() {
        return new Recorded(PlanDistance.about(tag()), device.tag().where(), Map.of());
    }

    @Override
    public List<Claim> requirements() {
        return List.of();
    }

    @Override
    public List<Finding> faults() {
        List<Finding> faults = new ArrayList<>();
        hidden.forEach(part -> faults.add(blind(part)));
        stood.map(this::stoodOn).or(() -> inside.map(this::withinReach)).ifPresent(faults::add);
        return faults;
    }

    private Finding blind(Hidden part) {
        return Finding.refuses(
                BLIND,
                tag(),
                device.tag().where(),
                "from the reset `" + tag() + "` at " + at + " a part of `" + part.zone + "` cannot be seen: "
                        + Straight.place(part.floor) + ", " + part.by,
                "move the reset to where the whole zone is in view, or fit one more that has to be pressed first where that part is"
                        + " in view; until then a named person may state a deviation");
    }

    private Finding stoodOn(Stood one) {
        return Finding.refuses(
                WITHIN_REACH,
                tag(),
                device.tag().where(),
                "the reset `" + tag() + "` at " + at + " lies within `" + one.area
                        + "`, which detects people before they get to `" + one.zone
                        + "`: whoever presses it stands on the hazard side of its edge",
                HELP);
    }

    private Finding withinReach(Inside one) {
        Derived far = fromInside.orElseThrow();
        if (one.between.square().signum() == 0) {
            return Finding.refuses(
                    WITHIN_REACH,
                    tag(),
                    device.tag().where(),
                    "the reset `" + tag() + "` at " + at + " is inside the safeguards of `" + one.zone + "`",
                    HELP);
        }
        return Finding.refuses(
                        WITHIN_REACH,
                        tag(),
                        device.tag().where(),
                        "the reset `" + tag() + "` at " + at + " is " + Workings.shown(far)
                                + " from floor inside the safeguards of `"
                                + one.zone + "` at " + one.between.from()
                                + ", where nothing detects anybody, and nothing bars an"
                                + " arm, which reaches "
                                + arm.map(Workings::shown).orElse(""),
                        HELP)
                .because(arm.map(reach -> Drawing.of(reach).lines()).orElse(List.of()));
    }
}
