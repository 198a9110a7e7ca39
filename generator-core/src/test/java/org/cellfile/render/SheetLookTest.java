package org.cellfile.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.dossier.Sheet;
import org.cellfile.dossier.Sheet.Kind;
import org.cellfile.dossier.Sheet.Panel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What a posted sheet looks like, read back from the printed page. The texts are constructed. */
class SheetLookTest {

    private static final float PT_FROM_MM = 72 / 25.4f;

    /** Width and height in millimetres: ISO 216, and ANSI/ASME Y14.1 sizes A and B (from memory). */
    private static final Map<String, List<Float>> PAPERS = Map.of(
            "A4", List.of(210f, 297f),
            "A3", List.of(297f, 420f),
            "Letter", List.of(215.9f, 279.4f),
            "Tabloid", List.of(279.4f, 431.8f));

    /** WCAG 2.2, success criterion 1.4.3, level AA, for text of any size. */
    private static final double LEAST_CONTRAST = 4.5;

    /** WCAG 2.2, success criterion 1.4.11, level AA, for what a drawing is understood by. */
    private static final double LEAST_CONTRAST_OF_DRAWINGS = 3;

    private static final String STEP = "Press the blue reset button beside the door.";

    static Stream<Sheet> sheets() {
        return Stream.of(
                sheet("A4", 4, "en"),
                sheet("Letter", 3, "en"),
                sheet("A3", 4, "en"),
                sheet("Tabloid", 4, "en"),
                sheet("A4", 1, "en", "de"),
                sheet("Tabloid", 4, "de", "pl"),
                sheet("A3", 4, "en", "es"));
    }

    /** Six parts, each with so many lines in each language. */
    private static Sheet sheet(String paper, int lines, String... languages) {
        List<String> tags = List.of(languages);
        List<Kind> kinds =
                List.of(Kind.HAZARD, Kind.ACTION, Kind.ACTION, Kind.INFORMATION, Kind.PROHIBITION, Kind.EMERGENCY);
        List<Panel> panels = kinds.stream()
                .map(kind -> new Panel(
                        kind.name(),
                        kind,
                        in(tags, "Part"),
                        kind == Kind.ACTION,
                        IntStream.rangeClosed(1, lines)
                                .mapToObj(line -> in(tags, STEP))
                                .toList()))
                .toList();
        return new Sheet(
                "door",
                tags,
                "",
                paper,
                in(tags, "Manual reduced speed"),
                List.of(in(tags, "beside the door")),
                List.of(in(tags, "Not reviewed.")),
                panels,
                List.of(
                        new Fact("Revision", "C"),
                        new Fact("Safety program", "7F3C-19D2", "compare with the display"),
                        new Fact("Answers for this sheet", "plant engineer")),
                List.of(),
                List.of(),
                "",
                ExampleDossier.FRAME);
    }

    /** A text that tells its language, so that it can be found again. */
    private static List<String> in(List<String> tags, String text) {
        return tags.stream().map(tag -> tag + " " + text).toList();
    }

    private static PDDocument printed(Sheet sheet) throws IOException {
        Rendering rendering = new Renderer().render(ExampleDossier.of(sheet), List.of());
        return Loader.loadPDF(((Rendering.Pages) rendering).files().get("sheets/" + sheet.file() + ".pdf"));
    }

