package org.cellfile.render;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.GregorianCalendar;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TimeZone;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** What a reader program finds in the safety file. */
class RenderedFileTest {

    private static final String FILE = "north-3-safety-file.pdf";

    private static final List<Attachment> ATTACHMENTS = List.of(
            new Attachment(
                    "src/cell.yaml",
                    "application/yaml",
                    "cell: north-3\n".getBytes(UTF_8),
                    "what the pages were made from",
                    Attachment.Relationship.SOURCE),
            new Attachment(
                    "dossier.json",
                    "application/json",
                    "{\"label\": {}}".getBytes(UTF_8),
                    "the same for machines",
                    Attachment.Relationship.DATA));

    private static final SortedMap<String, byte[]> DRAFT = files(new ExampleDossier());

    static SortedMap<String, byte[]> files(ExampleDossier dossier) {
        Rendering rendering = new Renderer().render(dossier.printable(), ATTACHMENTS);
        assertThat(rendering).isInstanceOf(Rendering.Pages.class);
        return ((Rendering.Pages) rendering).files();
    }

    /** Without the calendar. */
    static SortedMap<String, byte[]> printed(SortedMap<String, byte[]> files) {
        SortedMap<String, byte[]> printed = new TreeMap<>(files);
        printed.keySet().removeIf(path -> !path.endsWith(".pdf"));
        return printed;
    }

    private static PDDocument open(SortedMap<String, byte[]> files, String path) throws IOException {
        return Loader.loadPDF(files.get(path));
    }

    private static List<String> pages(PDDocument document) throws IOException {
        List<String> pages = new ArrayList<>();
        PDFTextStripper stripper = new PDFTextStripper();
        for (int page = 1; page <= document.getNumberOfPages(); page++) {
            stripper.setStartPage(page);
            stripper.setEndPage(page);
            pages.add(stripper.getText(document));
        }
        return pages;
    }

    @Test
    void there_is_one_file_for_the_cell_one_for_its_dates_and_one_for_each_form_and_sheet() {
        assertThat(DRAFT.keySet())
                .containsExactly(
                        "forms/round.pdf", "forms/runs.pdf", "north-3-due-dates.ics", FILE, "sheets/operator-en.pdf");
    }

    @Test
    void every_page_says_which_cell_and_revision_it_belongs_to_and_that_it_is_a_draft() throws IOException {
        for (String path : printed(DRAFT).keySet()) {
            saysWhichCellAndRevision(path);
        }
    }

    private static void saysWhichCellAndRevision(String path) throws IOException {
        try (PDDocument file = open(DRAFT, path)) {
            List<String> pages = pages(file);
            for (int i = 0; i < pages.size(); i++) {
                assertThat(pages.get(i))
                        .contains("Palletising cell North 3", "north-3", "revision C", "DRAFT")
                        .contains(day(path))
                        .contains("page " + (i + 1) + " of " + pages.size());
            }
        }
    }

    /** A sheet tells its day in the foot alone, where it stands in the manner of its language. */
    private static String day(String path) {
        return path.startsWith("sheets/") ? "As of: 2025-03-14" : "as of 2025-03-14";
    }

    private static String text(SortedMap<String, byte[]> files, String path) throws IOException {
        try (PDDocument file = open(files, path)) {
            return String.join("", pages(file)).replaceAll("[\\s\\u00a0]+", " ");
        }
    }

    @Test
    void a_released_file_its_sheet_and_its_forms_say_so_and_carry_no_draft_mark_on_any_page() throws IOException {
        SortedMap<String, byte[]> files = printed(files(new ExampleDossier().released("")));
        for (String path : files.keySet()) {
            try (PDDocument file = open(files, path)) {
                assertThat(pages(file))
                        .allSatisfy(page ->
                                assertThat(page).doesNotContain("DRAFT").contains("revision C, released", day(path)));
            }
        }
        try (PDDocument file = open(files, FILE)) {
            assertThat(pages(file).get(0))
                    .contains(
                            "Released, as of 2025-03-14",
                            "Nothing bars release; signatures in ink are still to be given.");
        }
    }

    @Test
    void the_cover_names_who_released_it() throws IOException {
        String by = "M. Sollander, plant manager, on 2025-03-17 (typed, not proven)";
        assertThat(text(files(new ExampleDossier().released(by)), FILE)).contains("Released for use by " + by + ".");
    }

