package org.cellfile.standard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cellfile.cases.AsWritten.given;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cellfile.cases.AsWritten;
import org.cellfile.quantity.Quantity;
import org.cellfile.standard.CopyValues.Read;
import org.cellfile.standard.PositioningStandard.Beams;
import org.cellfile.standard.PositioningStandard.InterlockedGuard;
import org.cellfile.standard.PositioningStandard.Mat;
import org.cellfile.standard.PositioningStandard.ParallelField;
import org.cellfile.standard.PositioningStandard.PerpendicularField;
import org.cellfile.standard.PositioningStandard.TwoHandControl;
import org.cellfile.trace.Clause;
import org.cellfile.trace.Lookup;
import org.cellfile.trace.Reference;
import org.cellfile.trace.Standing.FromMemory;
import org.cellfile.trace.Standing.ReadInCopy;
import org.cellfile.trace.Term;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * ISO 13855:2024 where no kind of safeguard has cases for it, and with values from a copy. The figures of copies are constructed:
 * nobody read them anywhere.
 */
class Iso13855Ed2024Test {

    private static final String ID = "iso-13855-2024.";

    private static PositioningStandard edition(Read... read) {
        return new Iso13855Ed2024().reading(new CopyValues(List.of(read)));
    }

    private static PositioningStandard of2010() {
        return (PositioningStandard) Editions.of("ISO 13855:2010").orElseThrow();
    }

    private static Read read(String id, CopyKey key, String is) {
        return new Read(
                id,
                key,
                Quantity.millimetres(is),
                "cl. 6",
                "I. Lorne",
                "2026-10-02",
                "a licensed copy",
                "standards.yaml:9:5");
    }

    private static Read forDevice(String id, String is) {
        return read(ID + id, new CopyKey.OfSafeguard("device"), is);
    }

    private static Read cell(String id, String hazard, String edge, String is) {
        return read(id, new CopyKey.Heights(Quantity.millimetres(hazard), Quantity.millimetres(edge)), is);
    }

    private static Approach approach(String tag, String time, String installed) {
        Term overall = given("T", time);
        return new Approach(
                tag,
                new Timing(overall, List.of(), List.of(overall), Optional.empty()),
                given("a_1", "800 mm"),
                given("a_2", "1300 mm"),
                given("X", installed));
    }

    private static Approach approach(String time, String installed) {
        return approach("device", time, installed);
    }

    private static Position curtain(PositioningStandard edition, Approach at, String... supplements) {
        return edition.perpendicular(new PerpendicularField(
                        at,
                        given("d", "30 mm"),
                        given("e", "300 mm"),
                        given("b", "1450 mm"),
                        Stream.of(supplements).<Term>map(z -> given("Z", z)).toList(),
                        false))
                .orElseThrow();
    }

    private static Quantity distance(Position position) {
        return position.distance().value().orElseThrow();
    }

    private static Quantity mm(String millimetres) {
        return Quantity.millimetres(millimetres);
    }

    /**
     * 550 mm and with a shroud none, then 100 mm at least: GT Engineering, EN ISO 13855, 8 two-hand control devices (text of 2024);
     * Odrade, stop time measurement in 2025, what has changed (550 mm instead of 250 mm). Inputs constructed.
     */
    @ParameterizedTest
    @CsvSource({"60 ms, false, 646", "60 ms, true, 100", "100 ms, true, 160"})
    void twoHandControl(String time, boolean shrouded, String expected) {
        Position position = edition()
                .twoHandControl(new TwoHandControl(approach(time, "900 mm"), shrouded, Optional.empty()))
                .orElseThrow();

        assertThat(distance(position)).isEqualTo(mm(expected));
        assertThat(position.open()).isEmpty();
        assertThat(position.distance().references()).noneMatch(Reference::fromMemory);
    }

    @Test
    void aTwoHandControlStandsThreeHundredMillimetresFurtherAwayThanIn2010() {
        TwoHandControl control = new TwoHandControl(approach("60 ms", "900 mm"), false, Optional.empty());

        assertThat(distance(edition().twoHandControl(control).orElseThrow())
                        .minus(distance(of2010().twoHandControl(control).orElseThrow())))
                .isEqualTo(mm("300"));
    }

