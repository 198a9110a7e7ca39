package org.cellfile.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cellfile.cases.AsWritten;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Values are rounded to the safe side, by less than a step, and what is whole already stays. All figures are constructed. */
class RoundingTest {

    /** The step follows the unit of what somebody wrote; where nothing is known it stays in mm. */
    @ParameterizedTest
    @CsvSource({
        "1 mm, 80.76 in, 0.01 in",
        "0.1 mm, 2 ft, 0.001 in",
        "1 mm, 0.3 m, 1 mm",
        "1 mm/s, 10 in/s, 0.01 in/s",
        "0.1 kg, 3 in, 0.1 kg",
        "0.001 s, 3 in, 0.001 s"
    })
    void besideWhatIsWritten(String step, String written, String expected) {
        for (Rounding.Side side : Rounding.Side.values()) {
            Rounding beside =
                    new Rounding(side, AsWritten.quantity(step)).beside(Optional.of(AsWritten.quantity(written)));
            assertThat(beside.side()).isEqualTo(side);
            assertThat(beside.step()).hasToString(expected);
        }
        Rounding plain = Rounding.up(AsWritten.quantity(step));
        assertThat(plain.beside(Optional.empty())).isEqualTo(plain);
    }

    static Stream<Arguments> values() {
        Random random = new Random(34);
        List<String> steps = List.of("1 mm", "0.1 mm", "5 mm", "0.01 m", "1 cm", "0.1 in");
        return IntStream.range(0, 500)
                .mapToObj(i -> Arguments.of(
                        new Quantity(
                                BigDecimal.valueOf(random.nextInt(2_000_000) - 1_000_000, random.nextInt(6)),
                                i % 3 == 0
                                        ? AsWritten.quantity("1 in").unit()
                                        : i % 3 == 1
                                                ? Unit.MILLIMETRE
                                                : AsWritten.quantity("1 m").unit()),
                        AsWritten.quantity(steps.get(i % steps.size()))));
    }

    @ParameterizedTest
    @MethodSource("values")
    void upIsNeverBelowAndDownNeverAbove(Quantity value, Quantity step) {
        Quantity up = Rounding.up(step).round(value);
        Quantity down = Rounding.down(step).round(value);
        assertThat(up).isBetween(value, value.plus(step)).isNotEqualTo(value.plus(step));
        assertThat(down).isBetween(value.minus(step), value).isNotEqualTo(value.minus(step));
        assertThat(up.minus(down)).isIn(step.minus(step), step);
        assertThat(Rounding.up(step).round(up)).isEqualTo(up);
        assertThat(Rounding.down(step).round(down)).isEqualTo(down);
        assertThat(up.unit()).isEqualTo(step.unit());
    }

    @ParameterizedTest
    @CsvSource({
        "1349.2 mm, 1 mm, 1350 mm, 1349 mm",
        "1349.000001 mm, 1 mm, 1350 mm, 1349 mm",
        "1349 mm, 1 mm, 1349 mm, 1349 mm",
        "1349.2 mm, 0.1 m, 1.4 m, 1.3 m",
        "-0.5 mm, 1 mm, 0 mm, -1 mm",
        "0.1 in, 1 mm, 3 mm, 2 mm"
    })
    void roundsToTheStep(String value, String step, String up, String down) {
        Quantity exact = AsWritten.quantity(value);
        assertThat(Rounding.up(AsWritten.quantity(step)).round(exact)).isEqualTo(AsWritten.quantity(up));
        assertThat(Rounding.down(AsWritten.quantity(step)).round(exact)).isEqualTo(AsWritten.quantity(down));
    }

    @Test
    void saysWhatItDid() {
        Rounding up = Rounding.up(Quantity.millimetres("1"));
        assertThat(up).hasToString("up to the next 1 mm");
        assertThat(up.at(Quantity.millimetres("0.1"))).hasToString("up to the next 0.1 mm");
        assertThat(Rounding.down(Quantity.seconds("0.001"))).hasToString("down to the next 0.001 s");
    }
}
