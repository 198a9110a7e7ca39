package org.cellfile.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.cellfile.source.World;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What is embedded comes out alike with a program that is not ours, {@code pdfdetach} of poppler-utils. Where it is not installed
 * this is passed over, except where the variable {@code CI} is set: there it must be.
 */
class AnotherProgramTest {

    @TempDir
    private Path folder;

    @Test
    void takesOutTheSameFiles() throws Exception {
        assumeTrue(System.getenv("CI") != null || installed(), "pdfdetach is not installed");
        Path pdf = folder.resolve("released.pdf");
        Files.write(pdf, ReleasedCell.pdf());
        List<String> names = new ArrayList<>();
        for (String line :
                run("pdfdetach", "-list", pdf.toString()).lines().skip(1).toList()) {
            names.add(line.substring(line.indexOf(": ") + 2));
        }
        SortedMap<String, byte[]> taken = new TreeMap<>();
        for (int i = 0; i < names.size(); i++) {
            Path file = folder.resolve("file-" + i);
            run("pdfdetach", "-save", String.valueOf(i + 1), "-o", file.toString(), pdf.toString());
            taken.put(names.get(i), Files.readAllBytes(file));
        }
        SortedMap<String, byte[]> sources = new TreeMap<>(taken);
        sources.remove(Examination.DOSSIER);
        sources.remove(Examination.PRINTED);
        SortedMap<String, byte[]> written = ReleasedCell.files();
        written.keySet().retainAll(sources.keySet());
        assertThat(taken).containsKeys(Examination.DOSSIER, Examination.PRINTED, "cell.yaml", "sign-offs.yaml");
        assertAlike(sources, written);
        assertAlike(
                sources,
                AuditTest.examined(ReleasedCell.pdf(), TrustedKeys.none(), false)
                        .sources());
        World.Entry unread = new World.Entry("released.pdf", true, Files.size(pdf), () -> Files.newInputStream(pdf));
        try (ReceivedPdf received = ReceivedPdf.open("released.pdf", ReceivedPdf.bytes(unread))) {
            assertThat(received.files())
                    .hasSameSizeAs(names)
                    .allSatisfy(file -> assertThat(file.content()).isEqualTo(taken.get(file.name())));
        }
    }

    private static void assertAlike(Map<String, byte[]> some, Map<String, byte[]> others) {
        assertThat(some.keySet()).isEqualTo(others.keySet());
        assertThat(some).allSatisfy((name, bytes) -> assertThat(bytes).as(name).isEqualTo(others.get(name)));
    }

    private static boolean installed() {
        try {
            run("pdfdetach", "-v");
            return true;
        } catch (IOException notThere) {
            return false;
        } catch (InterruptedException stopped) {
            throw new IllegalStateException(stopped);
        }
    }

    private static String run(String... command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(said).isLessThan(100);
        return said;
    }
}
