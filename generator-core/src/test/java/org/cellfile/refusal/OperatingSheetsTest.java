package org.cellfile.refusal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.cellfile.FolderWorld;
import org.cellfile.cell.Cell;
import org.cellfile.cell.Composition;
import org.cellfile.dossier.Sheet;
import org.cellfile.finding.Findings;
import org.cellfile.subject.safeguard.Kinds;
import org.cellfile.subject.sheet.Language;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The sheets of those who work at the cell say what its devices, modes and protocols are. All figures are constructed. */
class OperatingSheetsTest {

    private static final List<String> LANGUAGES = List.of("en", "de", "es", "pl");

    private static final Pattern MINE =
            Pattern.compile("(step|kind|own-steps|manual-reduced-speed|after-stop|shift-check)\\..*");

    @TempDir
    private Path folder;

    @BeforeEach
    void start() {
        BaseCell.copyTo(folder);
    }

    private List<String> lines(String sheet, String part) {
        Cell cell = Cell.read(FolderWorld.of(folder), new Findings()).orElseThrow();
        return Composition.sheets(cell).stream()
                .filter(one -> one.id().equals(sheet))
                .flatMap(one -> one.panels().stream())
                .filter(panel -> panel.id().equals(part))
                .map(Sheet.Panel::lines)
                .flatMap(List::stream)
                .map(line -> line.get(0).replace('\u00a0', ' '))
                .toList();
    }

    @Test
    void manualReducedSpeedAndBack() {
        assertThat(lines("manual-reduced-speed", "inside"))
                .containsExactly(
                        "Persons inside: 1 at most, setter who holds the pendant. Nobody else.",
                        "The robot moves at 250 mm/s at most.",
                        "These do not stop the robot now: light curtain curtain (pallet exit);"
                                + " laser scanner scanner (loading place); interlocked door door (west side).",
                        "In their place: speed of 250 mm/s at most, enabling device, hold-to-run, nobody else inside.");
        assertThat(lines("manual-reduced-speed", "change"))
                .containsExactly(
                        "Stop the cell. Wait until everything stands still.",
                        "Turn the mode key (operator panel) to “manual reduced speed”. Take it with you.",
                        "Take the pendant (hook at the operator panel). Switch it on.",
                        "See that all 2 emergency stops are released.",
                        "Read every fault on the display, then clear it.",
                        "Hold the enabling device in its middle position, and the motion button."
                                + " Let go or press through: the robot stops.",
                        "Somebody else comes near: first let go of the enabling device.");
        assertThat(lines("manual-reduced-speed", "back"))
                .containsExactly(
                        "Everybody comes out. Count them: nobody is left inside.",
                        "See that every door is closed: door (west side).",
                        "Press from outside, looking in: Reset at the door, west side, beside the door.",
                        "Turn the mode key to “automatic”. Take it with you.",
                        "Start from outside, as on the sheet “Running in automatic mode”.");
    }

    @Test
    void theSheetFollowsTheMode() throws IOException {
        BaseCell.change(folder, "modes.yaml", "speed-limit: 250 mm/s", "speed-limit: 200 mm/s");
        BaseCell.change(
                folder,
                "modes.yaml",
                "safeguards: {others: suspended, compensation: \"speed of 250 mm/s at most, enabling device, hold-to-run, nobody else inside\"}",
                "safeguards: {others: active, suspended: [{safeguard: door, compensation: a second person at the door}]}");
        BaseCell.change(folder, "complementary.yaml", "positions: 3", "positions: 2");

        assertThat(lines("manual-reduced-speed", "inside"))
                .contains(
                        "The robot moves at 200 mm/s at most.",
                        "These do not stop the robot now: interlocked door door (west side).",
                        "In their place: a second person at the door.",
                        "These still act: light curtain curtain (pallet exit); laser scanner scanner (loading place).");
        assertThat(lines("manual-reduced-speed", "change"))
                .contains("Hold the enabling device and the motion button. Let go: the robot stops.");
    }

    @Test
    void whatTheCellDoesNotHaveHasNoStep() throws IOException {
        BaseCell.change(folder, "modes.yaml", "sort: manual-reduced-speed", "sort: other");

        assertThat(lines("manual-reduced-speed", "inside")).isEmpty();
        assertThat(lines("after-stop", "clear"))
                .containsExactly(
                        "Go in only as on the sheet “Isolating energy for maintenance”.",
                        "Take away what caused the stop.",
                        "Release an emergency stop only when the danger is over.");
    }

