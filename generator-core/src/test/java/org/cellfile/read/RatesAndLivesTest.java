package org.cellfile.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cellfile.cases.AsRead;
import org.cellfile.cases.AsWritten;
import org.cellfile.finding.Finding;
import org.cellfile.finding.Findings;
import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Quantity;
import org.cellfile.source.Stated;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How rates, lives, cycles and levels may be written, and what is a slip of the pen. All figures are constructed. */
class RatesAndLivesTest {

    private final Findings findings = new Findings();

    /** What a file states under one key, of the sort that is due. */
    private Optional<Quantity> read(String due, String written) {
        Section section = AsRead.file("it.yaml", "cellfile: 1\nit: {key: '" + written + "'}\n", findings)
                .top()
                .section("it");
        Stated<Quantity> stated = switch (due) {
            case "rate" -> section.positive("key", Dimension.RATE);
            case "share" -> section.positive("key", Dimension.NONE);
            case "stop time" -> section.positive("key", Dimension.TIME);
            case "length" -> section.positive("key", Dimension.LENGTH);
            case "life" -> section.longTime("key");
            case "life or none" -> section.longTimeIfStated("key");
            case "mean time" -> section.meanTimeIfStated("key");
            case "level" -> section.level("key");
            case "anything" -> section.quantities().getOrDefault("key", new Stated.Missing<>(section.where(), ""));
            default -> throw new IllegalArgumentException(due);
        };
        return stated.value();
    }

    private List<String> ids() {
        return findings.sorted().stream().map(finding -> finding.id().words()).toList();
    }

    @ParameterizedTest
    @CsvSource({
        "rate, 2.3e-7 1/h",
        "rate, 2.3E-7 1/h",
        "rate, 2.3e-07 1/h",
        "rate, 0.00000023 1/h",
        "rate, 0.02 1/year",
        "rate, 1 1/h",
        "rate, 1e+0 1/h",
        "rate, 1e-13 1/h",
        "share, 99 %",
        "stop time, 310 ms",
        "stop time, 0.31 s",
        "life, 20 years",
        "life, 175200 h",
        "life, 15 min",
        "life, 20 s",
        "life, 100 years",
        "life or none, 30 years",
        "mean time, 593607 years",
        "mean time, 1000000000 years",
        "anything, 2.3e-7 1/h",
        "anything, 1e9 1/h",
        "anything, 20 years",
        "anything, 70 points"
    })
    void canBeRead(String due, String written) {
        String unit = written.substring(written.indexOf(' '));
        String number = written.substring(0, written.indexOf(' '));
        assertThat(read(due, written)).isEqualTo(Optional.of(AsWritten.quantity(number + unit)));
        assertThat(ids()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        // a time of a stop in minutes and more, a life in less than a second
        "stop time, 0.0001 h, quantity.unknown-unit",
        "stop time, 1 min, quantity.unknown-unit",
        "stop time, 1 years, quantity.unknown-unit",
        "life, 20 ms, quantity.unknown-unit",
        "mean time, 630720000000 ms, quantity.unknown-unit",
        "life, 20 a, quantity.unknown-unit",
        "life, 20, quantity.no-unit",
        "share, 99 points, quantity.unknown-unit",
        "share, 0.99, quantity.no-unit",
        // of another sort
        "life, 20 mm, quantity.another-dimension",
        "life, 2.3e-7 1/h, quantity.another-dimension",
        "rate, 20 years, quantity.another-dimension",
        "rate, PL d, quantity.another-dimension",
        "life, PL d, quantity.another-dimension",
        "length, PL d, quantity.another-dimension",
        "share, PL d, quantity.another-dimension",
        "length, 2e-7 1/h, quantity.another-dimension",
        // an exponent is for rates
        "life, 2e1 years, quantity.not-a-number",
        "length, 1.4e3 mm, quantity.not-a-number",
        "share, 9.9e1 %, quantity.not-a-number",
        "anything, 2e1 years, quantity.not-a-number",
        "rate, 2e-7, quantity.no-unit",
        "rate, 999999999999e99, quantity.no-unit",
        "rate, 1e-999 1/h, quantity.not-a-number",
        "rate, 1e 1/h, quantity.unknown-unit",
        "rate, e-7 1/h, quantity.not-a-number",
        "rate, '2,3e-7 1/h', quantity.not-a-number",
        // beyond belief
        "rate, 1e99 1/h, quantity.absurd",
        "rate, 999999999999e99 1/h, quantity.absurd",
        "rate, 1.01 1/h, quantity.absurd",
        "rate, 8761 1/year, quantity.absurd",
        "rate, 9.9e-14 1/h, quantity.absurd",
        "rate, 1e-99 1/h, quantity.absurd",
        "life, 100.1 years, quantity.absurd",
        "life, 1000000 years, quantity.absurd",
        "life, 999999999999 h, quantity.absurd",
        "mean time, 1000000001 years, quantity.absurd",
        "share, 1001 %, quantity.absurd",
        // nothing, and less than nothing
        "rate, 0 1/h, quantity.negative",
        "rate, 0e-7 1/h, quantity.negative",
        "rate, -1e-7 1/h, quantity.negative",
        "life, 0 years, quantity.negative",
        "mean time, -3 years, quantity.negative",
        // levels are five letters
        "level, PL f, read.unknown-word",
        "level, pl d, read.unknown-word",
        "level, PL D, read.unknown-word",
        "level, PL, read.unknown-word",
        "level, d, read.unknown-word",
        "level, PL  d, read.unknown-word",
        "anything, PL f, quantity.not-a-number",
        "anything, pl d, quantity.not-a-number",
        "anything, PL D, quantity.not-a-number"
    })
    void isRefusedOnce(String due, String written, String id) {
        assertThat(read(due, written)).isEmpty();
        assertThat(ids()).containsExactly(id);
    }

    @Test
    void saysWhereTheBoundIs() {
        Map<String, String> sentences = Map.of(
                "1e-99 1/h", "`key` is 1e-99 1/h, less than 1e-13 1/h, the least that is believed of a robot cell",
                "1e99 1/h", "`key` is 1e99 1/h, more than 1 1/h, the most that is believed of a robot cell");
        sentences.forEach((written, sentence) -> {
            Findings own = new Findings();
            AsRead.file("it.yaml", "cellfile: 1\nit: {key: " + written + "}\n", own)
                    .top()
                    .section("it")
                    .positive("key", Dimension.RATE);
            assertThat(own.sorted()).extracting(Finding::sentence).containsExactly(sentence);
        });
    }

    @Test
    void allFiveLevels() {
        for (String letter : List.of("a", "b", "c", "d", "e")) {
            assertThat(read("level", "PL " + letter)).isEqualTo(Optional.of(Quantity.level(letter)));
            assertThat(read("anything", "PL " + letter)).isEqualTo(Optional.of(Quantity.level(letter)));
        }
        assertThat(ids()).isEmpty();
    }
}