    private static List<TextPosition> letters(PDDocument document) throws IOException {
        List<TextPosition> letters = new ArrayList<>();
        PDFTextStripper stripper = new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition letter) {
                letters.add(letter);
            }
        };
        stripper.writeText(document, Writer.nullWriter());
        return letters;
    }

    /** In points; the library itself rounds it down to whole ones. */
    private static float size(TextPosition letter) {
        return letter.getXScale();
    }

    /** The size of the type of every letter of the lines that hold a text. */
    private static SortedSet<Float> sizes(PDDocument document, String text) throws IOException {
        SortedSet<Float> sizes = new TreeSet<>();
        PDFTextStripper stripper = new PDFTextStripper() {
            @Override
            protected void writeString(String line, List<TextPosition> letters) {
                if (line.contains(text)) {
                    letters.forEach(letter -> sizes.add(size(letter)));
                }
            }
        };
        stripper.writeText(document, new StringWriter());
        return sizes;
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void six_parts_with_their_lines_are_one_page_of_the_paper_asked_for(Sheet sheet) throws IOException {
        try (PDDocument document = printed(sheet)) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
            PDRectangle page = document.getPage(0).getMediaBox();
            List<Float> paper = Objects.requireNonNull(PAPERS.get(sheet.paper()));
            assertThat(page.getWidth()).isCloseTo(paper.get(0) * PT_FROM_MM, within(0.6f));
            assertThat(page.getHeight()).isCloseTo(paper.get(1) * PT_FROM_MM, within(0.6f));
        }
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void steps_can_be_read_from_a_metre_titles_from_three_and_nothing_is_below_nine_points(Sheet sheet)
            throws IOException {
        try (PDDocument document = printed(sheet)) {
            assertThat(letters(document))
                    .isNotEmpty()
                    .allSatisfy(letter -> assertThat(size(letter)).isGreaterThanOrEqualTo(8.95f));
            assertThat(sizes(document, "blue reset").first()).isGreaterThanOrEqualTo(13.95f);
            // A capital of Liberation Sans is 1409 of 2048 units high; an inch of it is read from 30 feet (MUTCD 2009,
            // 2A.13; from memory).
            float capital = sizes(document, "Manual").first() * 1409 / 2048 / PT_FROM_MM;
            assertThat(capital * 360).isGreaterThanOrEqualTo(3000);
        }
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void the_text_of_the_page_is_the_text_of_the_data_and_every_letter_has_its_shape(Sheet sheet) throws IOException {
        try (PDDocument document = printed(sheet)) {
            String page = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
            assertThat(count(page, "blue reset"))
                    .isEqualTo(sheet.languages().size()
                            * sheet.panels().stream()
                                    .mapToInt(panel -> panel.lines().size())
                                    .sum());
            for (String tag : sheet.languages()) {
                assertThat(page).contains(tag + " Part", tag + " beside the door", tag + " Not reviewed.");
            }
            sheet.foot().forEach(fact -> assertThat(page).contains(fact.label(), fact.value(), fact.remark()));
            for (TextPosition letter : letters(document)) {
                int code = letter.getCharacterCodes()[0];
                assertThat(((PDType0Font) letter.getFont()).codeToGID(code)).isNotZero();
            }
        }
    }

    private static int count(String text, String part) {
        return text.split(Pattern.quote(part), -1).length - 1;
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void every_letter_stands_out_from_its_ground_also_in_greys(Sheet sheet) throws IOException {
        try (PDDocument document = printed(sheet)) {
            BufferedImage page = new PDFRenderer(document).renderImage(0, 2, ImageType.RGB);
            for (TextPosition letter : letters(document)) {
                if (!letter.getUnicode().isBlank()) {
                    assertThat(contrast(page, letter)).as(letter.getUnicode()).isGreaterThanOrEqualTo(LEAST_CONTRAST);
                }
            }
        }
    }

    /** Between the darkest and the lightest point of the place where a letter stands. */
    private static double contrast(BufferedImage page, TextPosition letter) {
        double darkest = 1;
        double lightest = 0;
        int left = (int) (letter.getX() * 2);
        int bottom = (int) (letter.getY() * 2);
        for (int x = left; x < left + Math.max(2, letter.getWidth() * 2); x++) {
            for (int y = bottom - (int) (size(letter) * 2); y < bottom + 4; y++) {
                double luminance = luminance(page.getRGB(x, y));
                darkest = Math.min(darkest, luminance);
                lightest = Math.max(lightest, luminance);
            }
        }
        return (lightest + 0.05) / (darkest + 0.05);
    }

    /** Relative luminance as WCAG 2.2 defines it. */
    private static double luminance(int rgb) {
        return 0.2126 * linear((rgb >> 16) & 0xff) + 0.7152 * linear((rgb >> 8) & 0xff) + 0.0722 * linear(rgb & 0xff);
    }

    private static double linear(int eight) {
        double value = eight / 255.0;
        return value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
    }

    @Test
    void the_luminance_of_the_ends_and_of_the_limit_is_as_published() {
        // WCAG 2.2, definition of contrast ratio: from 1 to 21. #767676 is the lightest grey for text on white (common
        // knowledge).
        assertThat(luminance(0)).isZero();
        assertThat(luminance(0xffffff)).isCloseTo(1, within(1e-9));
        assertThat(1.05 / (luminance(0x767676) + 0.05)).isGreaterThan(4.5);
        assertThat(1.05 / (luminance(0x777777) + 0.05)).isLessThan(4.5);
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void the_signs_of_parts_are_told_apart_without_their_colours(Kind kind) throws IOException {
        String path = "/org/cellfile/templates/signs/" + kind.name().toLowerCase(Locale.ROOT) + ".svg.ftl";
        try (InputStream stream = Objects.requireNonNull(SheetLookTest.class.getResourceAsStream(path))) {
            Matcher colours = Pattern.compile("(?:fill|stroke)=\"#([0-9a-f]{3}|[0-9a-f]{6})\"")
                    .matcher(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
            double darkest = 1;
            double lightest = 0;
            while (colours.find()) {
                double luminance = luminance(Integer.parseInt(
                        colours.group(1).length() == 3
                                ? colours.group(1).replaceAll("([0-9a-f])", "$1$1")
                                : colours.group(1),
                        16));
                darkest = Math.min(darkest, luminance);
                lightest = Math.max(lightest, luminance);
            }
            assertThat((lightest + 0.05) / (darkest + 0.05)).isGreaterThanOrEqualTo(LEAST_CONTRAST_OF_DRAWINGS);
        }
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void every_text_is_tagged_with_its_language(Sheet sheet) throws IOException {
        try (PDDocument document = printed(sheet)) {
            assertThat(document.getDocumentCatalog().getLanguage())
                    .isEqualTo(sheet.languages().get(0));
            SortedSet<String> tagged = new TreeSet<>();
            languages(document.getDocumentCatalog().getStructureTreeRoot().getCOSObject(), tagged);
            assertThat(tagged).containsAll(sheet.languages());
        }
    }

    private static void languages(COSBase node, Set<String> tagged) {
        if (node instanceof COSDictionary element) {
            String language = element.getString(COSName.LANG);
            if (language != null) {
                tagged.add(language);
            }
            COSBase kids = element.getDictionaryObject(COSName.K);
            if (kids != null) {
                languages(kids, tagged);
            }
        } else if (node instanceof COSArray kids) {
            for (int i = 0; i < kids.size(); i++) {
                languages(kids.getObject(i), tagged);
            }
        }
    }
}
