package org.cellfile.subject.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.geometry.Arcs;
import org.cellfile.geometry.Between;
import org.cellfile.geometry.Point;
import org.cellfile.geometry.Shape;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding.Side;
import org.cellfile.subject.safeguard.Guarding;

/**
 * The floor over which a leaf of a door turns.
 *
 * @param drawn as the door is drawn: closed, how it turns
 * @param turns which way, seen from above; empty for the shorter one
 */
record DoorSwing(
        Guarding guarding, DrawnSafeguard drawn, Outline.Line closed, Point hinge, Point open, Optional<String> turns) {

    /**
     * Square of the cosine of 170 degrees: who opens a leaf so far may have turned it either way, as a leaf that folds back is drawn to
     * some degrees only. Constructed.
     */
    private static final BigDecimal FOLDED_BACK = new BigDecimal("0.97");

    /** What is stated of the swing of a door does not go together with the door. */
    static final FindingId UNLIKE = new FindingId("plan.swing-unlike-door");

    /** A door turns into the space of a robot, or against something that stands there. */
    static final FindingId INTO_SPACE = new FindingId("installed.door-into-space-on-plan");

    /** Of every drawn door that turns. */
    static List<DoorSwing> of(Layout layout) {
        List<DoorSwing> swings = new ArrayList<>();
        for (Guarding guarding : layout.around().safeguards()) {
            if (guarding.safeguard().kind().closedByHand()) {
                layout.drawn(guarding.tag())
                        .forEach(piece -> of(guarding, piece).ifPresent(swings::add));
            }
        }
        return List.copyOf(swings);
    }

    private static Optional<DoorSwing> of(Guarding guarding, DrawnSafeguard piece) {
        return piece.swing()
                .flatMap(swing -> swing.hinge()
                        .value()
                        .flatMap(hinge -> swing.open()
                                .value()
                                .flatMap(open -> piece.outline()
                                        .filter(Outline.Line.class::isInstance)
                                        .map(Outline.Line.class::cast)
                                        .map(line -> new DoorSwing(
                                                guarding,
                                                piece,
                                                line,
                                                hinge,
                                                open,
                                                swing.turns().value())))));
    }

    private String tag() {
        return guarding.tag();
    }

    /** What does not hold of it. */
    Optional<Finding> finding(Layout layout) {
        BigDecimal tolerance =
                layout.plan().tolerance().value().map(Quantity::coherent).orElse(BigDecimal.ZERO);
        Optional<Finding> unlike = unlike(tolerance);
        return unlike.isPresent() ? unlike : struck(layout).map(this::into);
    }

    private Optional<Finding> unlike(BigDecimal tolerance) {
        if (closed.points().size() != 2) {
            return Optional.of(unlike(
                    "turns, and its leaf is drawn with a corner",
                    "draw a leaf that turns as a straight `line`, and each leaf of a door with two for itself"));
        }
        Between leaf = closedEnds();
        if (new Between(hinge, leaf.from()).square().compareTo(tolerance.multiply(tolerance)) > 0) {
            return Optional.of(unlike(
                    "turns about " + hinge + ", which is no end of its line from "
                            + closed.points().get(0) + " to " + closed.points().get(1),
                    "state as `hinge` that end of the closed leaf about which it turns"));
        }
        Between opened = new Between(hinge, open);
        Quantity apart = difference(leaf, opened);
        if (apart.coherent().compareTo(tolerance) > 0) {
            return Optional.of(unlike(
                    "is " + Straight.length(leaf, Side.DOWN) + " long when it is closed and "
                            + Straight.length(opened, Side.DOWN) + " when it stands open at " + open,
                    "state as `open` where the free end of the leaf is when it stands open"));
        }
        if (new Between(leaf.to(), open).square().compareTo(tolerance.multiply(tolerance)) <= 0) {
            return Optional.of(
                    unlike(
                            "is to stand open at " + open + ", where its free end is when it is closed: it never opens",
                            "state as `open` where the free end of the leaf is when it stands open; leave `swing` out for a door that slides"));
        }
        return turns.isEmpty() && isFoldedBack(leaf)
                ? Optional.of(
                        unlike(
                                "folds back by about 180 ° to " + open + ", and nothing tells over which side of it",
                                "state as `turns` under `swing` which way it opens, seen from above: `clockwise` or `counter-clockwise`"))
                : Optional.empty();
    }

    /** True when it opens so far that both ways round are about as short. */
    private boolean isFoldedBack(Between leaf) {
        BigDecimal along = leaf.to()
                .x()
                .subtract(hinge.x())
                .multiply(open.x().subtract(hinge.x()))
                .add(leaf.to().y().subtract(hinge.y()).multiply(open.y().subtract(hinge.y())));
        BigDecimal lengths = new Between(hinge, leaf.to()).square().multiply(new Between(hinge, open).square());
        return along.signum() < 0 && along.multiply(along).compareTo(FOLDED_BACK.multiply(lengths)) >= 0;
    }

    private static Quantity difference(Between one, Between other) {
        Quantity first = Straight.length(one, Side.DOWN);
        Quantity second = Straight.length(other, Side.DOWN);
        return first.compareTo(second) >= 0 ? first.minus(second) : second.minus(first);
    }

    private Finding unlike(String what, String help) {
        return Finding.refuses(UNLIKE, tag(), drawn.of().where(), "the door `" + tag() + "` " + what, help);
    }

    /** The floor swept by the leaf, the shorter way round where no other is stated. */
    Shape swept() {
        Point free = closedEnds().to();
        return turns.map(way -> Shape.swept(hinge, free, open, way.equals(DrawnSafeguard.Swing.CLOCKWISE), Arcs.AROUND))
                .orElseGet(() -> Shape.swept(hinge, free, open, Arcs.AROUND));
    }

    /** The closed leaf, from the end that is next to the hinge to the free one. */
    private Between closedEnds() {
        Between leaf = new Between(
                closed.points().get(0), closed.points().get(closed.points().size() - 1));
        boolean asDrawn =
                new Between(hinge, leaf.from()).square().compareTo(new Between(hinge, leaf.to()).square()) <= 0;
        return asDrawn ? leaf : leaf.reversed();
    }

    /** What it turns over, and the floor of it. */
    record Struck(String tag, Shape floor) {}

    /** The first robot's space or structure it turns over; empty when it turns freely. */
    Optional<Struck> struck(Layout layout) {
        Shape swept = swept();
        List<Struck> all = new ArrayList<>();
        layout.robotZones().forEach(zone -> all.add(new Struck(zone, swept.common(layout.zone(zone)))));
        layout.structures().forEach(one -> all.add(new Struck(one.tag(), swept.common(one.shape()))));
        return all.stream()
                .map(one -> new Struck(one.tag, one.floor.areas().roomFor(Straight.NARROWEST)))
                .filter(one -> !one.floor.empty())
                .findFirst();
    }

    private Finding into(Struck struck) {
        return Finding.refuses(
                INTO_SPACE,
                tag(),
                drawn.of().where(),
                "the door `" + tag() + "` turns about " + hinge + " over floor of `" + struck.tag() + "`: "
                        + Straight.place(struck.floor()),
                "hang the door so that it turns outwards, or have it slide; until then a named person may state a deviation");
    }
}