    /** GT Engineering, positioning of pressure-sensitive mats or floors, for the floor; inputs constructed. */
    @Test
    void aMatOnAStepHasNothingTakenOff() {
        Position floor = edition()
                .mat(new Mat(approach("187.5 ms", "2000 mm"), given("H", "0 mm")))
                .orElseThrow();
        Position step = edition()
                .mat(new Mat(approach("187.5 ms", "2000 mm"), given("H", "200 mm")))
                .orElseThrow();

        assertThat(distance(floor)).isEqualTo(mm("1500"));
        assertThat(distance(step)).isEqualTo(mm("1500"));
        assertThat(floor.remarks()).isEmpty();
        assertThat(step.remarks()).singleElement().asString().contains("nothing is taken off");
        assertThat(step.limit("least-width").orElseThrow().value()).contains(mm("750"));
        assertThat(step.distance().references()).allMatch(Reference::fromMemory);
    }

    /** GT Engineering, EN ISO 13855, 9 interlocking guards without guard locking; that the lock's time counts is from memory. */
    @Test
    void aGuardThatIsHeldStandsOnMemory() {
        Position free = edition()
                .interlockedGuard(
                        new InterlockedGuard(approach("300 ms", "900 mm"), given("D_GT", "120 mm"), Optional.empty()))
                .orElseThrow();
        Position held = edition()
                .interlockedGuard(new InterlockedGuard(
                        approach("300 ms", "900 mm"), given("D_GT", "120 mm"), Optional.of(given("t_L", "200 ms"))))
                .orElseThrow();

        assertThat(distance(free)).isEqualTo(mm("600"));
        assertThat(distance(held)).isEqualTo(mm("280"));
        assertThat(free.distance().references()).noneMatch(Reference::fromMemory);
        assertThat(held.distance().references()).allMatch(Reference::fromMemory);
    }

    /** Ten runs: Odrade, stop time measurement in 2025, what has changed. The evaluation is from memory. */
    @Test
    void stopsAreMeasuredTenTimes() {
        StopMeasurement measurement = edition().stopMeasurement().orElseThrow();

        assertThat(measurement.leastRuns().quantity()).hasToString("10");
        assertThat(measurement.leastRuns().reference().fromMemory()).isFalse();
        assertThat(measurement.deviations().reference().fromMemory()).isTrue();
    }

    /** The reach is from memory, as in 2010. */
    @ParameterizedTest
    @CsvSource({"'400,900', 1330", "'300,600,900,1200', 1330", "750, 1680"})
    void ofBeamsOnlyALowerBoundIsKnown(String heights, String expected) {
        List<Term> beams = Stream.of(heights.split(","))
                .<Term>map(height -> given("h", height + " mm"))
                .toList();
        Position position =
                edition().beams(new Beams(approach("300 ms", "5000 mm"), beams)).orElseThrow();

        assertThat(distance(position)).isEqualTo(mm(expected));
        assertThat(position.distance().name()).isEqualTo("lower-bound");
        assertThat(position.open()).isPresent();
    }

    @Test
    void aLowerBoundAllowsNoTimeAndSaysWhatIsMissing() {
        Position position = curtain(edition(), approach("150 ms", "5000 mm"), "20 mm");

        assertThat(distance(position)).isEqualTo(mm("448"));
        assertThat(position.longestTime().orElseThrow().value()).isEmpty();
        assertThat(position.part("reach-through").words()).isEqualTo("known part of the reaching distance through it");
        assertThat(position.open().orElseThrow().help())
                .contains("reach-through", "reach-over", "reach-under", "for: device");
    }

    /** Each of them alone leaves it open; the greatest of those known counts. */
    @Test
    void threeValuesFromACopyCompleteIt() {
        Approach at = approach("device.iso-13855-2024", "150 ms", "600 mm");
        Position two = curtain(edition(forDevice("reach-through", "90"), forDevice("reach-over", "300")), at);
        Position three = curtain(
                edition(
                        forDevice("reach-through", "90"),
                        forDevice("reach-over", "300"),
                        forDevice("reach-under", "60")),
                at,
                "10 mm");

        assertThat(two.part("reach-through").words()).isEqualTo("reaching distance through it");
        assertThat(two.part("reaching-distance").words()).isEqualTo("lower bound of the reaching distance");
        assertThat(three.part("reaching-distance").words()).isEqualTo("reaching distance");
        assertThat(two.open().orElseThrow().help())
                .contains("reach-under")
                .doesNotContain("reach-over", "reach-through");
        assertThat(distance(two)).isEqualTo(mm("540"));
        assertThat(three.open()).isEmpty();
        assertThat(three.distance().name()).isEqualTo("separation-distance");
        assertThat(distance(three)).isEqualTo(mm("550"));
        assertThat(three.longestTime().orElseThrow().rounded()).contains(Quantity.seconds("0.181"));
        assertThat(three.distance().references())
                .filteredOn(reference -> reference.id().startsWith(ID + "reach-"))
                .hasSize(3)
                .allMatch(reference -> reference.standing() instanceof ReadInCopy)
                .anyMatch(reference -> reference.name().endsWith("`device`"));
    }

