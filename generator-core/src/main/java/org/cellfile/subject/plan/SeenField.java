package org.cellfile.subject.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.geometry.Arcs;
import org.cellfile.geometry.Point;
import org.cellfile.geometry.Shape;
import org.cellfile.geometry.Sight;
import org.cellfile.quantity.Quantity;
import org.cellfile.source.Span;
import org.cellfile.subject.safeguard.Guarding;

/**
 * A drawn protective field, held against what its scanner sees from where it stands: up to its range, within the angle of its view,
 * past what stands on the floor. A warning field too, whose range is one of its own, commonly a greater one (common practice): where it
 * is not stated only the angle and what stands on the floor bound it.
 *
 * @param what it is, in words
 * @param where the field is drawn
 * @param at where its scanner stands
 * @param seen what of the field is seen
 * @param parts that are not, each with its cause
 */
record SeenField(String what, Guarding guarding, Span where, Point at, Shape drawn, Shape seen, List<Unseen> parts) {

    /** A part of a drawn field is not seen by its scanner. */
    static final FindingId NOT_SEEN = new FindingId("plan.field-not-seen");

    private static final String WARNING = "warning field";

    /** What of the field is not seen for one cause. */
    record Unseen(Shape floor, String because, String help) {}

    /** The fields of a safeguard that looks from one place; none of those whose scanner is not known. */
    static List<SeenField> of(Layout layout, Guarding guarding) {
        List<DrawnSafeguard> pieces = layout.drawn(guarding.tag());
        List<SeenField> fields = new ArrayList<>();
        for (DrawnSafeguard piece : pieces) {
            scanner(piece, pieces)
                    .flatMap(scanner -> View.of(scanner, scanner.range().value()))
                    .filter(view -> view.range.isPresent())
                    .ifPresent(view -> piece.outline()
                            .ifPresent(outline -> fields.add(of("field", layout, guarding, outline, view))));
        }
        return List.copyOf(fields);
    }

    /** The warning fields of all that look from one place. */
    static List<SeenField> warning(Layout layout) {
        List<SeenField> fields = new ArrayList<>();
        for (Guarding guarding : layout.around().safeguards()) {
            List<DrawnSafeguard> pieces = layout.drawn(guarding.tag());
            for (DrawnSafeguard piece : pieces) {
                scanner(piece, pieces)
                        .flatMap(scanner ->
                                View.of(scanner, scanner.warningRange().value()))
                        .ifPresent(view -> piece.warning()
                                .ifPresent(outline -> fields.add(of(WARNING, layout, guarding, outline, view))));
            }
        }
        return List.copyOf(fields);
    }

    /** That of the piece, or the one stated with another piece of the same scanner. */
    private static Optional<DrawnSafeguard.Scanner> scanner(DrawnSafeguard piece, List<DrawnSafeguard> pieces) {
        return piece.scanner()
                .or(() -> pieces.stream().flatMap(one -> one.scanner().stream()).findFirst());
    }

    /** What a scanner sees; as far as one likes where no range is known. */
    private record View(Point at, BigDecimal facing, BigDecimal sees, Optional<Quantity> range) {
        static Optional<View> of(DrawnSafeguard.Scanner scanner, Optional<Quantity> range) {
            return scanner.at()
                    .value()
                    .flatMap(at -> scanner.facing()
                            .value()
                            .flatMap(facing -> scanner.sees()
                                    .value()
                                    .filter(sees -> !sees.zero())
                                    .map(sees -> new View(at, facing.coherent(), sees.coherent(), range))));
        }

        Shape near(Shape drawn) {
            return range.map(reach -> drawn.common(Shape.circle(at, reach.coherent(), Arcs.WITHIN))
                            .areas())
                    .orElse(drawn);
        }

        Shape faced(Shape drawn) {
            BigDecimal half = sees.divide(BigDecimal.valueOf(2));
            BigDecimal far = range.map(Quantity::coherent).orElseGet(() -> beyond(drawn));
            return drawn.common(Shape.sector(at, far, facing.subtract(half), sees, Arcs.WITHIN))
                    .areas();
        }

        /** Further than any point of it. */
        private BigDecimal beyond(Shape drawn) {
            return Shape.of(List.of(drawn, Shape.spot(at)))
                    .extent()
                    .map(extent -> extent.width().add(extent.height()))
                    .orElse(BigDecimal.ZERO)
                    .add(BigDecimal.ONE);
        }
    }

    private static SeenField of(String what, Layout layout, Guarding guarding, Outline outline, View view) {
        String beyond = what.equals(WARNING)
                ? "have something else warn where it does not"
                : "guard the rest by something else";
        Shape drawn = outline.shape(Arcs.WITHIN);
        Shape near = view.near(drawn);
        Shape faced = view.faced(drawn);
        List<Unseen> parts = new ArrayList<>();
        view.range.ifPresent(
                range -> add(
                        parts,
                        drawn.without(near),
                        "is further from the scanner at " + view.at() + " than its range of " + range,
                        "draw the field no further than the scanner reaches, and set it so; or use a scanner that reaches further"));
        add(
                parts,
                near.without(faced),
                "is outside the " + view.sees().stripTrailingZeros().toPlainString() + " ° that the scanner at "
                        + view.at() + " sees",
                "turn or move the scanner, or draw the field as far as it sees and " + beyond);
        for (Obstacle obstacle : layout.shading()) {
            add(
                    parts,
                    Sight.hidden(view.at(), faced, obstacle.shape()),
                    "is hidden from the scanner at " + view.at() + " by `" + obstacle.tag() + "`",
                    "move the scanner, or draw the field as far as it sees and " + beyond);
        }
        Shape together = Obstacle.together(layout.shading());
        Shape seen = faced.without(Sight.hidden(view.at(), faced, together))
                .without(together.areas())
                .areas();
        return new SeenField(what, guarding, outline.where(), view.at(), drawn, seen, List.copyOf(parts));
    }

    private static void add(List<Unseen> parts, Shape floor, String because, String help) {
        Shape matters = floor.areas().roomFor(Straight.NARROWEST);
        if (!matters.empty()) {
            parts.add(new Unseen(matters, because, help));
        }
    }

    /** What is drawn and not seen, for each cause. */
    List<Finding> findings() {
        return parts.stream()
                .map(part -> Finding.refuses(
                        NOT_SEEN,
                        guarding.tag(),
                        where,
                        "of the " + what + " of `" + guarding.tag() + "` a part of " + Straight.place(part.floor())
                                + " " + part.because(),
                        part.help()))
                .collect(Collectors.toList());
    }
}
