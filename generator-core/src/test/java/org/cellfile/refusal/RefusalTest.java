package org.cellfile.refusal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.cellfile.subject.plan.Plan;
import org.cellfile.verdict.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Each folder {@code refusals/<finding-id>/<case>} holds the files in which a cell differs from the base cell, and what is said
 * to it. With {@code -Dbless} what is said now is written down; read it before keeping it.
 */
class RefusalTest {

    @TempDir
    private Path folder;

    static List<Path> cases() throws IOException {
        try (Stream<Path> folders = Files.walk(BaseCell.REFUSALS, 2)) {
            return folders.map(BaseCell.REFUSALS::relativize)
                    .filter(path -> path.getNameCount() == 2 && !path.startsWith("base"))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void nothingIsFoundInTheBaseCell() {
        Verdict verdict = BaseCell.check(BaseCell.copyTo(folder));

        assertThat(BaseCell.printed(verdict)).startsWith("nothing found; ");
        assertThat(verdict.word()).isEqualTo("releasable");
    }

    @Test
    void nothingIsFoundInTheSignedCellWhateverIsLookedAt() throws IOException {
        Verdict verdict = BaseCell.checkSigned(BaseCell.signed(folder));

        assertThat(BaseCell.printed(verdict)).startsWith("nothing found; ");
        assertThat(verdict.word()).isEqualTo("releasable");
    }

    @ParameterizedTest
    @MethodSource("cases")
    void isRefused(Path path) throws IOException {
        Path files = BaseCell.REFUSALS.resolve(path);
        String id = path.getName(0).toString();
        Verdict verdict = verdict(id, files);

        assertThat(BaseCell.ids(verdict.findings())).contains(id);
        Path expected = files.resolve(BaseCell.EXPECTED);
        if (System.getProperty("bless") != null) {
            Files.writeString(expected, BaseCell.printed(verdict));
        }
        assertThat(expected).as("what is said").exists();
        assertThat(BaseCell.printed(verdict)).isEqualTo(Files.readString(expected));
    }

    private Verdict verdict(String id, Path files) throws IOException {
        if (BaseCell.isAboutSigning(id)) {
            return BaseCell.checkSigned(BaseCell.signed(files, folder));
        }
        if (id.equals(Plan.MISSING.words())) {
            return BaseCell.checkSigned(BaseCell.overlay(files, folder));
        }
        return BaseCell.check(
                BaseCell.isAboutThePlan(id) ? BaseCell.planned(files, folder) : BaseCell.overlay(files, folder), files);
    }
}
