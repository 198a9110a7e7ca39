package org.cellfile.refusal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cellfile.FolderWorld;
import org.cellfile.cell.Cell;
import org.cellfile.cell.Composition;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Chapter;
import org.cellfile.finding.Finding;
import org.cellfile.finding.Findings;
import org.cellfile.finding.Severity;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Unit;
import org.cellfile.standard.Edition;
import org.cellfile.standard.Editions;
import org.cellfile.standard.EmergencyStopStandard;
import org.cellfile.standard.Iso13850Ed2015;
import org.cellfile.standard.RobotStandard;
import org.cellfile.standard.Standards;
import org.cellfile.subject.complement.Complement;
import org.cellfile.subject.mode.Mode;
import org.cellfile.subject.mode.Operation;
import org.cellfile.subject.safeguard.Guarding;
import org.cellfile.subject.safeguard.Safeguard;
import org.cellfile.trace.Reference;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What becomes of each safeguard in each mode, who may be inside, and how fast, over every edition. */
class ModeMatrixTest {

    private static final String MODES = "modes.yaml";
    private static final String MANUAL =
            "safeguards: {others: suspended, compensation: \"speed of 250 mm/s at most, enabling"
                    + " device, hold-to-run, nobody else inside\"}";

    /** As the cases have it, and as YAML has it. */
    private static final Map<String, String> NAMED = Map.of(
            "no", "",
            "active", "active: [%s], ",
            "suspended", "suspended: [{safeguard: %s}], ",
            "suspended+", "suspended: [{safeguard: %s, compensation: a bolted cover}], ",
            "not-applicable", "not-applicable: [{safeguard: %s}], ",
            "not-applicable+", "not-applicable: [{safeguard: %s, because: its zone is at rest}], ");

    private static final Map<String, String> OTHERS = Map.of(
            "none", "",
            "none+", "compensation: low speed and enabling device",
            "active", "others: active",
            "suspended", "others: suspended",
            "suspended+", "others: suspended, compensation: low speed and enabling device");

    @TempDir
    private Path folder;

    @BeforeEach
    void start() {
        BaseCell.copyTo(folder);
    }

    /** Every way of naming one safeguard that stops a movement, beside every way of meaning the others. Source: common practice. */
    @ParameterizedTest
    @CsvSource({
        "no,              none,       UNSTATED,       mode.safeguard-without-state",
        "no,              none+,      UNSTATED,       mode.safeguard-without-state",
        "no,              active,     ACTIVE,",
        "no,              suspended,  SUSPENDED,      mode.no-compensation",
        "no,              suspended+, SUSPENDED,",
        "active,          none,       ACTIVE,         mode.safeguard-without-state",
        "active,          none+,      ACTIVE,         mode.safeguard-without-state",
        "active,          active,     ACTIVE,",
        "active,          suspended,  ACTIVE,         mode.no-compensation",
        "active,          suspended+, ACTIVE,",
        "suspended,       none,       SUSPENDED,      mode.safeguard-without-state mode.no-compensation",
        "suspended,       none+,      SUSPENDED,      mode.safeguard-without-state",
        "suspended,       active,     SUSPENDED,      mode.no-compensation",
        "suspended,       suspended,  SUSPENDED,      mode.no-compensation",
        "suspended,       suspended+, SUSPENDED,",
        "suspended+,      none,       SUSPENDED,      mode.safeguard-without-state",
        "suspended+,      none+,      SUSPENDED,      mode.safeguard-without-state",
        "suspended+,      active,     SUSPENDED,",
        "suspended+,      suspended,  SUSPENDED,      mode.no-compensation",
        "suspended+,      suspended+, SUSPENDED,",
        "not-applicable,  none,       NOT_APPLICABLE, mode.safeguard-without-state mode.no-reason",
        "not-applicable,  none+,      NOT_APPLICABLE, mode.safeguard-without-state mode.no-reason",
        "not-applicable,  active,     NOT_APPLICABLE, mode.no-reason",
        "not-applicable,  suspended,  NOT_APPLICABLE, mode.no-compensation mode.no-reason",
        "not-applicable,  suspended+, NOT_APPLICABLE, mode.no-reason",
        "not-applicable+, none,       NOT_APPLICABLE, mode.safeguard-without-state",
        "not-applicable+, none+,      NOT_APPLICABLE, mode.safeguard-without-state",
        "not-applicable+, active,     NOT_APPLICABLE,",
        "not-applicable+, suspended,  NOT_APPLICABLE, mode.no-compensation",
        "not-applicable+, suspended+, NOT_APPLICABLE,"
    })
    void aSafeguardHasOneState(String named, String others, Mode.State state, String findings) throws IOException {
        heldAgainst("curtain", named, others, state, findings);
    }

