package org.cellfile.standard;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cellfile.cases.AsWritten;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.quantity.Unit;
import org.cellfile.standard.PositioningStandard.Beams;
import org.cellfile.standard.PositioningStandard.Clutch;
import org.cellfile.standard.PositioningStandard.InterlockedGuard;
import org.cellfile.standard.PositioningStandard.Mat;
import org.cellfile.standard.PositioningStandard.ParallelField;
import org.cellfile.standard.PositioningStandard.PerpendicularField;
import org.cellfile.standard.PositioningStandard.TwoHandControl;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Lookup;
import org.cellfile.trace.Term;
import org.cellfile.trace.Withheld;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** ANSI B11.19, 29 CFR 1910.217 and ANSI R15.06: what the cases of the kinds do not reach, and what must hold whatever the figures. */
class UnitedStatesTest {

    private static final PositioningStandard B11 = edition("ANSI B11.19:2019");
    private static final PositioningStandard PRESSES = edition("29 CFR 1910.217");

    private static PositioningStandard edition(String id) {
        return (PositioningStandard) Editions.of(id).orElseThrow();
    }

    /**
     * Somebody approaches.
     *
     * @param device time of the device in ms; 0 for none
     * @param machine time of machine and control in ms
     * @param monitor setting of the brake monitor in ms; 0 for none
     */
    private static Approach approach(String device, String machine, String monitor, String installed) {
        Term own = AsWritten.given("t_1", device + " ms");
        Term stop = AsWritten.given("t_2", machine + " ms");
        BigDecimal whole = new BigDecimal(device).add(new BigDecimal(machine));
        return new Approach(
                "it",
                new Timing(
                        AsWritten.given("T", whole.toPlainString() + " ms"),
                        device.equals("0") ? List.of() : List.of(own),
                        List.of(stop),
                        monitor.equals("0") ? Optional.empty() : Optional.of(AsWritten.given("T_a", monitor + " ms"))),
                AsWritten.given("a_1", "0 in"),
                AsWritten.given("a_2", "55 in"),
                AsWritten.given("X", installed));
    }

    private static PerpendicularField field(Approach approach, String resolution, boolean startsCycle) {
        return new PerpendicularField(
                approach,
                AsWritten.given("d", resolution),
                AsWritten.given("e", "12 in"),
                AsWritten.given("b", "72 in"),
                List.of(),
                startsCycle);
    }

    private static Quantity inches(String number) {
        return Quantity.of(number, Unit.INCH);
    }

    private static Quantity distance(Position position) {
        return position.distance().value().orElseThrow();
    }

    private static boolean enough(Position position, Quantity installed) {
        int apart = installed.compareTo(distance(position));
        return position.strict() ? apart > 0 : apart >= 0;
    }

    /**
     * C-W4: Allen-Bradley safety mats, application details: 0.035 s and 0.485 s give 80.76 in. The example has no allowance for the
     * brake, which is here a monitor that lets nothing pass. 2032 mm is the metric form of the same example.
     */
    @Test
    void aMat() {
        Position mat = B11.mat(new Mat(approach("35", "485", "485", "80.76 in"), AsWritten.given("h", "1 in")))
                .orElseThrow();

        assertThat(mat.distance().expression().symbols()).isEqualTo("K · ((T_s + T_c) + T_r + T_bm) + D_pf");
        assertThat(distance(mat)).isEqualTo(inches("80.76")).isNotEqualTo(Quantity.millimetres("2032"));
        assertThat(mat.distance().rounded()).hasToString("Optional[80.76 in]");
        assertThat(mat.distance().unrounded()).hasToString("Optional[80.76 in]");
        assertThat(mat.distance().roundedLike(inches("80.8"))).contains(inches("80.8"));
        assertThat(mat.distance().roundedLike(inches("80.7"))).contains(inches("80.8"));
        assertThat(enough(mat, inches("80.76"))).isTrue();
        assertThat(mat.distance().references())
                .filteredOn(reference -> reference.id().equals("ansi-b11-19-2019.mat-penetration"))
                .singleElement()
                .satisfies(reference -> assertThat(reference.fromMemory()).isFalse());
    }

    /** The same without a monitor: 63 (0.52 + 0.2 · 0.485) + 48. Constructed from the published formula. */
    @Test
    void aMatWithoutABrakeMonitor() {
        Position mat = B11.mat(new Mat(approach("35", "485", "0", "90 in"), AsWritten.given("h", "1 in")))
                .orElseThrow();
        assertThat(distance(mat)).isEqualTo(inches("86.871"));
    }

