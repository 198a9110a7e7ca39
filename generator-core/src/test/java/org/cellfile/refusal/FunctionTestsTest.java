package org.cellfile.refusal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.cellfile.FolderWorld;
import org.cellfile.cell.Cell;
import org.cellfile.cell.Composition;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Chapter;
import org.cellfile.dossier.Digest;
import org.cellfile.finding.Finding;
import org.cellfile.finding.Findings;
import org.cellfile.subject.due.Due;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which result of a test counts, until when, and how what is open is gathered. All figures are constructed unless a source is named. */
class FunctionTestsTest {

    private static final String FILE = "tests.yaml";
    private static final String DOOR = "      - {of: [door], tests: [open, actuator], result: pass}\n";

    /** Something that replaces the result of one test of the door. */
    private static final String OPEN = "      - {of: [door], tests: [open], result: pass}\n";

    private static final String FAILED = OPEN
            + "      - {of: [door], tests: [actuator], result: fail, defect: A magnet holds the switch closed%s}\n";

    @TempDir
    private Path folder;

    @BeforeEach
    void start() {
        BaseCell.copyTo(folder);
    }

    private List<Finding> findings() {
        return BaseCell.check(folder).findings();
    }

    private List<String> found() {
        return BaseCell.ids(findings());
    }

    private Cell cell() {
        Findings findings = new Findings();
        return Cell.read(new FolderWorld(folder, Clock.systemUTC()), findings).orElseThrow();
    }

    private List<Due> dues(String tag) {
        return cell().dues().stream().filter(due -> due.tag().equals(tag)).toList();
    }

    private void change(String from, String to) throws IOException {
        BaseCell.change(folder, FILE, from, to);
    }

    /** One more round at the end of the file. */
    private void add(String tag, String on, String results) throws IOException {
        Files.writeString(
                folder.resolve(FILE),
                Files.readString(folder.resolve(FILE))
                        + "  - tag: " + tag + "\n    on: " + on
                        + "\n    by: ilse\n    occasion: after repair\n    mode: automatic\n"
                        + "    no-other-path: the ordinary controller was switched off\n    results:\n" + results);
    }

    @Test
    void eachTestOfACurtainFallsDueAtItsOwnInterval() {
        assertThat(dues("curtain"))
                .extracting(due -> due.on() + " " + due.what() + "; " + due.source())
                .containsExactly(
                        "2027-04-14 function test: Detection with the test rod; 6 months, instructions of the makers",
                        "2027-04-14 function test: State of the device; 6 months, instructions of the makers",
                        "2027-10-14 function test: Stop of the movement (in automatic); 1 year, plan of the plant; DGUV Information 209-074,"
                                + " table 7");
    }

    @Test
    void anEmergencyStopFallsDueInEachModeInWhichItActs() {
        assertThat(dues("stop-panel"))
                .extracting(Due::what)
                .containsExactly(
                        "function test: Reset",
                        "function test: Stop by this device alone (in automatic)",
                        "function test: Stop by this device alone (in manual reduced speed)");
    }

    /** A month that is shorter ends earlier (common practice of calendars). */
    @ParameterizedTest
    @CsvSource({"2026-08-31, 2027-02-28", "2026-08-30, 2027-02-28", "2026-10-14, 2027-04-14"})
    void sixMonthsAfterTheEndOfAMonth(String on, LocalDate due) throws IOException {
        change("on: 2026-10-14", "on: " + on);

        assertThat(dues("curtain").get(0).on()).isEqualTo(due);
    }

    @Test
    void theLatestResultCountsWhereverItStands() throws IOException {
        add(
                "older",
                "2026-09-01",
                "      - {of: [door], tests: [actuator], result: fail, defect: A magnet holds it.}\n");
        assertThat(found()).isEmpty();
        assertThat(dues("door")).allMatch(due -> due.on().equals(LocalDate.of(2027, 10, 14)));

        add(
                "newer",
                "2026-11-01",
                "      - {of: [door], tests: [actuator], result: fail, defect: A magnet holds it.}\n");
        assertThat(found()).containsExactly("test.failed");
        assertThat(dues("door")).extracting(Due::what).doesNotContain("test `actuator` of `door`");
    }

    @Test
    void aDefectIsClosedByATestAfterItsRemedy() throws IOException {
        change(DOOR, FAILED.formatted(", remedied: {on: 2026-10-14, by: ilse, how: Coded switch fitted.}"));
        assertThat(found()).containsExactly("test.failed");

        add("again", "2026-10-14", "      - {of: [door], tests: [actuator], result: pass}\n");
        assertThat(found()).isEmpty();
    }

