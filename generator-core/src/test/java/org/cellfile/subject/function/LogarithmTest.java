package org.cellfile.subject.function;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Places on the logarithmic scale. */
class LogarithmTest {

    @ParameterizedTest
    @ValueSource(ints = {-10, -9, -8, -7, -6, -5, -4, 0, 1, 12})
    void exactAtPowersOfTen(int exponent) {
        assertThat(Logarithm.of(BigDecimal.ONE.movePointRight(exponent))).isEqualByComparingTo("" + exponent);
        assertThat(Logarithm.of(new BigDecimal("1.000").movePointRight(exponent)))
                .isEqualByComparingTo("" + exponent);
    }

    /** Of a table of common logarithms; cut, not rounded. */
    @ParameterizedTest
    @CsvSource({"2, 0.301029", "3, 0.477121", "5, 0.698970", "7, 0.845098", "9.99999999, 0.999999", "3e-6, -5.522879"})
    void knownLogarithms(BigDecimal number, BigDecimal logarithm) {
        assertThat(Logarithm.of(number)).isEqualByComparingTo(logarithm);
    }

    @Test
    void asBinaryFractionsHaveIt() {
        Random random = new Random(20250314);
        for (int i = 0; i < 500; i++) {
            BigDecimal number = BigDecimal.valueOf(1 + random.nextInt(1_000_000), random.nextInt(16));
            assertThat(Logarithm.of(number).doubleValue())
                    .as("%s", number)
                    .isCloseTo(Math.log10(number.doubleValue()), within(1.1e-6));
        }
    }

    @Test
    void nothingHasNone() {
        assertThatThrownBy(() -> Logarithm.of(BigDecimal.ZERO)).isInstanceOf(IllegalArgumentException.class);
    }
}
