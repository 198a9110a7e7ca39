package org.cellfile.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.SortedMap;
import org.cellfile.FolderWorld;
import org.cellfile.Generator;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/** The files are what they say they are, in the judgement of a validator that is not ours. */
class ConformanceTest {

    private static SortedMap<String, byte[]> files = RenderedFileTest.files(new ExampleDossier());

    @BeforeAll
    static void start() {
        VeraGreenfieldFoundryProvider.initialise();
    }

    @ParameterizedTest
    @CsvSource({
        "north-3-safety-file.pdf, PDFA_3_A",
        "north-3-safety-file.pdf, PDFUA_1",
        "sheets/operator-en.pdf, PDFA_3_A",
        "sheets/operator-en.pdf, PDFUA_1",
        "forms/round.pdf, PDFA_3_A",
        "forms/round.pdf, PDFUA_1",
        "forms/runs.pdf, PDFA_3_A",
        "forms/runs.pdf, PDFUA_1"
    })
    void conforms(String path, PDFAFlavour flavour) throws Exception {
        assertConforms(Objects.requireNonNull(files.get(path)), flavour);
    }

    /** Cells that can be released and one that prints as a draft, as their users get them. */
    @ParameterizedTest
    @ValueSource(strings = {"kettlebrook-palletising", "marrowdale-refit", "stonewick-tending", "farrowmere-kitting"})
    void theExamplesConform(String example) throws Exception {
        SortedMap<String, byte[]> pages = new Generator()
                .generate(FolderWorld.of(Path.of("..", "examples", example, "src", "main", "cell")))
                .files()
                .orElseThrow();
        assertThat(pages)
                .containsKeys(
                        example + "-due-dates.ics",
                        example + "-safety-file.pdf",
                        "sheets/after-stop-en.pdf",
                        "sheets/automatic-operation-en.pdf",
                        "sheets/energy-isolation-en.pdf",
                        "sheets/manual-reduced-speed-en.pdf",
                        "sheets/shift-check-en.pdf",
                        "forms/briefing-record-en.pdf",
                        "forms/shift-check.pdf",
                        "forms/yearly-inspection.pdf",
                        "forms/stop-time-measurement.pdf");
        // Printed once for each place at which it hangs.
        assertThat(pages.keySet()).anyMatch(file -> file.matches("sheets/emergency(-at-[a-z]+)?-en\\.pdf"));
        for (byte[] page : RenderedFileTest.printed(pages).values()) {
            assertConforms(page, PDFAFlavour.PDFA_3_A);
            assertConforms(page, PDFAFlavour.PDFUA_1);
        }
    }

    /** Every page with a plan. */
    @Test
    void pagesWithPlansConform(@TempDir Path folder) throws Exception {
        PlanPagesTest.planned(folder);
        SortedMap<String, byte[]> pages = PlanPagesTest.files(PlanPagesTest.dossier(folder));
        for (String path : List.of("small-cell-safety-file.pdf", "sheets/emergency-en.pdf")) {
            assertConforms(Objects.requireNonNull(pages.get(path)), PDFAFlavour.PDFA_3_A);
            assertConforms(Objects.requireNonNull(pages.get(path)), PDFAFlavour.PDFUA_1);
        }
    }

    private static void assertConforms(byte[] pdf, PDFAFlavour flavour) throws Exception {
        try (PDFAParser parser = Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), flavour);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
            ValidationResult result = validator.validate(parser);
            List<String> failures = result.getTestAssertions().stream()
                    .filter(assertion -> assertion.getStatus() == TestAssertion.Status.FAILED)
                    .map(assertion -> assertion.getRuleId().getClause() + "/"
                            + assertion.getRuleId().getTestNumber() + " " + assertion.getMessage())
                    .toList();
            assertThat(failures).isEmpty();
            assertThat(result.isCompliant()).isTrue();
        }
    }
}
