package org.cellfile.refusal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.cellfile.FolderWorld;
import org.cellfile.Generator;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;
import org.cellfile.quantity.Quantity;
import org.cellfile.standard.Edition;
import org.cellfile.standard.Editions;
import org.cellfile.subject.safeguard.Guarding;
import org.cellfile.subject.safeguard.OtherEdition;
import org.cellfile.subject.safeguard.OtherEdition.Standing;
import org.cellfile.trace.Derived;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The base cell as it would be under editions that are not in force, and under several that are. Times: curtain 0.238 s, scanner
 * 0.28 s, door 0.23 s; installed 1300 mm, 1700 mm, 600 mm and the fence 750 mm. Figures constructed.
 */
class OtherEditionTest {

    private static final Clock DAY = Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC);

    @TempDir
    private Path folder;

    private Cell cell() {
        Generator.Checked checked = new Generator().check(new FolderWorld(folder, DAY));
        return checked.cell()
                .orElseThrow(
                        () -> new AssertionError(checked.verdict().findings().toString()));
    }

    /** The base cell with other positioning editions in force. */
    private Cell under(String... editions) throws IOException {
        BaseCell.copyTo(folder);
        StringBuilder stated = new StringBuilder();
        for (String edition : editions) {
            stated.append("  - {edition: \"").append(edition).append("\", applied-to: positions of the safeguards}\n");
        }
        BaseCell.change(
                folder,
                "standards.yaml",
                "  - {edition: \"ISO 13855:2010\", applied-to: positions of the safeguards}\n",
                stated.toString());
        return cell();
    }

    /** 29 CFR 1910.217 for all but the door, as it does not tell how stops are measured. */
    private Cell forPressesOnly() throws IOException {
        BaseCell.copyTo(folder);
        BaseCell.change(
                folder,
                "standards.yaml",
                "  - {edition: \"ISO 13855:2010\", ",
                "  - {edition: \"29 CFR 1910.217\", applied-to: positions of the safeguards}\n"
                        + "  - {edition: \"ISO 13855:2010\", only-for: [door], ");
        return cell();
    }

    private static Guarding safeguard(Cell cell, String tag) {
        return cell.safeguards().stream()
                .filter(one -> one.tag().equals(tag))
                .findFirst()
                .orElseThrow();
    }

    private Map<String, OtherEdition> beside(String edition) throws IOException {
        return OtherEdition.of(
                        under("ISO 13855:2010").safeguards(),
                        Editions.of(edition).orElseThrow())
                .stream()
                .collect(Collectors.toMap(row -> row.inForce().tag(), row -> row));
    }

    private static OtherEdition row(Map<String, OtherEdition> rows, String tag) {
        return Objects.requireNonNull(rows.get(tag), tag);
    }

    private static String remarks(OtherEdition row) {
        return OtherEdition.remarks(List.of(row)).values().toString();
    }

    private static Quantity mm(String number) {
        return Quantity.millimetres(number);
    }

    /**
     * The scanner needs 1748 mm where it needed 1628 mm, the door as much as before, and of the curtain no more is known than 476
     * mm where it needed 930.8 mm, which proves nothing. A fence is no matter of positioning.
     */
    @Test
    void anotherPositioningEdition() throws IOException {
        Map<String, OtherEdition> rows = beside("ISO 13855:2024");

        assertThat(rows).containsOnlyKeys("curtain", "scanner", "door");
        assertThat(row(rows, "scanner").standing()).isEqualTo(Standing.FALLS_SHORT);
        assertThat(row(rows, "scanner").more()).contains(mm("120"));
        assertThat(row(rows, "scanner").lowerBound()).isFalse();
        assertThat(row(rows, "door").standing()).isEqualTo(Standing.HOLDS);
        assertThat(row(rows, "door").more()).contains(mm("0"));
        assertThat(row(rows, "curtain").standing()).isEqualTo(Standing.CANNOT_BE_SAID);
        assertThat(row(rows, "curtain").lowerBound()).isTrue();
        assertThat(row(rows, "curtain").more()).isEmpty();
        assertThat(remarks(row(rows, "curtain"))).contains("Cannot be said: ").contains("not public");
        assertThat(OtherEdition.count(List.copyOf(rows.values())))
                .isEqualTo("3 compared; still holds: 1; does not hold: 1; cannot be said: 1");
        assertThat(ids(row(rows, "door")
                        .inForce()
                        .editionsReplacedBy(row(rows, "door").other())))
                .containsExactly("ISO 13855:2010");
    }

    /** Of a safeguard that the other edition has no rule for, nothing can be said. */
    @Test
    void anotherEditionWithoutARule() throws IOException {
        OtherEdition door = row(beside("ANSI B11.19:2019"), "door");

        assertThat(door.standing()).isEqualTo(Standing.CANNOT_BE_SAID);
        assertThat(remarks(door)).contains("no rule for such a safeguard is publicly known");
        assertThat(door.more()).isEmpty();
    }

    /** Door and fence rest on the reach through openings, the fence on what it has to be besides, and nothing on crushing. */
    @Test
    void anotherEditionOfReachMattersWhereOneIsRestedOn() throws IOException {
        Map<String, OtherEdition> rows = beside("ISO 13857:2019");

        assertThat(rows).containsOnlyKeys("door", "fence");
        assertThat(rows.values()).allMatch(row -> row.standing() == Standing.HOLDS);
        assertThat(ids(row(rows, "fence")
                        .inForce()
                        .editionsReplacedBy(row(rows, "fence").other())))
                .containsExactly("ISO 13857:2008");
        assertThat(beside("ANSI R15.06:2012")).containsOnlyKeys("fence");
        assertThat(beside("ISO 13854:2017")).isEmpty();
    }

    /** With what a distance was measured is a matter of the cell, whatever edition it is compared with. */
    @Test
    void aTapeThatWasNotCalibratedSaysNothingOfAnotherEdition() throws IOException {
        BaseCell.copyTo(folder);
        BaseCell.change(folder, "instruments.yaml", "calibration-due: 2027-03-05", "calibration-due: 2026-10-05");
        Guarding door = safeguard(cell(), "door");

        assertThat(door.faults()).extracting(finding -> finding.id().toString()).contains("instrument.not-calibrated");
        assertThat(OtherEdition.of(List.of(door), Editions.of("ISO 13857:2019").orElseThrow()))
                .singleElement()
                .satisfies(row -> assertThat(row.standing()).isEqualTo(Standing.HOLDS));
    }

    /** 29 CFR 1910.217 knows nothing of reaching over a fence, so that the fence could not be judged by it alone. */
    @Test
    void anEditionOfReachThatLacksARuleSaysNothing() throws IOException {
        OtherEdition fence = row(beside("29 CFR 1910.217"), "fence");

        assertThat(fence.standing()).isEqualTo(Standing.CANNOT_BE_SAID);
        assertThat(remarks(fence)).contains("has no rule for reaching over a structure");
    }

    private static List<String> ids(List<Edition> editions) {
        return editions.stream().map(Edition::id).toList();
    }

    /** (1700 − 1080 − 100) / 1600 under the one, (1700 − 1200 − 100) / 1600 under the other. */
    @Test
    void ofTwoEditionsTheShorterTimeCounts() throws IOException {
        Cell cell = under("ISO 13855:2010", "ISO 13855:2024");
        Guarding scanner = safeguard(cell, "scanner");

        assertThat(scanner.governing().longestTime().orElseThrow().value()).contains(Quantity.seconds("0.25"));
        assertThat(scanner.budget().longestStop().orElseThrow().value()).contains(Quantity.seconds("0.17"));
        assertThat(scanner.separationDistance().words()).isEqualTo("separation distance");
        assertThat(scanner.separationDistance().symbol()).isEqualTo("S");
        assertThat(scanner.derived())
                .extracting(Derived::tag)
                .contains(
                        "scanner.iso-13855-2010.separation-distance",
                        "scanner.iso-13855-2010.longest-response-time",
                        "scanner.iso-13855-2024.separation-distance",
                        "scanner.iso-13855-2024.longest-response-time",
                        "scanner.separation-distance")
                .doesNotHaveDuplicates();
        assertThat(safeguard(cell, "curtain").separationDistance().words())
                .isEqualTo("lower bound of the separation distance");
        assertThat(safeguard(cell, "curtain").separationDistance().symbol()).isEqualTo("S_low");
        assertThat(scanner.silent()).isEmpty();
    }

    /** Under a single edition each value stands once. */
    @Test
    void underOneEditionEachValueStandsOnce() throws IOException {
        Guarding scanner = safeguard(under("ISO 13855:2010"), "scanner");

        assertThat(scanner.derived()).extracting(Derived::tag).doesNotHaveDuplicates();
        assertThat(scanner.governing().longestTime().orElseThrow().value()).contains(Quantity.seconds("0.325"));
        assertThat(scanner.governing().longestTime().orElseThrow().clause()).startsWith("ISO 13855:2010");
    }

    /**
     * 29 CFR 1910.217 asks for more than 14.994 in and the 36 in of reaching over, which govern beside the 931 mm of ISO
     * 13855:2010; to stand at the latter is enough where it stands alone.
     */
    @Test
    void theGoverningEditionTellsWhetherItsDistanceIsEnough() throws IOException {
        Cell both = under("ISO 13855:2010", "29 CFR 1910.217");

        assertThat(safeguard(both, "curtain").governing().strict()).isTrue();
        assertThat(safeguard(both, "door").governing().strict()).isFalse();
        assertThat(ids(List.copyOf(safeguard(both, "scanner").silent()))).containsExactly("29 CFR 1910.217");
        assertThat(ids(List.copyOf(safeguard(both, "curtain").silent()))).isEmpty();
        assertThat(safeguard(forPressesOnly(), "curtain").governing().strict()).isTrue();
    }

    @Test
    void whereNoEditionInForceHasARuleNothingIsGuessed() throws IOException {
        Guarding scanner = safeguard(forPressesOnly(), "scanner");

        assertThat(scanner.separationDistance().value()).isEmpty();
        assertThat(scanner.governing().longestTime()).isEmpty();
        assertThat(scanner.cleared()).isFalse();
        assertThat(scanner.faults())
                .extracting(Finding::sentence)
                .anySatisfy(
                        sentence -> assertThat(sentence)
                                .isEqualTo(
                                        "no edition in force has a rule that is publicly known for `scanner` (29 CFR 1910.217)"));
    }

    /** Each link before the stop takes from what the stop may take; (1700 − 1180) / 1600 less 0.08 s. */
    @Test
    void whatTheLinksLeaveForTheStop() throws IOException {
        BaseCell.copyTo(folder);
        assertThat(safeguard(cell(), "scanner")
                        .budget()
                        .longestStop()
                        .orElseThrow()
                        .value())
                .contains(Quantity.seconds("0.245"));
        BaseCell.change(folder, "safeguards.yaml", "time: 80 ms", "time: 325 ms");
        assertThat(safeguard(cell(), "scanner")
                        .budget()
                        .longestStop()
                        .orElseThrow()
                        .value())
                .contains(Quantity.seconds("0"));
        BaseCell.change(folder, "safeguards.yaml", "time: 325 ms", "time: 325.1 ms");
        assertThat(safeguard(cell(), "scanner")
                        .budget()
                        .longestStop()
                        .orElseThrow()
                        .value())
                .isEmpty();
    }

    /** What the device itself has to hold is among the values of the safeguard, so that it is printed. */
    @Test
    void theBoundsOfADeviceAreAmongItsValues() throws IOException {
        BaseCell.overlay(BaseCell.REFUSALS.resolve("installed.too-close/two-hand-control"), folder);

        assertThat(cell().safeguards().stream()
                        .filter(one -> one.safeguard().kind().id().equals("two-hand-control"))
                        .flatMap(one -> one.derived().stream())
                        .map(Derived::name))
                .contains("least-stations", "longest-asynchrony", "least-actuator-height");
    }
}
