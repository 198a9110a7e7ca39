package org.cellfile.subject.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.geometry.Arcs;
import org.cellfile.geometry.Point;
import org.cellfile.geometry.Shape;
import org.cellfile.quantity.Quantity;
import org.cellfile.source.Stated;
import org.cellfile.subject.hazard.Zone;
import org.cellfile.subject.identity.Robot;

/** The space a robot gets to, held against its hazard zones as drawn. */
final class RobotSpace {

    /** A hazard zone is drawn smaller than what it has to hold. */
    static final FindingId SMALLER = new FindingId("plan.zone-smaller");

    /** A robot is drawn as if it did not get as far as it does. */
    static final FindingId REACH_SMALLER = new FindingId("plan.reach-smaller");

    private RobotSpace() {}

    static List<Finding> of(Layout layout) {
        List<Finding> faults = new ArrayList<>();
        for (DrawnRobot drawn : layout.plan().robots()) {
            List<Zone> zones = layout.zonesOf(drawn.of().characters());
            Optional<Point> base = drawn.base().value();
            List<Finding> extents = zones.stream()
                    .flatMap(zone -> base.flatMap(at -> extent(layout, zone, at)).stream())
                    .toList();
            faults.addAll(extents);
            List<Finding> reaches = Stream.of(reachSmaller(layout, drawn), limitedElsewhere(drawn))
                    .flatMap(Optional::stream)
                    .toList();
            faults.addAll(reaches);
            if (extents.isEmpty() && reaches.isEmpty() && zones.stream().anyMatch(zone -> drawn(layout, zone))) {
                space(layout, drawn)
                        .flatMap(space -> leaves(layout, drawn, space, zones))
                        .ifPresent(faults::add);
            }
        }
        return faults;
    }

    private static boolean drawn(Layout layout, Zone zone) {
        return !layout.zone(zone.tag().characters()).empty();
    }

    private static Optional<Finding> extent(Layout layout, Zone zone, Point base) {
        return zone.extent()
                .value()
                .filter(any -> drawn(layout, zone))
                .map(extent -> Shape.circle(base, extent.coherent(), Arcs.WITHIN)
                        .without(layout.zone(zone.tag().characters()))
                        .areas()
                        .roomFor(Straight.NARROWEST))
                .filter(outside -> !outside.empty())
                .map(outside -> Finding.refuses(
                        SMALLER,
                        zone.tag().characters(),
                        layout.where(zone.tag()),
                        "the zone `" + zone.tag().characters() + "` is drawn smaller than its extent of "
                                + zone.extent().characters() + " about the robot's base at " + base + ": "
                                + Straight.place(outside) + " is left out",
                        "draw the whole zone, with tool, part and overrun; where something keeps the robot in, name it as the"
                                + " zone's `limitation` in place of the extent"));
    }

    /** Its arm alone gets to the circle of its stated reach, wherever tool and part are then. */
    private static Optional<Finding> reachSmaller(Layout layout, DrawnRobot drawn) {
        Optional<Stated<Quantity>> stated = layout.around().robots().stream()
                .filter(load -> load.tag().equals(drawn.of().characters()))
                .map(load -> load.robot().reach())
                .findFirst();
        BigDecimal tolerance =
                layout.plan().tolerance().value().map(Quantity::coherent).orElse(BigDecimal.ZERO);
        return drawn.reach()
                .flatMap(outline -> stated.flatMap(reach -> reach.value()
                        .map(length -> length.coherent().subtract(tolerance))
                        .filter(length -> length.signum() > 0)
                        .flatMap(length -> drawn.base().value().map(base -> Shape.circle(base, length, Arcs.WITHIN)))
                        .map(arm -> arm.without(filled(outline)).areas().roomFor(Straight.NARROWEST))
                        .filter(outside -> !outside.empty())
                        .map(outside -> Finding.refuses(
                                REACH_SMALLER,
                                drawn.of().characters(),
                                outline.where(),
                                "the `reach` drawn of the robot `" + drawn.of().characters()
                                        + "` leaves out a part of the circle of its stated reach of "
                                        + reach.characters()
                                        + " about its base, " + reach.where().position() + ": "
                                        + Straight.place(outside),
                                "draw how far it gets with arm, tool and part, or leave `reach` out; what keeps it from a part of that is"
                                        + " its `restricted-space`"))));
    }

    /** Nothing is limited to a space in which it does not stand. */
    private static Optional<Finding> limitedElsewhere(DrawnRobot drawn) {
        return drawn.restricted()
                .flatMap(
                        limit -> drawn.base()
                                .value()
                                .filter(base -> !filled(limit).meets(Shape.spot(base)))
                                .map(
                                        base -> Finding.refuses(
                                                REACH_SMALLER,
                                                drawn.of().characters(),
                                                limit.where(),
                                                "the `restricted-space` of the robot `"
                                                        + drawn.of().characters() + "` does not hold its base at "
                                                        + base,
                                                "draw the whole space that the robot is limited to, with the floor on which it stands")));
    }

    /** With what a ring leaves out, where the robot itself stands. */
    private static Shape filled(Outline outline) {
        return outline instanceof Outline.Circle circle
                ? Shape.circle(circle.centre(), circle.radius(), Arcs.AROUND)
                : outline.shape(Arcs.AROUND);
    }

    /** Reach of arm, tool and part, as far as nothing limits it. */
    private static Optional<Shape> space(Layout layout, DrawnRobot drawn) {
        Optional<Shape> reach = drawn.reach()
                .map(outline -> outline.shape(Arcs.WITHIN))
                .or(() -> layout.around().robots().stream()
                        .filter(load -> load.tag().equals(drawn.of().characters()))
                        .findFirst()
                        .flatMap(load -> circle(load.robot(), drawn.base())));
        return reach.map(space -> drawn.restricted()
                .map(limit -> space.common(limit.shape(Arcs.WITHIN)).areas())
                .orElse(space));
    }

    private static Optional<Shape> circle(Robot robot, Stated<Point> base) {
        List<BigDecimal> lengths = List.of(
                        robot.reach(), robot.tool().length(), robot.part().length())
                .stream()
                .flatMap(length -> length.value().stream())
                .map(Quantity::coherent)
                .toList();
        return base.value()
                .filter(any -> lengths.size() == 3)
                .map(at -> Shape.circle(at, lengths.stream().reduce(BigDecimal.ZERO, BigDecimal::add), Arcs.WITHIN));
    }

    private static Optional<Finding> leaves(Layout layout, DrawnRobot drawn, Shape space, List<Zone> zones) {
        Shape outside = space.without(Shape.of(zones.stream()
                        .map(zone -> layout.zone(zone.tag().characters()))
                        .toList()))
                .areas()
                .roomFor(Straight.NARROWEST);
        String names =
                zones.stream().map(zone -> "`" + zone.tag().characters() + "`").collect(Collectors.joining(" and "));
        return outside.empty()
                ? Optional.empty()
                : Optional.of(Finding.refuses(
                        SMALLER,
                        drawn.of().characters(),
                        drawn.of().where(),
                        "the robot `" + drawn.of().characters() + "` gets beyond what is drawn as " + names
                                + ", with tool and part: " + Straight.place(outside),
                        "draw the whole zone; where something limits the robot, draw that as its `restricted-space`, or draw as"
                                + " `reach` how far it gets"));
    }
}