    @Test
    void whereTheModeLetsNobodyInEveryEnergyIsIsolatedFirst() throws IOException {
        BaseCell.change(
                folder,
                "modes.yaml",
                "inside: {persons: 1, who: setter who holds the pendant, enabling-devices: [enabling]}",
                "inside: {persons: 0}");

        assertThat(lines("manual-reduced-speed", "inside")).contains("Nobody is inside in this mode either.");
        assertThat(lines("after-stop", "clear"))
                .startsWith("Go in only as on the sheet “Isolating energy for maintenance”.");
    }

    @Test
    void afterAStop() {
        assertThat(lines("after-stop", "find"))
                .contains(
                        "Look at the emergency stops: stop-panel (operator panel), stop-pendant (on the pendant). Which one is pressed?",
                        "Look at the doors: door (west side). Which one is open?",
                        "What interrupts a safeguard? Look at: light curtain curtain (pallet exit); laser scanner scanner (loading place).",
                        "No cause found, or the same stop again: do not restart. Call I. Lorne.");
        assertThat(lines("after-stop", "clear")).contains("Go in only as on the sheet “Manual reduced speed”.");
        assertThat(lines("after-stop", "restart"))
                .contains("Press from outside, looking in: Reset at the door, west side, beside the door.");
    }

    @Test
    void shiftCheckOfEachDevice() {
        assertThat(lines("shift-check", "checks"))
                .containsExactly(
                        "Check at the start of each shift, and after each change of set-up.",
                        "Walk all round. Nothing is missing, loose, dirty, bridged or damaged.",
                        "Light curtain curtain (pallet exit), 14 mm: rod along every edge and the middle. The stop light stays on.",
                        "Laser scanner scanner (loading place), 70 mm: test piece on every marked point. The scanner shows it.",
                        "From here on look in yourself before each press: nobody is inside.",
                        "Interlocked door door (west side): open it. Press reset and start. Close it. Nothing starts.",
                        "Compare the displays with the values below.",
                        "Something is wrong: do not start. Report it to I. Lorne.",
                        "Fill in the form of the shift check. Sign it.");
    }

    /** Scanners alone are checked without a press of reset or start; who goes round still looks first. */
    @Test
    void whereNothingIsPressedOneLooksInAtTheBeginning() throws IOException {
        String safeguards = Files.readString(folder.resolve("safeguards.yaml"));
        Files.writeString(
                folder.resolve("safeguards.yaml"), safeguards.substring(0, safeguards.indexOf("  - tag: door")));

        assertThat(lines("shift-check", "checks"))
                .contains("Look into the cell from outside: nobody is inside.")
                .noneMatch(line -> line.startsWith("From here on"));
    }

    @Test
    void thePlantTellsWhereADeviceIsFound() throws IOException {
        BaseCell.change(
                folder,
                "sheets.yaml",
                "  own-steps:",
                "  found:\n    - {device: door, at: ramp}\n    - {device: stop-panel, at: pillar 2}\n  own-steps:");

        assertThat(lines("shift-check", "checks")).anyMatch(line -> line.startsWith("Interlocked door door (ramp): "));
        assertThat(lines("after-stop", "find"))
                .anyMatch(line -> line.contains(": stop-panel (pillar 2), stop-pendant (on the pendant)."));
    }

    @Test
    void whatSeveralRobotsHaveOfTheirOwnIsToldApart() throws IOException {
        BaseCell.change(folder, "robots.yaml", "robots:", """
                robots:
                  - tag: lifter
                    name: lifting robot
                    serial: R-02
                    reach: 900 mm
                    payload: 10 kg
                    tool: {name: hook, mass: 1 kg, length: 100 mm}
                    part: {name: lid, mass: 2 kg, length: 100 mm}
                    controller: {name: robot controller, serial: RC-02, software: "7.2.1", checksum: "11111111"}
                    speeds: {automatic: 900 mm/s, manual-reduced: 250 mm/s}
                    stated: {handled-mass: 3 kg}
                """);
        BaseCell.change(folder, "complementary.yaml", "    name: Mode selector\n", """
                    name: Selector of the lifter
                    model: MS-3
                    position: lift
                    robot: lifter
                    locked-by: code
                    modes: [automatic, manual-reduced-speed]
                  - tag: second-selector
                    sort: mode-selector
                    robot: robot
                    name: Mode selector
                """);
        BaseCell.change(folder, "complementary.yaml", "    name: Pendant\n", """
                    name: Pendant of the lifter
                    model: TP-2
                    position: hook at the lift
                    robot: lifter
                    enabling-device: enabling-lifter
                    emergency-stop: stop-pendant
                  - tag: enabling-lifter
                    sort: enabling-device
                    name: Enabling device of the lifter
                    model: TP-2
                    position: on the pendant
                    positions: 2
                    held-by: setter
                    hold-to-run: yes
                  - tag: second-pendant
                    sort: pendant
                    robot: robot
                    name: Pendant
                """);
        BaseCell.change(
                folder, "modes.yaml", "enabling-devices: [enabling]", "enabling-devices: [enabling, enabling-lifter]");

        assertThat(lines("manual-reduced-speed", "change"))
                .contains(
                        "Lifting robot (lifter): Enter the code at the mode selector (lift). Select “manual reduced speed”. Log out.",
                        "Six-axis robot (robot): Turn the mode key (operator panel) to “manual reduced speed”. Take it with you.",
                        "Lifting robot (lifter): Take the pendant (hook at the lift). Switch it on.",
                        "Six-axis robot (robot): Take the pendant (hook at the operator panel). Switch it on.",
                        "Lifting robot (lifter): Hold the enabling device and the motion button. Let go: the robot stops.");
        assertThat(title("emergency", "free-1")).startsWith("Six-axis robot (robot): Caught by the arm. ");
    }

