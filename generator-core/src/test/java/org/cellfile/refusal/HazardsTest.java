package org.cellfile.refusal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.cellfile.FolderWorld;
import org.cellfile.cell.Cell;
import org.cellfile.cell.Composition;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Block.Section;
import org.cellfile.dossier.Block.Table;
import org.cellfile.dossier.Chapter;
import org.cellfile.dossier.Sheet;
import org.cellfile.dossier.Sheet.Panel;
import org.cellfile.finding.Finding;
import org.cellfile.finding.Findings;
import org.cellfile.quantity.Quantity;
import org.cellfile.subject.hazard.Risk;
import org.cellfile.verdict.Verdict;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Hazards laid over the base cell, whose own hazards nobody finds fault with. All of them are constructed. */
class HazardsTest {

    private static final String PINCH = """
              - tag: pinch
                task: clearing a jam
                hazard: pinching by the gripper
                zones: [zone]
                before: {severity: S1, frequency: F1, avoidance: P2}
                measures:
                  - {sort: design, measure: closing force limited}
                  - {sort: safeguarding, measure: the gripper lets go, by: [door]}
                after: {severity: S1, frequency: F1, avoidance: P1}
                stated: {required-level: PL b}
            """;

    @TempDir
    private Path folder;

    @BeforeEach
    void start() throws IOException {
        Path hazards = BaseCell.copyTo(folder).resolve("hazards.yaml");
        Files.writeString(hazards, Files.readString(hazards) + PINCH);
    }

    private void change(String from, String to) throws IOException {
        BaseCell.change(folder, "hazards.yaml", from, to);
    }

    private List<Finding> found() {
        return BaseCell.check(folder).findings();
    }

    private List<String> ids() {
        return BaseCell.ids(found());
    }

    private Cell cell() {
        return Cell.read(FolderWorld.of(folder), new Findings()).orElseThrow();
    }

    private Risk pinch() {
        return cell().risks().stream()
                .filter(risk -> risk.tag().equals("pinch"))
                .findFirst()
                .orElseThrow();
    }

    /** The risk graph of ISO 13849-1, Annex A, transcribed from memory. */
    @ParameterizedTest
    @CsvSource({
        "S1, F1, P1, a",
        "S1, F1, P2, b",
        "S1, F2, P1, b",
        "S1, F2, P2, c",
        "S2, F1, P1, c",
        "S2, F1, P2, d",
        "S2, F2, P1, d",
        "S2, F2, P2, e"
    })
    void everyPathOfTheGraph(String severity, String frequency, String avoidance, String level) throws IOException {
        change(
                "before: {severity: S1, frequency: F1, avoidance: P2}\n    measures:\n      - {sort: design, measure: closing",
                "before: {severity: " + severity + ", frequency: " + frequency + ", avoidance: " + avoidance
                        + "}\n    measures:\n      - {sort: design, measure: closing");
        change("stated: {required-level: PL b}", "stated: {required-level: PL " + level + "}");

        assertThat(pinch().required().value()).contains(Quantity.level(level));
        assertThat(found()).extracting(Finding::about).doesNotContain("pinch");
    }

    @Test
    void oneOfThreeMoreChangesNothing() {
        assertThat(found()).isEmpty();
    }

    /** Each is told where it is written, and nothing more is made of it. */
    @ParameterizedTest
    @CsvSource({
        "severity, S1, S3",
        "severity, S1, s1",
        "frequency, F1, F0",
        "frequency, F1, S1",
        "avoidance, P2, P3",
        "avoidance, P2, possible"
    })
    void aLetterTheGraphDoesNotKnow(String key, String from, String to) throws IOException {
        changeBefore(key + ": " + from, key + ": " + to);

        assertThat(ids()).containsExactly("read.unknown-word");
        assertThat(pinch().required().value()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"severity: S1, ", "frequency: F1, ", ", avoidance: P2"})
    void aLetterThatIsMissing(String written) throws IOException {
        changeBefore(written, "");

        assertThat(ids()).containsExactly("read.missing-key");
        assertThat(pinch().required().value()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"severity: S1, ", "frequency: F1, ", ", avoidance: P1"})
    void aLetterThatIsMissingAfterTheMeasures(String written) throws IOException {
        changeIn("    after: {severity: S1, frequency: F1, avoidance: P1}", written, "");

        assertThat(ids()).containsExactly("read.missing-key");
    }

