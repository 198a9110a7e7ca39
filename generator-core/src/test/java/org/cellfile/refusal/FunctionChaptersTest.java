package org.cellfile.refusal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.cellfile.FolderWorld;
import org.cellfile.cell.Cell;
import org.cellfile.cell.Composition;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Chapter;
import org.cellfile.finding.Findings;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is printed of safety functions, subsystems, parts and their replacement. All figures are constructed. */
class FunctionChaptersTest {

    @TempDir
    private Path folder;

    @BeforeEach
    void start() {
        BaseCell.copyTo(folder);
    }

    private List<Chapter> chapters() {
        Cell cell = Cell.read(FolderWorld.of(folder), new Findings()).orElseThrow();
        return Composition.compose(cell).chapters();
    }

    private List<Block> chapter(String id) {
        return chapters().stream()
                .filter(chapter -> chapter.id().equals(id))
                .findFirst()
                .orElseThrow()
                .blocks();
    }

    private static Block.Table table(List<Block> blocks, String caption) {
        return all(blocks, Block.Table.class).stream()
                .filter(table -> table.caption().equals(caption))
                .findFirst()
                .orElseThrow();
    }

    private static <B extends Block> List<B> all(List<Block> blocks, Class<B> sort) {
        return blocks.stream().filter(sort::isInstance).map(sort::cast).toList();
    }

    private static Block.Fact fact(List<Block> blocks, String label) {
        return all(blocks, Block.Facts.class).get(0).facts().stream()
                .filter(fact -> fact.label().equals(label))
                .findFirst()
                .orElseThrow();
    }

