package org.cellfile.standard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cellfile.cases.AsWritten.given;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.cellfile.cases.AsWritten;
import org.cellfile.quantity.Quantity;
import org.cellfile.standard.CopyValues.Read;
import org.cellfile.standard.PositioningStandard.ParallelField;
import org.cellfile.standard.PositioningStandard.TwoHandControl;
import org.cellfile.standard.ReachStandard.Opening;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Lookup;
import org.cellfile.trace.Reference;
import org.cellfile.trace.Standing.NotPublic;
import org.cellfile.trace.Standing.ReadInCopy;
import org.cellfile.trace.Term;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A value that was read in a copy takes the place of the one from memory in exactly the lookups that hit it. The figures of copies
 * are constructed: nobody read them anywhere. What is held here is compared with the transcription in {@link Tables}.
 */
class CopiedTablesTest {

    private static final List<String> SHAPES = List.of("slot", "square", "round");

    private static Read read(String id, CopyKey key, String is) {
        return read(id, key, AsWritten.quantity(is));
    }

    private static Read read(String id, CopyKey key, Quantity is) {
        return new Read(
                id, key, is, "table of the copy", "I. Lorne", "2026-10-02", "a licensed copy", "standards.yaml:9:5");
    }

    private static <E extends Edition> E edition(Class<E> subject, String id, Read... read) {
        return subject.cast(new CopyValues(List.of(read)).into(Editions.of(id).orElseThrow()));
    }

    private static ReachStandard reach(String id, Read... read) {
        return edition(ReachStandard.class, id, read);
    }

    private static CopyKey heights(int hazard, int edge) {
        return new CopyKey.Heights(mm(hazard), mm(edge));
    }

    private static CopyKey opening(String shape, int upTo) {
        return new CopyKey.Opening(Optional.of(shape), mm(upTo));
    }

    private static Quantity mm(int millimetres) {
        return Quantity.millimetres("" + millimetres);
    }

    private static Optional<Quantity> over(ReachStandard edition, int lowest, int highest, int edge) {
        return edition.over(given("a_1", lowest + " mm"), given("a_2", highest + " mm"), given("b", edge + " mm"))
                .orElseThrow()
                .value();
    }

    /** Every cell of table 2 once, each against every other one. */
    @Test
    void oneCellOverAStructureChangesNoOther() {
        Tables.Heights printed = Tables.OVER_A_STRUCTURE;
        for (int hazard : printed.hazards()) {
            for (int edge : printed.edges()) {
                Read cell = read("iso-13857-2008.reach-over", heights(hazard, edge), "1234 mm");
                ReachStandard theirs = reach("ISO 13857:2008", cell);
                for (int otherHazard : printed.hazards()) {
                    for (int otherEdge : printed.edges()) {
                        int expected = hazard == otherHazard && edge == otherEdge
                                ? 1234
                                : printed.cell(otherHazard, otherEdge);
                        assertThat(over(theirs, otherHazard, otherHazard, otherEdge))
                                .contains(mm(expected));
                    }
                }
                assertThat(over(reach("ISO 13857:2019", cell), hazard, hazard, edge))
                        .contains(mm(printed.cell(hazard, edge)));
            }
        }
    }

    /** Between the heights that are printed: as if the cell stood in the printed table. */
    @Test
    void zonesBetweenTheRowsSeeTheCellAsIfItWerePrinted() {
        Random random = new Random(13857);
        Tables.Heights printed = Tables.OVER_A_STRUCTURE;
        for (int i = 0; i < 500; i++) {
            int row = random.nextInt(printed.hazards().size());
            int column = random.nextInt(printed.edges().size());
            int is = 10 * random.nextInt(160);
            List<List<Integer>> rows = new ArrayList<>();
            printed.rows().forEach(one -> rows.add(new ArrayList<>(one)));
            rows.get(row).set(1 + column, is);
            Read cell = read(
                    "iso-13857-2019.reach-over",
                    heights(printed.hazards().get(row), printed.edges().get(column)),
                    is + " mm");
            int lowest = random.nextInt(2600);
            int highest = lowest + random.nextInt(2700 - lowest);
            int edge = 1000 + random.nextInt(1800);

            assertThat(over(reach("ISO 13857:2019", cell), lowest, highest, edge))
                    .contains(mm(new Tables.Heights(printed.edges(), rows).reach(lowest, highest, edge)));
        }
    }

