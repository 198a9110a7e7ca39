package org.cellfile.audit;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.zip.DeflaterOutputStream;
import org.cellfile.cli.Main;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Files made to exhaust whoever opens them, opened by the program as people start it, with no more than 256 MB of memory. All figures are constructed. */
class HarmfulFilesTest {

    @TempDir
    private Path folder;

    static List<Arguments> files() throws IOException {
        byte[] bomb = deflated(1L << 30);
        return List.of(
                Arguments.of(
                        "a page that unpacks to a gigabyte",
                        page(bomb, "/Filter /FlateDecode"),
                        "audit.too-much-inside"),
                Arguments.of(
                        "objects that unpack to a gigabyte",
                        inObjects(bomb, "/Filter /FlateDecode"),
                        "audit.too-much-inside"),
                Arguments.of(
                        "objects packed twice",
                        inObjects(deflated(bomb), "/Filter [/FlateDecode /FlateDecode]"),
                        "audit.unreadable"),
                Arguments.of(
                        "lists in lists",
                        written(List.of(
                                "<< /Type /Catalog /Pages 2 0 R /Deep " + "[".repeat(1_000_000),
                                "<< /Type /Pages /Count 0 /Kids [] >>")),
                        "audit.unreadable"),
                Arguments.of("objects that hold each other", written(List.of("2 0 R", "1 0 R")), "audit.unreadable"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("files")
    void isRefusedWithinTheMemoryThereIs(String name, byte[] pdf, String told) throws Exception {
        Path file = folder.resolve("harmful.pdf");
        Files.write(file, pdf);
        String said = audit(file);
        assertThat(said).as(name).contains("[" + told).endsWith("does not agree\nexit 1");
    }

    @Test
    void aGigabyteIsRefusedByItsSize() throws Exception {
        Path file = folder.resolve("large.pdf");
        try (RandomAccessFile large = new RandomAccessFile(file.toFile(), "rw")) {
            large.write("%PDF-1.7\n".getBytes(StandardCharsets.US_ASCII));
            large.setLength(1L << 30);
        }
        assertThat(audit(file)).contains("[audit.too-large]").endsWith("does not agree\nexit 1");
    }

    private static String audit(Path file) throws Exception {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx256m",
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Main.class.getName(),
                        "audit",
                        file.toString())
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        return said + "exit " + process.exitValue();
    }

    private static byte[] deflated(long zeros) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (DeflaterOutputStream deflater = new DeflaterOutputStream(out)) {
            byte[] piece = new byte[1 << 20];
            for (long i = 0; i < zeros; i += piece.length) {
                deflater.write(piece);
            }
        }
        return out.toByteArray();
    }

    private static byte[] deflated(byte[] bytes) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (DeflaterOutputStream deflater = new DeflaterOutputStream(out)) {
            deflater.write(bytes);
        }
        return out.toByteArray();
    }

    private static byte[] page(byte[] contents, String more) {
        return written(List.of(
                "<< /Type /Catalog /Pages 2 0 R >>",
                "<< /Type /Pages /Count 1 /Kids [3 0 R] >>",
                "<< /Type /Page /Parent 2 0 R /MediaBox [0 0 9 9] /Contents 4 0 R >>",
                stream(contents, more)));
    }

    private static String stream(byte[] contents, String more) {
        return "<< /Length " + contents.length + " " + more + " >>\nstream\n" + new String(contents, ISO_8859_1)
                + "\nendstream";
    }

    /** A PDF whose catalog lies among packed objects. */
    private static byte[] inObjects(byte[] contents, String filter) {
        String head = "%PDF-1.7\n";
        String objects = "2 0 obj\n" + stream(contents, "/Type /ObjStm /N 1 /First 4 " + filter) + "\nendobj\n";
        int at = head.length() + objects.length();
        ByteArrayOutputStream places = new ByteArrayOutputStream();
        for (int[] entry : new int[][] {{0, 0, 65535}, {2, 2, 0}, {1, head.length(), 0}, {1, at, 0}}) {
            places.write(entry[0]);
            for (int shift = 24; shift >= 0; shift -= 8) {
                places.write(entry[1] >> shift);
            }
            places.write(entry[2] >> 8);
            places.write(entry[2]);
        }
        return (head + objects + "3 0 obj\n"
                        + stream(places.toByteArray(), "/Type /XRef /Size 4 /W [1 4 2] /Root 1 0 R")
                        + "\nendobj\nstartxref\n" + at + "\n%%EOF\n")
                .getBytes(ISO_8859_1);
    }

    /** A small PDF of these objects, with a table of places that is right. */
    private static byte[] written(List<String> objects) {
        StringBuilder file = new StringBuilder("%PDF-1.7\n");
        StringBuilder table = new StringBuilder("0000000000 65535 f \n");
        for (int i = 0; i < objects.size(); i++) {
            table.append(String.format(java.util.Locale.ROOT, "%010d 00000 n \n", file.length()));
            file.append(i + 1).append(" 0 obj\n").append(objects.get(i)).append("\nendobj\n");
        }
        int at = file.length();
        return file.append("xref\n0 ")
                .append(objects.size() + 1)
                .append('\n')
                .append(table)
                .append("trailer\n<< /Root 1 0 R /Size ")
                .append(objects.size() + 1)
                .append(" >>\nstartxref\n")
                .append(at)
                .append("\n%%EOF\n")
                .toString()
                .getBytes(ISO_8859_1);
    }
}
