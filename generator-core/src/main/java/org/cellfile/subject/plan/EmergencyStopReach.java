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
import org.cellfile.source.Stated;
import org.cellfile.subject.complement.ComplementaryDevice;
import org.cellfile.subject.complement.EmergencyStop;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Drawing;

/**
 * From an operator place to the nearest emergency stop that is reached in a straight line past everything that bars. It may be no
 * further than is stated for the place, and no further than the longest reach stated for the device.
 */
public final class EmergencyStopReach implements Recomputed {

    /** An operator place has no emergency stop within the distance stated for it. */
    static final FindingId NONE_NEAR = new FindingId("installed.no-emergency-stop-on-plan");

    private final OperatorPlace place;
    private final Optional<Way> nearest;
    private final Optional<Way> barred;
    private final Optional<Derived> distance;

    /**
     * @param most how far it may be
     * @param behind tag of what bars it; empty when nothing does
     */
    private record Way(String device, Between between, Stated<Quantity> most, Optional<String> behind) {
        boolean within() {
            return most.value()
                    .map(Quantity::coherent)
                    .map(far -> between.square().compareTo(far.multiply(far)) <= 0)
                    .orElse(true);
        }
    }

    private EmergencyStopReach(OperatorPlace place, List<Way> ways) {
        this.place = place;
        List<Way> free = ways.stream().filter(way -> way.behind.isEmpty()).toList();
        this.nearest = free.stream()
                .filter(Way::within)
                .findFirst()
                .or(() -> free.stream().findFirst());
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
                Rounding.up(Quantity.millimetres("1")).beside(way.most.value())));
    }

    /** Of every drawn place; none when no emergency stop of the cell is drawn, which is told by itself. */
    static List<EmergencyStopReach> of(Layout layout) {
        List<EmergencyStopReach> reaches = new ArrayList<>();
        for (OperatorPlace place : layout.plan().places()) {
            place.at()
                    .value()
                    .map(at -> ways(layout, place, at))
                    .filter(ways -> !ways.isEmpty()
                            || layout.around().complementary().stream().noneMatch(one -> isMounted(one.device())))
                    .ifPresent(ways -> reaches.add(new EmergencyStopReach(place, ways)));
        }
        return List.copyOf(reaches);
    }

    /** To every emergency stop that is mounted, nearest first. */
    private static List<Way> ways(Layout layout, OperatorPlace operator, Point place) {
        return layout.plan().devices().stream()
                .flatMap(drawn -> layout.device(drawn.of()).filter(EmergencyStopReach::isMounted).stream()
                        .flatMap(device -> drawn.at().value().stream()
                                .map(at -> new Way(
                                        device.tag().characters(),
                                        new Between(place, at),
                                        most(operator, device),
                                        behind(layout, place, at)))))
                .sorted(Comparator.comparing((Way way) -> way.between.square()).thenComparing(Way::device))
                .toList();
    }

    /** The shorter of what is stated for the place and for the device. */
    private static Stated<Quantity> most(OperatorPlace place, ComplementaryDevice device) {
        Stated<Quantity> within = place.emergencyStopWithin();
        return device.sort() instanceof EmergencyStop stop
                ? stop.longestReach()
                        .filter(longest -> longest.value()
                                .flatMap(one -> within.value().map(other -> one.compareTo(other) < 0))
                                .orElse(false))
                        .orElse(within)
                : within;
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

    /** How far it may be: what is stated for the place, or the longest reach of the device where that is shorter. */
    Stated<Quantity> most() {
        return nearest.map(Way::most).orElse(place.emergencyStopWithin());
    }

    /** Tag of the nearest emergency stop that can be reached, of those that are near enough where some are. */
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
        boolean within = nearest.map(Way::within).orElseGet(() -> most().value().isEmpty());
        return within
                ? List.of()
                : List.of(Finding.refuses(
                                NONE_NEAR,
                                tag(),
                                place.emergencyStopWithin().where(),
                                "no emergency stop is within " + most().characters() + bound()
                                        + " of the operator place `" + tag() + "`: " + instead(),
                                "fit one where it is reached from there without going round anything; until then a named person"
                                        + " may state a deviation")
                        .because(distance.map(far -> Drawing.of(far).lines()).orElse(List.of())));
    }

    private String bound() {
        return most().equals(place.emergencyStopWithin())
                ? ""
                : ", the longest reach stated for `" + device().orElse("") + "` at "
                        + most().where().position() + ",";
    }

    private String instead() {
        return distance.map(far -> "the nearest that can be reached straight, `" + nearest.orElseThrow().device
                        + "`, is " + Workings.shown(far) + " away")
                .orElseGet(() -> barred.map(way -> "`" + way.device + "` at " + way.between.to() + " is behind `"
                                + way.behind.orElse("") + "`")
                        .orElse("none is mounted at this cell"));
    }
}