    /** Every cell of table 7 that is from memory once, against every shape at both ends of every row. */
    @Test
    void oneCellWithLegsChangesNoOther() {
        List<List<Integer>> printed = Tables.THROUGH_WITH_LEGS;
        for (int row = 0; row < printed.size(); row++) {
            for (String shape : SHAPES) {
                int upTo = printed.get(row).get(0);
                if (printed.get(row).get(1 + SHAPES.indexOf(shape)) < 0 || (upTo == 180 && shape.equals("slot"))) {
                    continue;
                }
                ReachStandard theirs = reach(
                        "ISO 13857:2008", read("iso-13857-2008.reach-with-legs", opening(shape, upTo), "1234 mm"));
                for (int other = 0; other < printed.size(); other++) {
                    for (String otherShape : SHAPES) {
                        boolean hit = other == row && otherShape.equals(shape);
                        int ours = printed.get(other).get(1 + SHAPES.indexOf(otherShape));
                        String above =
                                other == 0 ? "0.001" : printed.get(other - 1).get(0) + ".001";
                        for (String size :
                                List.of(above, "" + printed.get(other).get(0))) {
                            Term term = withLegs(theirs, otherShape, size + " mm", Optional.empty());
                            assertThat(term.value())
                                    .isEqualTo(
                                            hit
                                                    ? Optional.of(mm(1234))
                                                    : Optional.of(mm(ours)).filter(one -> ours >= 0));
                            assertThat(isRead(term)).isEqualTo(hit);
                        }
                    }
                }
            }
        }
    }

    private static Term withLegs(ReachStandard edition, String shape, String size, Optional<String> length) {
        return edition.throughWithLegs(new Opening(shape, given("e", size), length.map(one -> given("l", one))))
                .orElseThrow();
    }

    private static boolean isRead(Term term) {
        return term instanceof Lookup lookup && lookup.reference().standing() instanceof ReadInCopy;
    }

    @Test
    void aShortSlotHasACellOfItsOwn() {
        ReachStandard theirs = reach(
                "ISO 13857:2008",
                read("iso-13857-2008.reach-with-legs", opening("short-slot", 35), "60 mm"),
                read("iso-13857-2008.reach-with-legs", opening("slot", 60), "190 mm"));

        assertThat(withLegs(theirs, "slot", "35 mm", Optional.of("75 mm")).value())
                .contains(mm(60));
        assertThat(withLegs(theirs, "slot", "35 mm", Optional.of("75.001 mm")).value())
                .contains(mm(80));
        assertThat(withLegs(theirs, "slot", "35 mm", Optional.empty()).value()).contains(mm(80));
        assertThat(withLegs(theirs, "slot", "35.001 mm", Optional.of("75 mm")).value())
                .contains(mm(190));
    }

    /** What was published stands, whatever a copy is said to say; that the two differ is refused elsewhere. */
    @Test
    void publishedCellsStand() {
        ReachStandard theirs = reach(
                "ISO 13857:2008",
                read("iso-13857-2008.reach-through", opening("square", 40), "220 mm"),
                read("iso-13857-2008.reach-with-legs-slot", opening("slot", 180), "900 mm"),
                read("iso-13857-2008.reach-around", new CopyKey.Whole(), "800 mm"),
                read("iso-13857-2008.body-through-slot", new CopyKey.Whole(), "170 mm"));

        assertThat(theirs.through(new Opening("square", given("e", "40 mm"), Optional.empty()))
                        .orElseThrow()
                        .value())
                .contains(mm(200));
        assertThat(withLegs(theirs, "slot", "180 mm", Optional.empty()).value()).contains(mm(1100));
        assertThat(theirs.around("shoulder").orElseThrow().value()).contains(mm(850));
        assertThat(theirs.widestWithoutBody("slot").orElseThrow().quantity()).isEqualTo(mm(180));
        for (String part : CrushingStandard.PARTS) {
            CopyKey key = new CopyKey.Row("body-part", part);
            assertThat(edition(CrushingStandard.class, "ISO 13854:2017", read("iso-13854-2017.least-gap", key, "1 mm"))
                            .leastGap(part))
                    .isEqualTo(edition(CrushingStandard.class, "ISO 13854:2017").leastGap(part));
        }
    }

