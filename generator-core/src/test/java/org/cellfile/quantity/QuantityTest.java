package org.cellfile.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import org.cellfile.cases.AsWritten;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Quantities are exact, and equal when they are the same amount. Inch and pound by the international yard and pound agreement of
 * 1959; all other figures are constructed.
 */
class QuantityTest {

    private static Quantity of(String text) {
        return AsWritten.quantity(text);
    }

    @ParameterizedTest
    @CsvSource({
        "1 in, 25.4 mm",
        "1.40 m, 1400 mm",
        "63 in/s, 1600.2 mm/s",
        "250 ms, 0.25 s",
        "0 mm, 0 m",
        "500 g, 0.5 kg"
    })
    void theSameAmountIsEqualWhateverTheUnit(String one, String other) {
        assertThat(of(one)).isEqualTo(of(other)).hasSameHashCodeAs(of(other)).isEqualByComparingTo(of(other));
    }

    @Test
    void anotherAmountOrDimensionIsNotEqual() {
        assertThat(of("1 mm")).isNotEqualTo(of("2 mm")).isNotEqualTo(of("1 s")).isNotEqualTo(of("1 m"));
        assertThat(of("1 mm").equals(null)).isFalse();
        assertThat(of("1 mm").hashCode()).isNotEqualTo(of("1 s").hashCode());
    }

    @Test
    void unlikeThingsAreNeitherAddedNorComparedNorConverted() {
        Quantity length = of("1 mm");
        Quantity time = of("1 s");
        assertThatThrownBy(() -> length.plus(time)).hasMessage("a length against a time");
        assertThatThrownBy(() -> time.minus(length)).hasMessage("a time against a length");
        assertThatThrownBy(() -> length.compareTo(of("1 kg"))).hasMessage("a length against a mass");
        assertThatThrownBy(() -> length.in(Unit.MILLIMETRE_PER_SECOND)).hasMessage("a length against a speed");
        assertThatThrownBy(() -> length.plus(Quantity.count(1)))
                .hasMessage("a length against a number or a percentage");
        assertThatThrownBy(() -> length.plus(length.times(length).times(time)))
                .hasMessage("a length against length^2 time^1 mass^0 angle^0");
    }

    @Test
    void dimensionsAreCarriedThroughProductsQuotientsAndRoots() {
        Quantity mass = of("2 kg");
        assertThat(of("3 mm").times(of("4 mm")).toString()).isEqualTo("12 mm²");
        assertThat(of("3 mm").times(of("4 mm")).root().toString())
                .startsWith("3.46410161")
                .endsWith("… mm");
        assertThat(of("9 mm").times(of("4 mm")).root()).isEqualTo(of("6 mm"));
        assertThat(mass.times(mass).root()).isEqualTo(mass);
        assertThat(of("4 s").times(of("9 s")).root()).isEqualTo(of("6 s"));
        assertThat(of("12 mm").per(of("4 s"))).isEqualTo(of("3 mm/s"));
        assertThat(of("12 mm").per(of("4 mm"))).isEqualTo(Quantity.count(3));
        assertThat(of("12 kg").per(of("4 s")).dimension()).isEqualTo(new Dimension(0, -1, 1, 0));
        assertThat(of("12 kg").times(of("4 s")).toString()).isEqualTo("48 skg");
        assertThat(of("12 kg").per(of("4 s")).toString()).isEqualTo("3 s^-1kg");
        for (String odd : List.of("3 mm", "3 s", "3 kg")) {
            assertThatThrownBy(() -> of(odd).root()).hasMessageStartingWith("no square root");
        }
    }

    @Test
    void zeroIsZeroInEveryUnit() {
        assertThat(of("0.000 m").zero()).isTrue();
        assertThat(of("0.001 m").zero()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"1350 mm, 1 mm", "1.40 m, 0.01 m", "1.4 m, 0.1 m", "0.4300 s, 0.0001 s", "90 ms, 1 ms"})
    void theLastDigitIsTheOneWritten(String written, String digit) {
        assertThat(of(written).lastDigit()).isEqualTo(of(digit));
        assertThat(of(written).lastDigit().unit()).isEqualTo(of(written).unit());
    }

    @Test
    void numbersAreShownAsWrittenAndCutOnlyWhenLong() {
        assertThat(of("1.50 m")).hasToString("1.50 m");
        assertThat(Quantity.count(7)).hasToString("7");
        assertThat(of("0.123456789 m")).hasToString("0.12345678… m");
        assertThat(of("0.12345678 m")).hasToString("0.12345678 m");
        assertThat(of("0.5000000000 m")).hasToString("0.5 m");
        assertThat(new Quantity(new BigDecimal("1E+3"), Unit.MILLIMETRE)).hasToString("1000 mm");
    }

    @Test
    void onlyKnownSymbolsAreUnits() {
        assertThat(Unit.of("MM")).isEmpty();
        assertThat(Unit.of("inch")).isEmpty();
        assertThat(Unit.of("")).isEmpty();
        assertThat(Unit.coherent(Dimension.TIME)).isEqualTo(Unit.SECOND);
    }
}
