package org.cellfile.calculation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.apache.commons.statistics.distribution.TDistribution;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Unit;
import org.cellfile.trace.Count;
import org.cellfile.trace.Difference;
import org.cellfile.trace.Product;
import org.cellfile.trace.Term;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The straight line against org.apache.commons:commons-math3 and commons-statistics-distribution, and against a set of data with
 * certified values.
 */
class StraightLineTest {

    /** The references count in binary fractions; the line lies close to the readings, so that twelve digits of 16 are left. */
    private static final double SHARE = 1e-12;

    /** Where the band meets a limit is found by halving in binary fractions of figures that nearly cancel. */
    private static final double CROSSING = 1e-7;

    /**
     * NIST Statistical Reference Datasets, linear regression, Norris: y and x of each point, from memory. Only the right ones give the
     * certified values.
     */
    private static final String NORRIS =
            "0.1 0.2; 338.8 337.4; 118.1 118.2; 888.0 884.6; 9.2 10.1; 228.1 226.5; 668.5 666.3; 998.5 996.3; 449.1 448.6; "
                    + "778.9 777.0; 559.2 558.2; 0.3 0.4; 0.1 0.6; 778.1 775.5; 668.8 666.9; 339.3 338.0; 448.9 447.5; 10.8 11.6; "
                    + "557.7 556.0; 228.3 228.1; 998.0 995.8; 888.8 887.6; 119.6 120.2; 0.3 0.3; 0.6 0.3; 557.6 556.8; 339.3 339.1; "
                    + "888.0 887.2; 998.5 999.0; 778.9 779.0; 10.2 11.1; 117.6 118.3; 228.9 229.2; 668.4 669.1; 449.2 448.9; 0.2 0.5";

    /** All that is made of a series. */
    private record Fitted(StraightLine line, Term meanDay, Term meanReading, Term spread, Term slope, Term scatter) {
        static Fitted of(List<String> days, List<String> readings) {
            StraightLine line = new StraightLine(terms(days), terms(readings));
            Term meanDay = line.meanDay();
            Term meanReading = line.meanReading();
            Term spread = line.spread(meanDay);
            Term slope = line.slope(meanDay, meanReading, spread);
            return new Fitted(line, meanDay, meanReading, spread, slope, line.scatter(meanDay, meanReading, slope));
        }

        Term intercept() {
            return new Difference(meanReading, new Product(slope, meanDay));
        }

        Term meeting(String limit) {
            return StraightLine.meeting(meanDay, meanReading, slope, number(limit));
        }

        Term doubt(double students) {
            return new Product(number(new BigDecimal(students).toPlainString()), scatter);
        }

        Term certainty(double students) {
            return StraightLine.certainty(slope, doubt(students), spread);
        }

        Term earliest(double students, String limit) {
            return line.earliest(meanDay, slope, gap(limit), doubt(students), certainty(students), spread);
        }

        Term latest(double students, String limit) {
            return line.latest(meanDay, slope, gap(limit), doubt(students), certainty(students), spread);
        }

        private Term gap(String limit) {
            return new Difference(number(limit), meanReading);
        }
    }

    private static Term number(String number) {
        return new Count(Quantity.of(number, Unit.ONE));
    }

    private static List<Term> terms(List<String> numbers) {
        return numbers.stream().map(StraightLineTest::number).toList();
    }

    private static BigDecimal exact(Term term) {
        return term.value().orElseThrow().coherent();
    }

    private static double binary(Term term) {
        return exact(term).doubleValue();
    }

    private static void close(Term ours, double reference, double size, double share) {
        assertThat(binary(ours)).isCloseTo(reference, within(size * share));
    }

    /** Certified: slope, intercept, residual standard deviation. The last digit given is the last digit rounded. */
    @Test
    void agreesWithTheCertifiedValues() {
        List<String[]> points =
                Arrays.stream(NORRIS.split("; ")).map(point -> point.split(" ")).toList();
        Fitted fitted = Fitted.of(
                points.stream().map(point -> point[1]).toList(),
                points.stream().map(point -> point[0]).toList());

        assertThat(points).hasSize(36);
        assertThat(exact(fitted.slope)).isCloseTo(new BigDecimal("1.00211681802045"), within(new BigDecimal("5e-15")));
        assertThat(exact(fitted.intercept()))
                .isCloseTo(new BigDecimal("-0.262323073774029"), within(new BigDecimal("5e-16")));
        assertThat(exact(fitted.scatter))
                .isCloseTo(new BigDecimal("0.884796396144373"), within(new BigDecimal("5e-16")));
    }

    /** Days and stopping times in tenths of a millisecond, that rise on the whole. */
    record Made(List<Integer> days, List<Integer> tenths) {
        List<String> daysWritten() {
            return days.stream().map(String::valueOf).toList();
        }

