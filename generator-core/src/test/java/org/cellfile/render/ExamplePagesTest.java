package org.cellfile.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.cellfile.FolderWorld;
import org.cellfile.Generator;
import org.junit.jupiter.api.Test;

/** What a reader finds on the pages of the demonstration cells. */
class ExamplePagesTest {

    private static final String COMPARED = "Used for comparison only";

    /** The text of a safety file, with single spaces in place of its line ends. */
    private static String text(String example) throws IOException {
        return text(example, example + "-safety-file.pdf");
    }

    /** The same of any of its files. */
    private static String text(String example, String path) throws IOException {
        byte[] file = new Generator()
                .generate(FolderWorld.of(Path.of("..", "examples", example, "src", "main", "cell")))
                .files()
                .orElseThrow()
                .get(path);
        try (PDDocument document = Loader.loadPDF(Objects.requireNonNull(file))) {
            return new PDFTextStripper().getText(document).replaceAll("[\\s\\u00a0]+", " ");
        }
    }

    @Test
    void editionsForComparisonHaveAChapterAndATableInTheRegister() throws IOException {
        String text = text("kettlebrook-palletising");

        assertThat(text)
                .contains(
                        "9 Under other editions What other editions would ask", "ISO 13855:2024 beside ISO 13855:2010")
                .contains("mat-lift 1806 mm 1866 mm +60 mm 1837 mm -29 mm Does not hold")
                .contains("two-hand-pusher 315 mm 615 mm +300 mm 638 mm 23 mm Still holds")
                .contains("curtain-north 1238 mm at least 688 mm – 1257 mm – Cannot be said")
                .contains("21 compared; still holds: 7; does not hold: 4; cannot be said: 10.")
                .containsOnlyOnce("to stand further away than that proves nothing");
        String compared = text.substring(text.indexOf(COMPARED));
        assertThat(compared).contains("two-hand-reach", "iso-13857-2019.").doesNotContain("iso-13855-2010.");
        assertThat(text.substring(0, text.indexOf(COMPARED))).doesNotContain("iso-13855-2024.");
    }

    @Test
    void whereNoneIsNamedForComparisonNeitherIsPrinted() throws IOException {
        assertThat(text("marrowdale-refit"))
                .doesNotContain("Under other editions", COMPARED)
                .contains("position of the laser scanner added at the refit in force for scanner- chain-place; order")
                .contains("here from memory 1600 mm/s, no difference");
    }

    @Test
    void whatIsMeasuredInInchesStandsInMillimetresBesideIt() throws IOException {
        assertThat(text("stonewick-tending"))
                .contains(
                        "scanner-aisle 0.5220 s 90.46 in (2297.6 mm) 94.00 in (2387.6 mm) 93.75 in (2381.2 mm) 3.29 in (83.6 mm)")
                .contains("1 curtain-load 1.11 in (28.2 mm) 15.09 in (383.2 mm)")
                .contains("hand 3.94 in (100.0 mm) 4.25 in (107.9 mm) 0.05 in (1.3 mm) 0.26 in (6.6 mm)");
    }

    @Test
    void whatIsNotCoveredIsNamedAndNothingThatIs() throws IOException {
        String text = text("stonewick-tending");
        String chapter =
                text.substring(text.lastIndexOf("What this file does not cover"), text.lastIndexOf("A robot can kill"));

        assertThat(chapter)
                .contains("muting, fields that are switched", "collaborative operation", "vertical movements")
                .doesNotContain("pressure-sensitive", "two-hand", "separate beams", "guard locking", "blank");
    }

    @Test
    void theFormsNameEveryDeviceAndItsRod() throws IOException {
        for (String form : List.of("forms/shift-check.pdf", "forms/yearly-inspection.pdf")) {
            assertThat(text("marrowdale-refit", form))
                    .contains("Sack filling cell", "revision D", "DRAFT", "page 1 of", "as of 2026-10-30")
                    .contains("curtain-pallet", "rod of 30 mm", "scanner-chain-place", "door-east", "door-filler");
        }
        assertThat(text("marrowdale-refit", "forms/stop-time-measurement.pdf"))
                .contains("stop-robot.arm-axis-1-warm: axis 1, 39 kg, 1400 mm/s, extension 100 %, warm")
                .contains("at most 0.366 s by the distance of door-east", "10 warm cold");
    }
}
