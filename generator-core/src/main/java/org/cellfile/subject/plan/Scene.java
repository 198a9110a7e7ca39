package org.cellfile.subject.plan;

import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.function.Function;
import java.util.function.Predicate;
import org.cellfile.geometry.Arcs;
import org.cellfile.geometry.Point;
import org.cellfile.geometry.Shape;
import org.cellfile.source.Stated;
import org.cellfile.subject.complement.ComplementaryDevice;
import org.cellfile.subject.complement.EmergencyStop;
import org.cellfile.subject.complement.Reset;
import org.cellfile.subject.safeguard.Device.Footprint;
import org.cellfile.subject.safeguard.Guarding;

/** Puts the things of a plan into a picture. */
final class Scene {

    /** A text is no longer than this in a drawing; the description has all of it. */
    private static final int LONGEST = 44;

    private final Layout layout;
    private final Plan plan;
    private final Picture picture;

    Scene(Layout layout, Picture picture) {
        this.layout = layout;
        this.plan = layout.plan();
        this.picture = picture;
    }

    /**
     * Everything on the plan.
     *
     * @param acts whether a safeguard or an emergency stop of that tag acts
     * @param text of a safeguard; empty where it has one already, or is not what the drawing is about
     * @param named whether a zone or a structure of that tag and shape is named
     */
    void draw(Predicate<String> acts, Function<Guarding, Optional<String>> text, BiPredicate<String, Shape> named) {
        zones(named);
        plan.robots().forEach(this::robot);
        plan.structures().forEach(structure -> structure(structure, named));
        DoorSwing.of(layout).forEach(this::swing);
        for (Guarding guarding : layout.around().safeguards()) {
            safeguard(guarding, acts.test(guarding.tag()), text.apply(guarding));
        }
        for (DrawnDevice device : plan.devices()) {
            place(kind(device, acts), device.at(), device.of().characters());
        }
        plan.places()
                .forEach(place -> place(Drawn.PLACE, place.at(), place.tag().characters()));
        waysOut(way -> way.name().characters());
    }

    /**
     * What somebody has to know who stands at the cell and looks for a way.
     *
     * @param reader where the sheet hangs on which it is drawn
     * @param name of a way out
     */
    void drawSmall(OperatorPlace reader, Function<Stated<String>, String> name) {
        plan.zones()
                .forEach(zone ->
                        picture.hatched(Drawn.ZONE, layout.zone(zone.of().characters())));
        plan.structures()
                .forEach(structure -> structure
                        .outline()
                        .ifPresent(outline -> picture.draw(kind(structure), outline.shape(Arcs.AROUND))));
        for (Guarding guarding : layout.around().safeguards()) {
            if (guarding.safeguard().device().footprint() == Footprint.AREA) {
                continue; // nobody sees a field, and its hatching would pass for that of a zone
            }
            safeguard(guarding, true, Optional.empty());
        }
        reader.at().value().ifPresent(at -> picture.symbol(Drawn.READER, at));
        plan.devices().stream()
                .filter(device -> kind(device, tag -> true) == Drawn.EMERGENCY_STOP)
                .forEach(device -> symbol(Drawn.EMERGENCY_STOP, device.at()));
        waysOut(way -> name.apply(way.name()));
    }

    private void zones(BiPredicate<String, Shape> named) {
        for (DrawnZone zone : plan.zones()) {
            Shape shape = layout.zone(zone.of().characters());
            picture.hatched(Drawn.ZONE, shape);
            if (named.test(zone.of().characters(), shape)) {
                picture.text(shape, true, zone.of().characters());
            }
        }
    }

    /** Each at its place, or at the frame on the side where it is. */
    private void waysOut(Function<WayOut, String> name) {
        for (WayOut way : plan.waysOut()) {
            way.at().value().ifPresent(at -> picture.symbol(Drawn.WAY_OUT, at, shortened(name.apply(way))));
        }
    }

    private static String shortened(String text) {
        return text.length() <= LONGEST ? text : text.substring(0, LONGEST) + " …";
    }

    private void place(Drawn kind, Stated<Point> at, String text) {
        at.value().filter(picture::shows).ifPresent(point -> picture.symbol(kind, point, text));
    }

    private void symbol(Drawn kind, Stated<Point> at) {
        at.value().filter(picture::shows).ifPresent(point -> picture.symbol(kind, point));
    }

