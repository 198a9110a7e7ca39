package org.cellfile.subject.function;

import java.math.BigDecimal;
import java.math.MathContext;

/** Logarithms to the base of ten, for places on a logarithmic scale of a drawing. */
final class Logarithm {

    private static final int DIGITS = 6;

    /** Each digit costs one of the digits carried. */
    private static final MathContext CARRIED = MathContext.DECIMAL128;

    private Logarithm() {}

    /**
     * Cut after six decimals, exact at powers of ten. The decimals come one by one: the tenth power of a number between one and ten
     * has ten times its logarithm, and the whole part of that is the next decimal.
     *
     * @param number above zero
     */
    static BigDecimal of(BigDecimal number) {
        if (number.signum() <= 0) {
            throw new IllegalArgumentException("no logarithm of " + number);
        }
        int whole = wholePart(number);
        BigDecimal rest = number.movePointLeft(whole);
        BigDecimal logarithm = BigDecimal.valueOf(whole);
        for (int digit = 1; digit <= DIGITS; digit++) {
            BigDecimal power = rest.pow(10, CARRIED);
            int next = wholePart(power);
            logarithm = logarithm.add(BigDecimal.valueOf(next, digit));
            rest = power.movePointLeft(next);
        }
        return logarithm;
    }

    private static int wholePart(BigDecimal number) {
        return number.precision() - number.scale() - 1;
    }
}