    private static Block.Section section(List<Block> blocks, String tag) {
        return all(blocks, Block.Section.class).stream()
                .filter(section -> section.tag().equals(tag))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void requiredAgainstReached() {
        assertThat(table(chapter("functions"), "Required and reached").rows())
                .contains(
                        List.of(
                                "stop-by-curtain\nStop of the robot by the light curtain",
                                "PL d",
                                "PL e",
                                "PL e",
                                "the sum",
                                "1.02e-8 1/h"),
                        List.of(
                                "stop-by-scanner\nStop of the robot by the laser scanner",
                                "PL d",
                                "PL d",
                                "PL e",
                                "scanner-unit",
                                "8.06e-8 1/h"));
    }

    @Test
    void levelsComeFromTheEditionAndPlacesAreLogarithms() {
        Block.Drawing drawing = all(chapter("functions"), Block.Drawing.class).get(0);
        assertThat(String.valueOf(drawing.data().get("ranges")))
                .contains("letter=e", "upTo=-7")
                .contains("letter=c", "upTo=-5.522879");
        assertThat(String.valueOf(drawing.data().get("bars")))
                .contains("bound=-6", "frequency=1.02e-8", "place=-7.991400");
        assertThat(drawing.alternative()).contains("stop-by-scanner 8.06e-8 1/h, reached PL d, required PL d");
    }

    @Test
    void aFunctionWithItsChainAndTheTimesOfItsSafeguard() {
        List<Block> blocks = section(chapter("functions"), "stop-by-curtain").blocks();
        assertThat(all(blocks, Block.Facts.class).get(0).facts())
                .contains(new Block.Fact(
                        "Response time",
                        "0.2380 s",
                        "light curtain 14 ms (curtain-unit) + safety controller 24 ms (controller) + stop 0.2 s"
                                + " (measured with contactors), derived under curtain.response-time"));
        assertThat(fact(blocks, "Required").value()).isEqualTo("PL d");
        assertThat(fact(blocks, "Required").remark()).contains("PL d for the hazard impact", "agrees");
        assertThat(fact(blocks, "PFH_D").value()).isEqualTo("1.02e-8 1/h");
        assertThat(fact(blocks, "PFH_D").remark()).contains("6.3e-9 1/h + 1.1e-9 1/h + ", "recorded", "agrees");
        assertThat(fact(blocks, "Reached").remark()).contains("PL e by the sum", "no subsystem is weaker");
        assertThat(all(blocks, Block.Drawing.class).get(0).alternative())
                .isEqualTo(
                        "Block diagram, in series: input curtain-unit (category 4, PL e, PFH_D 6.3e-9 1/h, 61.8 % of the sum); logic"
                                + " controller (category 4, PL e, PFH_D 1.1e-9 1/h, 10.8 % of the sum); output contactors (category 4,"
                                + " PL e, PFH_D 2.79e-9 1/h, 27.4 % of the sum, channel A of contactor-a, channel B of contactor-b)");
    }

    @Test
    void manyBarsStandInSeveralDrawings() throws IOException {
        StringBuilder more = new StringBuilder();
        for (int i = 1; i <= 40; i++) {
            more.append("  - {tag: more-")
                    .append(i)
                    .append(
                            ", name: more, triggered-by: [enabling], trigger: a, reaction: b, modes:"
                                    + " [automatic], requires: {level: PL c, because: d}, chain: [{subsystem: controller, place: logic}]}\n");
        }
        BaseCell.change(folder, "functions.yaml", "functions:\n", "functions:\n" + more);
        assertThat(all(chapter("functions"), Block.Drawing.class))
                .extracting(drawing -> ((List<?>) drawing.data().getOrDefault("bars", List.of())).size())
                .containsExactly(22, 23);
    }

    @Test
    void aSubsystemTellsTheRowAndTheColumnItWasReadIn() {
        List<Block> blocks = chapter("subsystems");
        Block.Fact read = all(section(blocks, "door-switches").blocks(), Block.Facts.class).get(0).facts().stream()
                .filter(fact -> fact.label().equals("Read in the table"))
                .findFirst()
                .orElseThrow();
        assertThat(read.value()).isEqualTo("4.29e-8 1/h");
        assertThat(read.remark()).contains("the row 100 years", "the column 3, medium", "Annex K", "from memory");
        assertThat(table(blocks, "Subsystems with the figures of their makers").rows())
                .contains(List.of(
                        "controller\nSafety controller",
                        "4, PL e",
                        "1.1e-9 1/h",
                        "data sheet",
                        "in 5 functions",
                        "2046-09-01"));
        assertThat(table(section(blocks, "").blocks(), "Parts as stated").rows())
                .contains(List.of(
                        "switch-a\nPosition switch A of the door",
                        "B10_D 1000000; data sheet",
                        "230 days a year, 16 h a day, every 15 min",
                        "90 % by controller: both switches compared at each opening"));
        assertThat(table(section(blocks, "").blocks(), "Recomputed for each part")
                        .rows())
                .anySatisfy(row -> assertThat(row.get(1) + " gives " + row.get(2))
                        .startsWith("MTTF_D = B10_D / (0.1 · n_op) = 1000000 / (0.1 × ")
                        .endsWith(" gives 679.34 years"));
    }

    /** The earliest first; what is over or comes soon says so, and stands among what falls due with its reason. */
    @Test
    void replacements() throws IOException {
        BaseCell.change(
                folder,
                "functions.yaml",
                "b10d: 2000000",
                "b10d: 150000, mission-time: 9 years".replace(", ", "\n    "));
        BaseCell.change(
                folder,
                "functions.yaml",
                "level: PL e, source: data sheet, installed: 2026-09-01}\n  - tag: scanner-unit",
                "level: PL e, source: data sheet, installed: 2006-11-01}\n  - tag: scanner-unit");
        BaseCell.change(
                folder,
                "functions.yaml",
                "pfh: 1.1e-9 1/h, level: PL e, source: data sheet, installed: 2026-09-01",
                "pfh: 1.1e-9 1/h, level: PL e, source: data sheet, installed: 2006-12-01");
        List<List<String>> rows = new ArrayList<>(
                table(chapter("replacement"), "What is replaced, by day").rows());
        assertThat(rows.subList(0, 3))
                .containsExactly(
                        List.of(
                                "2026-11-01\noverdue",
                                "curtain-unit\nLight curtain at the pallet exit",
                                "in 1 function",
                                "2006-11-01",
                                "–",
                                "20 years"),
                        List.of(
                                "2026-12-01\ndue within 30 days",
                                "controller\nSafety controller",
                                "in 5 functions",
                                "2006-12-01",
                                "–",
                                "20 years"),
                        List.of(
                                "2035-09-01",
                                "switch-b\nPosition switch B of the door",
                                "door-switches, in 1 function",
                                "2026-09-01",
                                "10.19 years",
                                "9 years"));
        assertThat(chapter("due").toString())
                .contains(
                        "mission time of 20 years by ISO 13849-1:2015, installed 2006-11-01",
                        "mission time of 9 years by data sheet, installed 2026-09-01");
    }

    @Test
    void aCellWithoutFunctionsHasNoSuchChapter() throws IOException {
        Files.delete(folder.resolve("hazards.yaml"));
        Files.delete(folder.resolve("functions.yaml"));
        BaseCell.withoutConfirmationsOfFunctions(folder);
        assertThat(chapters()).extracting(Chapter::id).doesNotContain("functions", "subsystems", "replacement");
    }
}