    private void robot(DrawnRobot robot) {
        robot.restricted().ifPresent(space -> picture.draw(Drawn.RESTRICTED, space.shape(Arcs.AROUND)));
        reach(robot).ifPresent(reach -> picture.draw(Drawn.REACH, reach));
        place(Drawn.ROBOT, robot.base(), robot.of().characters());
        place(
                Drawn.CONTROLLER,
                robot.controller(),
                "controller of " + robot.of().characters());
    }

    private Optional<Shape> reach(DrawnRobot robot) {
        return robot.reach()
                .map(reach -> reach.shape(Arcs.AROUND))
                .or(() -> layout.around().robots().stream()
                        .filter(load -> load.tag().equals(robot.of().characters()))
                        .findFirst()
                        .flatMap(load -> load.robot().reach().value())
                        .flatMap(radius ->
                                robot.base().value().map(base -> Shape.circle(base, radius.coherent(), Arcs.AROUND))));
    }

    private void structure(Structure structure, BiPredicate<String, Shape> named) {
        structure.outline().map(outline -> outline.shape(Arcs.AROUND)).ifPresent(shape -> {
            picture.draw(kind(structure), shape);
            if (named.test(structure.tag().characters(), shape)) {
                picture.text(
                        shape,
                        !(structure.outline().get() instanceof Outline.Line),
                        structure.tag().characters());
            }
        });
    }

    private static Drawn kind(Structure structure) {
        return structure.isHiding() ? Drawn.HIDING : structure.bars() ? Drawn.STRUCTURE : Drawn.PASSABLE;
    }

    private void safeguard(Guarding guarding, boolean acts, Optional<String> text) {
        List<DrawnSafeguard> pieces = layout.drawn(guarding.tag());
        for (DrawnSafeguard piece : pieces) {
            piece.warning()
                    .filter(field -> acts)
                    .ifPresent(field -> picture.draw(Drawn.WARNING, field.shape(Arcs.WITHIN)));
            piece.scanner().ifPresent(scanner -> symbol(Drawn.SCANNER, scanner.at()));
        }
        Shape shape = layout.safeguard(guarding.tag());
        Footprint footprint = guarding.safeguard().device().footprint();
        switch (footprint) {
            case AREA -> floor(guarding, shape, acts);
            case LINE -> picture.draw(acts ? line(guarding) : Drawn.SUSPENDED_LINE, shape);
            case SPOT -> {
                picture.draw(Drawn.TWO_HAND, shape);
                shape.parts()
                        .forEach(part -> picture.symbol(
                                Drawn.TWO_HAND, part.within(), text.stream().toArray(String[]::new)));
            }
        }
        if (footprint != Footprint.SPOT) {
            text.ifPresent(words -> picture.text(shape, footprint == Footprint.AREA, words));
        }
    }

    /** Of a field what its scanner sees is what acts; the rest of it is dotted. */
    private void floor(Guarding guarding, Shape shape, boolean acts) {
        if (!acts) {
            picture.draw(Drawn.SUSPENDED_FLOOR, shape);
            return;
        }
        Shape effective = layout.effective(guarding.tag());
        picture.draw(Drawn.NOT_SEEN, shape.without(effective).areas().roomFor(Straight.NARROWEST));
        picture.hatched(Drawn.FLOOR, effective);
    }

    private static Drawn line(Guarding guarding) {
        return !guarding.safeguard().kind().stopsTheHazard()
                ? Drawn.GUARD
                : guarding.safeguard().kind().closedByHand() ? Drawn.DOOR : Drawn.LINE;
    }

    /** The leaf as it stands open, and the floor over which it comes there. */
    private void swing(DoorSwing swing) {
        picture.draw(Drawn.SWING, swing.swept());
        picture.draw(Drawn.SWING, Shape.line(List.of(swing.hinge(), swing.open())));
    }

    private Drawn kind(DrawnDevice drawn, Predicate<String> acts) {
        return layout.around().complementary().stream()
                .map(complement -> complement.device())
                .filter(device -> device.tag().characters().equals(drawn.of().characters()))
                .map(device -> kind(device, acts))
                .findFirst()
                .orElse(Drawn.DEVICE);
    }

    private static Drawn kind(ComplementaryDevice device, Predicate<String> acts) {
        if (device.sort() instanceof EmergencyStop) {
            return acts.test(device.tag().characters()) ? Drawn.EMERGENCY_STOP : Drawn.EMERGENCY_STOP_IDLE;
        }
        return device.sort() instanceof Reset ? Drawn.RESET : Drawn.DEVICE;
    }
}
