package org.cellfile.claim;

import static org.assertj.core.api.Assertions.assertThat;

import org.cellfile.cases.AsWritten;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.quantity.Rounding.Side;
import org.cellfile.quantity.Unit;
import org.cellfile.trace.Derived;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Both units; the inch is 25.4 mm exactly (international yard and pound agreement of 1959). Figures constructed. */
class WorkingsTest {

    private static final Workings BOTH = new Workings(true);

    private static Derived derived(String value, Rounding rounding) {
        return new Derived(
                "curtain", "separation-distance", "distance", "S", "sum", AsWritten.given("X", value), rounding);
    }

    private static Derived up(String value) {
        return derived(value, Rounding.up(Quantity.millimetres("1")));
    }

    /** 1237.2 mm is 48.7087 in; from the rounded 1238 mm it would be 48.7402 in. */
    @Test
    void theOtherUnitIsRoundedToTheSameSideFromTheUnroundedValue() {
        assertThat(BOTH.inUnits(up("1237.2 mm"))).isEqualTo("1238 mm (48.71 in)");
        assertThat(BOTH.inUnits(derived("1237.2 mm", Rounding.down(Quantity.millimetres("1")))))
                .isEqualTo("1237 mm (48.70 in)");
    }

    @ParameterizedTest
    @CsvSource({"31.5 in, 31.50 in (800.1 mm)", "80.76 in, 80.76 in (2051.4 mm)", "1 in, 1.00 in (25.4 mm)"})
    void whatIsPrintedInInchesHasItsMillimetresBeside(String value, String printed) {
        assertThat(BOTH.inUnits(derived(value, Rounding.up(Quantity.of("0.01", Unit.INCH)))))
                .isEqualTo(printed);
    }

    @Test
    void speedsToo() {
        assertThat(BOTH.inUnits(derived("250 mm/s", Rounding.down(Quantity.of("1", Unit.MILLIMETRE_PER_SECOND)))))
                .isEqualTo("250 mm/s (9.84 in/s)");
    }

    @Test
    void timesAndMassesHaveNoOtherUnit() {
        assertThat(BOTH.inUnits(derived("0.43 s", Rounding.up(Quantity.seconds("0.001")))))
                .isEqualTo("0.430 s");
    }

    @Test
    void aStatedValueIsPrintedAsWritten() {
        assertThat(BOTH.inUnits(AsWritten.stated("1260 mm"), Side.DOWN)).isEqualTo("1260 mm (49.60 in)");
        assertThat(BOTH.inUnits(AsWritten.stated("1.2 m"), Side.DOWN)).isEqualTo("1.2 m (47.24 in)");
        assertThat(BOTH.inUnits(AsWritten.stated("4 ft"), Side.UP)).isEqualTo("4 ft (1219.2 mm)");
        assertThat(new Workings(false).inUnits(AsWritten.stated("1260 mm"), Side.DOWN))
                .isEqualTo("1260 mm");
    }

    @Test
    void oneUnitUnlessBothAreAskedFor() {
        assertThat(new Workings(false).inUnits(up("1237.2 mm"))).isEqualTo("1238 mm");
    }

    @Test
    void theWorkingSaysWhichWayTheOtherUnitWasRounded() {
        Recorded nothing = Recorded.none("curtain");
        assertThat(BOTH.of(up("1237.2 mm"), nothing).remarks())
                .containsExactly("in the other unit 48.71 in, up to the next 0.01 in, from the unrounded value");
        assertThat(new Workings(false).of(up("1237.2 mm"), nothing).remarks()).isEmpty();
        assertThat(BOTH.rows("Values", java.util.List.of(up("1237.2 mm")), nothing)
                        .rows()
                        .get(0))
                .contains("1238 mm (48.71 in)");
    }
}
