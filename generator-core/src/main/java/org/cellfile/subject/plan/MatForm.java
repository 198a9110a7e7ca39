package org.cellfile.subject.plan;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cellfile.finding.Finding;
import org.cellfile.geometry.Shape;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.source.Stated;
import org.cellfile.subject.safeguard.Guarding;

/**
 * A mat as it is drawn, held against its width as it is stated. Which way people come over it the width does not tell, and a mat is laid
 * of rectangles: the width may be either side of the smallest rectangle around it, or the diameter of the largest circle on it.
 */
final class MatForm {

    private static final Rounding WHOLE = Rounding.down(Quantity.millimetres("1"));

    private MatForm() {}

    static List<Finding> of(Layout layout) {
        return layout.around().safeguards().stream()
                .flatMap(mat -> mat.safeguard().device().depth().stream()
                        .flatMap(width -> differs(layout, mat, width).stream()))
                .toList();
    }

    private static Optional<Finding> differs(Layout layout, Guarding mat, Stated<Quantity> width) {
        Shape drawn = layout.safeguard(mat.tag());
        List<Quantity> drawnAs = Stream.concat(drawn.sides().stream(), Stream.of(drawn.widestCircle()))
                .map(Straight::millimetres)
                .sorted()
                .toList();
        boolean agrees = drawn.empty()
                || width.value()
                        .flatMap(stated -> layout.plan()
                                .tolerance()
                                .value()
                                .map(allowed -> drawnAs.stream()
                                        .anyMatch(one -> apart(one, stated).compareTo(allowed.plus(LEFT_OVER)) <= 0)))
                        .orElse(true);
        return agrees
                ? Optional.empty()
                : Optional.of(
                        Finding.refuses(
                                PlanDistance.DIFFERS,
                                mat.tag(),
                                width.where(),
                                "the mat `" + mat.tag() + "` is stated to be " + width.characters()
                                        + " wide in the direction of approach, and on the plan it measures "
                                        + drawnAs.stream()
                                                .map(WHOLE::round)
                                                .distinct()
                                                .map(Quantity::toString)
                                                .collect(Collectors.joining(" or "))
                                        + ", whichever way it is taken: they differ by more than the tolerance of "
                                        + layout.plan().tolerance().characters(),
                                "measure the mat once more where it lies; then correct whichever of both does not show what lies there"));
    }

    private static Quantity apart(Quantity one, Quantity other) {
        return one.compareTo(other) >= 0 ? one.minus(other) : other.minus(one);
    }

    /** What the largest circle is found within, and arcs leave over. */
    private static final Quantity LEFT_OVER = Straight.millimetres(new BigDecimal("0.1"));
}