    /** That the penetration is that of a mat is from memory for a horizontal field, and so is that there is none for two hands. */
    @Test
    void whatRestsOnMemory() {
        Approach at = approach("35", "485", "485", "90 in");
        Position along = B11.parallel(
                        new ParallelField(at, AsWritten.given("d", "70 mm"), AsWritten.given("H", "12 in"), List.of()))
                .orElseThrow();
        Position hands = B11.twoHandControl(new TwoHandControl(at, false, Optional.empty()))
                .orElseThrow();
        assertThat(distance(along)).isEqualTo(inches("80.76"));
        assertThat(distance(hands)).isEqualTo(inches("32.76"));
        assertThat(fromMemory(along)).containsExactly("ansi-b11-19-2019.parallel-penetration");
        assertThat(fromMemory(hands)).containsExactly("ansi-b11-19-2019.two-hand-penetration");
    }

    private static List<String> fromMemory(Position position) {
        return position.distance().references().stream()
                .filter(reference -> reference.fromMemory())
                .map(reference -> reference.id())
                .toList();
    }

    /** C-F7: Panasonic SF4-AH instruction manual, p. 39, prints 3 ft; Leuze Safety at Work handbook, multiple beam devices, 850 mm. */
    @Test
    void beamsTakeTheGreaterOfTwoPublishedFigures() {
        Position beams = B11.beams(new Beams(
                        approach("20", "200", "200", "60 in"),
                        List.of(AsWritten.given("h_1", "400 mm"), AsWritten.given("h_2", "900 mm"))))
                .orElseThrow();
        assertThat(beams.part("penetration").value()).contains(inches("36"));
        assertThat(distance(beams)).isEqualTo(inches("49.86"));
        assertThat(beams.remarks()).anySatisfy(remark -> assertThat(remark).contains("850 mm"));
    }

    @Test
    void whatTheEditionsHaveNoRuleFor() {
        Approach at = approach("20", "200", "0", "60 in");
        Term reach = AsWritten.given("C", "4 in");
        assertThat(B11.interlockedGuard(new InterlockedGuard(at, reach, Optional.empty())))
                .isEmpty();
        assertThat(PRESSES.interlockedGuard(new InterlockedGuard(at, reach, Optional.empty())))
                .isEmpty();
        assertThat(PRESSES.mat(new Mat(at, AsWritten.given("h", "1 in")))).isEmpty();
        assertThat(PRESSES.beams(new Beams(at, List.of(AsWritten.given("h_1", "30 in")))))
                .isEmpty();
        assertThat(PRESSES.parallel(
                        new ParallelField(at, AsWritten.given("d", "70 mm"), AsWritten.given("H", "12 in"), List.of())))
                .isEmpty();
        assertThat(B11.twoHandControl(new TwoHandControl(at, false, Optional.of(clutch("14", "0.5 s")))))
                .isEmpty();
        assertThat(PRESSES.stopMeasurement()).isEmpty();
    }

    /** C-W2: WAC 296-806-45524: 0.5 s gives 31.5 in, and the distance must be more than that. */
    @Test
    void aTwoHandControl() {
        Position hands = PRESSES.twoHandControl(
                        new TwoHandControl(approach("20", "480", "0", "31.5 in"), false, Optional.empty()))
                .orElseThrow();
        assertThat(hands.distance().expression().symbols()).isEqualTo("63 in/s · T");
        assertThat(distance(hands)).isEqualTo(inches("31.5"));
        assertThat(enough(hands, inches("31.5"))).isFalse();
        assertThat(enough(hands, inches("31.51"))).isTrue();
        assertThat(hands.longestTime().orElseThrow().value()).contains(Quantity.seconds("0.5"));
    }

    private static Clutch clutch(String points, String turn) {
        return new Clutch(new org.cellfile.trace.Count(Quantity.of(points, Unit.ONE)), AsWritten.given("t_u", turn));
    }

