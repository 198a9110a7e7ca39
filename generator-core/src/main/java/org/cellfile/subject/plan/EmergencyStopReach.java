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
import org.cellfile.geometry.Between;
import org.cellfile.geometry.Point;
import org.cellfile.geometry.Sight;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.subject.complement.ComplementaryDevice;
import org.cellfile.subject.complement.EmergencyStop;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Drawing;

/** From an operator place to the nearest emergency stop that is reached in a straight line past everything that bars. */
public final class EmergencyStopReach implements Recomputed {

    /** An operator place has no emergency stop within the distance stated for it. */
    static final FindingId NONE_NEAR = new FindingId("installed.no-emergency-stop-on-plan");

    private final OperatorPlace place;
    private final Optional<Way> nearest;
    private final Optional<Way> barred;
    private final Optional<Derived> distance;

    /** @param behind tag of what bars it; empty when nothing does */
    private record Way(String device, Between between, Optional<String> behind) {}

    private EmergencyStopReach(OperatorPlace place, List<Way> ways) {
        this.place = place;
        this.nearest = ways.stream().filter(way -> way.behind.isEmpty()).findFirst();
        this.barred = ways.stream().filter(way -> way.behind.isPresent()).findFirst();
        this.distance = nearest.map(way -> new Derived(
                PlanDistance.about(tag()),
                "emergency-stop",
                "distance to the emergency stop `" + way.device + "` on the plan",
                "l",
                "straight line from " + way.between.from() + " to " + way.between.to(),
                Straight.length(
                        way.between,
                        "the operator place",
                        "the emergency stop",
                        place.at().where().position()),
                Rounding.up(Quantity.millimetres("1"))
                        .beside(place.emergencyStopWithin().value())));
    }

    /** Of every drawn place; none when no emergency stop of the cell is drawn, which is told by itself. */
    static List<EmergencyStopReach> of(Layout layout) {
        List<EmergencyStopReach> reaches = new ArrayList<>();
        for (OperatorPlace place : layout.plan().places()) {
            place.at()
                    .value()
                    .map(at -> ways(layout, at))
                    .filter(ways -> !ways.isEmpty()
                            || layout.around().complementary().stream().noneMatch(one -> isMounted(one.device())))
                    .ifPresent(ways -> reaches.add(new EmergencyStopReach(place, ways)));
        }
        return List.copyOf(reaches);
    }

    /** To every emergency stop that is mounted, nearest first. */
    private static List<Way> ways(Layout layout, Point place) {
        return layout.plan().devices().stream()
                .filter(drawn -> layout.device(drawn.of())
                        .filter(EmergencyStopReach::isMounted)
                        .isPresent())
                .flatMap(drawn -> drawn.at().value().stream()
                        .map(at -> new Way(drawn.of().characters(), new Between(place, at), behind(layout, place, at))))
                .sorted(Comparator.comparing((Way way) -> way.between.square()).thenComparing(Way::device))
                .toList();
    }

    private static boolean isMounted(ComplementaryDevice device) {
        return device.sort() instanceof EmergencyStop stop && !stop.handHeld();
    }

    private static Optional<String> behind(Layout layout, Point place, Point stop) {
        return layout.obstacles().stream()
                .filter(one -> !Sight.free(place, stop, one.shape()))
                .map(Obstacle::tag)
                .findFirst();
    }

    OperatorPlace place() {
        return place;
    }

    /** Tag of the nearest emergency stop that can be reached. */
    Optional<String> device() {
        return nearest.map(Way::device);
    }

    /** To it; empty where none can be reached. */
    Optional<Derived> distance() {
        return distance;
    }

    @Override
    public String tag() {
        return place.tag().characters();
    }

    @Override
    public List<Derived> derived() {
        return distance.stream().toList();
    }

    /** Nothing: both coordinates are recorded. */
    @Override
    public Recorded recorded() {
        return new Recorded(PlanDistance.about(tag()), place.tag().where(), Map.of());
    }

    @Override
    public List<Claim> requirements() {
        return List.of();
    }

    @Override
    public List<Finding> faults() {
        boolean within = distance.map(far -> far.value()
                        .flatMap(is -> place.emergencyStopWithin().value().map(most -> is.compareTo(most) <= 0))
                        .orElse(true))
                .orElseGet(() -> place.emergencyStopWithin().value().isEmpty());
        return within
                ? List.of()
                : List.of(Finding.refuses(
                                NONE_NEAR,
                                tag(),
                                place.emergencyStopWithin().where(),
                                "no emergency stop is within "
                                        + place.emergencyStopWithin().characters() + " of the operator place `" + tag()
                                        + "`: " + instead(),
                                "fit one where it is reached from there without going round anything; until then a named person"
                                        + " may state a deviation")
                        .because(distance.map(far -> Drawing.of(far).lines()).orElse(List.of())));
    }

    private String instead() {
        return distance.map(far -> "the nearest that can be reached straight, `" + nearest.orElseThrow().device
                        + "`, is " + Workings.shown(far) + " away")
                .orElseGet(() -> barred.map(way -> "`" + way.device + "` at " + way.between.to() + " is behind `"
                                + way.behind.orElse("") + "`")
                        .orElse("none is mounted at this cell"));
    }
}
