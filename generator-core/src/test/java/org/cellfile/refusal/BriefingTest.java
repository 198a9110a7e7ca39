package org.cellfile.refusal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Objects;
import java.util.SortedMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.cellfile.FolderWorld;
import org.cellfile.Generator;
import org.cellfile.Generator.Generated;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Who was told what the sheets ask, and until when that holds. All names and days are constructed. */
class BriefingTest {

    private static final Clock DAY = Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC);

    @TempDir
    private Path folder;

    private Generated generated(String more) throws IOException {
        BaseCell.copyTo(folder);
        Files.writeString(folder.resolve("briefings.yaml"), """
                cellfile: 1

                briefings:
                  - {sheets: [automatic-operation], language: en, who: [R. Quint, S. Arrow], by: ilse, on: 2026-10-12, next: 1 year}
                  - {sheets: [automatic-operation], language: en, who: [S. Arrow], by: ilse, on: 2026-10-20, next: 2027-04-01}
                """ + more);
        return new Generator().generate(new FolderWorld(folder, DAY));
    }

    private static String text(SortedMap<String, byte[]> files, String path) throws IOException {
        try (PDDocument document = open(files, path)) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    private static PDDocument open(SortedMap<String, byte[]> files, String path) throws IOException {
        return Loader.loadPDF(Objects.requireNonNull(files.get(path)));
    }

    private static String safetyFile(SortedMap<String, byte[]> files) throws IOException {
        return text(
                files,
                files.keySet().stream()
                        .filter(path -> path.endsWith("-safety-file.pdf"))
                        .findFirst()
                        .orElseThrow());
    }

    @Test
    void of_each_person_the_latest_briefing_counts() throws IOException {
        assertThat(generated("").cell().orElseThrow().dues().stream()
                        .filter(due -> due.what().startsWith("brief again"))
                        .map(due -> due.on() + " " + due.tag() + " " + due.what() + " (" + due.source() + ")"))
                .containsExactly(
                        "2027-04-01 automatic-operation brief again: S. Arrow (briefing by I. Lorne on 2026-10-20)",
                        "2027-10-12 automatic-operation brief again: R. Quint (briefing by I. Lorne on 2026-10-12)");
    }

    @Test
    void who_was_briefed_stands_in_the_safety_file_and_what_to_sign_on_a_form() throws IOException {
        SortedMap<String, byte[]> files = generated("").files().orElseThrow();
        assertThat(safetyFile(files)).contains("R. Quint, S. Arrow", "2027-10-12", "Who was briefed");
        try (PDDocument form = open(files, "forms/briefing-record-en.pdf")) {
            assertThat(form.getNumberOfPages()).isEqualTo(1);
        }
        assertThat(text(files, "forms/briefing-record-en.pdf"))
                .contains("Running in automatic mode", "I. Lorne", "To be briefed again by")
                .doesNotContain("R. Quint");
    }

    /** Of two sheets one was told again later, to one of two people. */
    @Test
    void each_person_is_due_for_each_sheet_once() throws IOException {
        BaseCell.copyTo(folder);
        Files.writeString(folder.resolve("briefings.yaml"), """
                cellfile: 1

                briefings:
                  - {sheets: [automatic-operation, shift-check], language: en, who: [R. Quint], by: ilse, on: 2026-10-12, next: 1 year}
                  - {sheets: [emergency], language: en, who: [R. Quint, S. Arrow], by: ilse, on: 2026-10-12, next: 1 year}
                  - {sheets: [automatic-operation], language: en, who: [r. quint], by: ilse, on: 2026-10-20, next: 2027-04-01}
                """);

        assertThat(BaseCell.checked(folder).cell().orElseThrow().dues())
                .filteredOn(due -> due.what().startsWith("brief again"))
                .extracting(due -> due.on() + " " + due.tag() + " " + due.what())
                .containsExactlyInAnyOrder(
                        "2027-04-01 automatic-operation brief again: r. quint",
                        "2027-10-12 shift-check brief again: R. Quint",
                        "2027-10-12 emergency brief again: R. Quint, S. Arrow");
    }

    @Test
    void the_shift_signs_it_in_its_language() throws IOException {
        BaseCell.copyTo(folder);
        Files.writeString(
                folder.resolve("sheets.yaml"),
                "cellfile: 1\n\nsheets:\n  responsible: ilse\n  language: de\n  printed: [{languages: [de], paper: A3}]\n");
        SortedMap<String, byte[]> files =
                new Generator().generate(new FolderWorld(folder, DAY)).files().orElseThrow();

        assertThat(text(files, "forms/briefing-record-de.pdf"))
                .contains(
                        "Unterweisungsnachweis",
                        "Small cell",
                        "Sprache der Blätter Deutsch",
                        "Automatikbetrieb",
                        "I. Lorne")
                .contains("Seite 1 von 1", "Unterschrift", "Datum")
                .doesNotContain("Briefing", "Signature", "Filled in", "page ", "Running in");
        try (PDDocument form = open(files, "forms/briefing-record-de.pdf")) {
            assertThat(form.getNumberOfPages()).isEqualTo(1);
            assertThat(form.getDocumentCatalog().getLanguage()).isEqualTo("de");
        }
        assertThat(files).containsKey("forms/shift-check.pdf").doesNotContainKey("forms/briefing-record-en.pdf");
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de", "es", "pl"})
    void it_takes_one_page_of_letter_in_each(String tag) throws IOException {
        BaseCell.copyTo(folder);
        BaseCell.change(folder, "cell.yaml", "  name: Small cell\n", "  name: Small cell\n  page: Letter\n");
        Files.writeString(
                folder.resolve("sheets.yaml"),
                "cellfile: 1\n\nsheets:\n  responsible: ilse\n  language: " + tag + "\n  printed:\n    - {languages: ["
                        + tag + "], paper: A3}\n");
        SortedMap<String, byte[]> files =
                new Generator().generate(new FolderWorld(folder, DAY)).files().orElseThrow();

        try (PDDocument form = open(files, "forms/briefing-record-" + tag + ".pdf")) {
            assertThat(form.getNumberOfPages()).isEqualTo(1);
            assertThat(form.getPage(0).getMediaBox().getHeight()).isEqualTo(792);
        }
    }

    @Test
    void a_copy_for_others_does_not_name_them() throws IOException {
        SortedMap<String, byte[]> files =
                generated("\ncopies: {hold: no-internal-parts}\n").files().orElseThrow();
        assertThat(safetyFile(files)).contains("Who was briefed", "2026-10-20").doesNotContain("R. Quint", "S. Arrow");
        // somebody whose name is left out is not taken for somebody else whose name is
        assertThat(safetyFile(files).replace("- ", "-"))
                .contains("2027-10-12 automatic-operation brief again", "2027-04-01 automatic-operation brief again");
    }
}
