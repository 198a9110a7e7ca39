package org.cellfile.refusal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.assertj.core.data.Offset;
import org.cellfile.ChangeNote;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The change note keeps to its pages, whatever was changed, and tells what it leaves out. All figures are constructed. */
class ChangeNoteTest {

    private static final Path EXAMPLES = Path.of("..", "examples");

    @TempDir
    private Path folder;

    private Path older;
    private Path newer;

    private record Read(int pages, float width, String text) {}

    @BeforeEach
    void twoStates() {
        older = BaseCell.copyTo(folder.resolve("older"));
        newer = BaseCell.copyTo(folder.resolve("newer"));
    }

    private static Read note(Path older, Path newer) throws IOException {
        try (PDDocument document = Loader.loadPDF(ChangeNote.pdf(ComparisonTest.compare(older, newer)))) {
            return new Read(
                    document.getNumberOfPages(),
                    document.getPage(0).getMediaBox().getWidth(),
                    new PDFTextStripper().getText(document).replaceAll("[\\s\u00a0]+", " "));
        }
    }

    @Test
    void aNoteOfAFewChangesTellsThemAndLeavesRoomToDecide() throws IOException {
        BaseCell.change(newer, "robots.yaml", "mass: 10 kg", "mass: 9 kg");
        Read note = note(older, newer);

        assertThat(note.pages()).isLessThanOrEqualTo(2);
        assertThat(note.text())
                .contains("robots/robot/tool/mass", "10 kg", "9 kg", "Tool (mass, length)", "not recorded")
                .contains("No decision is recorded", "Did the maker foresee or plan this change?")
                .contains("The decision lies with the one in whose name the change is made");
    }

    @Test
    void aDecisionIsPrintedWithItsAnswers() throws IOException {
        BaseCell.change(newer, "robots.yaml", "mass: 10 kg", "mass: 9 kg");
        Files.writeString(newer.resolve("changes.yaml"), """
                cellfile: 1

                changes:
                  - {tag: lighter, on: 2026-11-16, what: A lighter gripper., by: ilse, touches: [robot]}

                decisions:
                  - tag: decision-lighter
                    of: lighter
                    foreseen: no
                    new-or-higher-risk: no
                    needs-guards-or-control: no
                    needs-strength: no
                    substantial: no
                    because: it weighs less
                    by: ilse
                    on: 2026-11-15
                """);
        Read note = note(older, newer);

        assertThat(note.text())
                .contains(
                        "lighter, decided by I. Lorne on 2026-11-15",
                        "agrees with the recorded conclusion",
                        "it weighs less")
                .doesNotContain("No decision is recorded");
        assertThat(note.pages()).isLessThanOrEqualTo(2);
    }

    @Test
    void aCharacterThatNoTypefaceHasDoesNotStopTheNote() throws IOException {
        BaseCell.change(newer, "safeguards.yaml", "model: LC-14", "model: \"LC-14 \u2764\"");

        assertThat(note(older, newer).text()).contains("LC-14 \u00b7");
    }

    @ParameterizedTest
    @ValueSource(strings = {"kettlebrook-palletising", "stonewick-tending", "farrowmere-kitting"})
    void everythingChangedStaysOnTwoPages(String example) throws IOException {
        Path cell = EXAMPLES.resolve(example).resolve("src/main/cell");
        Path changed = folder.resolve(example);
        try (Stream<Path> files = Files.walk(cell)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path copy = changed.resolve(cell.relativize(file).toString());
                Files.createDirectories(copy.getParent());
                if (file.toString().endsWith(".yaml")) {
                    Files.writeString(
                            copy, Files.readString(file).replaceAll("(\\d)( (mm|kg|ms|s|in|mm/s)\\b)", "$11$2"));
                } else {
                    Files.copy(file, copy);
                }
            }
        }
        Read note = note(cell, changed);

        assertThat(note.pages()).isEqualTo(2);
        assertThat(note.text()).contains("the others are told by the text output");
        assertThat(note.width()).isCloseTo(example.startsWith("stonewick") ? 612f : 595f, Offset.offset(1f));
    }
}
