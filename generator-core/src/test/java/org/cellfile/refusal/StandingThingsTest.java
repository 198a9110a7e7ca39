package org.cellfile.refusal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.cellfile.FolderWorld;
import org.cellfile.Generator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What stands at the cell, where it just holds and where it just does not. All figures are constructed. */
class StandingThingsTest {

    private static final Clock DAY = Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC);

    @TempDir
    private Path folder;

    @BeforeEach
    void theCellWithItsPlan() throws IOException {
        BaseCell.planned(Files.createDirectory(folder.resolve("nothing laid over it")), folder);
    }

    private void plan(String from, String to) throws IOException {
        BaseCell.change(folder, "plan.yaml", from, to);
    }

    private void structure(String more) throws IOException {
        plan("  safeguards:\n", "    - " + more + "\n  safeguards:\n");
    }

    private List<String> found() {
        return BaseCell.ids(BaseCell.check(folder).findings());
    }

    @ParameterizedTest
    @CsvSource({"-3204, no, true", "-3205, no, false", "-3204, yes, true", "-3205, yes, false"})
    void aBodyNeedsItsRoomAndTheUncertaintyOfThePlan(String y, String passable, boolean refused) throws IOException {
        structure("{tag: wall, name: wall of the hall, line: [[-1000, " + y + "], [1000, " + y + "]], passable: "
                + passable + ", hides: no}");

        assertThat(found().contains("installed.no-clearance-on-plan")).isEqualTo(refused);
    }

    @ParameterizedTest
    @CsvSource({"1788 mm, true", "1790 mm, false"})
    void theDrawnReachHoldsTheStatedOneLessTheTolerance(String radius, boolean refused) throws IOException {
        plan("base: [0, 0], ", "base: [0, 0], reach: {circle: {at: [0, 0], radius: " + radius + "}}, ");

        assertThat(found().contains("plan.reach-smaller")).isEqualTo(refused);
    }

    @Test
    void whatARingOfReachLeavesOutIsWhereTheRobotStands() throws IOException {
        plan("base: [0, 0], ", "base: [0, 0], reach: {ring: {at: [0, 0], inner: 400 mm, radius: 2300 mm}}, ");

        assertThat(found()).isEmpty();
    }

    @Test
    void aNamedMeasureStandsInPlaceOfTheGap() throws IOException {
        structure("{tag: wall, name: wall of the hall, line: [[-1000, -2800], [1000, -2800]], passable: no, hides: no,"
                + " measure: the robot is limited to the other side while somebody is there}");

        assertThat(found()).isEmpty();
    }

    @Test
    void aNarrowGapCanBeADeviation() throws IOException {
        structure(
                "{tag: wall, name: wall of the hall, line: [[-1000, -3204], [1000, -3204]], passable: no, hides: no}");
        Files.writeString(folder.resolve("deviations.yaml"), """
                cellfile: 1

                deviations:
                  - tag: wall-too-near
                    finding: installed.no-clearance-on-plan
                    of: wall
                    reason: the wall carries the roof
                    interim-measure: nobody sets the robot on that side
                    responsible: ilse
                    until: 2027-06-30
                """);

        assertThat(BaseCell.check(folder).word()).isEqualTo("draft");
    }

    @ParameterizedTest
    @CsvSource({"2600, 315, true", "2598, 315, false", "2600, 314, false"})
    void aFieldMayFillAllThatItsScannerSees(String range, String from, boolean seen) throws IOException {
        plan(
                "outline: [[2600, -1000], [4400, -1000], [4400, 1000], [2600, 1000]]",
                "sector: {at: [3450, -1000], radius: 2600 mm, from: " + from + " °, through: 270 °}");
        plan("range: 5500 mm", "range: " + range + " mm");
        plan(
                "    - {of: fence, line: [[-3300, -1010], [-3300, -3450], [3450, -3450], [3450, -1000], [4400, -1000]]}\n",
                "");
        plan("    - {of: fence, line: [[600, 4000], [3450, 4000], [3450, 1000], [4400, 1000]]}\n", "");

        assertThat(found().contains("plan.field-not-seen")).isEqualTo(!seen);
    }

    @Test
    void aDoorThatTurnsOutwardsStrikesNothing() throws IOException {
        plan(
                "[[-3300, -1010], [-3300, 1010]]}",
                "[[-3300, -1010], [-3300, 1010]], swing: {hinge: [-3300, 1010], open: [-5320, 1010]}}");

        assertThat(found()).isEmpty();
    }

    /** 2020 mm of leaf against the fence at its side: outwards it turns freely, inwards through the zone. */
    @ParameterizedTest
    @CsvSource({"clockwise, ", "counter-clockwise, installed.door-into-space-on-plan"})
    void aDoorThatFoldsBackTurnsTheWayThatIsStated(String turns, String id) throws IOException {
        plan(
                "[[-3300, -1010], [-3300, 1010]]}",
                "[[-3300, -1010], [-3300, 1010]], swing: {hinge: [-3300, 1010], open: [-3300, 3030], turns: " + turns
                        + "}}");

        assertThat(found()).isEqualTo(id == null ? List.of() : List.of(id));
    }

    /** The far corner of the warning field is 2793 mm from the scanner: √(1950² + 2000²). */
    @ParameterizedTest
    @CsvSource({"'', false", "', warning-range: 2794 mm', false", "', warning-range: 2790 mm', true"})
    void aWarningFieldIsHeldAgainstARangeOfItsOwn(String stated, boolean refused) throws IOException {
        plan("range: 5500 mm}", "range: 2793.5 mm" + stated + "}");

        assertThat(found()).isEqualTo(refused ? List.of("plan.field-not-seen") : List.of());
    }

    @ParameterizedTest
    @CsvSource({"100 mm, 100 mm, false", "100.1 mm, 5 mm, true", "10 mm, 10.1 mm, true"})
    void aPlanIsNoRougherThanItIsWorth(String tolerance, String uncertainty, boolean refused) throws IOException {
        plan("tolerance: 10 mm", "tolerance: " + tolerance);
        plan("uncertainty: 5 mm", "uncertainty: " + uncertainty);

        assertThat(found().contains("plan.tolerance-too-wide")).isEqualTo(refused);
    }

    @ParameterizedTest
    @CsvSource({"-4799.9, false", "-4800.1, true"})
    void anEmergencyStopIsWithinTheStatedDistance(String x, boolean refused) throws IOException {
        plan("at: [-4300, -1600]", "at: [" + x + ", -1600]");

        assertThat(found().contains("installed.no-emergency-stop-on-plan")).isEqualTo(refused);
    }

    @Test
    void aPostTooThinToHideAnybodyHidesNobody() throws IOException {
        structure(
                "{tag: post, name: post, outline: [[-3400, -1200], [-3395, -1200], [-3395, -1195], [-3400, -1195]], passable:"
                        + " no, hides: yes}");

        assertThat(found()).isEmpty();
    }

    @Test
    void theChapterTellsWhatWasFound() throws IOException {
        Map<String, byte[]> files =
                new Generator().generate(new FolderWorld(folder, DAY)).files().orElseThrow();
        byte[] pages = files.entrySet().stream()
                .filter(file -> file.getKey().endsWith("-safety-file.pdf"))
                .findFirst()
                .orElseThrow()
                .getValue();
        try (PDDocument document = Loader.loadPDF(pages)) {
            assertThat(new PDFTextStripper().getText(document).replaceAll("[\\s\u00a0]+", " "))
                    .contains(
                            "Fields, and what their scanners see of them",
                            "scanner (3450, -1000) 3.6 m² 3.6 m² nothing",
                            "nothing of it",
                            "clearance gap-column, for the body",
                            "stop-panel 500 mm 1000 mm",
                            "no, not within 850 mm");
        }
    }
}
