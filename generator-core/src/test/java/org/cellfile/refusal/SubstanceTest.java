package org.cellfile.refusal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.cellfile.FolderWorld;
import org.cellfile.Generator;
import org.cellfile.cell.Cell;
import org.cellfile.cell.Composition;
import org.cellfile.cell.Substances;
import org.cellfile.dossier.Chapter;
import org.cellfile.dossier.Statement;
import org.cellfile.dossier.Substance;
import org.cellfile.subject.safeguard.Guarding;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is signed changes with every number, and with nothing else. All figures are constructed. */
class SubstanceTest {

    @TempDir
    private Path folder;

    private Substance before = Substance.of("", java.util.Map.of());

    @BeforeEach
    void asItWas() {
        BaseCell.copyTo(folder);
        before = cell().substance();
    }

    private Cell cell() {
        return new Generator().check(FolderWorld.of(folder)).cell().orElseThrow();
    }

    @Test
    void commentsAndLayoutChangeNothing() throws IOException {
        for (Path file : files(".yaml")) {
            Files.writeString(file, "# a remark\n\n" + Files.readString(file).replace("\n", "   # another\n"));
        }

        assertThat(cell().substance().text()).isEqualTo(before.text());
    }

    @Test
    void theDayItSpeaksOfChangesNothing() throws IOException {
        Path file = folder.resolve("cell.yaml");
        String text = Files.readString(file);
        Files.writeString(file, text.replaceFirst("as-of: \\d{4}-\\d{2}-\\d{2}", "as-of: 2026-11-25"));

        assertThat(Files.readString(file)).isNotEqualTo(text);
        assertThat(cell().substance().digest()).isEqualTo(before.digest());
    }

    @Test
    void whichFileAKeyStandsInChangesNothing() throws IOException {
        Files.move(folder.resolve("safeguards.yaml"), folder.resolve("another.yaml"));

        assertThat(cell().substance().digest()).isEqualTo(before.digest());
    }

    /** Raises the last digit of each number of each file in turn, dates and the day of the description excepted. */
    @Test
    void anyNumberOfASafeguardChangesItsChapterAndTheWhole() throws IOException {
        Path file = folder.resolve("safeguards.yaml");
        String text = Files.readString(file);
        int tried = 0;
        for (int i = text.indexOf('\n'); i < text.length(); i++) {
            boolean last = Character.isDigit(text.charAt(i))
                    && (i + 1 == text.length() || !Character.isDigit(text.charAt(i + 1)));
            if (last && text.substring(text.lastIndexOf('\n', i) + 1, i).contains(": ")) {
                char other = text.charAt(i) == '7' ? '8' : '7';
                Files.writeString(file, text.substring(0, i) + other + text.substring(i + 1));
                Substance after = cell().substance();

                assertThat(after.digest())
                        .as(text.substring(Math.max(0, i - 30), i + 1))
                        .isNotEqualTo(before.digest());
                tried++;
            }
        }
        assertThat(tried).isGreaterThan(20);
    }

    @Test
    void aRowOfATableCounts() throws IOException {
        for (Path file : files(".csv")) {
            String text = Files.readString(file);
            Files.writeString(file, text.stripTrailing().replaceFirst("\\d$", "") + "3\n");

            assertThat(cell().substance().digest("stop-evidence")).isNotEqualTo(before.digest("stop-evidence"));
            Files.writeString(file, text);
        }
    }

    @Test
    void whatIsKeptOfItGivesTheSameDigests() {
        Substance kept = Substance.parse(before.text()).orElseThrow();

        assertThat(kept.digest()).isEqualTo(before.digest());
        assertThat(kept.parts())
                .extracting(Substance.Part::digest)
                .isEqualTo(before.parts().stream().map(Substance.Part::digest).toList());
        assertThat(Substance.parse("something else")).isEmpty();
    }

    @Test
    void everyDerivedValueStandsInTheChapterOfItsThing() {
        Cell cell = cell();

        assertThat(before.statements().stream().filter(Statement::isDerived).map(Statement::path))
                .containsExactlyInAnyOrderElementsOf(cell.derived().keySet().stream()
                        .map(tag -> Statement.DERIVED + tag)
                        .toList());
        for (Guarding guarding : cell.safeguards()) {
            assertThat(before.part("safeguards").orElseThrow().statements())
                    .extracting(Statement::path)
                    .containsAll(guarding.derived().stream()
                            .map(derived -> Statement.DERIVED + derived.tag())
                            .toList());
        }
    }

    @Test
    void everyKeyHasItsChapterAndEveryChapterIsPrinted() throws IOException {
        List<String> keys =
                cell().statements().stream().map(Statement::key).distinct().toList();

        assertThat(keys).isNotEmpty().allMatch(Substances::knows);
        assertThat(Composition.compose(cell()).chapters())
                .extracting(Chapter::id)
                .containsAll(before.parts().stream()
                        .map(Substance.Part::chapter)
                        .filter(chapter -> !chapter.equals("sheets"))
                        .toList());
    }

    private List<Path> files(String ending) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.toString().endsWith(ending)).toList();
        }
    }
}
