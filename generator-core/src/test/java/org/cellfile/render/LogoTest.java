package org.cellfile.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Objects;
import java.util.SortedMap;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.cellfile.FolderWorld;
import org.cellfile.Generator;
import org.cellfile.refusal.BaseCell;
import org.cellfile.verdict.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A logo of the plant at the head of its sheets. The marks are constructed: a red field with a blue bar. */
class LogoTest {

    private static final Clock DAY = Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC);

    private static final String SHAPES = """
            <?xml version="1.0"?>
            <svg xmlns="http://www.w3.org/2000/svg" xmlns:drawn="urn:example:drawn" viewBox="0 0 40 20" drawn:by="hand">
              <title>Two fields</title>
              <drawn:grid/>
              <g transform="translate(0, 0) scale(1)">
                <rect width="40" height="20" style="fill:#cc0000;stroke:none"/>
                <path d="M0 15h40v5H0zM5,5a1 1 0 01.5.5" fill="#0000cc"/>
              </g>
            </svg>
            """;

    @TempDir
    private Path folder;

    private SortedMap<String, byte[]> generated(String name, byte[] logo) throws IOException {
        lay(name, logo);
        return new Generator().generate(new FolderWorld(folder, DAY)).files().orElseThrow();
    }

    private Verdict found(String name, byte[] logo) throws IOException {
        lay(name, logo);
        return new Generator().check(new FolderWorld(folder, DAY)).verdict();
    }

    private void lay(String name, byte[] logo) throws IOException {
        BaseCell.copyTo(folder);
        Path sheets = folder.resolve("sheets.yaml");
        Files.writeString(
                sheets,
                Files.readString(sheets).replace("  responsible: ilse", "  responsible: ilse\n  logo: " + name));
        Files.write(folder.resolve(name), logo);
    }

    private static byte[] points(String format, int type) throws IOException {
        BufferedImage picture = new BufferedImage(400, 200, type);
        Graphics2D graphics = picture.createGraphics();
        graphics.setColor(new Color(0xcc0000));
        graphics.fillRect(0, 0, 400, 200);
        graphics.setColor(new Color(0x0000cc));
        graphics.fillRect(0, 150, 400, 50);
        graphics.dispose();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(picture, format, bytes);
        return bytes.toByteArray();
    }

    /** How many points of the head of a page are nearly of a colour. */
    private static int points(byte[] pdf, int colour) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
            BufferedImage page = new PDFRenderer(document).renderImageWithDPI(0, 72);
            int points = 0;
            for (int x = 0; x < page.getWidth(); x++) {
                for (int y = 0; y < 40; y++) {
                    int seen = page.getRGB(x, y);
                    boolean near = true;
                    for (int shift = 0; shift <= 16; shift += 8) {
                        near &= Math.abs(((seen >> shift) & 0xff) - ((colour >> shift) & 0xff)) < 40;
                    }
                    points += near ? 1 : 0;
                }
            }
            return points;
        }
    }

    /** 7 mm by 14 mm are about 20 by 40 points, of which a quarter are blue. */
    private static void assertShown(SortedMap<String, byte[]> files) throws IOException {
        byte[] sheet = Objects.requireNonNull(files.get("sheets/automatic-operation-en.pdf"));
        assertThat(points(sheet, 0xcc0000)).isBetween(480, 700);
        assertThat(points(sheet, 0x0000cc)).isBetween(130, 260);
    }

    @Test
    void a_drawing_is_printed_shape_by_shape() throws IOException {
        assertShown(generated("mark.svg", SHAPES.getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void what_can_be_seen_through_stands_on_white() throws IOException {
        assertShown(generated("mark.png", points("png", BufferedImage.TYPE_INT_ARGB)));
    }

    @Test
    void a_jpeg_is_printed_whatever_its_name_says() throws IOException {
        assertShown(generated("mark.png", points("jpeg", BufferedImage.TYPE_INT_RGB)));
    }

    /** Its reader fills up what is missing with grey. */
    @Test
    void a_jpeg_that_ends_early_is_refused() throws IOException {
        byte[] whole = points("jpeg", BufferedImage.TYPE_INT_RGB);

        for (int length : new int[] {whole.length / 2, whole.length - 2}) {
            Verdict verdict = found("mark.jpg", Arrays.copyOf(whole, length));
            assertThat(verdict.findings())
                    .anySatisfy(finding -> assertThat(finding.id().words()).isEqualTo("logo.not-a-picture"));
        }
    }

    @Test
    void it_travels_with_the_safety_file_from_which_everything_is_made_anew() throws IOException {
        String name = "mark.svg";
        byte[] logo = SHAPES.getBytes(StandardCharsets.UTF_8);
        SortedMap<String, byte[]> files = generated(name, logo);
        String path = files.keySet().stream()
                .filter(file -> file.endsWith("-safety-file.pdf"))
                .findFirst()
                .orElseThrow();
        try (PDDocument document = Loader.loadPDF(files.get(path))) {
            assertThat(Objects.requireNonNull(document.getDocumentCatalog()
                                    .getNames()
                                    .getEmbeddedFiles()
                                    .getNames()
                                    .get(name))
                            .getEmbeddedFile()
                            .toByteArray())
                    .isEqualTo(logo);
        }
    }
}
