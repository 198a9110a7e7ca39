package org.cellfile.quantity;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A unit and its size in the coherent units millimetre, second, kilogram, degree; exact, except for the units of a rate, whose
 * size is cut after far more digits than ever count.
 *
 * <p>A year is one of operation without a pause, 8760 hours, as the failure rates of ISO 13849-1 count it (published: a maker's
 * guide to the calculation of safety parameters equates 20 years with 175 200 hours).
 *
 * <p>The inch is 25.4 mm and the pound 0.453 592 37 kg exactly (international yard and pound agreement of 1959).
 *
 * @param symbol as written
 * @param size how many coherent units one of it is
 */
public record Unit(String symbol, Dimension dimension, BigDecimal size) {

    public static final Unit ONE = unit("", Dimension.NONE, "1");
    public static final Unit PERCENT = unit("%", Dimension.NONE, "0.01");
    public static final Unit MILLIMETRE = unit("mm", Dimension.LENGTH, "1");
    public static final Unit SECOND = unit("s", Dimension.TIME, "1");
    public static final Unit MILLISECOND = unit("ms", Dimension.TIME, "0.001");
    public static final Unit MILLIMETRE_PER_SECOND = unit("mm/s", Dimension.SPEED, "1");
    public static final Unit INCH = unit("in", Dimension.LENGTH, "25.4");
    public static final Unit FOOT = unit("ft", Dimension.LENGTH, "304.8");
    public static final Unit INCH_PER_SECOND = unit("in/s", Dimension.SPEED, "25.4");
    public static final Unit KILOGRAM = unit("kg", Dimension.MASS, "1");
    public static final Unit DEGREE = unit("°", Dimension.ANGLE, "1");
    public static final Unit HOUR = unit("h", Dimension.TIME, "3600");
    public static final Unit YEAR = unit("years", Dimension.TIME, "31536000");
    public static final Unit PER_HOUR = per("1/h", HOUR);
    public static final Unit PER_YEAR = per("1/year", YEAR);
    public static final Unit POINT = unit("points", Dimension.NONE, "1");
    public static final Unit LEVEL = unit("PL", Dimension.LEVEL, "1");

    /** Every unit a quantity may be written in, in the order messages list them. */
    private static final List<Unit> WRITTEN = List.of(
            MILLIMETRE,
            unit("cm", Dimension.LENGTH, "10"),
            unit("m", Dimension.LENGTH, "1000"),
            INCH,
            FOOT,
            SECOND,
            MILLISECOND,
            MILLIMETRE_PER_SECOND,
            unit("m/s", Dimension.SPEED, "1000"),
            INCH_PER_SECOND,
            KILOGRAM,
            unit("g", Dimension.MASS, "0.001"),
            unit("lb", Dimension.MASS, "0.45359237"),
            unit("N", Dimension.FORCE, "1000"),
            unit("N/cm²", Dimension.PRESSURE, "10"),
            PERCENT,
            DEGREE);

    /** Units of times that are not those of a stop. */
    private static final List<Unit> LONG = List.of(SECOND, unit("min", Dimension.TIME, "60"), HOUR, YEAR);

    /** Units that only few quantities are written in. */
    private static final List<Unit> SELDOM = List.of(PER_HOUR, PER_YEAR, POINT);

    private static Unit unit(String symbol, Dimension dimension, String size) {
        return new Unit(symbol, dimension, new BigDecimal(size));
    }

    private static Unit per(String symbol, Unit unit) {
        return new Unit(symbol, Dimension.RATE, BigDecimal.ONE.divide(unit.size, Quantity.CARRIED));
    }

    /** The unit with that symbol, if a quantity may be written in it. Upper and lower case differ. */
    public static Optional<Unit> of(String symbol) {
        return Stream.of(WRITTEN, LONG, SELDOM)
                .flatMap(List::stream)
                .filter(unit -> unit.symbol.equals(symbol))
                .findFirst();
    }

    /** The units of times that are not those of a stop: of cycles, of lives. */
    public static List<Unit> ofLongTimes() {
        return LONG;
    }

    /** True for minutes, hours and years. */
    public boolean ofLongTime() {
        return dimension.equals(Dimension.TIME) && size.compareTo(BigDecimal.ONE) > 0;
    }

    /** The units a quantity of that dimension may be written in. */
    public static List<Unit> written(Dimension dimension) {
        return Stream.of(WRITTEN, SELDOM)
                .flatMap(List::stream)
                .filter(unit -> unit.dimension.equals(dimension) && !unit.equals(POINT))
                .toList();
    }

    /** True for inches, feet and inches per second. */
    boolean ofTheInch() {
        return List.of(INCH, FOOT, INCH_PER_SECOND).contains(this);
    }

    /** The unit in which derived values of that dimension are printed. */
    public static Unit coherent(Dimension dimension) {
        for (Unit unit : List.of(ONE, MILLIMETRE, SECOND, MILLIMETRE_PER_SECOND, KILOGRAM, DEGREE, LEVEL)) {
            if (unit.dimension.equals(dimension)) {
                return unit;
            }
        }
        return new Unit(
                power("mm", dimension.length())
                        + power("s", dimension.time())
                        + power("kg", dimension.mass())
                        + power("°", dimension.angle()),
                dimension,
                BigDecimal.ONE);
    }

    private static String power(String symbol, int power) {
        return switch (power) {
            case 0 -> "";
            case 1 -> symbol;
            case 2 -> symbol + "²";
            default -> symbol + "^" + power;
        };
    }
}
