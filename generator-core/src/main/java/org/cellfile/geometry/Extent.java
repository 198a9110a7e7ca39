package org.cellfile.geometry;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The upright rectangle around something.
 *
 * @param least its corner with the least coordinates
 * @param most its corner with the greatest
 */
public record Extent(Point least, Point most) {

    /** Around points; empty when there are none. */
    public static Optional<Extent> of(Collection<Point> points) {
        Comparator<BigDecimal> order = Comparator.naturalOrder();
        return points.isEmpty()
                ? Optional.empty()
                : Optional.of(new Extent(
                        new Point(
                                points.stream().map(Point::x).min(order).orElseThrow(),
                                points.stream().map(Point::y).min(order).orElseThrow()),
                        new Point(
                                points.stream().map(Point::x).max(order).orElseThrow(),
                                points.stream().map(Point::y).max(order).orElseThrow())));
    }

    /** Around both. */
    public Extent with(Extent other) {
        return of(Stream.of(least, most, other.least, other.most).toList()).orElseThrow();
    }

    /** In mm, along x. */
    public BigDecimal width() {
        return most.x().subtract(least.x());
    }

    /** In mm, along y. */
    public BigDecimal height() {
        return most.y().subtract(least.y());
    }

    /** That much wider and higher at each of its sides, in mm. */
    public Extent grown(BigDecimal alongX, BigDecimal alongY) {
        return new Extent(
                new Point(least.x().subtract(alongX), least.y().subtract(alongY)),
                new Point(most.x().add(alongX), most.y().add(alongY)));
    }

    public boolean holds(Point point) {
        return nearest(point).equals(point);
    }

    /** The point in it that is nearest to another one along each axis. */
    public Point nearest(Point point) {
        return new Point(
                point.x().max(least.x()).min(most.x()), point.y().max(least.y()).min(most.y()));
    }

    public Shape shape() {
        return Shape.area(List.of(least, new Point(most.x(), least.y()), most, new Point(least.x(), most.y())));
    }
}
