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
import org.cellfile.standard.PositioningStandard.InterlockedGuard;
import org.cellfile.standard.PositioningStandard.ParallelField;
import org.cellfile.standard.PositioningStandard.PerpendicularField;
import org.cellfile.trace.Term;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold of separation distances whatever the figures: worse inputs never shorten them, and times fit distances. */
class SeparationDistanceTest {

    private static final int ROUNDS = 300;
    private static final Quantity MILLISECOND = Quantity.seconds("0.001");

    /** Everything a position depends on; lengths in tenths of a millimetre, times in tenths of a millisecond. */
    record Situation(
            int time,
            int resolution,
            int edge,
            int lowest,
            int highest,
            int fieldHeight,
            int supplement,
            int opening,
            int installed) {

        private Approach approach() {
            Term overall = duration("T", time);
            return new Approach(
                    "field",
                    new Timing(overall, List.of(), List.of(overall), Optional.empty()),
                    length("a_1", lowest),
                    length("a_2", highest),
                    length("X", installed));
        }

        Position perpendicular() {
            return edition()
                    .perpendicular(new PerpendicularField(
                            approach(),
                            length("d", resolution),
                            length("e", 3000),
                            length("b", edge),
                            List.of(),
                            false))
                    .orElseThrow();
        }

        Position parallel() {
            return edition()
                    .parallel(new ParallelField(
                            approach(),
                            length("d", resolution),
                            length("H", fieldHeight),
                            supplement == 0 ? List.of() : List.of(length("Z", supplement))))
                    .orElseThrow();
        }

        Position door() {
            return edition()
                    .interlockedGuard(new InterlockedGuard(
                            approach(),
                            reach().through(new ReachStandard.Opening("slot", length("e", opening), Optional.empty()))
                                    .orElseThrow(),
                            Optional.empty()))
                    .orElseThrow();
        }

        Situation at(Quantity longer) {
            return new Situation(
                    longer.coherent().movePointRight(4).intValueExact(),
                    resolution,
                    edge,
                    lowest,
                    highest,
                    fieldHeight,
                    supplement,
                    opening,
                    installed);
        }

        Situation slower(int more) {
            return new Situation(
                    time + more, resolution, edge, lowest, highest, fieldHeight, supplement, opening, installed);
        }

        Situation coarser(int more) {
            return new Situation(
                    time,
                    Math.min(700, resolution + more),
                    edge,
                    lowest,
                    highest,
                    fieldHeight,
                    supplement,
                    opening,
                    installed);
        }

        Situation lowerEdge(int less) {
            return new Situation(
                    time,
                    resolution,
                    Math.max(10000, edge - less),
                    lowest,
                    highest,
                    fieldHeight,
                    supplement,
                    opening,
                    installed);
        }

        Situation tallerZone(int more) {
            return new Situation(
                    time,
                    resolution,
                    edge,
                    Math.max(0, lowest - more),
                    highest + more,
                    fieldHeight,
                    supplement,
                    opening,
                    installed);
        }

        Situation wider(int more) {
            return new Situation(
                    time,
                    resolution,
                    edge,
                    lowest,
                    highest,
                    fieldHeight,
                    supplement,
                    Math.min(1200, opening + more),
                    installed);
        }

        Situation lowerField(int less) {
            return new Situation(
                    time,
                    resolution,
                    edge,
                    lowest,
                    highest,
                    Math.max(0, fieldHeight - less),
                    supplement,
                    opening,
                    installed);
        }
    }

    private static PositioningStandard edition() {
        return (PositioningStandard) Editions.of("ISO 13855:2010").orElseThrow();
    }

    private static ReachStandard reach() {
        return (ReachStandard) Editions.of("ISO 13857:2008").orElseThrow();
    }

    private static Term length(String symbol, int tenths) {
        return AsWritten.given(symbol, BigDecimal.valueOf(tenths, 1) + " mm");
    }

    private static Term duration(String symbol, int tenths) {
        return AsWritten.given(symbol, BigDecimal.valueOf(tenths, 1) + " ms");
    }

    /** Half of the times and distances are small, so that the limits at 100 mm and 500 mm are met often. */
    static Stream<Situation> situations() {
        Random random = new Random(2010);
        return IntStream.range(0, ROUNDS).mapToObj(i -> {
            boolean near = i % 2 == 0;
            int lowest = random.nextInt(20000);
            return new Situation(
                    random.nextInt(near ? 3500 : 20000),
                    100 + random.nextInt(near ? 300 : 600),
                    10000 + random.nextInt(18000),
                    lowest,
                    lowest + random.nextInt(20000),
                    random.nextInt(10000),
                    random.nextInt(3) * 1000,
                    1 + random.nextInt(1200),
                    900 + random.nextInt(near ? 6000 : 40000));
        });
    }

    private static Quantity distance(Position position) {
        return position.distance().value().orElseThrow();
    }

    private static void neverShorter(Situation better, Situation worse, Function<Situation, Position> approach) {
        assertThat(distance(approach.apply(worse)))
                .as("%s against %s", worse, better)
                .isGreaterThanOrEqualTo(distance(approach.apply(better)));
    }

