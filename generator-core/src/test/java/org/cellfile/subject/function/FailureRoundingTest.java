package org.cellfile.subject.function;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.cellfile.cases.AsWritten;
import org.cellfile.claim.Claim;
import org.cellfile.claim.Relation;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.quantity.Unit;
import org.cellfile.trace.Derived;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rates and lives are rounded to the safe side at the digit that is printed or recorded, and nowhere before. All figures are constructed. */
class FailureRoundingTest {

    private static AsDescribed channel(int parts, String mttfd, String stated) {
        StringBuilder yaml = new StringBuilder("parts:\n");
        StringBuilder tags = new StringBuilder();
        for (int i = 0; i < parts; i++) {
            yaml.append("  - {tag: part-" + i + ", name: Part, source: data sheet, mttfd: " + mttfd
                    + ", installed: 2026-01-01}\n");
            tags.append(i == 0 ? "" : ", ").append("part-" + i);
        }
        return AsDescribed.read(
                yaml + "subsystems:\n  - tag: sub\n    name: Subsystem\n    category: 1\n    channels:\n"
                        + "      - {name: A, parts: [" + tags + "]}\n    stated: {" + stated + "}\n");
    }

    /** A whole that was cut into parts is a whole again: in print, in the table, against a bound. */
    @ParameterizedTest
    @CsvSource({"1, 100 years", "2, 200 years", "3, 300 years", "7, 700 years", "11, 1100 years", "13, 1300 years"})
    void partsOfAWhole(int parts, String mttfd) {
        AsDescribed file = channel(parts, mttfd, "channel-1: 100 years, pfh: 1.14e-6 1/h");
        Derived whole = file.derived("sub.channel-1");
        assertThat(whole.value()).isEqualTo(Optional.of(Quantity.years("100")));
        assertThat(file.printed("sub.channel-1")).isEqualTo("100.00 years");
        assertThat(file.findings()).isEmpty();
        assertThat(whole.value().orElseThrow()).isGreaterThanOrEqualTo(Quantity.years("100"));
        for (Relation relation : new Relation[] {Relation.AT_LEAST, Relation.AT_MOST, Relation.EQUAL_TO}) {
            assertThat(new Claim("bound", AsWritten.stated("100 years"), relation, whole, new FindingId("a.bound"), "")
                            .holds())
                    .as(relation.name())
                    .isTrue();
        }
        assertThat(channel(parts, mttfd.replace(" ", ".00000001 "), "channel-1: 100 years")
                        .findings())
                .as("limited")
                .isEmpty();
        assertThat(channel(parts + 1, mttfd, "channel-1: 100 years").findings()).hasSize(1);
    }

    /** Of sixty digits carried 34 count: a difference beyond them is none, one within them is. */
    @Test
    void digitsThatCount() {
        Quantity seventh = Quantity.years("100").per(Quantity.count(7));
        assertThat(seventh.number().precision()).isEqualTo(60);
        assertThat(seventh.times(Quantity.count(7))).isEqualTo(Quantity.years("100"));
        Quantity hundred = Quantity.years("100");
        assertThat(hundred.plus(Quantity.years("1e-30"))).isGreaterThan(hundred);
        assertThat(hundred.plus(Quantity.years("1e-36"))).isEqualTo(hundred);
    }

    /** Three digits, up; of a sum in the unit of its terms, and not a step too high where it is whole. */
    @ParameterizedTest
    @CsvSource({
        "4.99e-8 5.00e-8, 9.99e-8 1/h",
        "4.995e-8 5.00e-8, 1.00e-7 1/h",
        "1.11e-9 1.03e-9 1.25e-9, 3.39e-9 1/h",
        "1.001e-9 1.001e-9, 2.01e-9 1/h",
        "5e-9 5e-9, 1e-8 1/h",
        "1e-7, 1e-7 1/h",
        "2.3456e-7, 2.35e-7 1/h"
    })
    void threeDigitsUp(String terms, String printed) {
        Quantity sum = Stream.of(terms.split(" "))
                .map(Quantity::perHour)
                .reduce(Quantity::plus)
                .orElseThrow();
        Rounding rounding = Rounding.upToDigits(3, Optional.of(sum));
        assertThat(rounding.round(sum)).isEqualTo(AsWritten.quantity(printed)).isGreaterThanOrEqualTo(sum);
        assertThat(rounding.round(sum).unit()).isEqualTo(Unit.PER_HOUR);
        assertThat(rounding.round(sum).toString()).endsWith(" 1/h");
    }