    @Test
    void a_draft_that_nothing_bars_says_that_no_release_was_asked_for() throws IOException {
        SortedMap<String, byte[]> files = printed(files(new ExampleDossier().releasable()));
        for (String path : files.keySet()) {
            try (PDDocument file = open(files, path)) {
                assertThat(pages(file))
                        .allSatisfy(page ->
                                assertThat(page).contains("DRAFT", "Nothing bars a release, and none was asked for."));
            }
        }
    }

    @Test
    void a_sheet_and_a_form_name_the_first_things_that_bar_release() throws IOException {
        for (String path : List.of("sheets/operator-en.pdf", "forms/round.pdf")) {
            assertThat(text(DRAFT, path))
                    .contains(
                            "DRAFT not released" + (path.startsWith("sheets/") ? "" : ", as of 2025-03-14")
                                    + ". 9 things bar release: the function test of `door-west` no. 1 was due on 2025-02-02 and no later …;")
                    .contains("; all are listed in the safety file.");
            assertThat(text(files(new ExampleDossier().barredBy(1)), path))
                    .contains("One thing bars release: the function test of `door-west`");
        }
    }

    @Test
    void what_is_few_stands_on_the_cover() throws IOException {
        try (PDDocument file = open(files(new ExampleDossier().barredBy(1)), FILE)) {
            assertThat(pages(file).get(0))
                    .contains("One thing bars release. Every page is marked", "protocols/door-west.yaml:11:5");
        }
    }

    @Test
    void what_bars_release_is_listed_with_the_place_where_it_was_due() throws IOException {
        try (PDDocument file = open(DRAFT, FILE)) {
            List<String> pages = pages(file);
            assertThat(pages.get(0)).contains("9 things bar release.", "Listed on page 2");
            assertThat(pages.get(1)).contains("What bars release", "protocols/door-west.yaml:19:5");
        }
    }

    @Test
    void markup_and_template_syntax_in_a_text_are_printed_as_they_were_written() throws IOException {
        try (PDDocument file = open(DRAFT, FILE)) {
            assertThat(String.join("", pages(file)).replaceAll("\\s+", " ")).contains(ExampleDossier.HOSTILE);
        }
    }

    @Test
    void the_figures_in_a_drawing_are_text_that_can_be_searched_for() throws IOException {
        try (PDDocument file = open(DRAFT, FILE)) {
            assertThat(String.join("", pages(file))).contains("installed 1420 mm", "mean + 3 σ 0.3177 s");
        }
    }

    @Test
    void every_working_is_printed_whole_on_one_page() throws IOException {
        try (PDDocument file = open(DRAFT, FILE)) {
            List<String> pages = pages(file);
            for (String tag : List.of("stop-auto-1.stopping-time", "fence-east.reach-through", "sf-4.pfh")) {
                assertThat(pages)
                        .as(tag)
                        .filteredOn(page -> page.contains("\n" + tag + "\n"))
                        .hasSize(1)
                        .allSatisfy(page -> assertThat(page.substring(page.indexOf("\n" + tag + "\n")))
                                .contains("K · T + C", "recomputed, agrees with the recorded value 1359 mm"));
            }
        }
    }

    @Test
    void a_table_repeats_its_head_on_each_of_its_pages() throws IOException {
        try (PDDocument file = open(DRAFT, FILE)) {
            assertThat(pages(file))
                    .filteredOn(page -> page.contains("automatic, axis 1, 100 % speed"))
                    .hasSizeGreaterThan(2)
                    .allSatisfy(page -> assertThat(page).contains("Stopping time"));
        }
    }

    @Test
    void a_form_repeats_what_a_table_is_about_on_each_of_its_pages() throws IOException {
        for (String path : List.of("forms/round.pdf", "forms/runs.pdf")) {
            try (PDDocument form = open(DRAFT, path)) {
                assertThat(pages(form))
                        .filteredOn(page -> page.contains("lamp-"))
                        .hasSizeGreaterThan(1)
                        .allSatisfy(page -> assertThat(page).contains("Lamps of north-3", "Reading"));
                assertThat(String.join("", pages(form)).replaceAll("\\s+", " "))
                        .contains(ExampleDossier.HOSTILE, "as it has to be otherwise", "Looked at who went round");
            }
        }
    }

