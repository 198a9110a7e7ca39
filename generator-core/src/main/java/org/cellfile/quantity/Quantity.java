package org.cellfile.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * A decimal number with its unit. Sums, differences and products are exact; quotients and roots carry 60 digits, of which 34
 * count, so that a third taken three times is a whole again.
 *
 * <p>Two quantities are equal when they are the same amount: {@code 1 in} equals {@code 25.4 mm}.
 *
 * @param number in the unit
 */
public record Quantity(BigDecimal number, Unit unit) implements Comparable<Quantity> {

    /** Enough that no rounding to a printed digit is ever decided by it. */
    static final MathContext COUNTED = MathContext.DECIMAL128;

    static final MathContext CARRIED = new MathContext(60, RoundingMode.HALF_EVEN);
    private static final MathContext MOST_OF_A_RATE = new MathContext(6, RoundingMode.DOWN);
    private static final String LEVELS = "abcde";

    public static Quantity of(String number, Unit unit) {
        return new Quantity(new BigDecimal(number), unit);
    }

    public static Quantity of(BigDecimal coherent, Dimension dimension) {
        return new Quantity(coherent, Unit.coherent(dimension));
    }

    public static Quantity count(int number) {
        return new Quantity(BigDecimal.valueOf(number), Unit.ONE);
    }

    public static Quantity millimetres(String number) {
        return of(number, Unit.MILLIMETRE);
    }

    public static Quantity seconds(String number) {
        return of(number, Unit.SECOND);
    }

    /** A rate, written as in {@code 2.3e-7}. */
    public static Quantity perHour(String number) {
        return of(number, Unit.PER_HOUR);
    }

    public static Quantity years(String number) {
        return of(number, Unit.YEAR);
    }

    /**
     * A performance level; they are ordered, and that is all one can do with them.
     *
     * @param letter a to e
     */
    public static Quantity level(String letter) {
        return count(LEVELS.indexOf(letter) + 1).rank();
    }

    private Quantity rank() {
        return new Quantity(number, Unit.LEVEL);
    }

    public Dimension dimension() {
        return unit.dimension();
    }

    /** The amount in millimetres, seconds, kilograms and products of these. */
    public BigDecimal coherent() {
        return number.multiply(unit.size());
    }

    /** The digits of it that count. */
    BigDecimal counted() {
        return coherent().round(COUNTED);
    }

    /** The same amount in another unit of the same dimension. */
    public Quantity in(Unit other) {
        same(other.dimension());
        if (unit.size().compareTo(other.size()) == 0) {
            return new Quantity(number, other);
        }
        return new Quantity(coherent().divide(other.size(), COUNTED), other);
    }

    public Quantity plus(Quantity other) {
        same(other.dimension());
        return of(coherent().add(other.coherent()), dimension());
    }

    public Quantity minus(Quantity other) {
        same(other.dimension());
        return of(coherent().subtract(other.coherent()), dimension());
    }

    public Quantity times(Quantity other) {
        return of(coherent().multiply(other.coherent()), dimension().times(other.dimension()));
    }

    public Quantity per(Quantity other) {
        return of(coherent().divide(other.coherent(), CARRIED), dimension().per(other.dimension()));
    }

    public Quantity root() {
        return of(coherent().sqrt(CARRIED), dimension().root());
    }

    /** One unit of the last digit written: {@code 1350 mm} is to the millimetre, {@code 1.40 m} to the centimetre. */
    public Quantity lastDigit() {
        return new Quantity(number.ulp(), unit);
    }

    /** The same without zeros at the end of its decimals. */
    public Quantity plain() {
        BigDecimal plain = number.stripTrailingZeros();
        return new Quantity(plain.scale() < 0 ? plain.setScale(0) : plain, unit);
    }

    /** True when it is zero of whatever unit. */
    public boolean zero() {
        return number.signum() == 0;
    }

    private void same(Dimension other) {
        if (!dimension().equals(other)) {
            throw new IllegalArgumentException(dimension().words() + " against " + other.words());
        }
    }

    @Override
    public int compareTo(Quantity other) {
        same(other.dimension());
        return counted().compareTo(other.counted());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Quantity quantity
                && dimension().equals(quantity.dimension())
                && counted().compareTo(quantity.counted()) == 0;
    }

    @Override
    public int hashCode() {
        return counted().stripTrailingZeros().hashCode() * 31 + dimension().hashCode();
    }

    /**
     * Number and unit; a performance level as {@code PL d}, a rate in an hour as {@code 2.3e-7 1/h}. A number with more than eight
     * decimals is cut, and an ellipsis says so.
     */
    @Override
    public String toString() {
        if (unit.equals(Unit.LEVEL)) {
            return unit.symbol() + " " + LEVELS.charAt(number.intValueExact() - 1);
        }
        if (unit.equals(Unit.PER_HOUR)) {
            return rate() + " " + unit.symbol();
        }
        BigDecimal shown = number;
        String cut = "";
        if (shown.stripTrailingZeros().scale() > 8) {
            shown = shown.setScale(8, RoundingMode.DOWN);
            cut = "…";
        } else if (shown.scale() > 8) {
            shown = shown.stripTrailingZeros();
        }
        String text = shown.toPlainString() + cut;
        return unit.symbol().isEmpty() ? text : text + " " + unit.symbol();
    }

    private String rate() {
        BigDecimal shown = number.round(MOST_OF_A_RATE);
        String digits = shown.unscaledValue().toString();
        String cut = shown.compareTo(number) == 0 ? "" : "…";
        int exponent = digits.length() - 1 - shown.scale();
        return digits.charAt(0)
                + (digits.length() > 1 ? "." + digits.substring(1) : "")
                + cut
                + (exponent == 0 ? "" : "e" + exponent);
    }
}