    private void changeBefore(String from, String to) throws IOException {
        changeIn("    before: {severity: S1, frequency: F1, avoidance: P2}", from, to);
    }

    private void changeIn(String line, String from, String to) throws IOException {
        assertThat(line).contains(from);
        change(line, line.replace(from, to));
    }

    /** What could not be read is told at its place, and nothing is made of it: not that it is missing, nor that a thing is left over. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "measures:\\n      - {sort: design, measure: closing|mesures:\\n      - {sort: design, measure: closing|read.unknown-key",
                "by: [door]}|buy: [door]}|read.unknown-key",
                "by: [door]}|by: door}|read.wrong-sort",
                "by: [door]}|by: [dor]}|tag.unknown",
                "sort: design, measure: closing|sort: desing, measure: closing|read.unknown-word",
                "by: [curtain, scanner, door, fence]|by: [curtain, scanner, door, fense]|tag.unknown",
                "zones: [zone]\\n    before: {severity: S1|zones: [zon]\\n    before: {severity: S1|tag.unknown",
                "by: [door]}|by: [zone]}|tag.another-sort",
                "required-level: PL b|required-level: b|quantity.not-a-number"
            })
    void whatCannotBeReadIsToldOnce(String from, String to, String id) throws IOException {
        change(from.replace("\\n", "\n"), to.replace("\\n", "\n"));

        assertThat(ids()).containsExactly(id);
    }

    @Test
    void measuresThatAreNoList() throws IOException {
        change(measures(), "    measures: none\n");

        assertThat(ids()).containsExactly("read.wrong-sort");
    }

    private static String measures() {
        return PINCH.substring(PINCH.indexOf("    measures:"), PINCH.indexOf("    after:"));
    }

    /** The safeguards of a hazard that lost its measures are not left over as well. */
    @Test
    void aHazardWithoutMeasuresLeavesNoSafeguardOver() throws IOException {
        change(
                "    measures:\n      - {sort: design, measure: \"edges",
                "    xx:\n      - {sort: design, measure: \"edges");

        assertThat(ids()).contains("hazard.no-measure").doesNotContain("safeguard.serves-no-hazard");
    }

    /** A measure whose sort could not be read may be one of design. */
    @Test
    void aMeasureOfAnUnreadSortMayBeWhyItHurtsLess() throws IOException {
        changeBefore("severity: S1", "severity: S2");
        change("stated: {required-level: PL b}", "stated: {required-level: PL d}");
        change("sort: design, measure: closing", "sort: other, measure: closing");

        assertThat(ids()).containsExactly("read.unknown-word");
    }

    @Test
    void severityMayFallByDesign() throws IOException {
        changeBefore("severity: S1", "severity: S2");
        change("stated: {required-level: PL b}", "stated: {required-level: PL d}");

        assertThat(ids()).isEmpty();
    }

    /** ISO 12100 counts complementary measures to the second step (from memory); they only never stand alone. */
    @Test
    void anEmergencyStopMayStandBesideASafeguard() throws IOException {
        change("by: [door]}", "by: [door, stop-panel]}");

        assertThat(ids()).noneMatch(id -> id.startsWith("hazard."));
    }

    @ParameterizedTest
    @ValueSource(strings = {"stop-pendant", "selector", "pendant", "reset-west"})
    void onlyAnEnablingDeviceSafeguards(String device) throws IOException {
        change("by: [door]}", "by: [" + device + "]}");
        assertThat(ids()).contains("hazard.names-no-safeguard");

        change("by: [" + device + "]}", "by: [enabling]}");
        assertThat(ids()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"hazards: none", "hazrds: []", "hazards:"})
    void hazardsThatCannotBeReadAreNotMissing(String written) throws IOException {
        Files.writeString(folder.resolve("hazards.yaml"), "cellfile: 1\n\n" + written + "\n");

        assertThat(ids()).anyMatch(id -> id.startsWith("read.")).doesNotContain("hazard.missing", "zone.no-hazard");
    }

