package org.cellfile.subject.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cellfile.FolderWorld;
import org.cellfile.cell.Cell;
import org.cellfile.cell.Composition;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Block.Entry;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.dossier.Block.Facts;
import org.cellfile.dossier.Block.Section;
import org.cellfile.dossier.Block.WriteInLines;
import org.cellfile.dossier.Block.WriteInTable;
import org.cellfile.dossier.Form;
import org.cellfile.finding.Findings;
import org.cellfile.quantity.Quantity;
import org.cellfile.standard.StopMeasurement;
import org.cellfile.subject.safeguard.Safeguard;
import org.cellfile.trace.Fixed;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What stands on the blank forms of the demonstration cell, and on those of cells that differ from it. All figures are constructed. */
class FormsTest {

    private static final Path KETTLEBROOK = Path.of("..", "examples", "kettlebrook-palletising", "src", "main", "cell");

    @TempDir
    private Path folder;

    @BeforeEach
    void copyTheCell() throws IOException {
        try (Stream<Path> paths = Files.walk(KETTLEBROOK)) {
            for (Path path : paths.filter(Files::isRegularFile).toList()) {
                Path copy = folder.resolve(KETTLEBROOK.relativize(path).toString());
                Files.createDirectories(copy.getParent());
                Files.copy(path, copy);
            }
        }
    }

    private void change(String file, String from, String to) throws IOException {
        String text = Files.readString(folder.resolve(file));
        assertThat(text).contains(from);
        Files.writeString(folder.resolve(file), text.replace(from, to));
    }

    private Cell cell() {
        return Cell.read(FolderWorld.of(folder), new Findings()).orElseThrow();
    }

