package org.cellfile.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;
import java.util.SortedMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.text.PDFTextStripper;
import org.cellfile.FolderWorld;
import org.cellfile.Generator;
import org.cellfile.Generator.Generated;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;
import org.cellfile.refusal.BaseCell;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A plant brings a language with one file, and a typeface where it needs one. The words are made up. The figures and texts are constructed. */
class OwnLanguageTest {

    private static final Clock DAY = Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC);
    private static final String STOP = "\u505c\u6b62";
    private static final String DATE = "\u5e74\u6708\u65e5"; // stands in every date of the language

    @TempDir
    private Path folder;

    /** English words under another tag, one of them other than in English. */
    private static String words(String key, String instead) throws IOException {
        try (InputStream stream = Objects.requireNonNull(
                OwnLanguageTest.class.getResourceAsStream("/org/cellfile/templates/languages/en.properties"))) {
            String text = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
            String changed = text.replaceFirst("(?m)^" + key + " = .*$", key + " = " + instead);
            assertThat(changed).isNotEqualTo(text);
            return changed;
        }
    }

    private void file(String name, byte[] content) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        Files.write(file, content);
    }

    private void file(String name, String text) throws IOException {
        file(name, text.getBytes(StandardCharsets.UTF_8));
    }

    /** The base cell described in that language and printed in it. */
    private void cellIn(String tag, String... more) throws IOException {
        BaseCell.copyTo(folder);
        file(
                "sheets.yaml",
                "cellfile: 1\n\nsheets:\n  responsible: ilse\n  language: " + tag + "\n"
                        + "  posted:\n    - {sheet: automatic-operation, at: operator panel}\n"
                        + String.join("", more));
    }

    private static String reviewed(String tag) {
        return "  reviewed:\n    - {language: " + tag + ", by: ilse, on: 2026-11-10, wording: as-it-is}\n";
    }

    private SortedMap<String, byte[]> generated() {
        Generated generated = new Generator().generate(new FolderWorld(folder, DAY));
        return generated
                .files()
                .orElseThrow(() -> new AssertionError(generated.verdict().findings()));
    }

    private static String text(SortedMap<String, byte[]> files, String name) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(Objects.requireNonNull(files.get(name), name))) {
            return new PDFTextStripper().getText(pdf);
        }
    }

    private static List<String> embedded(SortedMap<String, byte[]> files) throws IOException {
        String name = files.keySet().stream()
                .filter(file -> file.endsWith("-safety-file.pdf"))
                .findFirst()
                .orElseThrow();
        try (PDDocument pdf = Loader.loadPDF(Objects.requireNonNull(files.get(name)))) {
            return List.copyOf(new PDDocumentNameDictionary(pdf.getDocumentCatalog())
                    .getEmbeddedFiles()
                    .getNames()
                    .keySet());
        }
    }

    private List<Finding> found(String id) {
        return new Generator()
                .check(new FolderWorld(folder, DAY)).verdict().findings().stream()
                        .filter(finding -> finding.id().words().equals(id))
                        .toList();
    }

    private String digest() {
        Cell cell = new Generator().check(new FolderWorld(folder, DAY)).cell().orElseThrow();
        return cell.substance().digest("sheets").orElseThrow();
    }

    @Test
    void oneFileIsALanguage() throws IOException {
        cellIn("el", reviewed("el"));
        file("languages/el.properties", words("automatic-operation.title", "Αυτόματη λειτουργία"));
        BaseCell.reviewedAsItIs(folder);

        SortedMap<String, byte[]> files = generated();
        assertThat(text(files, "sheets/automatic-operation-el.pdf"))
                .contains("Αυτόματη λειτουργία")
                .doesNotContain("not yet reviewed");
        assertThat(embedded(files)).contains("languages/el.properties");
    }

    @Test
    void everyWordThatIsMissingIsTold() throws IOException {
        cellIn("el", reviewed("el"));
        file("languages/el.properties", words("frame.page", "").replaceFirst("(?m)^frame.of = .*$", ""));

        assertThat(found("language.key")).singleElement().satisfies(finding -> {
            assertThat(finding.sentence()).startsWith("2 wordings are missing in `el`");
            assertThat(finding.because()).containsExactly("frame.page = page", "frame.of = of");
        });
    }

    @Test
    void aFileForALanguageThatIsThereReplacesWhatItSays() throws IOException {
        cellIn("en", reviewed("en"));
        file("languages/en.properties", "every-sheet.never = Not ever, not ''once''\n");

        assertThat(text(generated(), "sheets/automatic-operation-en.pdf"))
                .contains("Not ever, not ''once''", "Running in automatic mode");
    }

    @Test
    void whatNobodyReviewedSaysSo() throws IOException {
        cellIn("en");

        assertThat(found("language.not-reviewed")).hasSize(1);
        assertThat(text(generated(), "sheets/automatic-operation-en.pdf"))
                .contains("Wording not yet reviewed: English.");
    }

    @Test
    void aReviewerNamedInTheFileBindsNoWording() throws IOException {
        cellIn("en");
        file("languages/en.properties", "language.reviewed-by = I. Lorne\n");

        assertThat(found("language.key"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.help()).contains("`sheets`, `reviewed`"));
    }

    @Test
    void otherWordsOfThePlantVoidTheReview() throws IOException {
        cellIn("en", reviewed("en"));
        file("languages/en.properties", "every-sheet.never = Never ever\n");
        BaseCell.reviewedAsItIs(folder);
        assertThat(found("language.review-lapsed")).isEmpty();

        file(
                "languages/en.properties",
                "# in other colours\nevery-sheet.never = Never ever\nwords.vague = so to say\n");
        assertThat(found("language.review-lapsed")).isEmpty();

        file("languages/en.properties", "every-sheet.never = Hardly ever\n");
        assertThat(found("language.review-lapsed"))
                .singleElement()
                .satisfies(finding ->
                        assertThat(finding.because()).containsExactly("what changed since: the fixed wording"));
        assertThat(text(generated(), "sheets/automatic-operation-en.pdf"))
                .contains("Wording not yet reviewed: English.");
    }

    @Test
    void itsWordsAreSignedAndItsCommentsAreNot() throws IOException {
        cellIn("en", reviewed("en"));
        file("languages/en.properties", "every-sheet.never = Never ever\n");
        String before = digest();

        file("languages/en.properties", "# of our own\nevery-sheet.never : Never ever\n");
        assertThat(digest()).isEqualTo(before);
        file("languages/en.properties", "every-sheet.never = Never\n");
        assertThat(digest()).isNotEqualTo(before);
    }

    @Test
    void withoutATypefaceItsCharactersAreRefusedWhereTheyStand() throws IOException {
        cellIn("zh", reviewed("zh"));
        file("languages/zh.properties", words("every-sheet.emergency", STOP));

        assertThat(found("text.no-glyph")).singleElement().satisfies(finding -> {
            assertThat(finding.where().file().path()).isEqualTo("languages/zh.properties");
            assertThat(finding.sentence()).contains("`zh`", "U+505C");
            assertThat(finding.help()).contains("`typefaces`");
        });
    }

    @Test
    void withATypefaceTheyArePrinted() throws IOException {
        cellIn("zh", reviewed("zh"), "  typefaces:\n    - {language: zh, file: fonts/made-up.ttf}\n");
        file("languages/zh.properties", words("every-sheet.emergency", STOP));
        file("fonts/made-up.ttf", MadeUpTypeface.with(STOP + DATE));

        SortedMap<String, byte[]> files = generated();
        assertThat(text(files, "sheets/automatic-operation-zh.pdf")).contains(STOP, "Running in automatic mode");
        assertThat(embedded(files)).contains("languages/zh.properties", "fonts/made-up.ttf");
        try (PDDocument pdf = Loader.loadPDF(Objects.requireNonNull(files.get("sheets/automatic-operation-zh.pdf")))) {
            assertThat(pdf.getDocumentCatalog().getLanguage()).isEqualTo("zh");
            assertThat(pdf.getPage(0).getResources().getFontNames())
                    .extracting(COSName::getName)
                    .hasSizeGreaterThan(1);
        }
    }

    @Test
    void aTypefaceIsSignedByItsBytes() throws IOException {
        cellIn("en", reviewed("en"), "  typefaces:\n    - {language: en, file: fonts/made-up.ttf}\n");
        file("fonts/made-up.ttf", MadeUpTypeface.with("\u505c"));
        String before = digest();
        file("fonts/made-up.ttf", MadeUpTypeface.with("\u6b62"));

        assertThat(digest()).isNotEqualTo(before);
    }

    @Test
    void aTypefaceThatForbidsItIsRefusedWhereItIsNamed() throws IOException {
        cellIn("en", reviewed("en"), "  typefaces:\n    - {language: en, file: fonts/made-up.ttf}\n");
        file("fonts/made-up.ttf", MadeUpTypeface.withRights(1 << 1));

        assertThat(found("typeface.unusable")).singleElement().satisfies(finding -> {
            assertThat(finding.where().position()).startsWith("sheets.yaml:");
            assertThat(finding.sentence()).startsWith("`fonts/made-up.ttf` forbids");
        });
    }

    @Test
    void aTypefaceThatIsNotThereIsRefused() throws IOException {
        cellIn("en", reviewed("en"), "  typefaces:\n    - {language: en, file: fonts/lost.ttf}\n");

        assertThat(found("read.no-such-file")).hasSize(1);
    }

    @Test
    void bothGoWithACopyAndCommentsStay() throws IOException {
        cellIn("zh", reviewed("zh"), "  typefaces:\n    - {language: zh, file: fonts/made-up.ttf}\n");
        file("copies.yaml", "cellfile: 1\ncopies:\n  hold: no-internal-parts\n");
        file("languages/zh.properties", "# said by Mr. Internal\n" + words("every-sheet.emergency", STOP));
        file("fonts/made-up.ttf", MadeUpTypeface.with(STOP + DATE));

        SortedMap<String, byte[]> files = generated();
        assertThat(embedded(files)).contains("languages/zh.properties", "fonts/made-up.ttf");
        assertThat(text(files, "sheets/automatic-operation-zh.pdf")).contains(STOP);
    }
}
