package org.cellfile.standard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cellfile.cases.AsWritten;
import org.cellfile.quantity.Quantity;
import org.cellfile.standard.PositioningStandard.PerpendicularField;
import org.cellfile.trace.Lookup;
import org.cellfile.trace.Term;
import org.cellfile.trace.Withheld;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The tables of the editions, cell by cell and between the cells, against the transcription in {@link Tables}. */
class TablesTest {

    private static final List<String> SHAPES = List.of("slot", "square", "round");

    private static Term overField(int lowest, int highest, String edge) {
        PositioningStandard edition =
                (PositioningStandard) Editions.of("ISO 13855:2010").orElseThrow();
        Term time = AsWritten.given("T", "0.1 s");
        return edition.perpendicular(new PerpendicularField(
                        new Approach(
                                "field",
                                new Timing(time, List.of(), List.of(time), Optional.empty()),
                                AsWritten.given("a_1", lowest + " mm"),
                                AsWritten.given("a_2", highest + " mm"),
                                AsWritten.given("X", "2000 mm")),
                        AsWritten.given("d", "14 mm"),
                        AsWritten.given("e", "300 mm"),
                        AsWritten.given("b", edge),
                        List.of(),
                        false))
                .orElseThrow()
                .part("reach-over")
                .expression();
    }

    private static ReachStandard reach(String edition) {
        return (ReachStandard) Editions.of(edition).orElseThrow();
    }

    private static Term overStructure(String edition, int lowest, int highest, String edge) {
        return reach(edition)
                .over(
                        AsWritten.given("a_1", lowest + " mm"),
                        AsWritten.given("a_2", highest + " mm"),
                        AsWritten.given("b", edge))
                .orElseThrow();
    }

    static Stream<Arguments> cellsOverAField() {
        return cells(Tables.OVER_A_FIELD);
    }

    static Stream<Arguments> cellsOverAStructure() {
        return cells(Tables.OVER_A_STRUCTURE);
    }

    private static Stream<Arguments> cells(Tables.Heights table) {
        return table.hazards().stream()
                .flatMap(hazard -> table.edges().stream().map(edge -> Arguments.of(hazard, edge)));
    }

    @ParameterizedTest
    @MethodSource("cellsOverAField")
    void overAFieldCellByCell(int hazard, int edge) {
        assertThat(overField(hazard, hazard, edge + " mm").value())
                .contains(Quantity.millimetres("" + Tables.OVER_A_FIELD.cell(hazard, edge)));
    }

    @ParameterizedTest
    @MethodSource("cellsOverAStructure")
    void overAStructureCellByCell(int hazard, int edge) {
        Quantity printed = Quantity.millimetres("" + Tables.OVER_A_STRUCTURE.cell(hazard, edge));
        assertThat(overStructure("ISO 13857:2008", hazard, hazard, edge + " mm").value())
                .contains(printed);
        assertThat(overStructure("ISO 13857:2019", hazard, hazard, edge + " mm").value())
                .contains(printed);
    }

    static Stream<Arguments> heights() {
        Random random = new Random(13855);
        return IntStream.range(0, 400).mapToObj(i -> {
            int lowest = random.nextInt(2800);
            return Arguments.of(lowest, lowest + random.nextInt(i % 2 == 0 ? 1 : 1500), 1000 + random.nextInt(1900));
        });
    }

    @ParameterizedTest
    @MethodSource("heights")
    void betweenTheCells(int lowest, int highest, int edge) {
        assertThat(overField(lowest, highest, edge + " mm").value())
                .contains(Quantity.millimetres("" + Tables.OVER_A_FIELD.reach(lowest, highest, edge)));
        assertThat(overStructure("ISO 13857:2008", lowest, highest, edge + " mm")
                        .value())
                .contains(Quantity.millimetres("" + Tables.OVER_A_STRUCTURE.reach(lowest, highest, edge)));
    }