    private Form form(String id) {
        return Composition.compose(cell()).forms().stream()
                .filter(form -> form.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** Every block, those within sections too. */
    private static Stream<Block> blocks(List<Block> blocks) {
        return blocks.stream()
                .flatMap(block -> block instanceof Section section
                        ? Stream.concat(Stream.of(block), blocks(section.blocks()))
                        : Stream.of(block));
    }

    private static List<WriteInTable> tables(Form form, String caption) {
        return blocks(form.blocks())
                .filter(WriteInTable.class::isInstance)
                .map(WriteInTable.class::cast)
                .filter(table -> table.caption().startsWith(caption))
                .toList();
    }

    private static List<String> printed(List<Entry> row) {
        return row.stream().map(Entry::printed).toList();
    }

    /** The rows of the shift check about a thing. */
    private List<List<Entry>> checks(String tag) {
        return tables(form(ShiftCheck.ID), "The checks").get(0).rows().stream()
                .filter(row -> row.get(0).printed().startsWith(tag + "\n"))
                .toList();
    }

    /** The rows of the inspection about a test of a thing. */
    private List<List<Entry>> tests(String tag, String title) {
        return tables(form(YearlyInspection.ID), tag + ":").get(0).rows().stream()
                .filter(row -> row.get(0).printed().startsWith(title + "\n"))
                .toList();
    }

    @Test
    void everySafeguardIsCheckedEachShiftAndInspected() {
        for (Safeguard safeguard :
                cell().safeguards().stream().map(one -> one.safeguard()).toList()) {
            String tag = safeguard.tag().characters();
            assertThat(checks(tag)).as(tag).isNotEmpty();
            assertThat(tables(form(YearlyInspection.ID), tag + ":")).as(tag).hasSize(1);
        }
    }

    @Test
    void aCurtainIsTestedWithItsOwnRod() {
        assertThat(checks("curtain-lift"))
                .anySatisfy(row -> assertThat(printed(row))
                        .contains("30 mm")
                        .anySatisfy(text -> assertThat(text).contains("rod of 30 mm")));
        assertThat(checks("curtain-north"))
                .anySatisfy(row -> assertThat(printed(row))
                        .contains("14 mm")
                        .anySatisfy(text -> assertThat(text).contains("rod of 14 mm")));
        assertThat(tests("curtain-lift", "Detection with the test rod"))
                .singleElement()
                .satisfies(row -> {
                    assertThat(row.get(0).printed()).contains("rod of 30 mm");
                    assertThat(row.get(3)).isEqualTo(new Entry("Diameter used", "mm", List.of()));
                });
    }

    @Test
    void eachCheckHasTwoSquaresForEachOfFiveShifts() {
        assertThat(checks("curtain-north"))
                .allSatisfy(
                        row -> assertThat(row.subList(4, row.size())).hasSize(5).containsOnly(Entry.tick("yes", "no")));
        assertThat(tables(form(ShiftCheck.ID), "Who checked").get(0).rows()).hasSize(5);
    }

    @Test
    void inEachModeTheInspectionTellsWhatHasToHappen() {
        List<List<Entry>> rows = tests("curtain-north", "Stop of the movement");

        assertThat(rows).hasSize(2);
        assertThat(printed(rows.get(0)).subList(1, 3))
                .satisfies(texts -> assertThat(texts.get(0)).isEqualTo("automatic"))
                .satisfies(texts -> assertThat(texts.get(1))
                        .startsWith("The movement stops")
                        .endsWith("Triggers: protective stop, category 1, of robot-1."));
        assertThat(printed(rows.get(1)).subList(1, 3))
                .containsExactly(
                        "manual reduced speed",
                        "No reaction: it is suspended in this mode. In its place: reduced speed, enabling device, hold-to-run.");
    }

    @Test
    void aPathIsNeutralisedOnlyWhereTheDeviceHasToStopTheMachineAlone() {
        List<List<Entry>> rows = tests("curtain-north", "Stop of the movement");

        assertThat(rows.get(0).get(4)).isEqualTo(Entry.room());
        assertThat(rows.get(1).get(4)).isEqualTo(Entry.printed("–"));
        assertThat(tests("curtain-north", "Detection with the test rod").get(0).get(4))
                .isEqualTo(Entry.printed("–"));
    }

    @Test
    void whatNobodyStatedOfAModeIsSaidInPlaceOfAReaction() throws IOException {
        change("modes.yaml", "safeguards: {others: active}", "safeguards: {active: [curtain-lift]}");

        assertThat(tests("curtain-north", "Stop of the movement").get(0).get(2).printed())
                .startsWith("Not stated what becomes of it");
        assertThat(tests("curtain-lift", "Stop of the movement").get(0).get(2).printed())
                .startsWith("The movement stops");
    }

    @Test
    void whatMeansNothingInAModeIsNotTestedInIt() throws IOException {
        change(
                "modes.yaml",
                "safeguards: {others: active}",
                "safeguards: {others: active, not-applicable: [{safeguard: curtain-north, because: it is away}]}");
        change(
                "modes.yaml",
                "emergency-stops: [emergency-panel, emergency-magazine",
                "emergency-stops: [emergency-magazine");

        assertThat(tests("curtain-north", "Stop of the movement"))
                .singleElement()
                .satisfies(row -> assertThat(row.get(1).printed()).isEqualTo("manual reduced speed"));
        assertThat(tests("emergency-panel", "Stop by this device alone")).isEmpty();
        assertThat(tests("emergency-magazine", "Stop by this device alone")).hasSize(2);
        assertThat(tests("enabling-pendant", "Let go"))
                .singleElement()
                .satisfies(row -> assertThat(row.get(1).printed()).isEqualTo("manual reduced speed"));
    }

    @Test
    void theInspectionAsksForInstrumentsBypassesAndTheChecksumInTheFile() {
        Form form = form(YearlyInspection.ID);

        assertThat(tables(form, "Instruments")).hasSize(1);
        assertThat(tables(form, "Paths neutralised")).hasSize(1);
        assertThat(blocks(form.blocks())
                        .filter(WriteInLines.class::isInstance)
                        .flatMap(block -> ((WriteInLines) block).lines().stream())
                        .map(Block.Line::label))
                .contains(
                        "Occasion",
                        "Scope",
                        "Checksum of robot-1 as its screen shows it (in the file: "
                                + cell().identity()
                                        .robots()
                                        .get(0)
                                        .controller()
                                        .checksum()
                                        .characters()
                                + ")");
    }

    /** The facts printed about a stop, by label. */
    private static Fact fact(Form form, String stop, String label) {
        return blocks(form.blocks())
                .filter(block ->
                        block instanceof Section section && section.tag().equals(stop))
                .flatMap(block -> blocks(((Section) block).blocks()))
                .filter(Facts.class::isInstance)
                .flatMap(block -> ((Facts) block).facts().stream())
                .filter(fact -> fact.label().equals(label))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void everyConditionHasAsManyBlankRunsAsTheEditionAsks() {
        Cell cell = cell();
        Fixed asked =
                cell.identity().standards().stopMeasurement().orElseThrow().leastRuns();
        StopMeasurement stricter = new StopMeasurement(
                new Fixed(asked.symbol(), Quantity.count(12), asked.reference()),
                cell.identity().standards().stopMeasurement().orElseThrow().deviations(),
                Optional.empty());
        Form twelve = StopTimeMeasurement.form(cell.stops(), cell.safeguards(), stricter, cell.identity(), "J. Pellam");

        cell.stops()
                .forEach(stop -> stop.test().conditions().forEach(condition -> {
                    String caption = condition.tag() + ": ";
                    assertThat(tables(form(StopTimeMeasurement.ID), caption))
                            .singleElement()
                            .satisfies(table -> assertThat(table.rows()).hasSize(10));
                    assertThat(tables(twelve, caption).get(0).rows()).hasSize(12);
                }));
    }

    @Test
    void aConditionStandsOverItsRunsAndTheUnitsAreThoseOfTheFile() {
        WriteInTable pusher =
                tables(form(StopTimeMeasurement.ID), "stop-pusher.pusher-warm").get(0);

        assertThat(pusher.caption())
                .isEqualTo("stop-pusher.pusher-warm: push plate, 25 kg, 350 mm/s, extension 100 %, warm\n"
                        + "Triggered by: curtain-pusher interrupted with the 10 mm test rod");
        assertThat(pusher.columns())
                .extracting(Block.Column::title)
                .contains("Stopping time (ms)", "Stopping distance (mm)", "Speed (mm/s)");
        assertThat(pusher.rows().get(6).subList(1, 4)).containsOnly(Entry.room());
    }

    @Test
    void theLongestTimeAllowedIsTheLeastOfTheSafeguardsThatWaitForTheStop() {
        Cell cell = cell();
        Quantity least = cell.safeguards().stream()
                .filter(one -> one.safeguard().stopTests().stream()
                        .anyMatch(stop -> stop.characters().equals("stop-robot")))
                .map(one -> cell.derived().get(one.tag() + ".longest-stopping-time"))
                .flatMap(longest -> longest == null ? Stream.empty() : longest.rounded().stream())
                .min(Quantity::compareTo)
                .orElseThrow();

        Fact allowed = fact(form(StopTimeMeasurement.ID), "stop-robot", "Longest stopping time allowed");
        assertThat(allowed.value()).isEqualTo("at most " + least);
        assertThat(allowed.remark()).contains("curtain-north").endsWith("as of 2026-11-20");
        assertThat(fact(form(StopTimeMeasurement.ID), "stop-robot", "Carried forward")
                        .value())
                .isEqualTo("0.380 s and 430 mm");
    }

    @Test
    void whereOneSafeguardCannotTellHowLongNoTimeIsAllowed() throws IOException {
        change("safeguards.yaml", "{link: light curtain, time: 14 ms", "{link: light curtain, time: 14 s");

        Fact allowed = fact(form(StopTimeMeasurement.ID), "stop-robot", "Longest stopping time allowed");
        assertThat(allowed.value()).isEqualTo("cannot be told");
        assertThat(allowed.remark()).contains("curtain-north");
    }

    @Test
    void aStopThatNoSafeguardWaitsForAllowsAnyTime() throws IOException {
        Cell cell = cell();
        Form form = StopTimeMeasurement.form(
                cell.stops(),
                List.of(),
                cell.identity().standards().stopMeasurement().orElseThrow(),
                cell.identity(),
                "J. Pellam");

        assertThat(fact(form, "stop-lift", "Longest stopping time allowed"))
                .isEqualTo(new Fact("Longest stopping time allowed", "–", "no safeguard waits for this stop"));
    }

    @Test
    void aFormWithoutDevicesSaysSo() {
        Cell cell = cell();
        StopMeasurement rule = cell.identity().standards().stopMeasurement().orElseThrow();

        assertThat(ShiftCheck.form(List.of(), "J. Pellam").blocks())
                .contains(new Block.Paragraph(
                        "No device of this cell has a check that is done at the beginning of a shift."))
                .noneMatch(WriteInTable.class::isInstance);
        assertThat(YearlyInspection.form(List.of(), cell.modes(), List.of()).blocks())
                .contains(new Block.Paragraph("No device of this cell has a test that is done at intervals."))
                .noneMatch(WriteInTable.class::isInstance);
        assertThat(StopTimeMeasurement.form(List.of(), List.of(), rule, cell.identity(), "J. Pellam")
                        .blocks())
                .contains(new Block.Paragraph("No stop test is stated for this cell."))
                .noneMatch(Section.class::isInstance);
    }
}