    /** C-W7: the formula as in the OSHA Machine Guarding eTool, presses, safety distance; figures constructed. */
    @ParameterizedTest
    @CsvSource({"14, 0.5, 0.2857, 18.00", "1, 0.5, 0.75, 47.25", "3, 0.5, 0.41666, 26.25", "6, 0.6, 0.4, 25.20"})
    void aTwoHandTrip(String points, String turn, String closing, String distance) {
        Position trip = PRESSES.twoHandControl(new TwoHandControl(
                        approach("20", "480", "0", "50 in"), false, Optional.of(clutch(points, turn + " s"))))
                .orElseThrow();
        Derived time = trip.part("closing-time");
        assertThat(time.expression().symbols()).isEqualTo("(1/2 + 1 / " + points + ") · t_u");
        assertThat(time.value().orElseThrow().coherent().setScale(new BigDecimal(closing).scale(), RoundingMode.DOWN))
                .isEqualByComparingTo(closing);
        assertThat(trip.distance().rounded()).contains(inches(distance));
        assertThat(trip.strict()).isTrue();
        assertThat(trip.longestTime()).isEmpty();
    }

    /** C-F3, the bracket from memory: 63 (0.2 + 0.02 + 2 · 0.03) and 3.4 (14 mm − 7 mm). Figures constructed. */
    @Test
    void aFieldThatStartsTheCycle() {
        Position starts = PRESSES.perpendicular(field(approach("20", "200", "230", "18.577 in"), "14 mm", true))
                .orElseThrow();
        assertThat(starts.distance().expression().symbols()).isEqualTo("H_s · ((T_s + T_r) + T_p + 2 · T_m) + D_p");
        assertThat(distance(starts)).isEqualTo(Quantity.millimetres("471.856"));
        assertThat(starts.distance().rounded()).contains(inches("18.58"));
        assertThat(starts.strict()).isFalse();
        assertThat(starts.longestTime().orElseThrow().rounded()).contains(Quantity.seconds("0.219"));
        assertThat(starts.distance().references()).allMatch(reference -> reference.fromMemory());
    }

    /** The device's own time is T_p of the formula, and what penetration is known for ends at 64 mm, which belongs to it. */
    @Test
    void whatAFieldThatStartsTheCycleRestsOn() {
        Position starts = PRESSES.perpendicular(field(approach("20", "200", "230", "40 in"), "64 mm", true))
                .orElseThrow();
        assertThat(starts.part("device-time").value()).contains(Quantity.seconds("0.02"));
        assertThat(starts.part("penetration").value()).contains(Quantity.millimetres("193.8"));
    }

    /** All of what a maker asks to be added is taken off before the time is allowed: (40 − 3 − 2) / 63. */
    @Test
    void severalSupplementsUnderTheRuleForPresses() {
        Position position = PRESSES.perpendicular(new PerpendicularField(
                        approach("20", "200", "0", "40 in"),
                        AsWritten.given("d", "14 mm"),
                        AsWritten.given("e", "12 in"),
                        AsWritten.given("b", "72 in"),
                        List.of(AsWritten.given("Z_1", "3 in"), AsWritten.given("Z_2", "2 in")),
                        false))
                .orElseThrow();
        assertThat(distance(position)).isEqualTo(inches("18.86"));
        assertThat(position.longestTime().orElseThrow().rounded()).contains(Quantity.seconds("0.555"));
    }

    /** A reader has to know whether a monitor watches the brake, and that its setting belongs to the longest time. */
    @Test
    void whetherAMonitorWatchesTheBrakeIsSaid() {
        Position watched = B11.perpendicular(field(approach("20", "200", "230", "40 in"), "14 mm", false))
                .orElseThrow();
        Position unwatched = B11.perpendicular(field(approach("20", "200", "0", "40 in"), "14 mm", false))
                .orElseThrow();
        assertThat(watched.part("brake-allowance").words()).isEqualTo("time the brake monitor lets pass");
        assertThat(unwatched.part("brake-allowance").words())
                .isEqualTo("allowance for the brake, which no monitor watches");
        assertThat(watched.remarks())
                .anySatisfy(remark -> assertThat(remark).contains("another setting of the monitor"));
        assertThat(unwatched.remarks()).noneSatisfy(remark -> assertThat(remark).contains("monitor"));
    }

    @Test
    void aFieldThatStartsTheCycleNeedsABrakeMonitor() {
        Position starts = PRESSES.perpendicular(field(approach("20", "200", "0", "40 in"), "14 mm", true))
                .orElseThrow();
        assertThat(starts.distance().value()).isEmpty();
        assertThat(starts.part("brake-allowance").expression())
                .isInstanceOfSatisfying(
                        Withheld.class,
                        withheld -> assertThat(withheld.noRule()).isTrue());
    }