    @ParameterizedTest
    @MethodSource("heights")
    void theRemarkNamesTheRowsAndTheColumn(int lowest, int highest, int edge) {
        int column = Tables.OVER_A_STRUCTURE.edges().stream()
                .filter(one -> one <= edge)
                .reduce((a, b) -> b)
                .orElseThrow();
        assertThat(overStructure("ISO 13857:2008", lowest, highest, edge + " mm"))
                .isInstanceOfSatisfying(
                        Lookup.class,
                        lookup -> assertThat(lookup.taken())
                                .contains("in the column " + column + " mm")
                                .contains("hazard from " + lowest + " mm to " + highest + " mm"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"899.9 mm", "0 mm"})
    void noEdgeBelowTheTableOfFields(String edge) {
        assertThat(overField(0, 1000, edge)).isInstanceOf(Withheld.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"999.9 mm", "0 mm"})
    void noStructureBelowTheTable(String edge) {
        assertThat(overStructure("ISO 13857:2019", 0, 1000, edge)).isInstanceOf(Withheld.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"ISO 13857:2008", "ISO 13857:2019"})
    void nothingFromHeightsThatAreNotKnown(String edition) {
        Term height = AsWritten.given("h", "1400 mm");
        Term unknown = AsWritten.missing("h");
        assertThat(reach(edition).over(unknown, height, height).orElseThrow().value())
                .isEmpty();
        assertThat(reach(edition).over(height, unknown, height).orElseThrow().value())
                .isEmpty();
        assertThat(reach(edition).over(height, height, unknown).orElseThrow().value())
                .isEmpty();
        assertThat(reach(edition)
                        .through(new ReachStandard.Opening("slot", unknown, Optional.empty()))
                        .orElseThrow()
                        .value())
                .isEmpty();
    }

    static Stream<Arguments> openings() {
        return Tables.THROUGH_AN_OPENING.stream()
                .flatMap(row -> SHAPES.stream()
                        .map(shape -> Arguments.of(shape, row.get(0), row.get(1 + SHAPES.indexOf(shape)))));
    }

    /** The largest opening of a row belongs to it; the smallest amount above it belongs to the next. */
    @ParameterizedTest
    @MethodSource("openings")
    void throughAnOpeningRowByRow(String shape, int largest, int printed) {
        int row = Tables.THROUGH_AN_OPENING.stream()
                .map(one -> one.get(0))
                .toList()
                .indexOf(largest);
        for (String edition : List.of("ISO 13857:2008", "ISO 13857:2019")) {
            assertThat(through(edition, shape, largest + " mm").value()).contains(Quantity.millimetres("" + printed));
            Term above = through(edition, shape, largest + ".001 mm");
            if (row + 1 < Tables.THROUGH_AN_OPENING.size()) {
                int next = Tables.THROUGH_AN_OPENING.get(row + 1).get(1 + SHAPES.indexOf(shape));
                assertThat(above.value()).contains(Quantity.millimetres("" + next));
            } else {
                assertThat(above).isInstanceOf(Withheld.class);
            }
        }
    }

    private static Term through(String edition, String shape, String opening) {
        return reach(edition)
                .through(new ReachStandard.Opening(shape, AsWritten.given("e", opening), Optional.empty()))
                .orElseThrow();
    }

    /** Every tenth of a millimetre, so that each bound is met from both sides. */
    @ParameterizedTest
    @ValueSource(strings = {"ISO 13857:2008", "ISO 13857:2019"})
    void throughAShortSlot(String edition) {
        for (int tenths = 1; tenths <= 1200; tenths++) {
            String size = tenths / 10 + "." + tenths % 10 + " mm";
            boolean relieved = tenths > 10 * Tables.THROUGH_A_SHORT_SLOT.get(0)
                    && tenths <= 10 * Tables.THROUGH_A_SHORT_SLOT.get(1);
            Optional<Quantity> usual = through(edition, "slot", size).value();
            assertThat(reach(edition, "slot", size, "65 mm"))
                    .isEqualTo(
                            relieved
                                    ? Optional.of(Quantity.millimetres("" + Tables.THROUGH_A_SHORT_SLOT.get(2)))
                                    : usual);
            assertThat(reach(edition, "slot", size, "65.001 mm")).isEqualTo(usual);
            assertThat(reach(edition, "square", size, "65 mm"))
                    .isEqualTo(through(edition, "square", size).value());
        }
    }

    private static Optional<Quantity> reach(String edition, String shape, String size, String length) {
        return reach(edition)
                .through(new ReachStandard.Opening(
                        shape, AsWritten.given("e", size), Optional.of(AsWritten.given("l", length))))
                .orElseThrow()
                .value();
    }

    /** The largest opening of a row belongs to it; the smallest amount above it belongs to the next. */
    @ParameterizedTest
    @ValueSource(strings = {"ISO 13857:2008", "ISO 13857:2019"})
    void withLegsRowByRow(String edition) {
        for (String shape : SHAPES) {
            int column = 1 + SHAPES.indexOf(shape);
            for (int row = 0; row < Tables.THROUGH_WITH_LEGS.size(); row++) {
                int largest = Tables.THROUGH_WITH_LEGS.get(row).get(0);
                assertThat(withLegs(edition, shape, largest + " mm", Optional.empty()))
                        .isEqualTo(printed(row, column));
                assertThat(withLegs(edition, shape, largest + ".001 mm", Optional.empty()))
                        .isEqualTo(printed(row + 1, column));
            }
        }
    }

    private static Optional<Quantity> printed(int row, int column) {
        return row == Tables.THROUGH_WITH_LEGS.size()
                        || Tables.THROUGH_WITH_LEGS.get(row).get(column) < 0
                ? Optional.empty()
                : Optional.of(Quantity.millimetres(
                        "" + Tables.THROUGH_WITH_LEGS.get(row).get(column)));
    }

    /** 50 mm up to 75 mm long: safety-products.de, safety distances; that it belongs to slots from 15 to 35 mm is from memory. */
    @ParameterizedTest
    @ValueSource(strings = {"ISO 13857:2008", "ISO 13857:2019"})
    void withLegsThroughAShortSlot(String edition) {
        Optional<Term> shortOne = Optional.of(AsWritten.given("l", "75 mm"));
        Optional<Term> longOne = Optional.of(AsWritten.given("l", "75.001 mm"));
        assertThat(withLegs(edition, "slot", "35 mm", shortOne)).contains(Quantity.millimetres("50"));
        assertThat(withLegs(edition, "slot", "35 mm", longOne)).contains(Quantity.millimetres("80"));
        assertThat(withLegs(edition, "slot", "35.001 mm", shortOne)).contains(Quantity.millimetres("180"));
        assertThat(withLegs(edition, "slot", "15 mm", shortOne)).contains(Quantity.millimetres("10"));
    }

    /** The tables once more, read just now, so that it does not matter what was read before. */
    @Test
    void theTablesAsTheyStandInTheirFiles() {
        Iso13857Tables tables = new Iso13857Tables("an edition", "id", CopyValues.NONE);
        Optional<Term> length = Optional.of(AsWritten.given("l", "65 mm"));

        assertThat(tables.through(new ReachStandard.Opening("slot", AsWritten.given("e", "30 mm"), length))
                        .value())
                .contains(Quantity.millimetres("200"));
        assertThat(tables.through(new ReachStandard.Opening("square", AsWritten.given("e", "30 mm"), length))
                        .value())
                .contains(Quantity.millimetres("120"));
        assertThat(tables.throughWithLegs(
                                new ReachStandard.Opening("slot", AsWritten.given("e", "200 mm"), Optional.empty()))
                        .value())
                .isEmpty();
        assertThat(tables.over(
                                AsWritten.given("a_1", "1000 mm"),
                                AsWritten.given("a_2", "1000 mm"),
                                AsWritten.given("b", "1600 mm"))
                        .value())
                .contains(Quantity.millimetres("800"));
        assertThat(tables.around("elbow").value()).contains(Quantity.millimetres("550"));
        assertThat(new CrushingTable("an edition", "id", CopyValues.NONE)
                        .leastGap("leg")
                        .value())
                .contains(Quantity.millimetres("180"));
    }

    private static Optional<Quantity> withLegs(String edition, String shape, String size, Optional<Term> length) {
        return reach(edition)
                .throughWithLegs(new ReachStandard.Opening(shape, AsWritten.given("e", size), length))
                .orElseThrow()
                .value();
    }

    @ParameterizedTest
    @ValueSource(strings = {"ISO 13857:2008", "ISO 13857:2019"})
    void aroundAnEnd(String edition) {
        assertThat(ReachStandard.SUPPORTS).containsExactlyInAnyOrderElementsOf(Tables.AROUND_AN_END.keySet());
        Tables.AROUND_AN_END.forEach((support, printed) -> assertThat(
                        reach(edition).around(support).orElseThrow().value())
                .contains(Quantity.millimetres("" + printed)));
    }

    /** 850 mm and the length of 300 mm: GT Engineering, EN ISO 13857 upper limbs; all else is from memory. */
    @ParameterizedTest
    @CsvSource({"shoulder,", "elbow, 300", "wrist, 620", "knuckles, 720"})
    void whatHoldsAnArmBackIsLongEnough(String support, @Nullable String length) {
        for (String edition : List.of("ISO 13857:2008", "ISO 13857:2019")) {
            assertThat(reach(edition).around(support).orElseThrow()).isInstanceOfSatisfying(Lookup.class, lookup -> {
                assertThat(lookup.taken())
                        .isEqualTo("s_r: the arm is held back up to the " + support
                                + (length == null ? "" : ", by something at least " + length + " mm long"));
                assertThat(lookup.reference().fromMemory()).isEqualTo(length != null);
            });
        }
    }

    /** A slot above 180 mm, a square or round opening above 240 mm: safety-products.de; ZT Grassberger, ISO 13857 table. */
    @ParameterizedTest
    @ValueSource(strings = {"ISO 13857:2008", "ISO 13857:2019"})
    void aBodyPassesWhereTheTableForLegsEnds(String edition) {
        for (String shape : SHAPES) {
            Quantity widest =
                    reach(edition).widestWithoutBody(shape).orElseThrow().quantity();
            assertThat(widest).isEqualTo(Quantity.millimetres(shape.equals("slot") ? "180" : "240"));
            assertThat(reach(edition)
                            .widestWithoutBody(shape)
                            .orElseThrow()
                            .reference()
                            .id())
                    .endsWith(shape.equals("slot") ? ".body-through-slot" : ".body-through-opening");
            assertThat(withLegs(edition, shape, widest.toString(), Optional.empty()))
                    .isPresent();
        }
    }
}
