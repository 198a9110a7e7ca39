package org.cellfile.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cellfile.cli.Ran.run;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The verb from outside: what it understands, its exit codes, and what it writes. All figures are constructed. */
class CompareVerbTest {

    private static final Path BASE = Path.of("src", "test", "resources", "refusals", "base");

    @TempDir
    private Path temporary;

    private Path older;
    private Path newer;

    @BeforeEach
    void twoStates() throws IOException {
        older = copy("older");
        newer = copy("newer");
        Path robots = newer.resolve("robots.yaml");
        Files.writeString(robots, Files.readString(robots).replace("mass: 10 kg", "mass: 9 kg"));
    }

    private Path copy(String name) throws IOException {
        Path copy = temporary.resolve(name);
        try (Stream<Path> files = Files.walk(BASE)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path target = copy.resolve(BASE.relativize(file).toString());
                Files.createDirectories(target.getParent());
                Files.copy(file, target);
            }
        }
        return copy;
    }

    @Test
    void differencesAreToldAndThatIsNoRefusal() {
        Ran ran = run("compare", older, newer);

        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.out()).contains("Tool (mass, length)", "10 kg → 9 kg");
        assertThat(ran.err()).isEmpty();
        assertThat(run("compare", older, older).out()).contains("nothing stated and nothing derived differs");
    }

    @Test
    void otherProgramsGetJson() {
        assertThat(run("compare", older, newer, "--json").out()).startsWith("{").contains("\"kind\" : \"tool\"");
    }

    @Test
    void theNoteIsWrittenWhereItIsAskedFor() throws IOException {
        Path note = temporary.resolve("note.pdf");

        assertThat(run("compare", older, newer, "--note", note).code()).isZero();
        assertThat(Files.readAllBytes(note)).startsWith('%', 'P', 'D', 'F');
        assertThat(run("compare", older, newer, "--note", temporary.resolve("no-folder/note.pdf"))
                        .code())
                .isEqualTo(2);
    }

    @Test
    void theNoteTakesThePlaceOfAnEarlierNoteAndOfNothingElse() throws IOException {
        Path source = newer.resolve("robots.yaml");
        String before = Files.readString(source);
        Ran overSource = run("compare", older, newer, "--note", source);
        assertThat(overSource.code()).isEqualTo(2);
        assertThat(overSource.err()).contains("does not end in .pdf");
        assertThat(source).hasContent(before);

        Path other = Files.writeString(temporary.resolve("safety-file.pdf"), "%PDF-1.7 of another sort");
        Ran overOther = run("compare", older, newer, "--note", other);
        assertThat(overOther.code()).isEqualTo(2);
        assertThat(overOther.err()).contains("is no change note, and it is not written over");
        assertThat(other).hasContent("%PDF-1.7 of another sort");

        Path note = temporary.resolve("note.pdf");
        assertThat(run("compare", older, older, "--note", note).code()).isZero();
        byte[] earlier = Files.readAllBytes(note);
        assertThat(run("compare", older, newer, "--note", note).code()).isZero();
        assertThat(Files.readAllBytes(note)).isNotEqualTo(earlier);
    }

    @Test
    void wrongUseIsTold() {
        assertThat(run("compare", older).code()).isEqualTo(2);
        assertThat(run("compare", older, newer, "--since", "v1").code()).isEqualTo(2);
        assertThat(run("compare", older, temporary.resolve("not-there")).code()).isEqualTo(2);
        assertThat(run("compare").code()).isEqualTo(2);
    }

    @Test
    void aStateThatCannotBeReadIsTold() throws IOException {
        Ran outside = run("compare", older, "--since", "v1");
        assertThat(outside.code()).isEqualTo(1);
        assertThat(outside.err()).contains("lies in no Git repository");
        assertThat(run("compare", older, "--since=--output=x").err()).contains("names no revision");

        Files.writeString(older.resolve("cell.yaml"), "cellfile: 1\n\ncell: {\n");
        Ran broken = run("compare", older, newer);
        assertThat(broken.code()).isEqualTo(1);
        assertThat(broken.err()).contains("leaves nothing to compare", "[read.syntax]");
        assertThat(broken.out()).isEmpty();
    }
}