    /** What is printed can be read again, and is the same. */
    @Test
    void readAsPrinted() {
        Random random = new Random(13849);
        for (int i = 0; i < 200; i++) {
            Quantity rate = new Quantity(
                    BigDecimal.valueOf(1 + random.nextInt(999_999), random.nextInt(10) + 6), Unit.PER_HOUR);
            if (rate.compareTo(Quantity.perHour("1e-13")) >= 0 && rate.compareTo(Quantity.perHour("1")) <= 0) {
                assertThat(ofMaker(rate.toString(), "").subsystem().pfh().value())
                        .isEqualTo(Optional.of(rate));
            }
        }
        assertThat(ofMaker("2.3e-7 1/h", "").printed("sub.pfh")).isEqualTo("2.3e-7 1/h");
        assertThat(ofMaker("2.3E-7 1/h", "").printed("sub.pfh")).isEqualTo("2.3e-7 1/h");
        assertThat(ofMaker("0.00000023 1/h", "").printed("sub.pfh")).isEqualTo("2.3e-7 1/h");
    }

    private static AsDescribed ofMaker(String pfh, String stated) {
        return AsDescribed.read("subsystems:\n  - tag: sub\n    name: Subsystem\n    category: 3\n    maker: {pfh: "
                + pfh + ", level: PL d, source: data sheet, installed: 2026-01-01}\n    stated: {" + stated + "}\n");
    }

    /** A value recorded with fewer digits agrees on the safe side alone: frequencies up, times down. */
    @ParameterizedTest
    @CsvSource({
        "pfh: 2.31e-7 1/h, true",
        "pfh: 2.4e-7 1/h, true",
        "pfh: 2.3e-7 1/h, false",
        "pfh: 3e-7 1/h, true",
        "pfh: 2e-7 1/h, false",
        "pfh: 1e-6 1/h, false",
        "pfh: 1 1/h, false",
        "pfh: 1e99 1/h, false",
        "pfh: 1e-99 1/h, false",
        "pfh: 0 1/h, false",
        "pfh: 0.003 1/year, true",
        "pfh: 0.01 1/year, false",
        "pfh: 1 1/year, false",
        "pfh: 0.00 1/year, false",
        "level: PL d, true",
        "level: PL c, false",
        "level: PL e, false",
        "replace-after: 20 years, true",
        "replace-after: 175200 h, true",
        "replace-after: 21 years, false"
    })
    void recorded(String stated, boolean agrees) {
        assertThat(ofMaker("2.31e-7 1/h", stated).findings()).hasSize(agrees ? 0 : 1);
    }

    /** One digit may be one of the next decade. */
    @ParameterizedTest
    @CsvSource({"1e-7 1/h, true", "9.6e-8 1/h, true", "10e-8 1/h, true", "2e-7 1/h, false", "1e-6 1/h, false"})
    void recordedWithOneDigit(String pfh, boolean agrees) {
        assertThat(ofMaker("9.51e-8 1/h", "pfh: " + pfh).findings()).hasSize(agrees ? 0 : 1);
    }

    @ParameterizedTest
    @CsvSource({
        "channel-1: 66.66 years, true",
        "channel-1: 66.67 years, false",
        "channel-1: 66.6 years, true",
        "channel-1: 66 years, true",
        "channel-1: 67 years, false",
        "mttfd: 66.666 years, true",
        "mttfd: 584000 h, true",
        "mttfd: 584001 h, false",
        "pfh: 1.84e-6 1/h, true",
        "level: PL c, true"
    })
    void recordedOfAChannel(String stated, boolean agrees) {
        // 200/3 years are 584 000 h
        assertThat(channel(3, "200 years", stated).findings()).hasSize(agrees ? 0 : 1);
    }
}
