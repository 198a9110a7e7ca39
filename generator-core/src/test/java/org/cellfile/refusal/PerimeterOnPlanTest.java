package org.cellfile.refusal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.cellfile.finding.Finding;
import org.cellfile.finding.Severity;
import org.cellfile.quantity.Quantity;
import org.cellfile.subject.plan.Layout;
import org.cellfile.subject.plan.Perimeter;
import org.cellfile.subject.plan.PlanDistance;
import org.cellfile.subject.plan.StandingRoom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From which edge of a field its distance counts, what bars the way to a zone, and where somebody stands undetected. Figures are constructed. */
class PerimeterOnPlanTest {

    private static final String FIELD = "outline: [[2600, -1000], [4400, -1000], [4400, 1000], [2600, 1000]]";

    @TempDir
    private Path folder;

    @Test
    void theDistanceOfAFieldCountsFromTheEdgeOverWhichPeopleComeIn() throws IOException {
        field(FIELD);
        assertThat(distance()).isEqualTo("1700 mm");
        assertThat(ofTheScanner(layout()).between().from().x()).isEqualByComparingTo("4400");
    }

    @Test
    void aStripBesideTheFieldThatNobodyGetsThroughLetsNobodyIn() throws IOException {
        field("outline: [[2600, -900], [4400, -900], [4400, 900], [2600, 900]]");
        assertThat(distance()).isEqualTo("1700 mm");
    }

    @Test
    void aWiderOneIsAGapAndAsGoodAsClosedForTheDistance() throws IOException {
        field("outline: [[2600, -800], [4400, -800], [4400, 1000], [2600, 1000]]");

        assertThat(distance()).isEqualTo("1700 mm");
        assertThat(ids()).containsExactly("installed.perimeter-open");
    }

    @Test
    void aFieldAllRoundCountsFromTheWholeOfItsEdge() throws IOException {
        fieldAsDrawn("circle: {at: [0, 0], radius: 5000 mm}");
        // Chords lie within the field and around the zone, and points are read to 0.1 mm.
        assertThat(distance()).isEqualTo("2299 mm");
    }

    @Test
    void piecesOfAFieldThatOverlapCountAsOne() throws IOException {
        field("outline: [[2600, -1000], [3600, -1000], [3600, 1000], [2600, 1000]]");
        BaseCell.change(
                folder,
                "plan.yaml",
                "    - {of: door",
                "    - {of: scanner, outline: [[3500, -1000], [4400, -1000], [4400, 1000], [3500, 1000]]}\n    - {of: door");

        assertThat(distance()).isEqualTo("1700 mm");
    }

    @Test
    void fieldsOfTwoScannersThatOverlapGoRoundTogetherWithoutAFence() throws IOException {
        fieldAsDrawn("outline: [[-200, -4400], [4400, -4400], [4400, 4400], [-200, 4400]]");
        fencesFarAway();
        BaseCell.change(
                folder,
                "plan.yaml",
                "    - {of: door",
                "    - {of: second, outline: [[-4400, -4400], [200, -4400], [200, 4400], [-4400, 4400]]}\n    - {of: door");
        String safeguards = Files.readString(folder.resolve("safeguards.yaml"));
        String scanner =
                safeguards.substring(safeguards.indexOf("  - tag: scanner"), safeguards.indexOf("  - tag: door"));
        BaseCell.change(
                folder,
                "safeguards.yaml",
                "  - tag: door",
                scanner.replace("tag: scanner", "tag: second") + "  - tag: door");

        assertThat(layout().distances())
                .filteredOn(one -> one.tag().equals("scanner") || one.tag().equals("second"))
                .extracting(PerimeterOnPlanTest::read)
                .containsExactly("1700 mm", "1700 mm");
        assertThat(layout().perimeters().get(0).rings().get(0)).containsExactlyInAnyOrder("scanner", "second");
        assertThat(layout().standing())
                .filteredOn(one -> one.tag().equals("scanner") || one.tag().equals("second"))
                .hasSize(2)
                .allSatisfy(one -> assertThat(one.places()).isEmpty());
    }

    @Test
    void floorThatAFieldAllRoundLeavesUncoveredWithinIsToldAndItsOuterEdgeCounts() throws IOException {
        fieldAsDrawn("ring: {at: [0, 0], inner: 3000 mm, radius: 4400 mm}");
        fencesFarAway();

        // Chords lie within the field and around the zone, and points are read to 0.1 mm.
        assertThat(distance()).isEqualTo("1699 mm");
        assertThat(layout().perimeters().get(0).openings()).isEmpty();
        assertThat(layout().standing())
                .filteredOn(one -> one.tag().equals("scanner"))
                .flatExtracting(StandingRoom::places)
                .singleElement()
                .satisfies(place -> assertThat(place.area()).isBetween(new BigDecimal("28.2"), new BigDecimal("28.3")));
    }