    @Test
    void aSecondResultOfOneDayNeedsARemedyOfThatDay() throws IOException {
        change(DOOR, FAILED.formatted(", remedied: {on: 2026-10-15, by: ilse, how: Coded switch fitted.}"));
        add("again", "2026-10-14", "      - {of: [door], tests: [actuator], result: pass}\n");

        assertThat(found()).containsExactly("test.repeated");
    }

    @Test
    void whatWasTestedOnTheDayOfAChangeWasTestedAfterIt() throws IOException {
        String changes = "cellfile: 1\n\nchanges:\n  - {tag: moved, on: %s, what: Moved., by: ilse, touches: [door]}\n";
        Files.writeString(folder.resolve("changes.yaml"), changes.formatted("2026-10-14"));
        assertThat(found()).isEmpty();

        Files.writeString(folder.resolve("changes.yaml"), changes.formatted("2026-10-15"));
        assertThat(found()).containsExactly("test.older-than-change");

        add("again", "2026-10-15", "      - {of: [door], tests: [look, open, actuator, trip], result: pass}\n");
        assertThat(found()).isEmpty();
    }

    /** Of several lines the shortest interval counts, in whatever order they stand and in whatever unit. */
    @Test
    void theShortestIntervalCounts() throws IOException {
        change("every: 6 months", "every: 26 weeks");
        assertThat(dues("curtain").get(0).on()).isEqualTo(LocalDate.of(2027, 4, 14));

        change("every: 26 weeks", "every: 2 years");
        assertThat(dues("curtain").get(0).on()).isEqualTo(LocalDate.of(2027, 10, 14));
        assertThat(found()).as("the longer one plans nothing").isEmpty();
    }

    @Test
    void whatIsMissingOfOneThingIsOneFinding() throws IOException {
        change(DOOR, "");
        change("      - {of: [curtain, scanner, door], tests: [trip], result: pass}\n", "");

        assertThat(findings())
                .extracting(Finding::sentence)
                .containsExactly(
                        "no result of `curtain` is recorded for `trip` in `automatic`",
                        "no result of `scanner` is recorded for `trip` in `automatic`",
                        "no result of `door` is recorded for `open`, `trip` in `automatic` and `actuator`");
    }

    @Test
    void aRoundThatCannotBeDatedLeavesEverythingOpen() throws IOException {
        change("  - tag: tests-automatic\n    on: 2026-10-14", "  - tag: tests-automatic\n    on: 14 October");

        assertThat(found()).containsExactly("read.not-a-date");
    }

    /** ISO 10218-1:2011, 250 mm/s: OSHA Technical Manual, section IV chapter 4, at second hand. */
    @ParameterizedTest
    @CsvSource({
        "250 mm/s,",
        "250.0 mm/s,",
        "9.84 in/s,",
        "250.1 mm/s, test.contradicted",
        "9.85 in/s, test.contradicted"
    })
    void theReducedSpeedIsAtMostItsLimit(String speed, String finding) throws IOException {
        change("243 mm/s", speed);

        assertThat(found()).isEqualTo(Stream.ofNullable(finding).toList());
    }

    /** EN 574, type III, 0.5 s: Omron Safety handbook PNSPO, p. 24; Moeller, two-hand controls; Axelent Safety Book. */
    @ParameterizedTest
    @CsvSource({"III A, 0.50 s, true", "III A, 500 ms, true", "III C, 0.51 s, false", "III A, 0.501 s, false"})
    void theHandsAreAtMostHalfASecondApart(String type, String apart, boolean holds) throws IOException {
        press(type, apart);

        assertThat(found().contains("test.contradicted")).isEqualTo(!holds);
        assertThat(found()).doesNotContain("test.not-of-this-thing", "test.missing");
    }

    /** EN 574, types: type I asks only for both hands at once, type II also that both are let go. */
    @ParameterizedTest
    @CsvSource({"I, 2", "II, 1", "III A, 0"})
    void aTwoHandControlIsTestedForWhatItsTypeDoes(String type, int notOfThisThing) throws IOException {
        press(type, "0.4 s");

        assertThat(found().stream().filter("test.not-of-this-thing"::equals)).hasSize(notOfThisThing);
        assertThat(found()).doesNotContain("test.missing");
    }

