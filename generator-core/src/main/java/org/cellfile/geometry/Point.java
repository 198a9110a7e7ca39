package org.cellfile.geometry;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import org.locationtech.jts.geom.Coordinate;

/**
 * A point of the plan.
 *
 * @param x in mm, to the right
 * @param y in mm, upwards
 */
public record Point(BigDecimal x, BigDecimal y) implements Comparable<Point> {

    private static final Comparator<Point> ORDER =
            Comparator.comparing(Point::x).thenComparing(Point::y);

    public Point {
        x = plain(x);
        y = plain(y);
    }

    private static BigDecimal plain(BigDecimal number) {
        BigDecimal stripped = number.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0, RoundingMode.UNNECESSARY) : stripped;
    }

    /** What geometry found, read to the tenth of a millimetre; nobody measures a cell finer than that. */
    static Point read(Coordinate found) {
        return new Point(tenths(found.x), tenths(found.y));
    }

    private static BigDecimal tenths(double number) {
        return BigDecimal.valueOf(number).setScale(1, RoundingMode.HALF_EVEN);
    }

    Coordinate coordinate() {
        return new Coordinate(x.doubleValue(), y.doubleValue());
    }

    @Override
    public int compareTo(Point other) {
        return ORDER.compare(this, other);
    }

    /** As in {@code (1200, 350.5)}. */
    @Override
    public String toString() {
        return "(" + x.toPlainString() + ", " + y.toPlainString() + ")";
    }
}