    @Test
    void chapters_and_sections_are_bookmarks() throws IOException {
        try (PDDocument file = open(DRAFT, FILE)) {
            List<String> names = new ArrayList<>();
            for (PDOutlineItem item :
                    file.getDocumentCatalog().getDocumentOutline().children()) {
                names.add(item.getTitle());
                item.children().forEach(child -> names.add("  " + child.getTitle()));
                assertThat(item.findDestinationPage(file)).as(item.getTitle()).isNotNull();
            }
            assertThat(names)
                    .contains(
                            "Contents",
                            "3 Safeguards and their distances",
                            "  3.1 Light curtain at the pallet opening");
        }
    }

    @Test
    void the_contents_and_the_origins_of_values_are_links() throws IOException {
        try (PDDocument file = open(DRAFT, FILE)) {
            int contents = links(file, "Contents");
            assertThat(contents).isGreaterThanOrEqualTo(7 + 11);
            assertThat(links(file, "p. 5")).isPositive();
        }
    }

    private static int links(PDDocument file, String text) throws IOException {
        List<String> pages = pages(file);
        for (int i = 0; i < pages.size(); i++) {
            if (pages.get(i).contains(text)) {
                PDPage page = file.getPage(i);
                return page.getAnnotations(PDAnnotationLink.class::isInstance).size();
            }
        }
        return 0;
    }

    @Test
    void attachments_come_out_as_they_went_in() throws IOException {
        try (PDDocument file = open(DRAFT, FILE)) {
            Map<String, PDComplexFileSpecification> embedded =
                    file.getDocumentCatalog().getNames().getEmbeddedFiles().getNames();
            Map<String, String> contents = new HashMap<>();
            for (Map.Entry<String, PDComplexFileSpecification> entry : embedded.entrySet()) {
                contents.put(
                        entry.getKey(),
                        new String(entry.getValue().getEmbeddedFile().toByteArray(), UTF_8));
            }
            assertThat(contents)
                    .containsExactlyInAnyOrderEntriesOf(
                            Map.of("src/cell.yaml", "cell: north-3\n", "dossier.json", "{\"label\": {}}"));
            COSArray associated = file.getDocumentCatalog().getCOSObject().getCOSArray(COSName.getPDFName("AF"));
            assertThat(associated.size()).isEqualTo(2);
            assertThat(((COSDictionary) associated.getObject(0)).getNameAsString("AFRelationship"))
                    .isEqualTo("Source");
        }
    }

    @Test
    void the_only_date_is_the_one_the_description_speaks_of() throws IOException {
        try (PDDocument file = open(DRAFT, FILE)) {
            assertThat(file.getDocumentInformation().getCreationDate().toInstant())
                    .isEqualTo(GregorianCalendar.from(LocalDate.of(2025, 3, 14).atStartOfDay(ZoneOffset.UTC))
                            .toInstant());
            assertThat(new String(file.getDocumentCatalog().getMetadata().toByteArray(), UTF_8))
                    .contains("<xmp:CreateDate>2025-03-14T00:00:00Z</xmp:CreateDate>");
        }
    }

    @Test
    void the_same_bytes_come_out_again_and_under_another_locale_and_time_zone() {
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
            SortedMap<String, byte[]> again = files(new ExampleDossier());
            DRAFT.forEach((path, bytes) -> assertThat(again.get(path)).as(path).isEqualTo(bytes));
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }

    @Test
    void the_page_is_a4_or_letter_as_the_label_says() throws IOException {
        SortedMap<String, byte[]> letter = printed(files(new ExampleDossier().letter()));
        for (String path : letter.keySet()) {
            try (PDDocument file = open(letter, path);
                    PDDocument metric = open(DRAFT, path)) {
                boolean wide = path.equals("forms/round.pdf");
                assertThat(file.getPage(0).getMediaBox().getWidth()).isEqualTo(wide ? 792 : 612);
                assertThat(metric.getPage(0).getMediaBox().getWidth())
                        .isBetween(wide ? 841f : 595f, wide ? 842f : 596f);
            }
        }
    }

    @Test
    void a_sheet_is_one_page_on_either_paper() throws IOException {
        for (ExampleDossier dossier : List.of(new ExampleDossier(), new ExampleDossier().letter())) {
            try (PDDocument sheet = open(files(dossier), "sheets/operator-en.pdf")) {
                assertThat(pages(sheet)).hasSize(1);
                assertThat(pages(sheet).get(0)).contains("Press the nearest emergency stop.", "7F3C-19D2");
            }
        }
    }
}