    private void press(String type, String apart) throws IOException {
        Files.writeString(
                folder.resolve("safeguards.yaml"),
                Files.readString(folder.resolve("safeguards.yaml"))
                        + """
                  - tag: press
                    kind: two-hand-control
                    name: Two-hand control of the press
                    model: TH-1
                    serial: TH-01
                    position: press
                    protects: [zone]
                    triggers: protective stop of the robot
                    stop-tests: [stop]
                    response:
                      - {link: two-hand control, time: 10 ms, source: data sheet}
                    type: TYPE
                    asynchrony: 0.4 s
                    shrouded: no
                    height: 1200 mm
                    surface: horizontal
                    operators: 1
                    stations: 1
                    installed: {distance: 900 mm, uncertainty: 0 mm, from: actuators, to: nearest point of zone, by: ilse, on: 2026-10-06, instrument: tape}
                """.indent(0).replace("TYPE", type));
        change("reset-west, robot]", "reset-west, robot, press]");
        change(
                DOOR,
                DOOR + "      - {of: [press], tests: [look, one-hand, release, again], result: pass}\n"
                        + "      - {of: [press], tests: [apart], result: pass, hands-apart: " + apart + "}\n");
        change("    neutralised: bypass-plc", "    neutralised: bypass-plc\n    instrument: stop-meter");
    }

    /** Inside the folder the file counts, whatever is said about another place. */
    @Test
    void evidenceInTheFolderIsHeldAgainstItsDigest() throws IOException {
        Path sheet = folder.resolve("evidence/sheet.txt");
        String digest = Digest.sha256(Files.readAllBytes(sheet));
        change(digest, digest.toUpperCase(java.util.Locale.ROOT));
        assertThat(found()).isEmpty();

        Files.writeString(sheet, "another");
        assertThat(found()).containsExactly("evidence.differs");

        change("file: evidence/sheet.txt,", "file: evidence/sheet.txt, kept-at: document store of the plant,");
        assertThat(found()).containsExactly("evidence.differs");

        Files.delete(sheet);
        assertThat(found()).isEmpty();
    }

    @Test
    void evidenceBehindALinkOrTooLargeIsNotRead() throws IOException {
        Path sheet = folder.resolve("evidence/sheet.txt");
        Files.delete(sheet);
        Files.createSymbolicLink(sheet, Path.of("/etc/hostname"));
        assertThat(found()).containsExactly("read.outside-the-folder");

        Files.delete(sheet);
        try (RandomAccessFile large = new RandomAccessFile(sheet.toFile(), "rw")) {
            large.setLength((64L << 20) + 1);
        }
        assertThat(found()).containsExactly("read.too-large");
    }

    @Test
    void evidenceMayBeOfAnySort() throws IOException {
        Files.write(folder.resolve("evidence/scan.csv"), new byte[] {'a', '\n'});
        change(
                "      - {file: evidence/sheet.txt",
                "      - {file: evidence/scan.csv, sha256: " + Digest.sha256("a\n")
                        + "}\n      - {file: evidence/sheet.txt");

        assertThat(found()).isEmpty();
    }

    @Test
    void oneProtocolAKindAndOneRowForThingsThatDoNotDiffer() {
        Chapter chapter = Composition.compose(cell()).chapters().stream()
                .filter(one -> one.id().equals("function-tests"))
                .findFirst()
                .orElseThrow();

        assertThat(chapter.blocks())
                .filteredOn(Block.Section.class::isInstance)
                .extracting(block -> ((Block.Section) block).title())
                .containsExactly(
                        "Light curtain",
                        "Laser scanner",
                        "Interlocked door",
                        "Fixed fence",
                        "Emergency stop",
                        "Enabling device",
                        "Mode selector",
                        "Pendant",
                        "Reset",
                        "Robot",
                        "Rounds of tests",
                        "Results");
        assertThat(rows(chapter, "Emergency stop", 1))
                .containsExactly(
                        List.of(
                                "stop-panel, stop-pendant",
                                "stop",
                                "automatic",
                                "2026-10-14 pass",
                                "1 year",
                                "2027-10-14"),
                        List.of(
                                "stop-panel, stop-pendant",
                                "stop",
                                "manual reduced speed",
                                "2026-10-14 pass",
                                "1 year",
                                "2027-10-14"),
                        List.of("stop-panel, stop-pendant", "reset", "any", "2026-10-14 pass", "1 year", "2027-10-14"));
        assertThat(((Block.Table) chapter.blocks().get(1)).rows())
                .containsExactly(
                        List.of(
                                "curtain, scanner, door",
                                "acts: protective stop of the robot",
                                "suspended, no reaction of its own; instead: speed of 250 mm/s at most, enabling device,"
                                        + " hold-to-run, nobody else inside"),
                        List.of("fence", "acts: stands in the way", "acts: stands in the way"),
                        List.of("stop-panel, stop-pendant", "stops the machine", "stops the machine"));
    }

    private static List<List<String>> rows(Chapter chapter, String section, int table) {
        return chapter.blocks().stream()
                .filter(Block.Section.class::isInstance)
                .map(Block.Section.class::cast)
                .filter(one -> one.title().equals(section))
                .map(one -> ((Block.Table) one.blocks().get(table)).rows())
                .findFirst()
                .orElseThrow();
    }
}