    /** What else is drawn, ten metres off. */
    private void fencesFarAway() throws IOException {
        Path plan = folder.resolve("plan.yaml");
        Files.write(
                plan,
                Files.readAllLines(plan).stream()
                        .filter(line -> !line.contains("tag: exit-track") && !line.contains("tag: hall-column"))
                        .map(line -> line.contains("{of: fence")
                                        || line.contains("{of: door")
                                        || line.contains("{of: curtain")
                                ? line.replaceFirst("line: .*", "line: [[10000, 0], [10000, 500]]}")
                                : line)
                        .toList());
    }

    @Test
    void aFieldBehindADoorCountsFromTheFloorBehindTheDoor() throws IOException {
        fieldAsDrawn("outline: [[-3000, -3450], [-2720, -3450], [-2720, 4000], [-3000, 4000]]");
        BaseCell.change(
                folder, "plan.yaml", "[3450, 1000], [4400, 1000]]}", "[3450, 1000], [4400, 1000], [4400, -1000]]}");

        assertThat(distance()).isEqualTo("300 mm");
    }

    @Test
    void whatProtectsAnotherZoneKeepsNobodyFromThisOne() throws IOException {
        planned();
        BaseCell.change(folder, "plan.yaml", "3925]], passable: no", "3925]], passable: yes");
        assertThat(ids()).doesNotContain("installed.perimeter-open");

        BaseCell.change(
                folder,
                "zones.yaml",
                "zones:\n",
                "zones:\n  - {tag: press, name: press, hazard: crushing, heights: {lowest: 0 mm, highest: 900 mm}, stopped-by: [stop]}\n");
        BaseCell.change(
                folder,
                "plan.yaml",
                "  zones:\n",
                "  zones:\n    - {of: press, outline: [[-400, 2800], [400, 2800], [400, 3000]]}\n");
        BaseCell.change(
                folder,
                "safeguards.yaml",
                "position: pallet exit\n    protects: [zone]",
                "position: pallet exit\n    protects: [press]");

        List<Finding> open = findings("installed.perimeter-open");
        assertThat(open)
                .extracting(Finding::about)
                .containsOnly("press.fence.fence.2020", "press.fence.fence.2000", "zone.fence.fence.1200");
        assertThat(open)
                .filteredOn(finding -> finding.about().equals("zone.fence.fence.1200"))
                .extracting(Finding::sentence)
                .singleElement()
                .asString()
                .contains("1200 mm");
    }

    @Test
    void aSafeguardThatIsNotDrawnIsToldAndNotTheGapItLeaves() throws IOException {
        planned();
        BaseCell.change(folder, "plan.yaml", "    - {of: door, line: [[-3300, -1010], [-3300, 1010]]}\n", "");

        assertThat(ids()).containsExactly("plan.not-drawn");
    }

    @Test
    void theWidestOpeningIsStatableAndHeldAgainst() throws IOException {
        planned();
        BaseCell.change(
                folder, "plan.yaml", "radius: 2700 mm}}", "radius: 2700 mm}, stated: {widest-opening: 180 mm}}");
        assertThat(ids()).isEmpty();

        BaseCell.change(folder, "plan.yaml", "widest-opening: 180 mm", "widest-opening: 200 mm");
        assertThat(ids()).containsExactly("claim.not-equal");
    }

    @Test
    void aDeviationMayStandForAnOpening() throws IOException {
        planned();
        BaseCell.change(folder, "plan.yaml", "[600, 4000], [3450, 4000]", "[800, 4000], [3450, 4000]");
        BaseCell.change(
                folder,
                "zones.yaml",
                "zones:\n",
                "deviations:\n  - {tag: gap, finding: installed.perimeter-open, of: zone.curtain.fence.200, reason: post ordered, interim-measure: chain and"
                        + " guard, responsible: ilse, until: 2026-12-18}\nzones:\n");

        assertThat(findings("installed.perimeter-open"))
                .singleElement()
                .extracting(finding -> finding.severity().toString())
                .isEqualTo("BARS_RELEASE");
    }

    /** It was stated for 200 mm, and covers neither the way that was made wider nor a second one. Constructed. */
    @Test
    void aDeviationCoversNoWiderWay() throws IOException {
        aDeviationMayStandForAnOpening();
        BaseCell.change(folder, "plan.yaml", "[800, 4000], [3450, 4000]", "[850, 4000], [3450, 4000]");

        assertThat(findings("installed.perimeter-open")).singleElement().satisfies(finding -> {
            assertThat(finding.about()).isEqualTo("zone.curtain.fence.250");
            assertThat(finding.severity()).isEqualTo(Severity.REFUSES);
        });
    }