    /** A fixed guard stands unless it is named; the compensation for all does not make up for one that is gone. */
    @ParameterizedTest
    @CsvSource({
        "no,              active,     ACTIVE,",
        "no,              suspended+, ACTIVE,",
        "no,              none,       ACTIVE,         mode.safeguard-without-state",
        "active,          suspended+, ACTIVE,",
        "suspended,       active,     SUSPENDED,      mode.fixed-guard-suspended",
        "suspended,       suspended+, SUSPENDED,      mode.fixed-guard-suspended",
        "suspended,       suspended,  SUSPENDED,      mode.fixed-guard-suspended mode.no-compensation",
        "suspended+,      suspended+, SUSPENDED,",
        "not-applicable,  suspended+, NOT_APPLICABLE, mode.no-reason",
        "not-applicable+, suspended+, NOT_APPLICABLE,"
    })
    void aFixedGuardStands(String named, String others, Mode.State state, String findings) throws IOException {
        heldAgainst("fence", named, others, state, findings);
    }

    private void heldAgainst(String tag, String named, String others, Mode.State state, String findings)
            throws IOException {
        String yaml = named(named, tag) + OTHERS.get(others);
        change(MANUAL, "safeguards: {" + yaml.replaceFirst(", $", "") + "}");

        Cell cell = cell();
        Operation manual = manual(cell);
        assertThat(manual.mode().state(safeguard(tag, cell))).isEqualTo(state);
        assertThat(BaseCell.ids(manual.findings()))
                .containsExactlyInAnyOrderElementsOf(findings == null ? List.of() : List.of(findings.split(" ")));
    }

    /** Two things cannot both be true, and nothing is built on either. */
    @ParameterizedTest
    @CsvSource({"active, active", "active, suspended+", "suspended+, not-applicable+", "active, not-applicable+"})
    void aSafeguardIsNamedOnce(String first, String second) throws IOException {
        String yaml = first.equals(second) ? "active: [door, door], " : named(first, "door") + named(second, "door");
        change(MANUAL, "safeguards: {" + yaml + OTHERS.get("suspended+") + "}");

        assertThat(found()).containsExactly("mode.safeguard-named-twice");
        Cell cell = cell();
        assertThat(manual(cell).mode().state(safeguard("door", cell))).isEqualTo(Mode.State.UNSTATED);
    }

    static List<RobotStandard> robots() {
        return Editions.ids(RobotStandard.class).stream()
                .map(id -> (RobotStandard) Editions.of(id).orElseThrow())
                .toList();
    }

    /**
     * Sources of 250 mm/s: OSHA Technical Manual, section IV chapter 4, at second hand (ISO 10218-1:2011); from memory (the edition of
     * 2025). Source of 10 in/s: from memory.
     */
    @ParameterizedTest
    @MethodSource("robots")
    void theSpeedLimitOfAnEditionIsAllowedAndNothingAbove(RobotStandard edition) throws IOException {
        Quantity limit = edition.manualReducedSpeed().quantity();
        Quantity tenth = Quantity.of("0.1", Unit.MILLIMETRE_PER_SECOND);
        for (Quantity allowed : List.of(limit, limit.minus(tenth))) {
            change("speed-limit: 250 mm/s", "speed-limit: " + allowed);
            assertThat(manualUnder(edition).findings()).isEmpty();
            change("speed-limit: " + allowed, "speed-limit: 250 mm/s");
        }
        change("speed-limit: 250 mm/s", "speed-limit: " + limit.plus(tenth));
        assertThat(manualUnder(edition).findings()).singleElement().satisfies(finding -> {
            assertThat(finding.id()).isEqualTo(Operation.TOO_FAST);
            assertThat(String.join("", finding.because())).contains(edition.id());
        });
    }