    @ParameterizedTest
    @CsvSource({"elbow", "wrist", "knuckles"})
    void oneSupportChangesNoOther(String support) {
        ReachStandard theirs = reach(
                "ISO 13857:2019",
                read("iso-13857-2019.reach-around-supported", new CopyKey.Row("support", support), "333 mm"));

        Tables.AROUND_AN_END.forEach((other, printed) -> assertThat(
                        theirs.around(other).orElseThrow().value())
                .contains(mm(other.equals(support) ? 333 : printed)));
    }

    /** Table O-10, in inches: greatest width of a row and its distance; the first and the last two are from memory. */
    @Test
    void openingsOfAGuardByTheirWidth() {
        Map<String, String> fromMemory = Map.of("0.25", "0.5", "1.875", "15.5", "2.125", "17.5");
        fromMemory.forEach((width, ours) -> {
            CopyKey key = new CopyKey.Opening(Optional.empty(), AsWritten.quantity(width + " in"));
            ReachStandard theirs = reach("29 CFR 1910.217", read("29-cfr-1910-217.openings-from-memory", key, "14 in"));
            fromMemory.forEach((other, held) -> assertThat(guard(theirs, other + " in"))
                    .contains(AsWritten.quantity((other.equals(width) ? "14" : held) + " in")));
            assertThat(guard(theirs, "0.375 in")).contains(AsWritten.quantity("1.5 in"));
        });
        CopyKey published = new CopyKey.Opening(Optional.empty(), AsWritten.quantity("0.375 in"));
        assertThat(guard(reach("29 CFR 1910.217", read("29-cfr-1910-217.openings", published, "2 in")), "0.375 in"))
                .contains(AsWritten.quantity("1.5 in"));
    }

    private static Optional<Quantity> guard(ReachStandard edition, String opening) {
        return edition.through(new Opening("slot", given("e", opening), Optional.empty()))
                .orElseThrow()
                .value();
    }

    static Stream<Arguments> singleValues() {
        String robots = "ansi-r15-06-2012.";
        return Stream.of(
                Arguments.of(robots + "manual-reduced-speed", AsWritten.quantity("9 in/s"), (Taken)
                        read -> robot("ANSI R15.06:2012", read).manualReducedSpeed()),
                Arguments.of(robots + "enabling-positions", Quantity.count(4), (Taken)
                        read -> robot("ANSI R15.06:2012", read).enablingPositions()),
                Arguments.of(robots + "fence-height", AsWritten.quantity("60 in"), (Taken)
                        read -> edition(RobotCellStandard.class, "ANSI R15.06:2012", read)
                                .leastFenceHeight()),
                Arguments.of(robots + "gap-below", AsWritten.quantity("6 in"), (Taken)
                        read -> edition(RobotCellStandard.class, "ANSI R15.06:2012", read)
                                .widestGapBelow()),
                Arguments.of("iso-10218-1-2011.enabling-positions", Quantity.count(4), (Taken)
                        read -> robot("ISO 10218-1:2011", read).enablingPositions()));
    }

    private interface Taken {
        Fixed with(Read... read);
    }

    private static RobotStandard robot(String id, Read... read) {
        return edition(RobotStandard.class, id, read);
    }

    @ParameterizedTest
    @MethodSource("singleValues")
    void aSingleValueFromMemoryGivesWay(String id, Quantity is, Taken taken) {
        Fixed theirs = taken.with(read(id, new CopyKey.Whole(), is));

        assertThat(theirs.quantity()).isEqualTo(is);
        assertThat(theirs.reference().standing()).isInstanceOf(ReadInCopy.class);
        assertThat(taken.with().reference().fromMemory()).isTrue();
        assertThat(theirs.reference().standing().words())
                .contains("here from memory " + taken.with().quantity().plain());
    }