    @Test
    void theValuesOfAnotherSafeguardAreNotTaken() {
        Position position = curtain(
                edition(
                        forDevice("reach-through", "90"),
                        forDevice("reach-over", "300"),
                        forDevice("reach-under", "60")),
                approach("another", "150 ms", "600 mm"));

        assertThat(position.open()).isPresent();
        assertThat(distance(position)).isEqualTo(mm("428"));
    }

    /** The zone from 800 mm to 1300 mm lies between the rows 600 mm and 1400 mm, the edge at 1450 mm in the column of 1400 mm. */
    @Test
    void reachingOverLivesFromTheRowsThatWereRead() {
        Read[] spanning = {
            cell(ID + "reach-over", "600", "1400", "10"),
            cell(ID + "reach-over", "1000", "1400", "700"),
            cell(ID + "reach-over", "1400", "1400", "650"),
            cell(ID + "reach-over", "1000", "1600", "900"),
            cell(ID + "reach-over", "1800", "1400", "990"),
        };
        Term over = curtain(edition(spanning), approach("150 ms", "5000 mm"))
                .part("reach-over")
                .expression();
        Term notSpanned = curtain(edition(spanning[0], spanning[1], spanning[3]), approach("150 ms", "5000 mm"))
                .part("reach-over")
                .expression();

        assertThat(over.value()).contains(mm("700"));
        assertThat(over.operands()).hasSize(3);
        assertThat(notSpanned.value()).isEmpty();
    }

    /** A height that is just that of a row or column is looked up there and nowhere else; one above the highest row is not known. */
    @Test
    void reachingOverAtTheHeightsThatWereRead() {
        PositioningStandard edition = edition(
                cell(ID + "reach-over", "600", "1450", "910"),
                cell(ID + "reach-over", "800", "1450", "700"),
                cell(ID + "reach-over", "1300", "1450", "650"),
                cell(ID + "reach-over", "1400", "1450", "920"));

        assertThat(curtain(edition, approach("150 ms", "5000 mm"))
                        .part("reach-over")
                        .value())
                .contains(mm("700"));
        assertThat(curtain(
                                edition(
                                        cell(ID + "reach-over", "800", "1450", "700"),
                                        cell(ID + "reach-over", "1300", "1450", "750")),
                                approach("150 ms", "5000 mm"))
                        .part("reach-over")
                        .value())
                .contains(mm("750"));
        assertThat(curtain(
                                edition(
                                        cell(ID + "reach-over", "800", "1450", "700"),
                                        cell(ID + "reach-over", "1299", "1450", "650")),
                                approach("150 ms", "5000 mm"))
                        .part("reach-over")
                        .value())
                .isEmpty();
    }

    /** Every cell of a table that is held from memory can be told from a copy. */
    @Test
    void everyCellOfATableIsAskedFor() {
        Asked asked = HeightTable.load(
                        "iso-13855-2010-table-1.csv",
                        "c",
                        new Reference("table", "a table", new Clause("an edition", "table 1"), new FromMemory("")),
                        CopyValues.NONE)
                .asked()
                .get(0);

        assertThat(asked.ours()).hasSize(15 * 12).containsEntry(new CopyKey.Heights(mm("1200"), mm("1300")), mm("850"));
    }

    @Test
    void aValueFromMemoryGivesWayToTheCopyAndAPublishedOneDoesNot() {
        ParallelField field =
                new ParallelField(approach("300 ms", "5000 mm"), given("d", "50 mm"), given("H", "200 mm"), List.of());
        Position position = edition(
                        new Read(
                                ID + "approach-speed-walking",
                                new CopyKey.Whole(),
                                AsWritten.quantity("1700 mm/s"),
                                "cl. 5",
                                "I. Lorne",
                                "2026-10-02",
                                "a licensed copy",
                                "standards.yaml:9:5"),
                        read(ID + "parallel-reach", new CopyKey.Whole(), "900"))
                .parallel(field)
                .orElseThrow();

        assertThat(distance(position)).isEqualTo(mm("1710"));
        assertThat(position.distance().references())
                .filteredOn(reference -> reference.id().endsWith("approach-speed-walking"))
                .singleElement()
                .satisfies(reference -> {
                    assertThat(reference.clause()).hasToString("ISO 13855:2024, cl. 5");
                    assertThat(reference.standing().words())
                            .isEqualTo("read in a copy (a licensed copy) by I. Lorne on 2026-10-02, stated at"
                                    + " standards.yaml:9:5; here from memory 1600 mm/s, theirs is 100 mm/s more");
                });
    }