        List<String> seconds() {
            return tenths.stream()
                    .map(tenth -> BigDecimal.valueOf(tenth, 4).toPlainString())
                    .toList();
        }

        int number() {
            return days.size();
        }
    }

    static Stream<Made> series() {
        Random random = new Random(13855);
        return IntStream.range(0, 200).mapToObj(i -> {
            int number = 3 + random.nextInt(20);
            int rise = 1 + random.nextInt(300);
            int scatter = 1 + random.nextInt(60);
            int start = 1000 + random.nextInt(9000);
            List<Integer> days = IntStream.range(0, number)
                    .mapToObj(n -> n * 365 + random.nextInt(300))
                    .toList();
            return new Made(
                    days,
                    days.stream()
                            .map(day -> start + day * rise / 365 + random.nextInt(scatter))
                            .toList());
        });
    }

    private static SimpleRegression reference(Made made) {
        SimpleRegression regression = new SimpleRegression();
        for (int i = 0; i < made.number(); i++) {
            regression.addData(made.days().get(i), made.tenths().get(i) / 10_000.0);
        }
        return regression;
    }

    private static double students(Made made) {
        return TDistribution.of(made.number() - 2).inverseCumulativeProbability(0.975);
    }

    @ParameterizedTest
    @MethodSource("series")
    void agreesWithTheReference(Made made) {
        Fitted fitted = Fitted.of(made.daysWritten(), made.seconds());
        SimpleRegression regression = reference(made);

        close(fitted.slope, regression.getSlope(), 1, SHARE);
        close(fitted.intercept(), regression.getIntercept(), 1, SHARE);
        close(fitted.scatter, Math.sqrt(regression.getMeanSquareError()), 1, SHARE);
        // The interval of the slope of commons-math3 tells whether the rise is certain.
        double half = regression.getSlopeConfidenceInterval(0.05);
        assertThat(exact(fitted.certainty(students(made))).signum() > 0)
                .isEqualTo(Math.abs(regression.getSlope()) > half);
    }

    /** The band of the reference is put together here in binary fractions, and where it meets the limit is found by halving. */
    @ParameterizedTest
    @MethodSource("series")
    void theBandMeetsTheLimitWhereTheReferenceDoes(Made made) {
        Fitted fitted = Fitted.of(made.daysWritten(), made.seconds());
        double students = students(made);
        if (exact(fitted.certainty(students)).signum() <= 0
                || exact(fitted.slope).signum() <= 0) {
            return;
        }
        SimpleRegression regression = reference(made);
        double last = made.days().get(made.number() - 1);
        BigDecimal limit = BigDecimal.valueOf(regression.predict(last) + 0.05).setScale(4, java.math.RoundingMode.UP);
        double mean = made.days().stream().mapToInt(Integer::intValue).average().orElseThrow();
        DoubleUnaryOperator half = day -> students
                * Math.sqrt(regression.getMeanSquareError())
                * Math.sqrt(1.0 / made.number() + (day - mean) * (day - mean) / regression.getXSumSquares());
        double upper = crossing(day -> regression.predict(day) + half.applyAsDouble(day) - limit.doubleValue(), mean);
        double lower = crossing(day -> regression.predict(day) - half.applyAsDouble(day) - limit.doubleValue(), mean);

        close(fitted.earliest(students, limit.toPlainString()), upper, upper, CROSSING);
        close(fitted.latest(students, limit.toPlainString()), lower, lower, CROSSING);
        assertThat(binary(fitted.meeting(limit.toPlainString()))).isBetween(upper, lower);
    }

    /** The day at which something that is below zero at the mean day rises above it. */
    private static double crossing(DoubleUnaryOperator above, double from) {
        double before = from;
        double after = from + 1;
        while (above.applyAsDouble(after) < 0) {
            after = from + (after - from) * 2;
        }
        for (int i = 0; i < 200; i++) {
            double middle = (before + after) / 2;
            if (above.applyAsDouble(middle) < 0) {
                before = middle;
            } else {
                after = middle;
            }
        }
        return after;
    }

    /** By hand: through (0, 1), (1, 3), (2, 5) goes 1 + 2x; it meets 11 at 5, and without scatter so does its band (constructed). */
    @Test
    void pointsOnALineLeaveNoDoubt() {
        Fitted fitted = Fitted.of(List.of("0", "1", "2"), List.of("1", "3", "5"));

        assertThat(exact(fitted.slope)).isEqualByComparingTo("2");
        assertThat(exact(fitted.intercept())).isEqualByComparingTo("1");
        assertThat(exact(fitted.scatter)).isEqualByComparingTo("0");
        assertThat(exact(fitted.certainty(12.706))).isEqualByComparingTo("4");
        for (Term day : List.of(fitted.meeting("11"), fitted.earliest(12.706, "11"), fitted.latest(12.706, "11"))) {
            assertThat(exact(day)).isEqualByComparingTo("5");
        }
    }

