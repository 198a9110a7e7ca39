package org.cellfile.subject.clearance;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cellfile.cases.AsWritten;
import org.cellfile.claim.Recorded;
import org.cellfile.finding.Finding;
import org.cellfile.quantity.Quantity;
import org.cellfile.source.SourceFile;
import org.cellfile.source.Span;
import org.cellfile.source.Stated;
import org.cellfile.standard.CrushingStandard;
import org.cellfile.standard.Editions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What a gap needs, and what is found when it has less. */
class ClearanceGapTest {

    private static final int ROUNDS = 300;
    private static final Span SOMEWHERE = SourceFile.unread("typed.yaml").whole();

    private static Stated<String> text(String text) {
        return new Stated.Written<>(text, SOMEWHERE, text);
    }

    private static <T> Stated<T> missing(String key) {
        return new Stated.Missing<>(SOMEWHERE, key);
    }

    private static ClearanceGap gap(Stated<String> part, String gap, String uncertainty, Stated<String> measure) {
        return new ClearanceGap(
                new Clearance(
                        text("gap"),
                        text("zone"),
                        text("gripper"),
                        text("column"),
                        part,
                        AsWritten.stated(gap),
                        AsWritten.stated(uncertainty),
                        text("somebody"),
                        new Stated.Written<>(LocalDate.of(2026, 10, 6), SOMEWHERE, "2026-10-06"),
                        text("tape"),
                        measure,
                        new Recorded("gap", SOMEWHERE, Map.of())),
                Editions.of("ISO 13854:2017").map(CrushingStandard.class::cast),
                Optional.empty());
    }

    private static ClearanceGap gap(String part, String gap, String uncertainty) {
        return gap(text(part), gap, uncertainty, missing("measure"));
    }

    private static Stream<String> found(ClearanceGap gap) {
        return gap.findings().stream().map(Finding::id).map(Object::toString);
    }

    /** 499 mm and 500 mm for a body without uncertainty: AUVA lexicon, Safety Distances. The other lines are constructed. */
    @ParameterizedTest
    @CsvSource({
        "body, 499 mm, 0 mm, -1 mm, false",
        "body, 500 mm, 0 mm, 0 mm, true",
        "body, 499.99 mm, 0 mm, -1 mm, false",
        "hand, 101 mm, 1.5 mm, -1 mm, false",
        "hand, 101.5 mm, 1.5 mm, 0 mm, true",
        "finger, 0 mm, 1 mm, -26 mm, false",
        "arm, 0.125 m, 4 mm, 1 mm, true"
    })
    void wideEnough(String part, String measured, String uncertainty, String margin, boolean enough) {
        ClearanceGap gap = gap(part, measured, uncertainty);
        assertThat(gap.margin().rounded()).contains(AsWritten.quantity(margin));
        assertThat(found(gap)).containsExactly(enough ? new String[0] : new String[] {"installed.crushing-gap"});
    }

    @Test
    void formulas() {
        ClearanceGap gap = gap("leg", "200 mm", "3 mm");
        assertThat(gap.leastGap().expression().symbols()).isEqualTo("a");
        assertThat(gap.neededGap().expression().symbols()).isEqualTo("a + u");
        assertThat(gap.neededGap().expression().figures()).isEqualTo("180 mm + 3 mm");
        assertThat(gap.margin().expression().symbols()).isEqualTo("g − a_n");
    }

    /** A named measure bars nothing, and is spoken of only where the gap is too narrow. */
    @Test
    void aMeasureInPlaceOfTheGap() {
        ClearanceGap narrow = gap(text("hand"), "60 mm", "1 mm", text("a cover"));
        assertThat(found(narrow)).containsExactly("clearance.measure-instead");
        assertThat(narrow.isNarrow()).isTrue();
        ClearanceGap wide = gap(text("hand"), "160 mm", "1 mm", text("a cover"));
        assertThat(found(wide)).isEmpty();
        assertThat(wide.isNarrow()).isFalse();
    }

    @Test
    void nothingForAPartThatIsNotKnown() {
        ClearanceGap gap = gap(missing("body-part"), "60 mm", "1 mm", missing("measure"));
        assertThat(gap.derived()).allSatisfy(one -> assertThat(one.value()).isEmpty());
        assertThat(found(gap)).isEmpty();
    }

    static Stream<Arguments> measurements() {
        Random random = new Random(13854);
        return IntStream.range(0, ROUNDS)
                .mapToObj(i -> Arguments.of(
                        CrushingStandard.PARTS.get(random.nextInt(CrushingStandard.PARTS.size())),
                        random.nextInt(7000),
                        random.nextInt(200),
                        random.nextInt(100)));
    }

    private static String tenths(int tenths) {
        return tenths / 10 + "." + tenths % 10 + " mm";
    }

    /** A less certain gap never needs less and never has more left; a wider gap is never refused where a narrower one passes. */
    @ParameterizedTest
    @MethodSource("measurements")
    void uncertaintyNeverHelps(String part, int measured, int uncertainty, int more) {
        ClearanceGap gap = gap(part, tenths(measured), tenths(uncertainty));
        ClearanceGap lessCertain = gap(part, tenths(measured), tenths(uncertainty + more));
        assertThat(exact(lessCertain.neededGap().value()))
                .isGreaterThanOrEqualTo(exact(gap.neededGap().value()));
        assertThat(exact(lessCertain.margin().value()))
                .isLessThanOrEqualTo(exact(gap.margin().value()));
        assertThat(found(lessCertain)).containsAll(found(gap).toList());
        assertThat(found(gap))
                .containsAll(found(gap(part, tenths(measured + more), tenths(uncertainty)))
                        .toList());
        assertThat(exact(gap.margin().rounded()))
                .isLessThanOrEqualTo(exact(gap.margin().value()));
    }

    private static Quantity exact(Optional<Quantity> value) {
        return value.orElseThrow();
    }
}