    /** A factor is written as the figure that was read. */
    @Test
    void aFactorFromACopyStandsInTheFormula() {
        Read factor = new Read(
                ID + "resolution-factor",
                new CopyKey.Whole(),
                Quantity.count(9),
                "cl. 6",
                "I. Lorne",
                "2026-10-02",
                "a licensed copy",
                "standards.yaml:9:5");

        assertThat(curtain(edition(factor), approach("150 ms", "5000 mm"))
                        .part("reach-through")
                        .expression()
                        .symbols())
                .isEqualTo("max(9 · (d − 14 mm); 0 mm)");
    }

    /** A cell that was read stands for the one held from memory; it is theirs only when every row it was compared with is. */
    @Test
    void cellsOfATableFromMemory() {
        Read lower = cell("table", "1000", "1400", "900");
        Read upper = cell("table", "1200", "1400", "810");

        Term mixed = over(lower);
        Term theirs = over(lower, upper);

        assertThat(over().value()).contains(mm("800"));
        assertThat(mixed.value()).contains(mm("900"));
        assertThat(references(mixed))
                .singleElement()
                .satisfies(reference -> assertThat(reference.standing().words())
                        .isEqualTo("from memory; the cell for a hazard at 1000 mm and an edge at 1400 mm read in a copy"
                                + " (a licensed copy) by I. Lorne on 2026-10-02, stated at standards.yaml:9:5; here from"
                                + " memory 700 mm, theirs is 200 mm more"));
        assertThat(theirs.value()).contains(mm("900"));
        assertThat(references(theirs))
                .singleElement()
                .satisfies(reference -> assertThat(reference.standing().words())
                        .endsWith("here from memory 700 mm, theirs is 200 mm more"));
    }

    private static Term over(Read... read) {
        return HeightTable.load(
                        "iso-13855-2010-table-1.csv",
                        "c",
                        new Reference("table", "a table", new Clause("an edition", "table 1"), new FromMemory("")),
                        new CopyValues(List.of(read)))
                .reach(given("a_1", "1000 mm"), given("a_2", "1100 mm"), given("b", "1450 mm"));
    }

    private static List<Reference> references(Term term) {
        return List.of(((Lookup) term).reference());
    }

    static Stream<int[]> fields() {
        Random random = new Random(2024);
        return IntStream.range(0, 300)
                .mapToObj(i -> new int[] {random.nextInt(20000), 100 + random.nextInt(700), random.nextInt(10001)});
    }

    /** Time in tenths of a millisecond, resolution and height in tenths of a millimetre. */
    @ParameterizedTest
    @MethodSource("fields")
    void alongItsPlaneAFieldNeverStandsNearerThanIn2010(int[] field) {
        ParallelField parallel = new ParallelField(
                approach(BigDecimal.valueOf(field[0], 1) + " ms", "5000 mm"),
                given("d", BigDecimal.valueOf(field[1], 1) + " mm"),
                given("H", BigDecimal.valueOf(field[2], 1) + " mm"),
                List.of(given("Z", "100 mm")));

        assertThat(distance(edition().parallel(parallel).orElseThrow()))
                .isGreaterThanOrEqualTo(distance(of2010().parallel(parallel).orElseThrow()));
    }

    /**
     * B-13: EVS, catalogue entry of EN ISO 13855:2025. B-10: Odrade, stop time measurement in 2025, what has changed. What is read
     * in them and is no figure is printed beside the working.
     */
    @Test
    void whatEveryReaderHasToKnow() {
        assertThat(curtain(edition(), approach("150 ms", "5000 mm")).limit("greatest-gap-behind"))
                .isPresent();
        assertThat(edition().remark().orElseThrow())
                .contains("persons from 14 years on", "running, jumping and falling", "measured cold and warm");
        assertThat(curtain(edition(), approach("150 ms", "5000 mm")).remarks())
                .anySatisfy(remark -> assertThat(remark).contains("greatest of reaching through, over and under"));
        assertThat(edition()
                        .interlockedGuard(new InterlockedGuard(
                                approach("300 ms", "900 mm"), given("D_GT", "120 mm"), Optional.empty()))
                        .orElseThrow()
                        .remarks())
                .singleElement()
                .asString()
                .contains("ISO 13857:2019");
    }

    @Test
    void everyIdIsAskedForOnce() {
        assertThat(Editions.askedIds())
                .doesNotHaveDuplicates()
                .contains(ID + "reach-over", "iso-13855-2010.two-hand-intrusion");
    }
}