    private String title(String sheet, String part) {
        Cell cell = Cell.read(FolderWorld.of(folder), new Findings()).orElseThrow();
        return Composition.sheets(cell).stream()
                .filter(one -> one.id().equals(sheet))
                .flatMap(one -> one.panels().stream())
                .filter(panel -> panel.id().equals(part))
                .map(panel -> panel.title().get(0))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void neverNamesEverySafeguardByItsKindWhereThereAreMany() {
        for (String sheet : List.of("automatic-operation", "manual-reduced-speed", "after-stop", "shift-check")) {
            assertThat(lines(sheet, "never"))
                    .containsExactly(
                            "Never defeat, and never reach over, under or around:"
                                    + " light curtain, laser scanner, interlocked door, fixed fence.",
                            "Report a defeated safeguard to I. Lorne, and do not start.");
        }
    }

    @Test
    void anOwnStepTellsWhereADeviceIs() throws IOException {
        BaseCell.change(folder, "sheets.yaml", "do: Turn the key to automatic.", "do: \"Look at {door}.\"");

        assertThat(lines("automatic-operation", "start")).endsWith("Look at Door on the west side (west side).");
    }

    @Test
    void everyLanguageHasTheSameWordsWithTheSamePlaces() {
        Language english = Language.of("en", List.of()).orElseThrow();
        for (String tag : LANGUAGES) {
            Language language = Language.of(tag, List.of()).orElseThrow();

            assertThat(mine(language)).as(tag).isEqualTo(mine(english));
            for (String key : mine(english)) {
                assertThat(language.get(key, "§0", "§1"))
                        .as(tag + ": " + key)
                        .satisfies(words -> assertThat(places(words)).isEqualTo(places(english.get(key, "§0", "§1"))));
            }
        }
    }

    private static Set<String> mine(Language language) {
        Set<String> keys = new TreeSet<>(language.keys());
        keys.removeIf(key -> !MINE.matcher(key).matches());
        return keys;
    }

    private static List<String> places(String words) {
        return Stream.of("§0", "§1").filter(words::contains).toList();
    }

    @Test
    void everyKindHasItsNameAndItsShiftChecks() throws IOException {
        Language english = Language.of("en", List.of()).orElseThrow();
        for (String kind : Kinds.ids()) {
            assertThat(english.keys()).contains("kind." + kind);
            for (String test : shiftTests(kind)) {
                assertThat(english.keys()).contains("shift-check.checks." + kind + "." + test);
            }
        }
        assertThat(shiftTests("light-curtain")).containsExactly("rod");
    }

    /** Read apart from the program: the marks of a kind's tests. */
    private static List<String> shiftTests(String kind) throws IOException {
        Properties protocol = new Properties();
        try (InputStream stream = Objects.requireNonNull(OperatingSheetsTest.class.getResourceAsStream(
                "/org/cellfile/templates/kinds/" + kind + "/protocol.properties"))) {
            protocol.load(stream);
        }
        List<String> tests = new ArrayList<>();
        for (String key : protocol.stringPropertyNames()) {
            List<String> marks = List.of(protocol.getProperty(key).split(" ", -1));
            if (!key.contains(".") && marks.contains("shift") && !key.equals("look")) {
                tests.add(key);
            }
        }
        return tests;
    }
}