    @Test
    void eachEndOfTheHeightsOfAnEmergencyStop() {
        EmergencyStopStandard theirs = edition(
                EmergencyStopStandard.class,
                "ISO 13850:2015",
                read("iso-13850-2015.actuator-height", new CopyKey.Row("bound", "greatest"), "1.8 m"));

        assertThat(theirs.greatestHeight().quantity()).isEqualTo(mm(1800));
        assertThat(theirs.greatestHeight().symbol()).isEqualTo("h_max");
        assertThat(theirs.greatestHeight().reference().name()).endsWith(" for the bound `greatest`");
        assertThat(theirs.leastHeight().quantity()).isEqualTo(mm(600));
        assertThat(theirs.leastHeight().reference().fromMemory()).isTrue();
    }

    /** 63 in/s times 0.2 s and a share of 20 % for the brake, and the penetration that was read; of a mat the published 48 in. */
    @Test
    void penetrationUnderTheRuleOfTheUnitedStates() {
        PositioningStandard theirs = edition(
                PositioningStandard.class,
                "ANSI B11.19:2019",
                read("ansi-b11-19-2019.parallel-penetration", new CopyKey.Whole(), "50 in"),
                read("ansi-b11-19-2019.two-hand-penetration", new CopyKey.Whole(), "2 in"),
                read("ansi-b11-19-2019.mat-penetration", new CopyKey.Whole(), "3 in"));
        Term time = given("T", "200 ms");
        Approach at = new Approach(
                "device",
                new Timing(time, List.of(), List.of(time), Optional.empty()),
                given("a_1", "0 mm"),
                given("a_2", "1000 mm"),
                given("X", "3000 mm"));

        assertThat(theirs.parallel(new ParallelField(at, given("d", "50 mm"), given("H", "0 mm"), List.of()))
                        .orElseThrow()
                        .distance()
                        .value())
                .contains(AsWritten.quantity("65.12 in"));
        assertThat(theirs.twoHandControl(new TwoHandControl(at, false, Optional.empty()))
                        .orElseThrow()
                        .distance()
                        .value())
                .contains(AsWritten.quantity("17.12 in"));
        assertThat(theirs.mat(new PositioningStandard.Mat(at, given("H", "0 mm")))
                        .orElseThrow()
                        .distance()
                        .value())
                .contains(AsWritten.quantity("63.12 in"));
    }

    /** The chart where a field starts the cycle stays a rule; its speed and its factor are values. */
    @Test
    void whereAFieldStartsTheCycle() {
        Edition press = Editions.of("29 CFR 1910.217").orElseThrow();

        assertThat(press.asked())
                .extracting(asked -> asked.reference().id())
                .contains(
                        "29-cfr-1910-217.starting-hand-speed",
                        "29-cfr-1910-217.starting-brake-factor",
                        "29-cfr-1910-217.openings",
                        "29-cfr-1910-217.openings-from-memory")
                .doesNotContain("29-cfr-1910-217.starting-penetration");
    }

    /** What is held here stays known, so that a copy is compared with it and not with itself. */
    @Test
    void whatIsHeldHereIsNotReplaced() {
        for (String id : Editions.ids()) {
            Edition edition = Editions.of(id).orElseThrow();
            List<Read> all = edition.asked().stream()
                    .flatMap(asked -> asked.ours().entrySet().stream()
                            .map(cell -> read(asked.reference().id(), cell.getKey(), cell.getValue())))
                    .toList();

            assertThat(new CopyValues(all).into(edition).asked())
                    .as(id)
                    .isNotEmpty()
                    .containsExactlyInAnyOrderElementsOf(edition.asked());
        }
    }

    /** A value that was published and can be told from a copy is always one that is held here. */
    @Test
    void everyPublishedValueCanBeHeldAgainstACopy() {
        assertThat(Editions.askedIds())
                .contains("en-574-1996.synchronous-actuation", "en-349-1993.least-gap", "iso-10218-2-2011.gap-below");
        for (String id : Editions.askedIds()) {
            Asked asked = Editions.asked(id).orElseThrow();
            Reference reference = asked.reference();
            assertThat(asked.ours().isEmpty()).as(id).isEqualTo(reference.standing() instanceof NotPublic);
        }
    }
}
