package org.cellfile.output;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutputFolderTest {

    private static final String CELL = "north-3";

    @TempDir
    private Path temporary;

    private Path folder;
    private OutputFolder output;

    @BeforeEach
    void open() {
        folder = temporary.resolve("not").resolve("there");
        output = new OutputFolder(folder);
    }

    private static SortedMap<String, byte[]> files(String text, String... paths) {
        SortedMap<String, byte[]> files = new TreeMap<>();
        for (String path : paths) {
            files.put(path, text.getBytes(StandardCharsets.UTF_8));
        }
        return files;
    }

    /** Every file below the output folder but the lock, with its text. */
    private SortedMap<String, String> written() throws IOException {
        SortedMap<String, String> written = new TreeMap<>();
        try (Stream<Path> paths = Files.walk(folder)) {
            for (Path path : paths.filter(Files::isRegularFile).toList()) {
                String relative = folder.relativize(path).toString().replace('\\', '/');
                if (!relative.equals(".cellfile.lock")) {
                    written.put(relative, Files.readString(path));
                }
            }
        }
        return written;
    }

    /** Folders directly below the output folder. */
    private List<String> folders() throws IOException {
        try (Stream<Path> paths = Files.list(folder)) {
            return paths.filter(Files::isDirectory)
                    .map(path -> path.getFileName().toString())
                    .sorted()
                    .toList();
        }
    }

    @Test
    void aSetTakesThePlaceOfTheEarlierOneAsAWhole() throws IOException {
        assertThat(output.replace(CELL, files("first", "file.pdf", "sheets/old.pdf")))
                .isEqualTo(folder.resolve(CELL));
        assertThat(written()).containsOnlyKeys("north-3/file.pdf", "north-3/sheets/old.pdf");
        output.replace(CELL, files("second", "file.pdf", "sheets/new.pdf"));
        assertThat(written())
                .containsOnlyKeys("north-3/file.pdf", "north-3/sheets/new.pdf")
                .doesNotContainValue("first");
        assertThat(folders()).containsExactly(CELL);
    }

    @Test
    void theSetsOfOtherCellsStay() throws IOException {
        output.replace("north-4", files("other", "file.pdf"));
        output.replace(CELL, files("first", "file.pdf"));
        output.replace(CELL, files("second", "file.pdf"));
        assertThat(written()).containsEntry("north-4/file.pdf", "other").containsEntry("north-3/file.pdf", "second");
    }

    @Test
    void everybodyMayReadASet() throws IOException {
        Path set = output.replace(CELL, files("first", "file.pdf"));
        if (Files.getFileStore(set).supportsFileAttributeView("posix")) {
            assertThat(java.nio.file.attribute.PosixFilePermissions.toString(Files.getPosixFilePermissions(set)))
                    .isEqualTo("rwxr-xr-x");
        }
    }

    @Test
    void aSetThatCannotBeWrittenLeavesTheEarlierOne() throws IOException {
        output.replace(CELL, files("first", "file.pdf"));
        assertThatThrownBy(() -> output.replace(CELL, files("second", "a", "a/b")))
                .isInstanceOf(IOException.class);
        assertThat(written()).containsEntry("north-3/file.pdf", "first");
        output.replace(CELL, files("third", "file.pdf"));
        assertThat(written()).containsOnlyKeys("north-3/file.pdf").containsEntry("north-3/file.pdf", "third");
        assertThat(folders()).containsExactly(CELL);
    }

    @Test
    void whatARunKilledWhileWritingLeftIsTidied() throws IOException {
        output.replace(CELL, files("first", "file.pdf"));
        Path half = Files.createDirectories(folder.resolve(".north-3.new-x").resolve("sheets"));
        Files.writeString(half.resolve("half.pdf"), "half");
        output.replace(CELL, files("second", "file.pdf"));
        assertThat(folders()).containsExactly(CELL);
        assertThat(written()).containsEntry("north-3/file.pdf", "second");
    }

    @Test
    void whatARunKilledBetweenTheRenamesLeftGoesBack() throws IOException {
        output.replace(CELL, files("first", "file.pdf"));
        Files.move(folder.resolve(CELL), folder.resolve(".north-3.before"));
        assertThatThrownBy(() -> output.replace(CELL, files("second", "a", "a/b")))
                .isInstanceOf(IOException.class);
        assertThat(written()).containsEntry("north-3/file.pdf", "first");
        output.replace(CELL, files("third", "file.pdf"));
        assertThat(folders()).containsExactly(CELL);
        assertThat(written()).containsEntry("north-3/file.pdf", "third");
    }

    @Test
    void whatARunKilledAfterTheRenamesLeftGoes() throws IOException {
        output.replace(CELL, files("second", "file.pdf"));
        Path before = Files.createDirectories(folder.resolve(".north-3.before"));
        Files.writeString(before.resolve("file.pdf"), "first");
        output.replace(CELL, files("third", "file.pdf"));
        assertThat(folders()).containsExactly(CELL);
        assertThat(written()).containsEntry("north-3/file.pdf", "third");
    }

    @Test
    void manyWritersAtOnceLeaveOneWholeSet() throws Exception {
        ExecutorService writers = Executors.newFixedThreadPool(4);
        try {
            List<Future<Path>> written = new ArrayList<>();
            for (int i = 0; i < 24; i++) {
                SortedMap<String, byte[]> files =
                        files("set " + i, "a.pdf", "b.pdf", "sheets/c.pdf", "sheets/of-" + i + ".pdf");
                written.add(writers.submit(() -> new OutputFolder(folder).replace(CELL, files)));
            }
            for (Future<Path> one : written) {
                assertThat(one.get()).isEqualTo(folder.resolve(CELL));
            }
        } finally {
            writers.shutdownNow();
        }
        assertThat(folders()).containsExactly(CELL);
        assertThat(written()).hasSize(4);
        assertThat(written().values()).containsOnly(written().get("north-3/a.pdf"));
    }

    @Test
    void aRefusedRunLeavesANoteBesideEarlierPagesAndTheNextSetRemovesIt() throws IOException {
        output.replace(CELL, files("first", "file.pdf"));
        output.notCurrent(CELL, "A later run was refused: 2 findings.");
        assertThat(written().get("north-3-not-current.txt"))
                .contains("not current")
                .contains("A later run was refused: 2 findings.");
        assertThat(written()).containsEntry("north-3/file.pdf", "first");
        output.replace(CELL, files("second", "file.pdf"));
        assertThat(written()).containsOnlyKeys("north-3/file.pdf");
    }

    @Test
    void aRefusalThatDoesNotKnowTheCellLeavesANoteForAll() throws IOException {
        output.replace(CELL, files("first", "file.pdf"));
        output.notCurrent("", "A later run was refused.");
        assertThat(written()).containsKey("not-current.txt");
        output.replace(CELL, files("second", "file.pdf"));
        assertThat(written()).containsOnlyKeys("north-3/file.pdf");
    }

    @Test
    void withoutEarlierPagesARefusalWritesNothing() throws IOException {
        output.notCurrent(CELL, "refused");
        output.notCurrent("", "refused");
        assertThat(folder).doesNotExist();
        output.replace("north-4", files("other", "file.pdf"));
        output.notCurrent(CELL, "refused");
        assertThat(written()).containsOnlyKeys("north-4/file.pdf");
    }
}
