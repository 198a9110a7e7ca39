package org.cellfile.refusal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.cellfile.cell.Cell;
import org.cellfile.cell.Composition;
import org.cellfile.dossier.Block.Table;
import org.cellfile.dossier.Sheet;
import org.cellfile.dossier.Sheet.Panel;
import org.cellfile.dossier.Sign;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the sheets about energies and emergencies tell of the base cell. All that is stated there is constructed. */
class EnergySheetsTest {

    @TempDir
    private Path folder;

    @BeforeEach
    void copy() {
        BaseCell.copyTo(folder);
    }

    @Test
    void eachEnergyIsIsolatedLockedReleasedAndVerifiedInThatOrder() {
        Panel isolate = panel("energy-isolation", "isolate");

        assertThat(isolate.sign()).isEqualTo(Sign.LOCK_OUT);
        assertThat(isolate.numbered()).isTrue();
        assertThat(lines(isolate))
                .containsExactly(
                        "Only these people do this: I. Lorne.",
                        "Tell everyone at the cell.",
                        "Stop the cell with the white button at the operator panel.",
                        "Mains supply, 400 V (cabinet A1): Turn the main switch Q1 to 0. Hang your lock on Q1. Wait 5 minutes.",
                        "Weight of the arm, 90 kg (base of the robot): Lower the gripper onto the floor. Bolt the arm to its prop.");
        assertThat(lines(panel("energy-isolation", "verify")))
                .containsExactly(
                        "Mains supply: Measure 0 V at terminal X1.",
                        "Weight of the arm: Push the arm down by hand. It stays.",
                        "Try to start the cell. Nothing moves. Press stop. Then work.");
    }

    @Test
    void whoAloneMayIsolateAnEnergyStandsBesideIt() throws IOException {
        BaseCell.change(
                folder,
                "energies.yaml",
                "verify: Measure 0 V at terminal X1.",
                "verify: Measure 0 V.\n      only: [ilse]");

        assertThat(lines(panel("energy-isolation", "isolate")))
                .anyMatch(line -> line.endsWith("Only I. Lorne may do this."));
    }

    @Test
    void anEmergencyIsToldFromStopToFreeing() {
        assertThat(lines(panel("emergency", "stop")))
                .containsExactly(
                        "Press the nearest emergency stop.",
                        "They are here: operator panel.",
                        "Another is on the pendant.",
                        "Leave it pressed. Nobody starts before I. Lorne says so.");
        assertThat(lines(panel("emergency", "call")))
                .containsExactly(
                        "Call 2222. Say: Small cell, Tarnbeck works, hall 1.",
                        "Send somebody to meet the helpers: gate 1.",
                        "First aid: box at the operator panel. First aiders: shift leader, call 2200.");
        Panel free = panel("emergency", "free-1");
        assertThat(free.title())
                .containsExactly("Caught by the arm. You need: brake release in the box at the base of the robot");
        assertThat(free.numbered()).isTrue();
        assertThat(lines(free))
                .containsExactly(
                        "Who: two people.",
                        "Beware: The arm sinks.",
                        "Hold the arm.",
                        "Press button B2 until the person is free.");
    }

    @Test
    void eachWayOfFreeingIsAPanelOfItsOwn() throws IOException {
        BaseCell.change(
                folder,
                "rescue.yaml",
                "  first-aid:",
                "    - {when: shut in, of: [zone], with: nothing, by: anybody, do: [Push the door open.]}\n  first-aid:");

        assertThat(panel("emergency", "free-2").title()).containsExactly("Shut in. You need: nothing");
        assertThat(lines(panel("emergency", "free-2"))).containsExactly("Who: anybody.", "Push the door open.");
        assertThat(lines(panel("emergency", "free-1"))).endsWith("Press button B2 until the person is free.");
    }

    @Test
    void aSheetWithNothingToTellIsNotPrinted() throws IOException {
        assertThat(ids()).contains("energy-isolation", "energy-rules", "emergency");

        String energies = Files.readString(folder.resolve("energies.yaml"));
        Files.writeString(folder.resolve("energies.yaml"), energies.substring(0, energies.indexOf("  procedure:")));
        assertThat(ids()).contains("energy-isolation").doesNotContain("energy-rules");

        Files.delete(folder.resolve("energies.yaml"));
        Files.delete(folder.resolve("rescue.yaml"));
        assertThat(ids()).doesNotContain("energy-isolation", "energy-rules", "emergency");
    }

    @Test
    void theRulesOfThePlantStandOnASheetOfTheirOwn() throws IOException {
        BaseCell.change(folder, "energies.yaml", "since: 2026-08-10", "since: 2026-08-10\n    every: 6 months");

        assertThat(lines(panel("energy-rules", "use")))
                .containsExactly(
                        "Use these steps before service of the small cell.",
                        "For the robot and its supply.",
                        "They keep a start from hurting whoever works inside.");
        assertThat(lines(panel("energy-rules", "locks")))
                .containsExactly(
                        "Each hangs a red lock on Q1.",
                        "Only who hung a lock takes it off.",
                        "The new lock goes on before the old comes off.",
                        "The shift leader hands them out.");
        assertThat(lines(panel("energy-rules", "enforcement")))
                .containsExactly("Who works without a lock is sent from the cell.", "Next inspection by Feb 10, 2027.");
    }

    @Test
    void hazardsAreHeadedByASignalWordWhereThePlantAsksForIt() throws IOException {
        String title = panel("automatic-operation", "hazards").title().get(0);
        assertThat(title).doesNotContain(":");

        BaseCell.change(folder, "sheets.yaml", "  responsible: ilse", "  responsible: ilse\n  signal-words: yes");
        assertThat(panel("automatic-operation", "hazards").title()).containsExactly("WARNING: " + title);

        BaseCell.change(folder, "hazards.yaml", "after: {severity: S2", "after: {severity: S1");
        assertThat(panel("automatic-operation", "hazards").title()).containsExactly("CAUTION: " + title);
    }

    @Test
    void registeredSignsAreListedWithTheirPlaces() {
        List<List<String>> rows = Composition.compose(cell()).chapters().stream()
                .filter(chapter -> chapter.id().equals("signs"))
                .flatMap(chapter -> chapter.blocks().stream())
                .filter(Table.class::isInstance)
                .flatMap(table -> ((Table) table).rows().stream())
                .toList();

        assertThat(rows)
                .contains(List.of("W012", "Warning: electricity", "Mains supply: cabinet A1", "from memory"))
                .contains(List.of("E003", "First aid", "box at the operator panel", "published, at second hand"))
                .contains(List.of(
                        "E020", "Emergency stop push-button", "Emergency stop at the operator panel", "from memory"));
    }

    private Cell cell() {
        return BaseCell.checked(folder).cell().orElseThrow();
    }

    private List<String> ids() {
        return Composition.sheets(cell()).stream().map(Sheet::id).toList();
    }

    private Panel panel(String sheet, String part) {
        return Composition.sheets(cell()).stream()
                .filter(one -> one.id().equals(sheet))
                .flatMap(one -> one.panels().stream())
                .filter(panel -> panel.id().equals(part))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> lines(Panel panel) {
        return panel.lines().stream().map(line -> line.get(0)).toList();
    }
}