    @ParameterizedTest
    @MethodSource("situations")
    void aLongerTimeNeverShortensIt(Situation situation) {
        for (int more : List.of(1, 10, 100, 1000)) {
            Situation slower = situation.slower(more);
            neverShorter(situation, slower, Situation::perpendicular);
            neverShorter(situation, slower, Situation::parallel);
            neverShorter(situation, slower, Situation::door);
        }
    }

    @ParameterizedTest
    @MethodSource("situations")
    void aCoarserResolutionNeverShortensIt(Situation situation) {
        for (int more : List.of(1, 10, 100, 300)) {
            neverShorter(situation, situation.coarser(more), Situation::perpendicular);
        }
    }

    @ParameterizedTest
    @MethodSource("situations")
    void aLowerUpperEdgeNeverShortensIt(Situation situation) {
        for (int less : List.of(1, 10, 1000, 5000)) {
            neverShorter(situation, situation.lowerEdge(less), Situation::perpendicular);
        }
    }

    @ParameterizedTest
    @MethodSource("situations")
    void aLowerFenceNeverShortensIt(Situation situation) {
        for (int less : List.of(1, 10, 1000, 5000)) {
            assertThat(overFence(situation.lowerEdge(less))).isGreaterThanOrEqualTo(overFence(situation));
        }
    }

    @ParameterizedTest
    @MethodSource("situations")
    void aTallerHazardNeverShortensIt(Situation situation) {
        for (int more : List.of(1, 100, 3000)) {
            neverShorter(situation, situation.tallerZone(more), Situation::perpendicular);
            assertThat(overFence(situation.tallerZone(more))).isGreaterThanOrEqualTo(overFence(situation));
        }
    }

    private static Quantity overFence(Situation situation) {
        return reach().over(
                        length("a_1", situation.lowest), length("a_2", situation.highest), length("b", situation.edge))
                .orElseThrow()
                .value()
                .orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("situations")
    void aWiderDoorOpeningNeverShortensIt(Situation situation) {
        for (int more : List.of(1, 10, 50, 300)) {
            neverShorter(situation, situation.wider(more), Situation::door);
        }
    }

    @ParameterizedTest
    @MethodSource("situations")
    void aLowerFieldAlongThePlaneNeverShortensIt(Situation situation) {
        for (int less : List.of(1, 10, 1000)) {
            neverShorter(situation, situation.lowerField(less), Situation::parallel);
        }
    }

    /** From one tenth of a millisecond to the next the distance grows by 0.2 mm at most: no jump either way. */
    @Test
    void theChangeOfSpeedLeavesNoJump() {
        for (int resolution = 100; resolution <= 400; resolution += 25) {
            Quantity before = distance(closed(0, resolution).perpendicular());
            for (int time = 1; time <= 4000; time++) {
                Quantity now = distance(closed(time, resolution).perpendicular());
                assertThat(now.minus(before))
                        .as("resolution %s tenths of a mm, time %s tenths of a ms", resolution, time)
                        .isBetween(Quantity.millimetres("0"), Quantity.millimetres("0.2"));
                before = now;
            }
        }
    }

    /** Nobody reaches over it. */
    private static Situation closed(int time, int resolution) {
        return new Situation(time, resolution, 26000, 0, 10000, 0, 0, 1, 20000);
    }

    @ParameterizedTest
    @MethodSource("situations")
    void theLongestTimeFitsTheInstalledDistanceAndOneMillisecondMoreDoesNot(Situation situation) {
        fits(situation, Situation::perpendicular);
        fits(situation, Situation::parallel);
        fits(situation, Situation::door);
    }

    /** When there is no longest time, even no time at all asks for more than is installed. */
    private static void fits(Situation situation, Function<Situation, Position> approach) {
        Quantity installed =
                Quantity.millimetres(BigDecimal.valueOf(situation.installed, 1).toString());
        Position position = approach.apply(situation);
        if (position.longestTime().orElseThrow().value().isEmpty()) {
            assertThat(distance(approach.apply(situation.at(Quantity.seconds("0")))))
                    .isGreaterThan(installed);
            return;
        }
        Quantity longest = position.longestTime().orElseThrow().rounded().orElseThrow();
        assertThat(distance(approach.apply(situation.at(longest)))).isLessThanOrEqualTo(installed);
        assertThat(distance(approach.apply(situation.at(longest.plus(MILLISECOND)))))
                .isGreaterThan(installed);
    }

    /** The same said of the distance: what is required for the time is installed exactly when the time is not above the longest. */
    @ParameterizedTest
    @MethodSource("situations")
    void enoughIsInstalledExactlyWhenTheTimeIsNotAboveTheLongest(Situation situation) {
        for (Position position : List.of(situation.perpendicular(), situation.parallel(), situation.door())) {
            Quantity installed = Quantity.millimetres(
                    BigDecimal.valueOf(situation.installed, 1).toString());
            Quantity time =
                    Quantity.seconds(BigDecimal.valueOf(situation.time, 4).toString());
            boolean enough = distance(position).compareTo(installed) <= 0;
            boolean inTime = position.longestTime()
                    .orElseThrow()
                    .value()
                    .map(longest -> time.compareTo(longest) <= 0)
                    .orElse(false);
            assertThat(enough).isEqualTo(inTime);
        }
    }
}