    @Test
    void aFieldThatStartsTheCycleIsNoCoarserThanSixtyFour() {
        assertThat(PRESSES.perpendicular(field(approach("20", "200", "230", "40 in"), "65 mm", true))
                        .orElseThrow()
                        .part("penetration")
                        .value())
                .isEmpty();
    }

    /**
     * C-W8: OSHA Machine Guarding eTool, presses, safety distance: time in s and distance in inches. Every line is 63 T rounded up
     * to half an inch, except that of 0.072 s, which the chart rounds down.
     */
    @ParameterizedTest
    @CsvSource({
        ".055, 3.5", ".063, 4", ".079, 5", ".087, 5.5", ".095, 6", ".103, 6.5", ".111, 7", ".119, 7.5", ".126, 8",
        ".134, 8.5", ".142, 9", ".150, 9.5", ".158, 10", ".166, 10.5", ".317, 20", ".325, 20.5", ".333, 21",
                ".341, 21.5",
        ".349, 22", ".357, 22.5", ".365, 23", ".373, 23.5", ".380, 24", ".388, 24.5", ".396, 25", ".404, 25.5",
                ".412, 26",
        ".420, 26.5"
    })
    void theChartOfDistances(String time, String charted) {
        assertThat(byTime(time)).isEqualTo(inches(charted));
    }

    /** The chart prints 4.5 in for 0.072 s, and 63 in/s times that is 4.536 in: the printed distance would be too short. */
    @Test
    void theChartIsNotFollowedWhereItRoundsDown() {
        assertThat(byTime(".072")).isEqualTo(inches("5")).isGreaterThan(inches("4.5"));
    }

    private static Quantity byTime(String time) {
        String milliseconds = new BigDecimal(time).movePointRight(3).toPlainString();
        Quantity exact = PRESSES.perpendicular(field(approach("0", milliseconds, "0", "50 in"), "6 mm", false))
                .orElseThrow()
                .part("distance-by-time")
                .value()
                .orElseThrow();
        return Rounding.up(inches("0.5")).round(exact);
    }

    /** C-F1: more than the distance; 63.5 in/s, which another public page prints, is not the rule. C-F4: not less than it. */
    @Test
    void justAtTheDistance() {
        Approach at = approach("0", "500", "500", "31.5 in");
        Position presses = PRESSES.perpendicular(field(at, "7 mm", false)).orElseThrow();
        Position b11 = B11.perpendicular(field(at, "7 mm", false)).orElseThrow();
        assertThat(distance(presses)).isEqualTo(distance(b11)).isEqualTo(inches("31.5"));
        assertThat(distance(presses)).isNotEqualTo(inches("31.75"));
        assertThat(enough(presses, inches("31.5"))).isFalse();
        assertThat(enough(b11, inches("31.5"))).isTrue();
    }

    /** Where the opening asks for more than the time, the distance of its row is enough. */
    @Test
    void justAtTheDistanceOfAnOpening() {
        Position presses = PRESSES.perpendicular(field(approach("0", "50", "0", "7.5 in"), "30 mm", false))
                .orElseThrow();
        assertThat(distance(presses)).isEqualTo(inches("7.5"));
        assertThat(enough(presses, inches("7.5"))).isTrue();
        assertThat(enough(presses, inches("7.49"))).isFalse();
    }

    /**
     * 29 CFR 1910.217, table O-10: the least distance of the row and its greatest width, in inches. Rows 3/8 in to 1 1/2 in from a
     * public installation note that quotes the table; the first and the last two from memory.
     */
    private static final List<List<String>> OPENINGS = List.of(
            List.of("0.5", "0.25"),
            List.of("1.5", "0.375"),
            List.of("2.5", "0.5"),
            List.of("3.5", "0.625"),
            List.of("5.5", "0.75"),
            List.of("6.5", "0.875"),
            List.of("7.5", "1.25"),
            List.of("12.5", "1.5"),
            List.of("15.5", "1.875"),
            List.of("17.5", "2.125"));

    static IntStream rows() {
        return IntStream.range(0, OPENINGS.size());
    }

    private static Term through(String shape, String opening) {
        return ((ReachStandard) Editions.of("29 CFR 1910.217").orElseThrow())
                .through(new ReachStandard.Opening(shape, AsWritten.given("e", opening), Optional.empty()))
                .orElseThrow();
    }

