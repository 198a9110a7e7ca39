package org.cellfile.subject.plan;

import java.math.BigDecimal;
import org.cellfile.geometry.Between;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Unit;
import org.cellfile.trace.Coordinate;
import org.cellfile.trace.Difference;
import org.cellfile.trace.Product;
import org.cellfile.trace.Root;
import org.cellfile.trace.Sum;
import org.cellfile.trace.Term;

/** The length of a straight line on the plan, from the coordinates of its ends. */
final class PlanLine {

    private PlanLine() {}

    /**
     * @param from what it begins at, in words
     * @param to what it ends at, in words
     * @param where that is drawn, file, line and column
     */
    static Term length(Between line, String from, String to, String where) {
        Term dx = along("x", line.from().x(), from, line.to().x(), to, where);
        Term dy = along("y", line.from().y(), from, line.to().y(), to, where);
        return new Root(Sum.of(new Product(dx, dx), new Product(dy, dy)));
    }

    private static Term along(String axis, BigDecimal first, String from, BigDecimal second, String to, String where) {
        return new Difference(
                coordinate(axis + "_2", axis, to, second, where), coordinate(axis + "_1", axis, from, first, where));
    }

    private static Term coordinate(String symbol, String axis, String of, BigDecimal number, String where) {
        return new Coordinate(
                symbol, "coordinate " + axis + " of the point of " + of, new Quantity(number, Unit.MILLIMETRE), where);
    }
}
