package org.cellfile.subject.plan;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.cellfile.geometry.Extent;
import org.cellfile.geometry.Point;
import org.cellfile.geometry.Shape;
import org.cellfile.subject.plan.Labels.Box;
import org.cellfile.subject.plan.Labels.Stroke;

/**
 * Where points of the plan come to lie in its drawing, whose unit is divided into ten; y downwards.
 *
 * @param window the part of the plan that is drawn
 * @param frame in which it is drawn
 * @param scale tenths of a unit for a millimetre
 */
record Paper(Extent window, Box frame, BigDecimal scale) {

    /** What is left around the things drawn, for their texts. */
    private static final BigDecimal MARGIN = new BigDecimal("0.09");

    /** Nothing is drawn larger than this: a single point has no size of its own. */
    private static final BigDecimal LEAST = BigDecimal.valueOf(1000);

    /**
     * As large as it fits.
     *
     * @param things the rectangle around what is drawn
     * @param frame whose height is the most it may have
     */
    static Paper fitting(Extent things, Box frame) {
        BigDecimal margin = things.width().max(things.height()).max(LEAST).multiply(MARGIN);
        Extent window = things.grown(margin, margin);
        BigDecimal wide = BigDecimal.valueOf(frame.right() - frame.left());
        BigDecimal high = BigDecimal.valueOf(frame.bottom() - frame.top());
        BigDecimal scale = wide.divide(window.width(), MathContext.DECIMAL64)
                .min(high.divide(window.height(), MathContext.DECIMAL64));
        BigDecimal besides = wide.divide(scale, MathContext.DECIMAL64)
                .subtract(window.width())
                .max(BigDecimal.ZERO)
                .divide(BigDecimal.valueOf(2));
        int height = window.height()
                .multiply(scale)
                .setScale(0, RoundingMode.HALF_EVEN)
                .intValueExact();
        return new Paper(
                window.grown(besides, BigDecimal.ZERO),
                new Box(frame.left(), frame.top(), frame.right(), frame.top() + height),
                scale);
    }

    int x(Point point) {
        return frame.left() + length(point.x().subtract(window.least().x()));
    }

    int y(Point point) {
        return frame.bottom() - length(point.y().subtract(window.least().y()));
    }

    /** A length of the plan, given in mm. */
    int length(BigDecimal millimetres) {
        return millimetres.multiply(scale).setScale(0, RoundingMode.HALF_EVEN).intValueExact();
    }

    /** A length of the drawing, in mm of the plan. */
    BigDecimal millimetres(int tenths) {
        return BigDecimal.valueOf(tenths).divide(scale, MathContext.DECIMAL64);
    }

    /** What of a shape lies in the window, with no more corners than can be seen. */
    Shape seen(Shape shape) {
        boolean whole = shape.extent()
                .map(around -> window.holds(around.least()) && window.holds(around.most()))
                .orElse(true);
        return (whole ? shape : shape.common(window.shape())).simplified(millimetres(1));
    }

    /** The lines of a shape. */
    List<Stroke> strokes(Shape shape) {
        List<Stroke> strokes = new ArrayList<>();
        for (List<Point> outline : shape.outlines()) {
            for (int i = 1; i < outline.size(); i++) {
                strokes.add(stroke(outline.get(i - 1), outline.get(i)));
            }
        }
        return strokes;
    }

    Stroke stroke(Point from, Point to) {
        return new Stroke(x(from), y(from), x(to), y(to));
    }

    /** A shape as the path of a drawing; what is closed in the shape is closed in the path. */
    String path(Shape shape) {
        return shape.outlines().stream()
                .filter(outline -> outline.size() > 1)
                .map(this::path)
                .collect(Collectors.joining(" "));
    }

    private String path(List<Point> outline) {
        boolean closed = outline.get(0).equals(outline.get(outline.size() - 1));
        return IntStream.range(0, closed ? outline.size() - 1 : outline.size())
                .mapToObj(i -> (i == 0 ? "M" : "L") + units(x(outline.get(i))) + " " + units(y(outline.get(i))))
                .collect(Collectors.joining(" ", "", closed ? " Z" : ""));
    }

    static String path(Stroke stroke) {
        return "M" + units(stroke.x1()) + " " + units(stroke.y1()) + " L" + units(stroke.x2()) + " "
                + units(stroke.y2());
    }

    /** Tenths as units. */
    static BigDecimal units(int tenths) {
        return BigDecimal.valueOf(tenths, 1);
    }
}
