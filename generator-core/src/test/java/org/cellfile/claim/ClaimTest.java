package org.cellfile.claim;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cellfile.cases.AsWritten;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.source.SourceFile;
import org.cellfile.source.Stated;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Term;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** A stated value agrees when the derived one, rounded to the safe side at the last digit written, equals it. All figures are constructed. */
class ClaimTest {

    private static final FindingId ID = new FindingId("test.short");

    private static Derived derived(Term expression, Rounding rounding) {
        return new Derived("door", "separation-distance", "separation distance", "S", "clause", expression, rounding);
    }

    private static Derived up(String exact) {
        return derived(AsWritten.given("S", exact), Rounding.up(Quantity.millimetres("1")));
    }

    private static Derived down(String exact) {
        return derived(AsWritten.given("S", exact), Rounding.down(Quantity.millimetres("1")));
    }

    @ParameterizedTest
    @CsvSource({
        "1349.2 mm, 1350 mm, true",
        "1349.2 mm, 1349 mm, false",
        "1349.2 mm, 1351 mm, false",
        "1349.2 mm, 1349.2 mm, true",
        "1349.2 mm, 1349.20 mm, true",
        "1349.2 mm, 1349.3 mm, false",
        "1349.2 mm, 1350.0 mm, false",
        "1349.2 mm, 1.4 m, true",
        "1349.2 mm, 1.35 m, true",
        "1349.2 mm, 1.40 m, false",
        "1349.2 mm, 1.350 m, true",
        "1349.2 mm, 135 cm, true",
        "1349.2 mm, 2 m, true",
        "1349.2 mm, 1 m, false",
        "512 mm, 512 mm, true",
        "512 mm, 512.0 mm, true",
        "512 mm, 20.2 in, true",
        "512 mm, 20.1 in, false"
    })
    void agreesAtTheDigitWritten(String exact, String stated, boolean agrees) {
        Claim claim = Claim.recorded(AsWritten.stated(stated), up(exact));
        assertThat(claim.holds()).isEqualTo(agrees);
        assertThat(claim.finding().isEmpty()).isEqualTo(agrees);
    }

    @ParameterizedTest
    @CsvSource({"30.9 mm, 30 mm, true", "30.9 mm, 31 mm, false", "30.9 mm, 30.9 mm, true", "30.9 mm, 3 cm, true"})
    void whatIsAllowedIsRoundedDown(String exact, String stated, boolean agrees) {
        assertThat(Claim.recorded(AsWritten.stated(stated), down(exact)).holds())
                .isEqualTo(agrees);
    }

    static Stream<Arguments> amounts() {
        Random random = new Random(5);
        return IntStream.range(0, 500)
                .mapToObj(i -> Arguments.of(BigDecimal.valueOf(random.nextInt(100_000_000), 4), random.nextInt(5)));
    }

    /** Of all numbers with that many decimals only the next one on the safe side agrees. */
    @ParameterizedTest
    @MethodSource("amounts")
    void onlyTheNextNumberOnTheSafeSideAgrees(BigDecimal exact, int decimals) {
        Derived up = up(exact + " mm");
        Derived down = down(exact + " mm");
        BigDecimal above = exact.setScale(decimals, RoundingMode.CEILING);
        BigDecimal below = exact.setScale(decimals, RoundingMode.FLOOR);
        for (BigDecimal stated : List.of(above, below, above.add(above.ulp()), below.subtract(below.ulp()))) {
            assertThat(Claim.recorded(AsWritten.stated(stated + " mm"), up).holds())
                    .isEqualTo(stated.compareTo(above) == 0);
            assertThat(Claim.recorded(AsWritten.stated(stated + " mm"), down).holds())
                    .isEqualTo(stated.compareTo(below) == 0);
        }
    }

    @ParameterizedTest
    @CsvSource({"1349.2 mm, false, true", "1349.3 mm, true, true", "1349.25 mm, true, true", "1350 mm, true, false"})
    void boundsAreHeldAgainstTheExactValue(String stated, boolean atLeast, boolean atMost) {
        assertThat(bound(stated, Relation.AT_LEAST, up("1349.25 mm")).finding().isEmpty())
                .isEqualTo(atLeast);
        assertThat(bound(stated, Relation.AT_MOST, up("1349.3 mm")).finding().isEmpty())
                .isEqualTo(atMost);
    }

    private static Claim bound(String stated, Relation relation, Derived derived) {
        return new Claim("installed distance", AsWritten.stated(stated), relation, derived, ID, "move it");
    }

    @Test
    void saysWhatIsWrongWithFigures() {
        Finding unequal = Claim.recorded(AsWritten.stated("900 mm"), up("1349.2 mm"))
                .finding()
                .orElseThrow();
        assertThat(unequal.id()).isEqualTo(Claim.NOT_EQUAL);
        assertThat(unequal.about()).isEqualTo("door");
        assertThat(unequal.sentence())
                .isEqualTo("the stated separation distance of `door` is 900 mm, the derived one 1350 mm");
        assertThat(unequal.help()).endsWith("the value to record is 1350 mm");
        assertThat(unequal.because()).isNotEmpty();

        Finding less =
                bound("900 mm", Relation.AT_LEAST, up("1349.2 mm")).finding().orElseThrow();
        assertThat(less.id()).isEqualTo(ID);
        assertThat(less.sentence())
                .isEqualTo("the installed distance of `door` is 900 mm, less than the separation distance of 1350 mm");
        Finding more =
                bound("1400 mm", Relation.AT_MOST, down("1349.2 mm")).finding().orElseThrow();
        assertThat(more.sentence())
                .isEqualTo("the installed distance of `door` is 1400 mm, more than the separation distance of 1349 mm");
        assertThat(more.help()).isEqualTo("move it");
    }

    @Test
    void nothingIsClaimedOfWhatIsMissing() {
        Stated<Quantity> missing =
                new Stated.Missing<>(SourceFile.unread("typed.yaml").whole(), "separation-distance");
        Derived unknown = derived(AsWritten.missing("S"), Rounding.up(Quantity.millimetres("1")));
        for (Claim claim :
                List.of(Claim.recorded(missing, up("1 mm")), Claim.recorded(AsWritten.stated("1 mm"), unknown))) {
            assertThat(claim.holds()).isFalse();
            assertThat(claim.finding()).isEmpty();
        }
    }

    @Test
    void recordedValuesThatFitNothingAreFound() {
        Derived distance = up("1349.2 mm");
        Recorded recorded = new Recorded(
                "door",
                SourceFile.unread("typed.yaml").whole(),
                Map.of(
                        "separation-distanse",
                        AsWritten.stated("1350 mm"),
                        "separation-distance",
                        AsWritten.stated("1.35 s")));
        assertThat(recorded.claims(List.of(distance))).isEmpty();
        assertThat(recorded.orphans(List.of(distance)))
                .extracting(Finding::id)
                .containsExactly(Recorded.DIMENSION, Recorded.NOT_DERIVED);
        assertThat(recorded.of(distance)).isPresent();
    }
}
