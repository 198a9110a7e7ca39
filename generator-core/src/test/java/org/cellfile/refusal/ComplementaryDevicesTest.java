package org.cellfile.refusal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.cellfile.FolderWorld;
import org.cellfile.cell.Cell;
import org.cellfile.cell.Composition;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Chapter;
import org.cellfile.finding.Finding;
import org.cellfile.finding.Findings;
import org.cellfile.standard.Editions;
import org.cellfile.standard.EmergencyStopStandard;
import org.cellfile.standard.Iso13850Ed2015;
import org.cellfile.standard.RobotStandard;
import org.cellfile.trace.Reference;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The bounds of complementary devices at their edges, their standing, and their chapter. */
class ComplementaryDevicesTest {

    private static final String FILE = "complementary.yaml";

    @TempDir
    private Path folder;

    @BeforeEach
    void start() {
        BaseCell.copyTo(folder);
    }

    private List<String> found() {
        return BaseCell.ids(BaseCell.check(folder).findings());
    }

    /** Source of 0.6 m and 1.7 m: ISO 13850, from memory. */
    @ParameterizedTest
    @CsvSource({
        "599 mm, installed.emergency-stop-too-low",
        "0.5999 m, installed.emergency-stop-too-low",
        "600 mm,",
        "0.6 m,",
        "1700 mm,",
        "1.7 m,",
        "1701 mm, installed.emergency-stop-too-high",
        "1700.1 mm, installed.emergency-stop-too-high"
    })
    void anActuatorIsWithinItsHeights(String height, String finding) throws IOException {
        BaseCell.change(folder, FILE, "height: 1100 mm", "height: " + height);
        assertThat(found()).isEqualTo(finding == null ? List.of() : List.of(finding));
    }

    /** Source of the bound: constructed; it is the cell's own. */
    @ParameterizedTest
    @CsvSource({"0 mm,", "1000 mm,", "1001 mm, installed.emergency-stop-too-far"})
    void anActuatorIsWithinReach(String reach, String finding) throws IOException {
        BaseCell.change(folder, FILE, "reach: 500 mm", "reach: " + reach);
        assertThat(found()).isEqualTo(finding == null ? List.of() : List.of(finding));
    }

    /** Source: ISO 13850, stop category 0 or 1, from memory. */
    @ParameterizedTest
    @CsvSource({"0,", "1,", "2, installed.emergency-stop-category"})
    void anEmergencyStopEndsWithThePowerOff(String category, String finding) throws IOException {
        BaseCell.change(
                folder, FILE, "stop-category: 1\n    latches: yes\n    colour: red-on-yellow", """
                stop-category: %s
                    latches: yes
                    colour: red-on-yellow""".formatted(category));
        // That its function stops by another is a matter of the two together.
        assertThat(found().stream()
                        .filter(id -> !id.equals("function.another-stop-category"))
                        .toList())
                .isEqualTo(finding == null ? List.of() : List.of(finding));
    }

    /** Nothing is said of its height, since it goes where the hand goes. */
    @Test
    void whatAPendantCarriesHasNoHeight() throws IOException {
        BaseCell.change(folder, FILE, "mounted: hand-held", "mounted: hand-held\n    height: 300 mm");
        assertThat(found()).containsExactly("read.unknown-key");
    }

    /** Source: latching and colours IDEC, ISO 13850, and LegalClarity, ISO 13850; the rest from memory. */
    @Test
    void rulesFromMemoryAreMarkedAndTheOthersNameTheirSource() {
        EmergencyStopStandard standard = new Iso13850Ed2015();
        assertThat(List.of(standard.latching(), standard.colours()))
                .allSatisfy(rule -> assertThat(rule.standing().words())
                        .startsWith("published: ")
                        .contains("IDEC", "LegalClarity"));
        RobotStandard robots = (RobotStandard) Editions.of("ISO 10218-1:2011").orElseThrow();
        assertThat(List.of(
                        standard.leastHeight().reference(),
                        standard.greatestHeight().reference(),
                        standard.stopCategory(),
                        robots.enablingPositions().reference(),
                        robots.lockableModes()))
                .allMatch(Reference::fromMemory);
        assertThat(robots.enablingPositions().quantity()).hasToString("3");
    }

    @Test
    void everyDeviceIsPrintedWithItsFactsAndBounds() {
        Chapter chapter = chapter();
        assertThat(chapter.title()).isEqualTo("Complementary devices");
        assertThat(chapter.blocks().get(0).toString()).contains("They never guard a hazard zone");
        assertThat(chapter.blocks().get(1)).isInstanceOfSatisfying(Block.Table.class, table -> {
            assertThat(table.rows())
                    .extracting(row -> row.get(0))
                    .containsExactly("stop-panel", "stop-pendant", "enabling", "selector", "pendant", "reset-west");
            assertThat(table.rows().get(0).get(3)).contains("height 1100 mm", "stop category 1");
            assertThat(table.rows().get(1).get(3)).contains("no yellow because the pendant leaves no room for it");
            assertThat(table.rows().get(5).get(3)).contains("sees zone");
        });
        assertThat(chapter.blocks().get(2))
                .isInstanceOfSatisfying(
                        Block.Table.class,
                        table -> assertThat(table.rows())
                                .contains(
                                        List.of(
                                                "Height at least 600 mm",
                                                "ISO 13850:2015, cl. 4.3.2 (from memory)",
                                                "stop-panel: 1100 mm"),
                                        List.of(
                                                "Height at most 1700 mm",
                                                "ISO 13850:2015, cl. 4.3.2 (from memory)",
                                                "stop-panel: 1100 mm"),
                                        List.of(
                                                "Reach at most 1000 mm",
                                                "Risk assessment, line 14",
                                                "stop-panel: 500 mm"),
                                        List.of(
                                                "Number of positions at least 3",
                                                "ISO 10218-1:2011, cl. 5.8.3 (from memory)",
                                                "enabling: 3"),
                                        List.of(
                                                "A reset is out of reach from inside",
                                                "Common practice",
                                                "reset-west: no")));
    }

    @Test
    void aDeviationStandsBesideItsDevice() throws IOException {
        BaseCell.overlay(
                BaseCell.REFUSALS.resolve(Path.of("installed.emergency-stop-too-high", "covered-by-a-deviation")),
                folder);
        List<Block> blocks = chapter().blocks();
        assertThat(blocks.get(2).toString()).contains("stop-panel: 1750 mm, which falls short");
        assertThat(blocks.get(3).toString()).contains("Deviation dev-panel: stop-panel");
    }

    private Chapter chapter() {
        Findings findings = new Findings();
        Optional<Cell> cell = Cell.read(FolderWorld.of(folder), findings);
        assertThat(findings.sorted()).extracting(Finding::sentence).isEmpty();
        return Composition.compose(cell.orElseThrow()).chapters().stream()
                .filter(chapter -> chapter.id().equals("complementary"))
                .findFirst()
                .orElseThrow();
    }
}
