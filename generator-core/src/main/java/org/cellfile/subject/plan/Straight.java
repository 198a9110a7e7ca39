package org.cellfile.subject.plan;

import java.math.BigDecimal;
import java.math.MathContext;
import org.cellfile.geometry.Between;
import org.cellfile.geometry.Shape;
import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.quantity.Rounding.Side;
import org.cellfile.quantity.Unit;
import org.cellfile.trace.Coordinate;
import org.cellfile.trace.Difference;
import org.cellfile.trace.Product;
import org.cellfile.trace.Root;
import org.cellfile.trace.Sum;
import org.cellfile.trace.Term;

/** Straight ways and pieces of floor on the plan, in figures. */
final class Straight {

    /** Pieces of floor narrower than that are what arcs and rounded coordinates leave over, in mm; constructed. */
    static final BigDecimal NARROWEST = BigDecimal.ONE;

    private static final int DIGITS_OF_AN_AREA = 3;
    private static final int SQUARE_METRE = 6;

    private Straight() {}

    /**
     * The length of a way, computed from the coordinates of its ends.
     *
     * @param from whose point it begins at
     * @param to whose point it ends at
     * @param where they are drawn, file, line and column
     */
    static Term length(Between way, String from, String to, String where) {
        return length(way, from, where, to, where);
    }

    /** The same where its ends are drawn at two places. */
    static Term length(Between way, String from, String where, String to, String whereTo) {
        Term dx = new Difference(
                coordinate("x_2", to, way.to().x(), whereTo),
                coordinate("x_1", from, way.from().x(), where));
        Term dy = new Difference(
                coordinate("y_2", to, way.to().y(), whereTo),
                coordinate("y_1", from, way.from().y(), where));
        return new Root(Sum.of(new Product(dx, dx), new Product(dy, dy)));
    }

    private static Term coordinate(String symbol, String of, BigDecimal number, String where) {
        String axis = symbol.substring(0, 1);
        return new Coordinate(symbol, "coordinate " + axis + " of the point of " + of, millimetres(number), where);
    }

    static Quantity millimetres(BigDecimal number) {
        return new Quantity(number, Unit.MILLIMETRE);
    }

    /** The same length for a sentence, to the millimetre. */
    static Quantity length(Between way, Side side) {
        return new Rounding(side, Quantity.millimetres("1"))
                .round(Quantity.of(way.square(), Dimension.LENGTH.times(Dimension.LENGTH))
                        .root());
    }

    /** How much floor it is, and a place on it. */
    static String place(Shape floor) {
        return area(floor) + " around " + floor.within();
    }

    /** The same with the place as it is written on the plan. */
    static String place(Plan plan, Shape floor) {
        return area(floor) + " around " + plan.words(floor.within());
    }

    /** How much floor it is, to three digits. */
    static String area(Shape floor) {
        BigDecimal area = floor.area().movePointLeft(SQUARE_METRE).round(new MathContext(DIGITS_OF_AN_AREA));
        return area.signum() == 0 ? "0 m²" : area.stripTrailingZeros().toPlainString() + " m²";
    }
}
