package org.cellfile.standard;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cellfile.cases.AsWritten;
import org.cellfile.quantity.Quantity;
import org.cellfile.standard.PositioningStandard.Beams;
import org.cellfile.standard.PositioningStandard.Mat;
import org.cellfile.standard.PositioningStandard.TwoHandControl;
import org.cellfile.trace.Term;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold of mats, two-hand controls and separate beams whatever the figures, as of {@link SeparationDistanceTest}. */
class ContactDevicesTest {

    private static final int ROUNDS = 300;
    private static final Quantity MILLISECOND = Quantity.seconds("0.001");
    private static final List<List<Integer>> HEIGHTS =
            List.of(List.of(750), List.of(400, 900), List.of(300, 700, 1100), List.of(300, 600, 900, 1200));

    /** Everything a position depends on; lengths in tenths of a millimetre, times in tenths of a millisecond. */
    record Situation(int time, int step, int beams, int installed) {

        private Approach approach() {
            Term overall = AsWritten.given("T", BigDecimal.valueOf(time, 1) + " ms");
            return new Approach(
                    "device",
                    new Timing(overall, List.of(), List.of(overall), Optional.empty()),
                    length("a_1", 0),
                    length("a_2", 10000),
                    length("X", installed));
        }

        Position mat() {
            return edition().mat(new Mat(approach(), length("H", step))).orElseThrow();
        }

        Position twoHand() {
            return edition()
                    .twoHandControl(new TwoHandControl(approach(), false, Optional.empty()))
                    .orElseThrow();
        }

        Position shrouded() {
            return edition()
                    .twoHandControl(new TwoHandControl(approach(), true, Optional.empty()))
                    .orElseThrow();
        }

        Position lightBeams() {
            List<Term> heights = HEIGHTS.get(beams - 1).stream()
                    .<Term>map(height -> length("h", 10 * height))
                    .toList();
            return edition().beams(new Beams(approach(), heights)).orElseThrow();
        }

        Situation lasting(int tenths) {
            return new Situation(tenths, step, beams, installed);
        }

        Situation lower(int less) {
            return new Situation(time, Math.max(0, step - less), beams, installed);
        }
    }

    private static PositioningStandard edition() {
        return (PositioningStandard) Editions.of("ISO 13855:2010").orElseThrow();
    }

    private static Term length(String symbol, int tenths) {
        return AsWritten.given(symbol, BigDecimal.valueOf(tenths, 1) + " mm");
    }

    /** Half of the times and distances are small, so that the least distance of a shrouded control is met often. */
    static Stream<Situation> situations() {
        Random random = new Random(2010);
        return IntStream.range(0, ROUNDS).mapToObj(i -> {
            boolean near = i % 2 == 0;
            return new Situation(
                    random.nextInt(near ? 1500 : 20000),
                    random.nextInt(10001),
                    1 + random.nextInt(4),
                    500 + random.nextInt(near ? 4000 : 40000));
        });
    }

    private static final List<Function<Situation, Position>> DEVICES =
            List.of(Situation::mat, Situation::twoHand, Situation::shrouded, Situation::lightBeams);

    private static Quantity distance(Position position) {
        return position.distance().value().orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("situations")
    void aLongerTimeNeverShortensIt(Situation situation) {
        for (int more : List.of(1, 10, 100, 1000)) {
            for (Function<Situation, Position> device : DEVICES) {
                assertThat(distance(device.apply(situation.lasting(situation.time + more))))
                        .isGreaterThanOrEqualTo(distance(device.apply(situation)));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("situations")
    void aLowerStepNeverShortensIt(Situation situation) {
        for (int less : List.of(1, 10, 1000)) {
            assertThat(distance(situation.lower(less).mat())).isGreaterThanOrEqualTo(distance(situation.mat()));
        }
    }

    @ParameterizedTest
    @MethodSource("situations")
    void aShroudNeverAsksForMore(Situation situation) {
        assertThat(distance(situation.shrouded())).isLessThanOrEqualTo(distance(situation.twoHand()));
        assertThat(distance(situation.shrouded())).isGreaterThanOrEqualTo(Quantity.millimetres("100"));
    }

    @ParameterizedTest
    @MethodSource("situations")
    void theLongestTimeFitsTheInstalledDistanceAndOneMillisecondMoreDoesNot(Situation situation) {
        Quantity installed =
                Quantity.millimetres(BigDecimal.valueOf(situation.installed, 1).toString());
        for (Function<Situation, Position> device : DEVICES) {
            Optional<Quantity> longest =
                    device.apply(situation).longestTime().orElseThrow().rounded();
            if (longest.isEmpty()) {
                assertThat(distance(device.apply(situation.lasting(0)))).isGreaterThan(installed);
            } else {
                assertThat(distance(device.apply(situation.lasting(tenths(longest.get())))))
                        .isLessThanOrEqualTo(installed);
                assertThat(distance(device.apply(
                                situation.lasting(tenths(longest.get().plus(MILLISECOND))))))
                        .isGreaterThan(installed);
            }
        }
    }

    private static int tenths(Quantity time) {
        return time.coherent().movePointRight(4).intValueExact();
    }
}