    @Test
    void theLeastLimitOfSeveralEditionsCounts() throws IOException {
        change("speed-limit: 250 mm/s", "speed-limit: 252 mm/s");
        assertThat(BaseCell.ids(manualUnder(edition("ANSI R15.06:2012")).findings()))
                .isEmpty();
        assertThat(BaseCell.ids(manualUnder(edition("ANSI R15.06:2012"), edition("ISO 10218-1:2011"))
                        .findings()))
                .containsExactly("mode.speed-too-high");
    }

    /**
     * Sources: that nobody is inside under ISO 10218-1:2025, robot-safety.net, does T2 mode become history; that one trained person may
     * be under the editions before it, from memory.
     */
    @ParameterizedTest
    @MethodSource("robots")
    void atHighSpeedNobodyIsInsideOrOneWhoIsJustified(RobotStandard edition) throws IOException {
        boolean forbids = edition.nobodyInsideAtHighSpeed().isPresent();
        assertThat(forbids).isEqualTo(edition.id().equals("ISO 10218-1:2025"));
        change("sort: manual-reduced-speed", "sort: manual-high-speed");

        inside(0, 1);
        assertThat(manualUnder(edition).findings()).isEmpty();
        inside(1, 1);
        assertThat(manualUnder(edition).findings()).singleElement().satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(forbids ? Severity.REFUSES : Severity.WARNS);
            assertThat(String.join("", finding.because())).contains(edition.id());
        });
        inside(2, 2);
        assertThat(BaseCell.ids(manualUnder(edition).findings())).containsExactly("mode.inside-at-high-speed");
    }

    @Test
    void theEditionThatForbidsItGovernsBesideOneThatDoesNot() throws IOException {
        change("sort: manual-reduced-speed", "sort: manual-high-speed");
        Operation both = manualUnder(edition("ISO 10218-1:2011"), edition("ISO 10218-1:2025"));
        assertThat(BaseCell.ids(both.findings())).containsExactly("mode.inside-at-high-speed");
        assertThat(both.rules()).extracting(Reference::id).contains("iso-10218-1-2025.nobody-inside-at-high-speed");
    }

    /**
     * As many enabling devices as persons, and one for whoever moves the robot from outside. Source: a maker's manual of a robot
     * control; one more person never helps, one more device never harms.
     */
    @Test
    void eachPersonInsideHoldsAnEnablingDevice() throws IOException {
        for (int persons = 0; persons <= 3; persons++) {
            for (int held = 0; held <= 3; held++) {
                inside(persons, held);
                assertThat(BaseCell.ids(manual(cell()).findings()))
                        .as(persons + " persons, " + held + " enabling devices")
                        .isEqualTo(
                                held >= Math.max(persons, 1)
                                        ? List.of()
                                        : List.of(
                                                held == 0
                                                        ? "mode.no-enabling-device"
                                                        : "mode.too-few-enabling-devices"));
            }
        }
    }

    /** Source: common practice; remote commands: Alberta Occupational Health and Safety Code, s. 385. */
    @ParameterizedTest
    @CsvSource({
        "automatic,            0, no,  possible,",
        "automatic,            1, yes, locked-out, mode.inside-in-automatic",
        "manual-reduced-speed, 1, yes, locked-out,",
        "manual-reduced-speed, 0, no,  locked-out, mode.no-hold-to-run",
        "manual-reduced-speed, 1, yes, possible,   mode.remote-start",
        "manual-high-speed,    0, no,  possible,   mode.no-hold-to-run mode.remote-start",
        "other,                0, no,  possible,",
        "other,                1, no,  locked-out,",
        "other,                1, no,  possible,   mode.remote-start",
        "collaborative,        1, no,  possible,   mode.no-collaborative-claims"
    })
    void whatEachSortOfModeNeeds(String sort, int persons, String hold, String remote, String findings)
            throws IOException {
        inside(persons, 1);
        change("sort: manual-reduced-speed", "sort: " + sort);
        change("hold-to-run: yes", "hold-to-run: " + hold);
        change("remote-start: locked-out", "remote-start: " + remote);
        change(MANUAL, "safeguards: {others: active}");

        assertThat(BaseCell.ids(manual(cell()).findings()))
                .containsExactlyInAnyOrderElementsOf(findings == null ? List.of() : List.of(findings.split(" ")));
    }

    /** Source of the limits: constructed. At the limit it holds, whatever the unit. */
    @ParameterizedTest
    @CsvSource({
        "'140 N, at-most: 140 N',",
        "'140.1 N, at-most: 140 N', mode.collaborative-limit",
        "'100 mm, at-least: 0.1 m',",
        "'0.0999 m, at-least: 100 mm', mode.collaborative-limit",
        "'190 N/cm², at-most: 190 N/cm²',"
    })
    void aCollaborativeModeHoldsItsLimits(String measured, String finding) throws IOException {
        change("sort: manual-reduced-speed", "sort: collaborative");
        change(
                MANUAL,
                MANUAL
                        + "\n    collaborative-claims: [{name: contact, measured: %s, source: risk assessment}]"
                                .formatted(measured));
        assertThat(BaseCell.ids(manual(cell()).findings())).isEqualTo(finding == null ? List.of() : List.of(finding));
    }

    /** A safeguard that acts in two modes waits for the slower stop of the two. Source: constructed. */
    @Test
    void theSlowestStopOfAllModesCounts() throws IOException {
        String stops = Files.readString(folder.resolve("stops.yaml"));
        String second = stops.substring(stops.indexOf("  - tag: stop\n"))
                .replace("tag: stop\n", "tag: stop-manual\n")
                .replace("mode: automatic", "mode: manual-reduced-speed")
                .replace("time: 0.2 s,", "time: 0.31 s,");
        Files.writeString(folder.resolve("stops.yaml"), stops + second);
        BaseCell.change(folder, "zones.yaml", "stopped-by: [stop]", "stopped-by: [stop, stop-manual]");
        change(MANUAL, "safeguards: {active: [door], " + OTHERS.get("suspended+") + "}");
        assertThat(found()).contains("safeguard.mode-not-measured");

        BaseCell.change(
                folder,
                "safeguards.yaml",
                "stop-tests: [stop]\n    response:\n      - {link: interlock switch",
                "stop-tests: [stop, stop-manual]\n    response:\n      - {link: interlock switch");
        // What was recorded for the quicker stop alone does not agree any more.
        assertThat(found()).doesNotContain("safeguard.mode-not-measured").contains("claim.not-equal");
        Guarding door = cell().safeguards().stream()
                .filter(one -> one.tag().equals("door"))
                .findFirst()
                .orElseThrow();
        assertThat(door.responseTime().orElseThrow().value()).contains(Quantity.seconds("0.34"));
    }

    /** Source: ISO 13850:2015, cl. 4.1.1.2; IDEC, ISO 13850, and LegalClarity, ISO 13850. */
    @Test
    void theRulesOfTheModesStandInTheRegister() {
        EmergencyStopStandard stops = new Iso13850Ed2015();
        assertThat(stops.availability().standing().words())
                .startsWith("published: ")
                .contains("IDEC", "LegalClarity");
        assertThat(Composition.references(cell())).extracting(Reference::id).contains("iso-13850-2015.availability");
        assertThat(chapter("not-covered").toString())
                .doesNotContain("other modes than automatic")
                .contains("whether the modes work at the machine");
    }

    @Test
    void theMatrixIsPrinted() {
        List<Block> blocks = chapter("modes").blocks();
        assertThat(blocks.get(0))
                .isInstanceOfSatisfying(
                        Block.Box.class,
                        box -> assertThat(box.blocks().toString())
                                .contains(
                                        "none of the 3 safeguards that stop a movement acts",
                                        "One person is inside and nobody else: setter who holds the pendant."));
        assertThat(rows(blocks.get(1)))
                .contains(
                        List.of("Speed limit", "1500 mm/s", "250 mm/s"),
                        List.of("Persons inside", "none", "1"),
                        List.of("Remote start", "possible", "locked out"),
                        List.of("Emergency stops", "all 2 of the cell", "all 2 of the cell"),
                        List.of("Selected by", "selector", "selector"));
        assertThat(rows(blocks.get(2)))
                .containsExactly(
                        List.of("curtain", "■ active", "□ suspended"),
                        List.of("scanner", "■ active", "□ suspended"),
                        List.of("door", "■ active", "□ suspended"),
                        List.of("fence", "■ active", "■ active"));
        assertThat(rows(blocks.get(3)))
                .containsExactly(List.of(
                        "Manual reduced speed",
                        "every safeguard that stops a movement",
                        "speed of 250 mm/s at most, enabling device, hold-to-run, nobody else inside"));
        assertThat(rows(blocks.get(4)))
                .contains(
                        List.of("Nobody is inside in automatic", "Common practice", "automatic: nobody"),
                        List.of(
                                "The emergency stop function is available at all times",
                                "ISO 13850:2015, cl. 4.1.1.2",
                                "automatic: all 2; manual-reduced-speed: all 2"),
                        List.of(
                                "Speed limit at most 250 mm/s",
                                "ISO 10218-1:2011, cl. 5.6.2",
                                "manual-reduced-speed: 250 mm/s"));
    }

    @Test
    void whatStillActsAndWhatDoesNotMatterIsSaid() throws IOException {
        change(
                MANUAL,
                "safeguards: {active: [door], " + named("not-applicable+", "scanner") + OTHERS.get("suspended+") + "}");
        List<Block> blocks = chapter("modes").blocks();
        assertThat(blocks.get(0).toString()).contains("of the 3 safeguards that stop a movement only these act: door.");
        assertThat(rows(blocks.get(2)))
                .contains(List.of("scanner", "■ active", "– not applicable"), List.of("door", "■ active", "■ active"));
        assertThat(rows(blocks.get(3)))
                .containsExactly(
                        List.of("Manual reduced speed", "curtain", "low speed and enabling device"),
                        List.of("Manual reduced speed", "scanner", "not applicable: its zone is at rest"));
    }

    private void inside(int persons, int held) throws IOException {
        if (!Files.readString(folder.resolve("complementary.yaml")).contains("enabling-2")) {
            String devices = Files.readString(folder.resolve("complementary.yaml"));
            String one =
                    devices.substring(devices.indexOf("  - tag: enabling\n"), devices.indexOf("  - tag: selector"));
            Files.writeString(
                    folder.resolve("complementary.yaml"),
                    devices
                            + one.replace("tag: enabling\n", "tag: enabling-2\n")
                            + one.replace("tag: enabling\n", "tag: enabling-3\n"));
        }
        String devices =
                Stream.of("enabling", "enabling-2", "enabling-3").limit(held).collect(Collectors.joining(", "));
        String text = Files.readString(folder.resolve(MODES));
        Files.writeString(
                folder.resolve(MODES),
                text.replaceFirst(
                        "inside: \\{persons: \\d, who.*\\}",
                        "inside: {persons: " + persons + ", who: setters, enabling-devices: [" + devices + "]}"));
    }

    private static String named(String how, String safeguard) {
        return Objects.requireNonNull(NAMED.get(how), how).formatted(safeguard);
    }

    private void change(String from, String to) throws IOException {
        BaseCell.change(folder, MODES, from, to);
    }

    private List<String> found() {
        return BaseCell.ids(BaseCell.check(folder).findings());
    }

    private Cell cell() {
        Findings findings = new Findings();
        Optional<Cell> cell = Cell.read(FolderWorld.of(folder), findings);
        assertThat(findings.sorted()).extracting(Finding::sentence).isEmpty();
        return cell.orElseThrow();
    }

    private static Operation manual(Cell cell) {
        return cell.operations().get(1);
    }

    /** The manual mode as it would be under other editions about robots. */
    private Operation manualUnder(RobotStandard... editions) {
        Cell cell = cell();
        List<Edition> inForce = Stream.concat(Arrays.stream(editions), Stream.of(new Iso13850Ed2015()))
                .map(Edition.class::cast)
                .toList();
        return new Operation(
                manual(cell).mode(),
                cell.safeguards().stream().map(Guarding::safeguard).toList(),
                cell.complementary().stream().map(Complement::device).toList(),
                Standards.of(inForce));
    }

    private static RobotStandard edition(String id) {
        return (RobotStandard) Editions.of(id).orElseThrow();
    }

    private static Safeguard safeguard(String tag, Cell cell) {
        return cell.safeguards().stream()
                .map(Guarding::safeguard)
                .filter(one -> one.tag().characters().equals(tag))
                .findFirst()
                .orElseThrow();
    }

    private Chapter chapter(String id) {
        return Composition.compose(cell()).chapters().stream()
                .filter(chapter -> chapter.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static List<List<String>> rows(Block block) {
        return ((Block.Table) block).rows();
    }
}
