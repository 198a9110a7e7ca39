package org.cellfile.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.cellfile.cli.Ran.run;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.cellfile.FolderWorld;
import org.cellfile.Generator;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code audit} as people give it, with a draft of the small cell of the refusals. All figures are constructed. */
class AuditVerbTest {

    private static final Path BASE = Path.of("src", "test", "resources", "refusals", "base");

    @TempDir
    private static Path shared;

    @TempDir
    private Path folder;

    private static Path pdf = Path.of("");

    @BeforeAll
    static void print() throws IOException {
        pdf = shared.resolve("small-cell-safety-file.pdf");
        Files.write(
                pdf,
                Objects.requireNonNull(new Generator()
                        .generate(FolderWorld.of(BASE))
                        .files()
                        .orElseThrow()
                        .get("small-cell-safety-file.pdf")));
    }

    @Test
    void tellsWhatAgreesAndWhatCannotBeSaid() {
        Ran ran = run("audit", pdf);
        assertThat(ran.code()).as(ran.out() + ran.err()).isZero();
        assertThat(ran.out())
                .startsWith(pdf + "\n\nagrees\n  identifier: ")
                .contains("\n\ncannot be said\n  ")
                .endsWith("\n\nconsistent in itself, origin unproven\n");
        assertThat(run("audit", pdf, "--json").out()).startsWith("{").contains("\"does-not-agree\" : [ ]");
    }

    @Test
    void writesTheSourcesIntoAFolderOfTheirOwn() throws IOException {
        Path to = folder.resolve("taken/out");
        Ran ran = run("audit", pdf, "--sources-to", to);
        assertThat(ran.code()).as(ran.out() + ran.err()).isZero();
        try (Stream<Path> written = Files.walk(to)) {
            List<Path> files = written.filter(Files::isRegularFile).toList();
            assertThat(files)
                    .hasSizeGreaterThan(15)
                    .allSatisfy(file -> assertThat(file)
                            .hasSameBinaryContentAs(
                                    BASE.resolve(to.relativize(file).toString())));
        }
        assertThat(to.getParent()).isDirectoryNotContaining(path -> !path.equals(to));
        Ran again = run("audit", pdf, "--sources-to", to);
        assertThat(again.code()).isEqualTo(2);
        assertThat(again.err()).contains("is not empty");
    }

    @Test
    void anEmptyFolderIsFilledAndAFileIsNot() throws IOException {
        Path empty = Files.createDirectory(folder.resolve("empty"));
        assertThat(run("audit", pdf, "--sources-to", empty).code()).isZero();
        assertThat(empty.resolve("cell.yaml")).exists();
        Path file = Files.writeString(folder.resolve("file"), "something");
        assertThat(run("audit", pdf, "--sources-to", file).code()).isEqualTo(2);
        assertThat(file).hasContent("something");
    }

    @Test
    void nothingIsWrittenFromAFileThatIsNotOurs() throws IOException {
        Path other = Files.writeString(folder.resolve("other.pdf"), "no PDF");
        Path to = folder.resolve("out");
        Ran ran = run("audit", other, "--sources-to", to);
        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.out()).contains("[audit.not-a-pdf]").endsWith("\ndoes not agree\n");
        assertThat(to).doesNotExist();
    }

    @Test
    void aChangedFileIsTold() throws IOException {
        byte[] bytes = Files.readAllBytes(pdf);
        bytes[bytes.length / 2] ^= 1;
        Path changed = Files.write(folder.resolve("changed.pdf"), bytes);
        Ran ran = run("audit", changed);
        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.out()).contains("error: the file was changed after it was finished [audit.identifier]");
    }

    @Test
    void namesThatLeadNowhereAreWrongUse() throws IOException {
        assertThat(run("audit", folder.resolve("nowhere.pdf")).code()).isEqualTo(2);
        assertThat(run("audit", folder).code()).isEqualTo(2);
        assertThat(run("audit", pdf, "--trust", folder.resolve("nowhere.pem")).code())
                .isEqualTo(2);
        Path keys = Files.write(folder.resolve("keys.pem"), "no key".getBytes(UTF_8));
        Ran ran = run("audit", pdf, "--trust", keys);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err())
                .contains("keys.pem:1:1: error: the file holds no `-----BEGIN PUBLIC KEY-----`", "was not audited");
        assertThat(ran.out()).as("nothing is said of a file nobody looked at").isEmpty();
    }
}