    /** An opening just as wide as a row allows belongs to that row; the least amount above it belongs to the next. */
    @ParameterizedTest
    @MethodSource("rows")
    void openingsRowByRow(int row) {
        for (String shape : List.of("slot", "square", "round")) {
            String width = OPENINGS.get(row).get(1);
            assertThat(through(shape, width + " in").value())
                    .contains(inches(OPENINGS.get(row).get(0)));
            Term above = through(shape, new BigDecimal(width).add(new BigDecimal("0.0001")) + " in");
            if (row + 1 < OPENINGS.size()) {
                assertThat(above.value()).contains(inches(OPENINGS.get(row + 1).get(0)));
            } else {
                assertThat(above)
                        .isInstanceOfSatisfying(
                                Withheld.class,
                                withheld -> assertThat(withheld.because())
                                        .isEqualTo(
                                                "29 CFR 1910.217, table O-10 ends at an opening of 2.125 in, and this one is 2.1251 in"));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("rows")
    void eachRowSaysHowFarItWasVerified(int row) {
        assertThat(through("slot", OPENINGS.get(row).get(1) + " in"))
                .isInstanceOfSatisfying(
                        Lookup.class,
                        lookup -> assertThat(lookup.reference().fromMemory()).isEqualTo(row == 0 || row > 7));
    }

    @Test
    void aWiderOpeningNeverComesNearer() {
        Quantity before = inches("0");
        for (int hundredths = 1; hundredths <= 5397; hundredths++) {
            Quantity now = through("slot", BigDecimal.valueOf(hundredths, 2) + " mm")
                    .value()
                    .orElseThrow();
            assertThat(now).isGreaterThanOrEqualTo(before);
            before = now;
        }
        assertThat(before).isEqualTo(inches("17.5"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"slot", "square"})
    void nothingForAnOpeningThatIsNotKnown(String shape) {
        Optional<Term> through = ((ReachStandard) Editions.of("29 CFR 1910.217").orElseThrow())
                .through(new ReachStandard.Opening(shape, AsWritten.missing("e"), Optional.empty()));
        assertThat(through.orElseThrow().value()).isEmpty();
    }

    /** Figures of one situation: tenths of ms, hundredths of an inch, tenths of mm. */
    record Situation(int device, int machine, int monitor, int installed, int resolution) {
        private Approach at(int machineTime) {
            return approach(
                    tenths(device), tenths(machineTime), tenths(monitor), BigDecimal.valueOf(installed, 2) + " in");
        }

        Position b11(int machineTime) {
            return B11.perpendicular(field(at(machineTime), BigDecimal.valueOf(resolution, 1) + " mm", false))
                    .orElseThrow();
        }

        Position presses() {
            return PRESSES.perpendicular(field(at(machine), BigDecimal.valueOf(resolution, 1) + " mm", false))
                    .orElseThrow();
        }

        Quantity x() {
            return inches(BigDecimal.valueOf(installed, 2).toString());
        }

        Quantity time() {
            return Quantity.seconds(BigDecimal.valueOf(device + machine, 4).toString());
        }

        private static String tenths(int number) {
            return number == 0 ? "0" : BigDecimal.valueOf(number, 1).toString();
        }
    }

    static Stream<Situation> situations() {
        Random random = new Random(1119);
        List<Situation> situations = new ArrayList<>();
        for (int i = 0; i < 300; i++) {
            int machine = 1 + random.nextInt(i % 2 == 0 ? 2000 : 8000);
            situations.add(new Situation(
                    i % 3 == 0 ? 0 : random.nextInt(1000),
                    machine,
                    i % 5 < 2 ? machine + random.nextInt(500) : 0,
                    random.nextInt(i % 2 == 0 ? 2500 : 9000),
                    50 + random.nextInt(i % 4 == 0 ? 651 : 480)));
        }
        return situations.stream();
    }

    /** The distance once more in whole numbers: everything in units of 1/10 000 s, 63 in/s and 1/2540 in. */
    @ParameterizedTest
    @MethodSource("situations")
    void theFormulaOfB11(Situation one) {
        BigDecimal stop = BigDecimal.valueOf(one.machine, 4);
        BigDecimal allowance = one.monitor == 0
                ? stop.divide(BigDecimal.valueOf(5))
                : BigDecimal.valueOf(one.monitor, 4).subtract(stop);
        BigDecimal time = stop.add(BigDecimal.valueOf(one.device, 4)).add(allowance);
        BigDecimal penetration = one.resolution > 640
                ? new BigDecimal("914.4")
                : BigDecimal.valueOf(Math.max(0, one.resolution - 70) * 34L, 2);
        assertThat(distance(one.b11(one.machine)))
                .isEqualTo(Quantity.millimetres(
                        time.multiply(new BigDecimal("1600.2")).add(penetration).toPlainString()));
    }

    @ParameterizedTest
    @MethodSource("situations")
    void enoughIsInstalledExactlyWhenTheTimeIsNotAboveTheLongest(Situation one) {
        Position b11 = one.b11(one.machine);
        boolean inTime = b11.longestTime()
                .orElseThrow()
                .value()
                .map(longest -> one.time().compareTo(longest) <= 0)
                .orElse(false);
        assertThat(enough(b11, one.x())).isEqualTo(inTime);
    }

    /** Under the rule for presses the longest time itself is already too long. */
    @ParameterizedTest
    @MethodSource("situations")
    void enoughIsInstalledExactlyWhenTheTimeIsBelowTheLongest(Situation one) {
        if (one.resolution > 539) {
            assertThat(one.presses().distance().value()).isEmpty();
            return;
        }
        boolean inTime = one.presses()
                .longestTime()
                .orElseThrow()
                .value()
                .map(longest -> one.time().compareTo(longest) < 0)
                .orElse(false);
        assertThat(enough(one.presses(), one.x())).isEqualTo(inTime);
    }

    /** Without a monitor: a stop that takes all of the longest time fits, and one millisecond more does not. */
    @ParameterizedTest
    @MethodSource("situations")
    void theLongestTimeFitsAndOneMillisecondMoreDoesNot(Situation one) {
        Optional<Quantity> longest =
                one.b11(one.machine).longestTime().orElseThrow().rounded();
        if (one.monitor > 0 || longest.isEmpty()) {
            return;
        }
        int machine = longest.get().coherent().movePointRight(4).intValueExact() - one.device;
        if (machine > 0) {
            assertThat(enough(one.b11(machine), one.x())).isTrue();
        }
        assertThat(enough(one.b11(machine + 10), one.x())).isFalse();
    }

    @ParameterizedTest
    @MethodSource("situations")
    void worseFiguresNeverShortenIt(Situation one) {
        for (int more : List.of(1, 10, 300)) {
            Situation coarser = new Situation(
                    one.device, one.machine, one.monitor, one.installed, Math.min(700, one.resolution + more));
            assertThat(distance(coarser.b11(one.machine))).isGreaterThanOrEqualTo(distance(one.b11(one.machine)));
            if (one.monitor == 0) {
                assertThat(distance(one.b11(one.machine + more))).isGreaterThan(distance(one.b11(one.machine)));
            }
        }
    }

    /** From memory: 10 in/s, which is 254 mm/s exactly and not the 250 mm/s of ISO 10218-1. */
    @Test
    void manualReducedSpeed() {
        RobotStandard robots = (RobotStandard) Editions.of("ANSI R15.06:2012").orElseThrow();
        assertThat(robots.manualReducedSpeed().quantity())
                .hasToString("10 in/s")
                .isEqualTo(Quantity.of("254", Unit.MILLIMETRE_PER_SECOND));
        assertThat(robots.manualReducedSpeed().reference().fromMemory()).isTrue();
        RobotCellStandard cells = (RobotCellStandard) robots;
        assertThat(cells.leastFenceHeight().reference().fromMemory()).isTrue();
        assertThat(cells.leastFenceHeight().quantity()).isEqualTo(Quantity.millimetres("1400"));
        assertThat(cells.widestGapBelow().quantity()).isEqualTo(Quantity.millimetres("180"));
    }

    @Test
    void whatEveryReaderHasToKnow() {
        assertThat(PRESSES.remark())
                .hasValueSatisfying(remark -> assertThat(remark)
                        .isEqualTo("A rule for mechanical power presses, applied to robot cells by analogy."));
        assertThat(Editions.of("ANSI R15.06:2012").orElseThrow().remark())
                .hasValueSatisfying(remark -> assertThat(remark).contains("from memory throughout"));
        assertThat(B11.remark()).hasValueSatisfying(remark -> assertThat(remark).contains("without a year"));
        assertThat(B11.stopMeasurement().orElseThrow().leastRuns().reference().fromMemory())
                .isTrue();
    }
}
