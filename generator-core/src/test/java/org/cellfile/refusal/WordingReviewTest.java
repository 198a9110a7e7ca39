package org.cellfile.refusal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.cellfile.cell.Composition;
import org.cellfile.dossier.Block.Table;
import org.cellfile.finding.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A review counts for the words it saw. The texts are constructed. */
class WordingReviewTest {

    @TempDir
    private Path folder;

    /** The base cell in English and German, each reviewed as it is. */
    private void inTwoLanguages() throws IOException {
        BaseCell.overlay(BaseCell.REFUSALS.resolve("translation.unused/not-the-very-words"), folder);
    }

    private List<Finding> lapsed() {
        return BaseCell.check(folder).findings().stream()
                .filter(finding -> finding.id().words().startsWith("language."))
                .toList();
    }

    private List<List<String>> table() {
        return Composition.compose(BaseCell.checked(folder).cell().orElseThrow()).chapters().stream()
                .filter(chapter -> chapter.id().equals("sheets"))
                .flatMap(chapter -> chapter.blocks().stream())
                .filter(block -> block instanceof Table table && table.caption().equals("Wording"))
                .flatMap(block -> ((Table) block).rows().stream())
                .toList();
    }

    @Test
    void asItIsItCountsAndTheChapterTellsIt() throws IOException {
        inTwoLanguages();

        assertThat(lapsed()).isEmpty();
        assertThat(table())
                .hasSize(2)
                .allSatisfy(row -> assertThat(row.get(4)).isEqualTo("the same"))
                .anySatisfy(row -> {
                    assertThat(row.get(0)).isEqualTo("Deutsch (de)");
                    assertThat(row.get(1)).matches("[0-9a-f]{8}-[0-9a-f]{8}");
                    assertThat(row.get(3)).isEqualTo("2026-11-10");
                })
                .anySatisfy(row -> assertThat(row.get(1)).matches("[0-9a-f]{8}"));
    }

    @Test
    void anotherTranslationVoidsItInItsLanguage() throws IOException {
        inTwoLanguages();
        BaseCell.change(folder, "sheets.yaml", "de: Kleine Zelle", "de: Winzige Zelle");

        assertThat(lapsed()).singleElement().satisfies(finding -> {
            assertThat(finding.id().words()).isEqualTo("language.review-lapsed");
            assertThat(finding.sentence()).contains("the review of `de`");
            assertThat(finding.because()).containsExactly("what changed since: the cell's own texts in that language");
        });
        assertThat(table()).anySatisfy(row -> assertThat(row.get(4)).endsWith(": no longer counts"));
    }

    @Test
    void theSameWordsForAnotherTextVoidItToo() throws IOException {
        inTwoLanguages();
        BaseCell.change(folder, "sheets.yaml", "text: impact and crushing", "text: impact or crushing");

        assertThat(lapsed()).extracting(finding -> finding.id().words()).containsExactly("language.review-lapsed");
    }

    @Test
    void anotherOrderOfTranslationsVoidsNothing() throws IOException {
        inTwoLanguages();
        String one = "  - {text: impact and crushing, de: Stoß und Quetschen}\n";
        String other = "  - {text: Small cell, de: Kleine Zelle}\n";
        BaseCell.change(folder, "sheets.yaml", one + other, other + one);

        assertThat(lapsed()).isEmpty();
    }

    @Test
    void theLatestThatCountsIsTold() throws IOException {
        inTwoLanguages();
        BaseCell.change(
                folder,
                "sheets.yaml",
                "  reviewed:\n",
                "  reviewed:\n    - {language: de, by: ilse, on: 2026-11-18, wording: 0123abcd}\n");

        assertThat(lapsed()).isEmpty();
        assertThat(table()).anySatisfy(row -> assertThat(row).contains("Deutsch (de)", "2026-11-10", "the same"));
    }
}