    /**
     * 75 mm: widest gap behind a field in which nobody stands undetected, ISO 13855:2010 (refusals of gaps behind fields rest on the
     * same); for strips beside fields a reading of this program.
     */
    @Test
    void aStripBesideAFieldIsNoWiderThanTheGapBehindOne() throws IOException {
        planned();
        BaseCell.change(folder, "plan.yaml", "[4400, 1000], [2600, 1000]]\n", "[4400, 925], [2600, 925]]\n");
        assertThat(findings("installed.perimeter-open")).isEmpty();

        BaseCell.change(folder, "plan.yaml", "[4400, 925], [2600, 925]]\n", "[4400, 924], [2600, 924]]\n");
        assertThat(findings("installed.perimeter-open"))
                .extracting(Finding::about)
                .containsExactly("zone.fence.scanner.76");
    }

    /** 750 mm: least width of a mat that nobody steps over, ISO 13855:2010 (GT Engineering, positioning of pressure-sensitive mats). */
    @Test
    void aFieldCountsFromTheDepthThatNobodyStepsOver() throws IOException {
        field("outline: [[3650, -1000], [4400, -1000], [4400, 1000], [3650, 1000]]");
        assertThat(ids()).isEmpty();

        BaseCell.change(folder, "plan.yaml", "[[3650, -1000]", "[[3651, -1000]");
        BaseCell.change(folder, "plan.yaml", "[3650, 1000]]", "[3651, 1000]]");
        assertThat(ids()).containsExactly("installed.perimeter-open");
        assertThat(steppedAcross()).containsExactly("749 mm");
    }

    @Test
    void whatIsLaidWithoutAGapDetectsTogether() throws IOException {
        field("outline: [[3900, -1000], [4400, -1000], [4400, 1000], [3900, 1000]]");
        BaseCell.change(
                folder,
                "plan.yaml",
                "    - {of: door",
                "    - {of: scanner, outline: [[3600, -1000], [3900, -1000], [3900, 1000], [3600, 1000]]}\n    - {of: door");
        assertThat(steppedAcross()).isEmpty();

        BaseCell.change(folder, "plan.yaml", "[3600, -1000], [3900, -1000]", "[3700, -1000], [3900, -1000]");
        BaseCell.change(folder, "plan.yaml", "[3900, 1000], [3600, 1000]", "[3900, 1000], [3700, 1000]");
        assertThat(steppedAcross()).containsExactly("700 mm");
    }

    /** The lane between the fences is 400 mm wide and the field lies in it over 1000 mm: nobody steps that far, be the lane narrow. */
    @Test
    void howWideAFieldIsAcrossTheWayDoesNotMatter() throws IOException {
        fieldAsDrawn("outline: [[3400, -200], [4400, -200], [4400, 200], [3400, 200]]");
        BaseCell.change(folder, "plan.yaml", "[3450, -1000], [4400, -1000]]", "[3450, -240], [4400, -240]]");
        BaseCell.change(folder, "plan.yaml", "[3450, 1000], [4400, 1000]]", "[3450, 240], [4400, 240]]");

        assertThat(findings("installed.perimeter-open")).isEmpty();
        assertThat(steppedAcross()).isEmpty();
    }

    @Test
    void overTheCornerOfAFieldIsShorterThanStraightOverIt() throws IOException {
        field("outline: [[2600, -1000], [4400, -1000], [4400, 1300], [2600, 1300]]");
        BaseCell.change(
                folder, "plan.yaml", "[3450, 4000], [3450, 1000], [4400, 1000]]", "[3900, 4000], [3900, 1310]]");

        // From beside the fence, which ends 10 mm before the field, to the front: nobody sees that as a way in but who
        // looks for it.
        assertThat(steppedAcross()).hasSize(1);
    }

    @Test
    void aDeviationForAStepNamesTheZoneAndTheField() throws IOException {
        field("outline: [[4000, -1000], [4400, -1000], [4400, 1000], [4000, 1000]]");
        assertThat(findings("installed.perimeter-open"))
                .extracting(Finding::about)
                .containsExactly("zone.scanner.400");
    }

