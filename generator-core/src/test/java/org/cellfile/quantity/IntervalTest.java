package org.cellfile.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Days are counted in the calendar; a month that is shorter ends earlier (common practice of calendars, ISO 8601 has no rule). */
class IntervalTest {

    @ParameterizedTest
    @CsvSource({
        "2026-08-31, 6 months, 2027-02-28",
        "2023-08-31, 6 months, 2024-02-29",
        "2026-08-30, 6 months, 2027-02-28",
        "2026-02-28, 6 months, 2026-08-28",
        "2024-02-29, 1 year, 2025-02-28",
        "2023-02-28, 1 year, 2024-02-28",
        "2026-10-31, 1 month, 2026-11-30",
        "2026-12-31, 2 months, 2027-02-28",
        "2026-12-28, 1 week, 2027-01-04",
        "2026-02-27, 2 days, 2026-03-01"
    })
    void theLastDayOnWhichItHolds(LocalDate day, String every, LocalDate last) {
        assertThat(Interval.of(every)).hasValueSatisfying(interval -> {
            assertThat(interval.after(day)).isEqualTo(last);
            assertThat(interval.toString()).isEqualTo(every);
        });
    }

    @ParameterizedTest
    @CsvSource({
        "13 months, 1 year, true",
        "12 months, 1 year, false",
        "1 year, 12 months, false",
        "53 weeks, 1 year, true",
        "52 weeks, 1 year, false",
        "366 days, 1 year, true",
        "6 months, 1 year, false"
    })
    void whichIsLonger(String one, String other, boolean longer) {
        assertThat(Interval.of(one).orElseThrow().longerThan(Interval.of(other).orElseThrow()))
                .isEqualTo(longer);
    }
}