    /**
     * By hand: through (0, 0), (1, 2), (2, 1), (3, 3) goes a line with b = 0.8, x_m = t_m = 1.5, S = 5; the squares about it are 1.8
     * in all, so that s² = 0.9. With t = 1 the excess is 0.64 − 0.9/5 = 0.46 and the band meets 5.5 where
     * 0.46 d² − 6.4 d + 16 − 0.225 = 0 (constructed).
     */
    @Test
    void smallNumbersByHand() {
        Fitted fitted = Fitted.of(List.of("0", "1", "2", "3"), List.of("0", "2", "1", "3"));

        assertThat(exact(fitted.slope)).isEqualByComparingTo("0.8");
        assertThat(exact(fitted.spread)).isEqualByComparingTo("5");
        assertThat(binary(fitted.scatter)).isCloseTo(Math.sqrt(0.9), within(1e-15));
        assertThat(exact(fitted.meeting("5.5"))).isEqualByComparingTo("6.5");
        assertThat(exact(fitted.certainty(1))).isCloseTo(new BigDecimal("0.46"), within(new BigDecimal("1e-30")));
        double root = Math.sqrt(6.4 * 6.4 - 4 * 0.46 * 15.775);
        close(fitted.earliest(1, "5.5"), 1.5 + (6.4 - root) / 0.92, 10, SHARE);
        close(fitted.latest(1, "5.5"), 1.5 + (6.4 + root) / 0.92, 10, SHARE);
        assertThat(fitted.slope.symbols())
                .isEqualTo("((0 − (0 + 1 + 2 + 3) / 4) · (0 − (0 + 2 + 1 + 3) / 4)"
                        + " + (1 − (0 + 1 + 2 + 3) / 4) · (2 − (0 + 2 + 1 + 3) / 4)"
                        + " + (2 − (0 + 1 + 2 + 3) / 4) · (1 − (0 + 2 + 1 + 3) / 4)"
                        + " + (3 − (0 + 1 + 2 + 3) / 4) · (3 − (0 + 2 + 1 + 3) / 4))"
                        + " / ((0 − (0 + 1 + 2 + 3) / 4)² + (1 − (0 + 1 + 2 + 3) / 4)²"
                        + " + (2 − (0 + 1 + 2 + 3) / 4)² + (3 − (0 + 1 + 2 + 3) / 4)²)");
    }

    /** The half width at the mean day is t·s/√n, the least of all. */
    @Test
    void theBandIsNarrowestAtTheMeanDay() {
        Fitted fitted = Fitted.of(List.of("0", "1", "2", "3"), List.of("0", "2", "1", "3"));

        Term atTheMean = fitted.line.halfBand(number("1.5"), fitted.meanDay, fitted.doubt(2), fitted.spread);
        close(atTheMean, 2 * Math.sqrt(0.9 / 4), 1, SHARE);
        for (String day : List.of("0", "1", "2", "9")) {
            assertThat(exact(fitted.line.halfBand(number(day), fitted.meanDay, fitted.doubt(2), fitted.spread)))
                    .isGreaterThan(exact(atTheMean));
        }
    }

    /**
     * A slower last stop lifts the end of the line and its middle, so that it meets a limit above them no later. Of earlier stops that
     * is not true: a slower first one makes the line flatter.
     */
    @ParameterizedTest
    @MethodSource("series")
    void aSlowerLastStopNeverMovesTheMeetingLater(Made made) {
        String limit = "4";
        List<Integer> slower = Stream.concat(
                        made.tenths().stream().limit(made.number() - 1L),
                        Stream.of(made.tenths().get(made.number() - 1) + 7))
                .toList();
        Fitted before = Fitted.of(made.daysWritten(), made.seconds());
        Fitted after = Fitted.of(made.daysWritten(), new Made(made.days(), slower).seconds());
        if (exact(before.slope).signum() > 0) {
            assertThat(exact(after.meeting(limit))).isLessThan(exact(before.meeting(limit)));
            assertThat(exact(before.meeting("3.9"))).isLessThan(exact(before.meeting(limit)));
        }
    }

    @Test
    void aReadingThatIsMissingIsNotLeftOut() {
        StraightLine line = new StraightLine(
                terms(List.of("0", "1", "2")),
                List.of(number("1"), org.cellfile.cases.AsWritten.missing("t_2"), number("3")));

        assertThat(line.meanReading().value()).isEmpty();
        assertThat(line.slope(line.meanDay(), line.meanReading(), line.spread(line.meanDay()))
                        .value())
                .isEmpty();
    }
}
