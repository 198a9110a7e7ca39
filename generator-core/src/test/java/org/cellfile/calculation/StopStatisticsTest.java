package org.cellfile.calculation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.statistics.descriptive.DoubleStatistics;
import org.apache.commons.statistics.descriptive.Statistic;
import org.cellfile.cases.AsWritten;
import org.cellfile.quantity.Quantity;
import org.cellfile.trace.Count;
import org.cellfile.trace.Term;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Our statistics against those of org.apache.commons:commons-statistics-descriptive. */
class StopStatisticsTest {

    /**
     * The reference counts in binary fractions of 53 bits, about 16 digits, over at most 40 readings whose spread is not far below
     * their size; 12 digits of the mean must agree in all of them.
     */
    private static final double SHARE = 1e-12;

    /** Readings in tenths of a millisecond. */
    static Stream<List<Integer>> readings() {
        Random random = new Random(10);
        return IntStream.range(0, 200).mapToObj(i -> {
            int middle = 100 + random.nextInt(20000);
            int spread = 1 + random.nextInt(middle);
            return IntStream.range(0, 2 + random.nextInt(38))
                    .mapToObj(run -> middle + random.nextInt(spread))
                    .toList();
        });
    }

    @ParameterizedTest
    @MethodSource("readings")
    void agreesWithTheReference(List<Integer> tenths) {
        StopStatistics ours = new StopStatistics(tenths.stream()
                .<Term>map(tenth -> AsWritten.given("t_i", BigDecimal.valueOf(tenth, 1) + " ms"))
                .toList());
        DoubleStatistics reference = DoubleStatistics.of(
                java.util.EnumSet.of(Statistic.MEAN, Statistic.STANDARD_DEVIATION, Statistic.MAX),
                tenths.stream().mapToDouble(tenth -> tenth / 10_000.0).toArray());
        double mean = reference.getAsDouble(Statistic.MEAN);
        double deviation = reference.getAsDouble(Statistic.STANDARD_DEVIATION);
        close(ours.mean(), mean, mean);
        close(ours.deviation(ours.mean()), deviation, mean);
        close(ours.highest(), reference.getAsDouble(Statistic.MAX), mean);
        close(
                StopStatistics.meanAnd(new Count(Quantity.count(3)), ours.deviation(ours.mean()), ours.mean()),
                mean + 3 * deviation,
                mean);
    }

    private static void close(Term ours, double reference, double size) {
        assertThat(ours.value().orElseThrow().coherent().doubleValue()).isCloseTo(reference, within(size * SHARE));
    }

    private static StopStatistics of(String... readings) {
        return new StopStatistics(Arrays.stream(readings)
                .<Term>map(reading -> AsWritten.given("t_i", reading))
                .toList());
    }

    /** By hand: readings 2, 4, 4, 4, 5, 5, 7, 9 have the mean 5 and squares of 32 in all, so that s² = 32/7 (constructed). */
    @Test
    void smallNumbersByHand() {
        StopStatistics statistics = of("2 ms", "4 ms", "4 ms", "4 ms", "5 ms", "5 ms", "7 ms", "9 ms");
        assertThat(statistics.mean().value()).contains(AsWritten.quantity("5 ms"));
        assertThat(statistics.highest().value()).contains(AsWritten.quantity("9 ms"));
        assertThat(statistics.deviation(statistics.mean()).value().orElseThrow().coherent())
                .isBetween(new BigDecimal("0.00213808993529939"), new BigDecimal("0.00213808993529940"));
        assertThat(statistics.mean().symbols()).isEqualTo("(Σ t_i) / 8");
        assertThat(statistics.deviation(statistics.mean()).symbols())
                .contains("√(")
                .contains("8 − 1");
    }

    @Test
    void oneReadingHasNoSpread() {
        StopStatistics one = of("310 ms");
        assertThat(one.mean().value()).contains(AsWritten.quantity("310 ms"));
        assertThat(one.deviation(one.mean()).value()).isEmpty();
        StopStatistics two = of("310 ms", "312 ms");
        assertThat(two.deviation(two.mean()).value()).isPresent();
    }

    @Test
    void aReadingThatIsMissingIsNotLeftOut() {
        StopStatistics statistics = new StopStatistics(
                List.of(AsWritten.given("t_i", "310 ms"), AsWritten.given("t_i", "320 ms"), AsWritten.missing("t_i")));
        assertThat(statistics.mean().value()).isEmpty();
        assertThat(statistics.highest().value()).isEmpty();
        assertThat(statistics.deviation(statistics.mean()).value()).isEmpty();
    }
}