    /** Without a risk graph a hazard has no level, and everything else about it is told all the same. */
    @Test
    void withoutARiskGraph() throws IOException {
        Files.delete(folder.resolve("functions.yaml"));
        BaseCell.withoutConfirmationsOfFunctions(folder);
        BaseCell.change(
                folder, "standards.yaml", "  - {edition: \"ISO 13849-1:2015\", applied-to: safety functions}\n", "");
        changeIn("    after: {severity: S1, frequency: F1, avoidance: P1}", "frequency: F1", "frequency: F2");
        change("    stated: {required-level: PL b}\n", "");

        assertThat(ids())
                .contains("standard.not-chosen", "hazard.worse-after")
                .doesNotContain("hazard.missing", "hazard.not-recorded");
    }

    /** What is posted stands on the sheet once, what is not does not. */
    @Test
    void whatRemainsIsPosted() throws IOException {
        String posted = "    residual:\n      - {risk: a carton can fall off the stack,"
                + " instruction: Stay out of reach of the stack while it is lifted., posted: yes}\n"
                + "      - {risk: fingers can be pinched, instruction: open the gripper first, posted: yes}\n";
        change("    stated: {required-level: PL b}", posted + "    stated: {required-level: PL b}");
        Verdict verdict = BaseCell.check(folder);
        Sheet sheet = automaticOperation();

        assertThat(verdict.findings()).isEmpty();
        assertThat(sheet.panels()).extracting(Panel::kind).startsWith(Sheet.Kind.HAZARD, Sheet.Kind.ACTION);
        assertThat(sheet.panels().get(0).lines())
                .endsWith(
                        List.of("A carton can fall off the stack. Stay out of reach of the stack while it is lifted."),
                        List.of("Fingers can be pinched. Open the gripper first."));
    }

    @Test
    void whatIsNotPostedStandsOnNoSheet() throws IOException {
        change("posted: yes", "posted: no");

        assertThat(automaticOperation().panels().get(0).lines())
                .isNotEmpty()
                .noneMatch(line -> line.get(0).contains("Stay out of reach"));
    }

    @Test
    void theChapterTellsMeasuresInTheThreeStepsAndWhatRemains() throws IOException {
        change("      - {sort: design, measure: closing force limited}\n", "");
        change(
                ", by: [door]}\n    after: {severity: S1",
                ", by: [door]}\n      - {sort: design, measure: closing force limited}\n    after: {severity: S1");
        Chapter chapter = Composition.compose(cell()).chapters().stream()
                .filter(one -> one.id().equals("risks"))
                .findFirst()
                .orElseThrow();

        assertThat(rows(chapter, "The hazards, and"))
                .contains(List.of(
                        "pinch",
                        "clearing a jam",
                        "zone",
                        "S1, F1, P2",
                        "PL b",
                        "1\u00a0design, 1\u00a0safeguarding, 0\u00a0information",
                        "S1, F1, P1"));
        assertThat(rows(chapter, "What is done"))
                .containsSubsequence(
                        List.of("1, inherently safe design", "closing force limited", "–"),
                        List.of("2, safeguarding", "the gripper lets go", "door"));
        assertThat(rows(chapter, "All that remains"))
                .extracting(row -> row.get(0) + ": " + row.get(3))
                .containsExactly("impact: posted at the cell", "impact-when-setting: in this file only");
        assertThat(rows(chapter, "What safeguards"))
                .contains(
                        List.of("door", "Door on the west side", "impact (PL d), pinch (PL b)"),
                        List.of("enabling", "Enabling device of the pendant", "impact-when-setting (PL d)"))
                .hasSize(5);
    }

    private static List<List<String>> rows(Chapter chapter, String caption) {
        return blocks(chapter.blocks())
                .filter(Table.class::isInstance)
                .map(Table.class::cast)
                .filter(table -> table.caption().startsWith(caption))
                .flatMap(table -> table.rows().stream())
                .toList();
    }

    private static Stream<Block> blocks(List<Block> blocks) {
        return blocks.stream()
                .flatMap(block -> block instanceof Section section ? blocks(section.blocks()) : Stream.of(block));
    }

    private Sheet automaticOperation() {
        return Composition.compose(cell()).sheets().stream()
                .filter(sheet -> sheet.id().equals("automatic-operation"))
                .findFirst()
                .orElseThrow();
    }
}