    /**
     * The fence ends 20 mm before the front of the field, which goes on behind it. Somebody of 180 mm gets no nearer to the mouth of
     * that slit than 90 mm, yet his edge ends at the mouth: 1700 mm below the zone, 2700 - 1000.
     */
    @Test
    void theOuterEdgeEndsAtTheMouthOfASlit() throws IOException {
        fieldAsDrawn("outline: [[2600, -1000], [4400, -1000], [4400, 1600], [2600, 1600]]");
        BaseCell.change(
                folder,
                "plan.yaml",
                "[3450, 4000], [3450, 1000], [4400, 1000]]}",
                "[3450, 4000], [6000, 4000], [6000, 1000], [4420, 1000]]}");
        BaseCell.change(
                folder,
                "plan.yaml",
                "circle: {at: [0, 0], radius: 2700 mm}",
                "outline: [[4000, 2700], [4800, 2700], [4800, 3500], [4000, 3500]]");

        assertThat(distance()).isEqualTo("1700 mm");
        assertThat(ofTheScanner(layout()).between().from().toString()).isEqualTo("(4400, 1000)");
    }

    /** A fence 100 mm before the front covers it from its end on: the edge of people ends straight before that end, at 2700 - 500. */
    @Test
    void theOuterEdgeEndsStraightBeforeTheEndOfWhatStandsInFrontOfIt() throws IOException {
        fieldAsDrawn("outline: [[2600, -1000], [4400, -1000], [4400, 1600], [2600, 1600]]");
        BaseCell.change(
                folder,
                "plan.yaml",
                "[3450, 4000], [3450, 1000], [4400, 1000]]}",
                "[3450, 4000], [6000, 4000], [6000, 1700], [4500, 1700], [4500, 500]]}");
        BaseCell.change(
                folder,
                "plan.yaml",
                "circle: {at: [0, 0], radius: 2700 mm}",
                "outline: [[4000, 2700], [4800, 2700], [4800, 3500], [4000, 3500]]");

        assertThat(distance()).isEqualTo("2200 mm");
    }

    private List<String> steppedAcross() {
        return layout().perimeters().get(0).derived().stream()
                .filter(one -> one.name().startsWith("step-"))
                .map(one -> one.rounded().map(Quantity::toString).orElse(""))
                .toList();
    }

    @Test
    void aMeasureOfEitherPlaceAnswersForTheFloorBehind() throws IOException {
        planned();
        BaseCell.change(folder, "plan.yaml", "[600, 3925], [-600, 3925]", "[600, 3600], [-600, 3600]");
        BaseCell.change(folder, "safeguards.yaml", "gap: 75 mm", "gap: 400 mm");
        assertThat(ids()).containsExactlyInAnyOrder("installed.standing-behind", "installed.standing-on-plan");

        BaseCell.change(folder, "safeguards.yaml", "gap: 400 mm", "gap: 400 mm, measure: a mat under the track");
        assertThat(ids()).isEmpty();
        StandingRoom room = layout().standing().stream()
                .filter(one -> one.tag().equals("curtain"))
                .findFirst()
                .orElseThrow();
        assertThat(room.places()).hasSize(1);
        assertThat(room.measure()).contains("a mat under the track");
    }

    @Test
    void nothingIsAskedBehindWhatIsPassedByOpeningItOnly() throws IOException {
        planned();

        assertThat(layout().standing()).extracting(StandingRoom::tag).containsExactly("curtain", "scanner");
        assertThat(layout().perimeters())
                .flatExtracting(Perimeter::rings)
                .singleElement()
                .satisfies(ring -> assertThat(ring).contains("curtain", "scanner", "door", "fence"));
    }

    private void planned() throws IOException {

        BaseCell.planned(BaseCell.REFUSALS.resolve("base"), folder);
    }

    private void field(String form) throws IOException {
        planned();
        BaseCell.change(folder, "plan.yaml", FIELD, form);
    }

    /** The same without a scanner, so that all that is drawn counts, whatever stands in its view. */
    private void fieldAsDrawn(String form) throws IOException {
        field(form);
        Path plan = folder.resolve("plan.yaml");
        Files.write(
                plan,
                Files.readAllLines(plan).stream()
                        .filter(line -> !line.strip().startsWith("scanner: {"))
                        .toList());
    }

    private Layout layout() {
        return BaseCell.checked(folder).cell().orElseThrow().layout().orElseThrow();
    }

    private static PlanDistance ofTheScanner(Layout layout) {
        return layout.distances().stream()
                .filter(one -> one.tag().equals("scanner"))
                .findFirst()
                .orElseThrow();
    }

    private String distance() {
        return read(ofTheScanner(layout()));
    }

    private static String read(PlanDistance distance) {
        return distance.distance().rounded().map(Quantity::toString).orElse("");
    }

    private List<String> ids() {
        return BaseCell.ids(BaseCell.check(folder).findings());
    }

    private List<Finding> findings(String id) {
        return BaseCell.check(folder).findings().stream()
                .filter(finding -> finding.id().words().equals(id))
                .toList();
    }
}
