package org.cellfile.refusal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cellfile.FolderWorld;
import org.cellfile.Generator;
import org.cellfile.cell.Cell;
import org.cellfile.cell.Composition;
import org.cellfile.dossier.Block.Table;
import org.cellfile.standard.Editions;
import org.cellfile.subject.safeguard.Guarding;
import org.cellfile.trace.Reference;
import org.cellfile.verdict.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Cells under more than one edition, and with values from a copy; each begins as a case of the refusals. */
class TwoEditionsTest {

    private static final String CONFIRMED =
            "  - {value: iso-13855-2024.approach-speed-arm, by: ilse, on: 2026-10-02, copy: licensed copy of Fennimoor}\n";

    /** The cases about positions leave the safety functions out. */
    private static final String WITHOUT_FUNCTIONS = "function.missing";

    private static final Clock DAY = Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC);

    @TempDir
    private Path folder;

    private Cell laidOver(String files) throws IOException {
        BaseCell.overlay(BaseCell.REFUSALS.resolve(files), folder);
        return cell();
    }

    /** The hazards of the base cell, for a case that left them out; nothing is missing with them. */
    private void withHazards() throws IOException {
        Files.copy(BaseCell.REFUSALS.resolve("base").resolve("hazards.yaml"), folder.resolve("hazards.yaml"));
        BaseCell.change(
                folder,
                "standards.yaml",
                "\nconfirmations:\n",
                "  - {edition: \"ISO 13849-1:2015\", applied-to: hazards}\n\nconfirmations:\n"
                        + "  - {value: iso-13849-1-2015.risk-graph, by: ilse, on: 2026-10-02, copy: licensed copy of"
                        + " Fennimoor}\n");
    }

    private Cell cell() {
        return new Generator().check(new FolderWorld(folder, DAY)).cell().orElseThrow();
    }

    private static Guarding safeguard(Cell cell, String tag) {
        return cell.safeguards().stream()
                .filter(one -> one.tag().equals(tag))
                .findFirst()
                .orElseThrow();
    }

    private static String shown(Guarding guarding) {
        return guarding.separationDistance().rounded().orElseThrow().toString();
    }

    /** The row of the register of a value: what it is, edition and clause, standing, who confirmed it. */
    private static List<List<String>> register(Cell cell, String id) {
        return Composition.compose(cell).chapters().stream()
                .filter(chapter -> chapter.id().equals("register"))
                .flatMap(chapter -> chapter.blocks().stream())
                .filter(Table.class::isInstance)
                .flatMap(table -> ((Table) table).rows().stream())
                .filter(row -> row.get(0).equals(id))
                .map(row -> row.subList(1, row.size()))
                .toList();
    }

    @Test
    void anEditionForOneSafeguardLeavesTheOthersAlone() throws IOException {
        Cell cell = laidOver("installed.too-close/one-hundred-and-twenty-more");

        assertThat(shown(safeguard(cell, "scanner"))).isEqualTo("1748 mm");
        assertThat(shown(safeguard(cell, "curtain"))).isEqualTo("931 mm");
        assertThat(safeguard(cell, "curtain").governing().bounded()).isFalse();
    }

    /** The scanner has 1748 mm against 1628 mm; of the curtain 2010 asks for more than what is known of 2024. */
    @Test
    void ofTwoEditionsForAllTheGreaterGoverns() throws IOException {
        Cell cell = laidOver("safeguard.not-cleared/two-editions-for-all");
        Map<String, String> required =
                cell.safeguards().stream().collect(Collectors.toMap(Guarding::tag, TwoEditionsTest::shown));

        assertThat(required)
                .containsEntry("scanner", "1748 mm")
                .containsEntry("curtain", "931 mm")
                .containsEntry("door", "468 mm");
        assertThat(safeguard(cell, "scanner").editions()).hasSize(2);
        assertThat(safeguard(cell, "curtain").governing().bounded()).isTrue();
        assertThat(safeguard(cell, "curtain").margin().value()).isEmpty();
        assertThat(safeguard(cell, "curtain").budget().nearest().value()).isEmpty();
        assertThat(safeguard(cell, "curtain")
                        .governing()
                        .longestTime()
                        .orElseThrow()
                        .value())
                .isEmpty();
        assertThat(safeguard(cell, "curtain").cleared()).isFalse();
        assertThat(safeguard(cell, "scanner").cleared()).isTrue();
    }

    @Test
    void anEditionForComparisonChangesNothing() throws IOException {
        BaseCell.copyTo(folder);
        BaseCell.change(
                folder,
                "standards.yaml",
                "standards:\n",
                "standards:\n  - {edition: \"ISO 13855:2024\", applied-to: the next revision, use: comparison}\n");

        assertThat(BaseCell.printed(BaseCell.check(folder))).startsWith("nothing found; ");
        assertThat(shown(safeguard(cell(), "scanner"))).isEqualTo("1628 mm");
    }

    @Test
    void withThreeValuesFromACopyACurtainIsCleared() throws IOException {
        laidOver("standard.unconfirmed/complete-but-from-memory");
        withHazards();
        BaseCell.change(folder, "standards.yaml", "\ncopy-values:", CONFIRMED + "\ncopy-values:");
        Verdict verdict = BaseCell.check(folder);
        Cell cell = cell();

        assertThat(BaseCell.ids(verdict.findings())).containsExactly(WITHOUT_FUNCTIONS);
        assertThat(safeguard(cell, "curtain").cleared()).isTrue();
        assertThat(register(cell, "iso-13855-2024.reach-over"))
                .containsExactly(List.of(
                        "how far one reaches over, D_DO for `curtain`",
                        "ISO 13855:2024, 6.2",
                        "read in a copy (licensed copy of Fennimoor) by I. Lorne on 2026-10-02, stated at standards.yaml:30:13;"
                                + " not publicly known",
                        "I. Lorne, 2026-10-02, licensed copy of Fennimoor"));
        assertThat(register(cell, "iso-13855-2024.approach-speed-walking")
                        .get(0)
                        .get(2))
                .endsWith("here from memory 1600 mm/s, theirs is 50 mm/s more");
    }

    @Test
    void theRegisterSaysWhatIsAskedFor() throws IOException {
        Cell cell = laidOver("safeguard.not-cleared/curtain-far-away");

        assertThat(register(cell, "iso-13855-2024.reach-under"))
                .containsExactly(List.of(
                        "how far one reaches under, D_DU",
                        "ISO 13855:2024, cl. 6.2",
                        "not publicly known; asked for under `copy-values`",
                        "asked for"));
    }

    /** A published value that a copy agrees with stands as confirmed, from the standing it had. */
    @Test
    void aPublishedValueThatWasReadAlikeIsConfirmed() throws IOException {
        laidOver("standard.contradicts-published/intrusion-along-the-plane");
        withHazards();
        BaseCell.change(folder, "standards.yaml", "is: 1250 mm", "is: 1.2 m");

        assertThat(BaseCell.ids(BaseCell.check(folder).findings())).containsExactly(WITHOUT_FUNCTIONS);
        assertThat(register(cell(), "iso-13855-2010.parallel-intrusion").get(0))
                .endsWith("I. Lorne, 2026-10-02, licensed copy of Fennimoor")
                .element(2)
                .asString()
                .startsWith("published: ");
    }

    /** The zone reaches from 0 mm to 1800 mm, so that in the column of 2000 mm ten rows are compared. */
    @Test
    void aCellOfATableFromMemoryThatWasReadOtherwiseIsUsed() throws IOException {
        BaseCell.copyTo(folder);
        copied(
                "iso-13857-2008.reach-over",
                IntStream.rangeClosed(0, 9)
                        .mapToObj(row ->
                                "{hazard: " + 200 * row + " mm, edge: 2000 mm, is: " + (row == 6 ? 650 : 0) + " mm}"));
        assertThat(BaseCell.printed(BaseCell.check(folder)))
                .contains("the derived one 650 mm", "ISO 13857:2008, table 2 (read in a copy, standards.yaml:");
        BaseCell.change(folder, "safeguards.yaml", "separation-distance: 600 mm", "separation-distance: 650 mm");
        Cell cell = cell();

        assertThat(shown(safeguard(cell, "fence"))).isEqualTo("650 mm");
        assertThat(register(cell, "iso-13857-2008.reach-over"))
                .singleElement()
                .satisfies(row -> assertThat(row)
                        .contains(
                                "reaching over protective structures, high risk for a hazard at 1200 mm and an edge at 2000 mm",
                                "I. Lorne, 2026-10-02, licensed copy of Fennimoor")
                        .element(2)
                        .asString()
                        .endsWith("here from memory 0 mm, theirs is 650 mm more"));
    }

    /** One row of ten was read: the others stay from memory, and the register names the one. */
    @Test
    void aCellThatIsComparedWithCellsFromMemoryIsNamed() throws IOException {
        BaseCell.copyTo(folder);
        copied("iso-13857-2008.reach-over", Stream.of("{hazard: 1800 mm, edge: 2000 mm, is: 650 mm}"));
        BaseCell.change(folder, "safeguards.yaml", "separation-distance: 600 mm", "separation-distance: 650 mm");
        Cell cell = cell();

        assertThat(BaseCell.printed(BaseCell.check(folder))).startsWith("nothing found; ");
        assertThat(shown(safeguard(cell, "fence"))).isEqualTo("650 mm");
        assertThat(register(cell, "iso-13857-2008.reach-over"))
                .singleElement()
                .satisfies(row -> assertThat(row.get(2))
                        .startsWith("from memory; ")
                        .contains(
                                "the cell for a hazard at 1800 mm and an edge at 2000 mm read in a copy (licensed copy"
                                        + " of Fennimoor) by I. Lorne on 2026-10-02")
                        .endsWith("here from memory 600 mm, theirs is 50 mm more"));
    }

    private void copied(String id, Stream<String> rows) throws IOException {
        String stated = "  - value: " + id + "\n    rows:\n"
                + rows.map(row -> "      - " + row + "\n").collect(Collectors.joining())
                + "    clause: table 2\n    by: ilse\n    on: 2026-10-02\n    copy: licensed copy of Fennimoor\n";
        BaseCell.change(folder, "standards.yaml", "confirmations:", "copy-values:\n" + stated + "\nconfirmations:");
    }

    /** What is from memory in the base cell can be told from a copy, or is one of these rules in words. */
    @Test
    void whatIsFromMemoryCanBeToldFromACopy() {
        BaseCell.copyTo(folder);

        assertThat(Composition.references(cell()))
                .filteredOn(Reference::fromMemory)
                .extracting(Reference::id)
                .filteredOn(id -> !Editions.askedIds().contains(id))
                .containsExactlyInAnyOrder(
                        "iso-10218-1-2011.function-category",
                        "iso-10218-1-2011.lockable-modes",
                        "iso-13849-1-2015.structures",
                        "iso-13850-2015.stop-category",
                        "iso-13855-2010.stop-measurement");
    }
}
