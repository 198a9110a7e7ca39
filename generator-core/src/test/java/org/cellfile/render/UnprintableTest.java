package org.cellfile.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Chapter;
import org.cellfile.dossier.Form;
import org.cellfile.dossier.Sheet;
import org.cellfile.finding.Finding;
import org.cellfile.finding.Severity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What cannot be printed as it stands is told, and nothing is printed. */
class UnprintableTest {

    private static List<Finding> findings(ExampleDossier dossier) {
        Rendering rendering = new Renderer().render(dossier.printable(), List.of());
        assertThat(rendering).isInstanceOf(Rendering.Unprintable.class);
        return ((Rendering.Unprintable) rendering).findings();
    }

    private static ExampleDossier saying(String text) {
        return new ExampleDossier()
                .with(new Chapter("remarks", "Remarks", List.of(new Block.Points(List.of("first", text)))));
    }

    @Test
    void a_sheet_with_too_many_lines_is_refused_and_the_first_line_too_many_is_named() {
        List<String> steps = new ArrayList<>();
        for (int i = 1; i <= 40; i++) {
            steps.add("Look at lamp number " + i + ".");
        }
        Sheet sheet = new Sheet(
                "lamps",
                List.of("en"),
                "",
                "A4",
                List.of("Lamps"),
                List.of(List.of("beside the cabinet")),
                List.of(),
                List.of(ExampleDossier.panel(Sheet.Kind.ACTION, "Each lamp", true, steps.toArray(String[]::new))),
                List.of(new Block.Fact("Answers", "plant engineer")),
                List.of(),
                List.of(),
                "",
                ExampleDossier.FRAME);

        assertThat(findings(new ExampleDossier().with(sheet))).singleElement().satisfies(finding -> {
            assertThat(finding.id()).isEqualTo(Renderer.OVERFLOW);
            assertThat(finding.severity()).isEqualTo(Severity.REFUSES);
            assertThat(finding.about()).isEqualTo("lamps-en");
            assertThat(finding.sentence())
                    .matches("the sheet `lamps-en` has \\d+ lines more than fit on its one page \\(A4\\)");
            assertThat(finding.because().get(0)).matches("what no longer fits: `Each lamp` \\d+ lines");
            assertThat(finding.because().get(1))
                    .matches("the first text that no longer fits: Look at lamp number \\d+\\.");
            assertThat(finding.help()).contains("A3").doesNotContain("language");
        });
    }

    @Test
    void one_line_too_many_is_counted_as_one() {
        int lines = 15;
        while (new Renderer().render(ExampleDossier.of(notes(lines)), List.of()) instanceof Rendering.Pages) {
            lines++;
        }
        Rendering rendering = new Renderer().render(ExampleDossier.of(notes(lines)), List.of());
        assertThat(((Rendering.Unprintable) rendering).findings())
                .singleElement()
                .satisfies(finding -> assertThat(finding.sentence()).contains("has 1 line more"));
    }

    private static Sheet notes(int lines) {
        List<String> notes = new ArrayList<>();
        for (int i = 1; i <= lines; i++) {
            notes.add("Note " + i);
        }
        return new Sheet(
                "notes",
                List.of("en"),
                "",
                "A4",
                List.of("Notes"),
                List.of(List.of("beside the cabinet")),
                List.of(),
                List.of(ExampleDossier.panel(Sheet.Kind.INFORMATION, "Notes", false, notes.toArray(String[]::new))),
                List.of(),
                List.of(),
                List.of(),
                "",
                ExampleDossier.FRAME);
    }

    @Test
    void a_character_no_typeface_has_is_refused_by_number_and_name() {
        assertThat(findings(saying("brake \uD83E\uDD16 released")))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.id()).isEqualTo(Renderer.NO_GLYPH);
                    assertThat(finding.severity()).isEqualTo(Severity.REFUSES);
                    assertThat(finding.sentence())
                            .isEqualTo(
                                    "the chapter `Remarks` holds the character U+1F916 ROBOT FACE, which cannot be printed");
                    assertThat(finding.because())
                            .anySatisfy(line -> assertThat(line).contains("brake", "released"));
                });
    }

    @Test
    void neither_does_a_form_print_it() {
        Form form = new Form(
                "lamps",
                "Lamps",
                true,
                List.of(new Block.WriteInTable(
                        "Lamps",
                        List.of(Block.Column.text("Lamp", 1)),
                        List.of(List.of(Block.Entry.printed("lamp \uD83E\uDD16 north"))))));
        assertThat(findings(new ExampleDossier().with(form)))
                .singleElement()
                .satisfies(finding ->
                        assertThat(finding.sentence()).startsWith("the form `lamps` holds the character U+1F916"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"\u4e2d", "\u0007", "\u202e", "\ufeff", "\u05d0", "\ud800", "\uffff"})
    void neither_are_characters_that_would_vanish_or_turn_the_text_around(String character) {
        assertThat(findings(saying("a" + character + "b")))
                .singleElement()
                .satisfies(finding -> assertThat(finding.sentence()).contains("U+"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"√ ∑ ≥ ≤ ≠ · × − → ± ° µ Ω Δ π ½ ²", "Łódź Ærø Český ñ ß ğ", "Ελληνικά Кириллица"})
    void the_signs_of_the_trade_and_of_european_languages_can_be_printed(String text) {
        Rendering rendering = new Renderer().render(saying(text).printable(), List.of());
        assertThat(rendering).isInstanceOf(Rendering.Pages.class);
    }
}
