package org.cellfile.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * Towards which side a value is rounded, and to which step.
 *
 * @param side the safe one
 * @param step for example 1 mm
 */
public record Rounding(Side side, Quantity step) {

    /** The safe side of a value. */
    public enum Side {
        /** distances, times, speeds that a safeguard must allow for */
        UP(RoundingMode.CEILING, "up"),
        /** margins, and what is still allowed */
        DOWN(RoundingMode.FLOOR, "down");

        private final RoundingMode mode;
        private final String word;

        Side(RoundingMode mode, String word) {
            this.mode = mode;
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    public static Rounding up(Quantity step) {
        return new Rounding(Side.UP, step);
    }

    public static Rounding down(Quantity step) {
        return new Rounding(Side.DOWN, step);
    }

    /**
     * Up to so many digits of a value that can be of any order of magnitude; one step of 1 where it is not known. A rate is rounded
     * in 1/h, also where it was added up in other units.
     */
    public static Rounding upToDigits(int digits, Optional<Quantity> value) {
        return up(value.filter(known -> !known.zero())
                .map(known -> known.dimension().equals(Dimension.RATE) ? known.in(Unit.PER_HOUR) : known)
                .map(known -> new Quantity(
                        known.number()
                                .round(Quantity.COUNTED)
                                .round(new MathContext(digits, RoundingMode.CEILING))
                                .ulp(),
                        known.unit()))
                .orElseGet(() -> Quantity.count(1)));
    }

    /** The nearest whole number of steps on the safe side, in the unit of the step. */
    public Quantity round(Quantity value) {
        BigDecimal steps = value.coherent().divide(step.coherent(), Quantity.COUNTED);
        BigDecimal number = steps.setScale(0, side.mode).multiply(step.number());
        return new Quantity(number, step.unit());
    }

    /** The same side at another step. */
    public Rounding at(Quantity otherStep) {
        return new Rounding(side, otherStep);
    }

    /**
     * The same side in the unit of a value that somebody wrote: beside inches or feet a step of 1 mm becomes one of 0.01 in, and
     * one of 1 mm/s one of 0.01 in/s. Beside anything else it stays as it is.
     */
    public Rounding beside(Optional<Quantity> written) {
        boolean inches = written.filter(one -> one.unit().ofTheInch()).isPresent();
        boolean speed = step.dimension().equals(Dimension.SPEED);
        if (!inches || (!speed && !step.dimension().equals(Dimension.LENGTH))) {
            return this;
        }
        return at(new Quantity(step.number().movePointLeft(2), speed ? Unit.INCH_PER_SECOND : Unit.INCH));
    }

    @Override
    public String toString() {
        return side.word + " to the next " + step;
    }
}
