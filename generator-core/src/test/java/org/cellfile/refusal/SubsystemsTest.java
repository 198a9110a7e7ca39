package org.cellfile.refusal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Objects;
import org.cellfile.FolderWorld;
import org.cellfile.cell.Cell;
import org.cellfile.cell.Composition;
import org.cellfile.finding.Findings;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Reference;
import org.cellfile.trace.Standing.ReadInCopy;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Parts and subsystems at the edges of what is refused, the rules that count, and values of ISO 13849-1 read in a copy. */
class SubsystemsTest {

    private static final String FILE = "functions.yaml";
    private static final String STANDARDS = "standards.yaml";
    private static final String ID = "iso-13849-1-2015.";
    private static final String WEARS = "b10d: 1000000\n    operations: {days: 230, hours: 16 h, cycle: 15 min}";

    @TempDir
    private Path folder;

    @BeforeEach
    void start() {
        BaseCell.copyTo(folder);
    }

    private List<String> found() {
        return BaseCell.ids(BaseCell.check(folder).findings());
    }

    private void change(String from, String to) throws IOException {
        BaseCell.change(folder, FILE, from, to);
    }

    /** What is recorded is left out, so that only what was changed is told of. */
    private void recordNothing() throws IOException {
        Path file = folder.resolve(FILE);
        Files.writeString(file, Files.readString(file).replaceAll("    stated: \\{.*\\}\n", ""));
    }

    private void expect(String id, boolean told) {
        if (told) {
            assertThat(found()).contains(id);
        } else {
            assertThat(found()).doesNotContain(id);
        }
    }

    private Cell cell() {
        return Cell.read(FolderWorld.of(folder), new Findings()).orElseThrow();
    }

    private Derived derived(String tag) {
        return Objects.requireNonNull(cell().derived().get(tag), tag);
    }

    /** A subsystem of one channel in category 2, which only monitors. */
    private void comparison(String category, String relay, String tester, String test) throws IOException {
        change("\nsubsystems:\n", """
                  - tag: relay
                    name: Relay that compares the switches
                    source: data sheet
                    mttfd: %s
                    coverage: {share: 90 %%, by: [tester], how: switched once in a test}
                    well-tried: list of well-tried components of its maker
                    installed: 2026-09-01
                  - tag: tester
                    name: Relay that tests it
                    source: data sheet
                    mttfd: %s
                    installed: 2026-09-01

                subsystems:
                  - tag: comparison
                    name: Comparison of the switches
                    category: %s
                    channels:
                      - {name: A, parts: [relay]}
                %s    common-cause:
                      - {measure: separation, how: wired apart}
                      - {measure: diversity, how: of two makers}
                      - {measure: environment, how: in the cabinet}
                      - {measure: electromagnetic-compatibility, how: tested with the drives}
                """.formatted(
                        relay, tester, category, test.isEmpty() ? "" : "    test: " + test + "\n"));
        recordNothing();
        change("by: [controller], how: both", "by: [controller, comparison], how: both");
    }

    /** Source of 3 years: published, see the edition. */
    @ParameterizedTest
    @CsvSource({"3 years, false", "26280 h, false", "2.999 years, true", "26279 h, true"})
    void aChannelLastsThreeYears(String mttfd, boolean told) throws IOException {
        recordNothing();
        change(WEARS, "mttfd: " + mttfd);
        expect("subsystem.channel-fails-too-soon", told);
    }

    /** Source of 30 years: published as the beginning of the high range; that category 1 asks for it is from memory. */
    @ParameterizedTest
    @CsvSource({
        "1, 30 years, false",
        "1, 29.99 years, true",
        "2, 29.99 years, false",
        "B, 3 years, false",
        "B, 2.9 years, true"
    })
    void aChannelOfCategoryOneLastsThirty(String category, String mttfd, boolean told) throws IOException {
        comparison(category, mttfd, "60 years", "");
        expect("subsystem.channel-fails-too-soon", told);
    }

    /** Source of 60 %: from memory; both switches have the same coverage, so that the average is just that, though they wear unlike. */
    @ParameterizedTest
    @CsvSource({"60 %, false", "59.99 %, true"})
    void coverageIsSixtyPercentOnAverage(String share, boolean told) throws IOException {
        recordNothing();
        change("share: 90 %, by: [controller], how: both", "share: " + share + ", by: [controller], how: both");
        expect("subsystem.coverage-too-low", told);
    }

    /** Source of half: published, see the edition; 200 years count as 100. */
    @ParameterizedTest
    @CsvSource({"200 years, 50 years, false", "200 years, 49.99 years, true", "40 years, 20 years, false"})
    void testEquipmentLastsHalfAsLong(String relay, String tester, boolean told) throws IOException {
        comparison("2", relay, tester, "{every: 1 h, demanded-every: 100 h, equipment: [tester]}");
        expect("subsystem.test-equipment-fails-too-soon", told);
    }

    /** Source of 100: from memory. */
    @ParameterizedTest
    @CsvSource({
        "'every: 1 h, demanded-every: 100 h', false",
        "'every: 60 min, demanded-every: 99.9 h', true",
        "'when-demanded: the relay drops before the door is open', false"
    })
    void theChannelIsTestedAHundredTimesADemand(String test, boolean told) throws IOException {
        comparison("2", "200 years", "60 years", "{" + test + ", equipment: [tester]}");
        expect("subsystem.tested-too-seldom", told);
        expect("subsystem.not-tested", false);
    }

    /** Category 2 has the right number of channels, measures and coverage here, so that nothing but what bars release is told. */
    @Test
    void aTestedChannelIsHeldAgainstTheRulesOfItsCategory() throws IOException {
        comparison("2", "200 years", "60 years", "{every: 1 h, demanded-every: 100 h, equipment: [tester]}");
        assertThat(cell().controlSystem().subsystems())
                .filteredOn(subsystem -> subsystem.tag().equals("comparison"))
                .singleElement()
                .satisfies(subsystem -> {
                    assertThat(subsystem.findings())
                            .extracting(finding -> finding.id().words())
                            .containsOnly("subsystem.not-recorded");
                    assertThat(subsystem.rules())
                            .extracting(Reference::id)
                            .containsExactlyInAnyOrder(
                                    ID + "structures",
                                    ID + "channel-least",
                                    ID + "coverage-low",
                                    ID + "tests-for-each-demand",
                                    ID + "test-equipment-share",
                                    ID + "channel-limit",
                                    ID + "common-cause-least");
                });
        assertThat(found()).contains("standard.unconfirmed");
    }

    @ParameterizedTest
    @CsvSource({
        "'days: 366, hours: 24 h, cycle: 168 h', false",
        "'days: 365.25, hours: 1440 min, cycle: 1 years', false",
        "'days: 366.1, hours: 24 h, cycle: 168 h', true",
        "'days: 366, hours: 24.1 h, cycle: 168 h', true",
        "'days: 366, per-day: 100000', false"
    })
    void aDayHasTwentyFourHours(String operations, boolean told) throws IOException {
        recordNothing();
        change("b10d: 1000000\n    operations: {days: 230, hours: 16 h, cycle: 15 min}", """
                b10d: 1000000
                    operations: {%s}""".formatted(operations));
        expect("part.beyond-the-calendar", told);
        expect("read.unknown-key", false);
    }

    @ParameterizedTest
    @CsvSource({"100 %, false", "20 %, false", "100.01 %, true"})
    void nothingIsMoreThanAll(String share, boolean told) throws IOException {
        recordNothing();
        change("b10d: 1000000", "b10: 1000000\n    dangerous: " + share);
        expect("part.more-than-all", told);
    }

    /**
     * Source of the ranges: published. The first row is a published sample of a part whose maker claims less than its frequency
     * allows, which is no contradiction.
     */
    @ParameterizedTest
    @CsvSource({
        "3, 1.52e-8 1/h, PL d, ''",
        "4, 9.99e-8 1/h, PL e, ''",
        "4, 1e-7 1/h, PL e, subsystem.level-beyond-frequency",
        "4, 1e-7 1/h, PL d, ''",
        "3, 1e-4 1/h, PL a, subsystem.no-level",
        "2, 1.52e-8 1/h, PL d, ''",
        "2, 1.52e-8 1/h, PL e, subsystem.level-beyond-category",
        "1, 1.52e-8 1/h, PL c, ''",
        "1, 1.52e-8 1/h, PL d, subsystem.level-beyond-category",
        "B, 1.52e-8 1/h, PL b, ''",
        "B, 1.52e-8 1/h, PL c, subsystem.level-beyond-category"
    })
    void figuresOfAMakerAgreeWithEachOther(String category, String pfh, String level, String id) throws IOException {
        change(
                "category: 4\n    maker: {pfh: 6.3e-9 1/h, level: PL e",
                "category: %s\n    maker: {pfh: %s, level: %s".formatted(category, pfh, level));
        List<String> told =
                found().stream().filter(one -> one.startsWith("subsystem.")).toList();
        assertThat(told).isEqualTo(id.isEmpty() ? List.of() : List.of(id));
    }

    /** Every rule from memory that the subsystems of the small cell are held against has to be confirmed. */
    @ParameterizedTest
    @ValueSource(strings = {"structures", "channel-high", "coverage-low", "coverage-high"})
    void aRuleFromMemoryIsConfirmed(String rule) throws IOException {
        assertThat(Composition.references(cell())).extracting(Reference::id).contains(ID + rule);
        BaseCell.change(folder, STANDARDS, "  - {value: " + ID + rule + ", ", "  # - {value: " + ID + rule + ", ");
        assertThat(found()).containsExactly("standard.unconfirmed");
    }

    private void copy(String value, String is) throws IOException {
        Files.writeString(folder.resolve(STANDARDS), """

                copy-values:
                  - value: %s%s
                    %s
                    clause: the one of the copy
                    by: ilse
                    on: 2026-10-02
                    copy: licensed copy of Fennimoor
                """.formatted(ID, value, is), StandardOpenOption.APPEND);
    }

    private static void isReadInACopy(Derived derived, String id) {
        assertThat(derived.references())
                .filteredOn(reference -> reference.id().equals(ID + id))
                .anyMatch(reference -> reference.standing() instanceof ReadInCopy);
    }

    /** The figures of the copies are constructed. */
    @ParameterizedTest
    @CsvSource({
        "annex-k, 'cell: 3-medium-100, is: 4.40e-8 1/h', door-switches.pfh, 4.40e-8 1/h, theirs is 1.1e-9 1/h more",
        "annex-k, 'cell: 4-high-820, is: 2.70e-9 1/h', contactors.pfh, 2.70e-9 1/h, theirs is 9e-11 1/h less",
        "risk-graph, 'path: S2-F1-P2, is: PL e', impact.required-level, PL e, theirs is one that asks for more",
        "common-cause, 'measure: separation, is: 25 points', door-switches.common-cause, 75 points, theirs is 10 points more"
    })
    void aRowOfATableIsUsedAsItWasRead(String value, String row, String tag, String comesOut, String beside)
            throws IOException {
        copy(value, "rows: [{" + row + "}]");
        Derived derived = derived(tag);
        assertThat(derived.rounded()).hasToString("Optional[" + comesOut + "]");
        isReadInACopy(derived, value);
        assertThat(derived.references())
                .anySatisfy(
                        reference -> assertThat(reference.standing().words()).contains(beside));
        assertThat(found()).contains("claim.not-equal").doesNotContain("copy-value.not-used");
    }

    @ParameterizedTest
    @CsvSource({
        "channel-high, 900 years, subsystem.channel-fails-too-soon",
        "coverage-low, 95 %, subsystem.coverage-too-low",
        "coverage-high, 99.5 %, subsystem.coverage-too-low"
    })
    void aRuleIsUsedAsItWasRead(String value, String is, String told) throws IOException {
        BaseCell.change(folder, STANDARDS, "  - {value: " + ID + value + ", ", "  # - {value: " + ID + value + ", ");
        copy(value, "is: " + is);
        assertThat(found()).containsOnly(told);
    }

    /** What was published is compared, and nothing takes its place. */
    @ParameterizedTest
    @CsvSource({
        "annex-k-4-high-2500, 'rows: [{cell: 4-high-2500, is: 9.60e-10 1/h}]'",
        "annex-k-1-30, 'rows: [{cell: 1-30, is: 3.81e-6 1/h}]'",
        "level-ranges, 'rows: [{level: d, is: 2e-6 1/h}]'",
        "common-cause-least, 'is: 60 points'",
        "channel-least, 'is: 2 years'",
        "channel-limit, 'is: 120 years'",
        "mission-time, 'is: 25 years'",
        "dangerous-share, 'is: 40 %'",
        "worn-share, 'is: 0.2'"
    })
    void aPublishedValueIsNotContradicted(String value, String is) throws IOException {
        copy(value, is);
        assertThat(found()).contains("standard.contradicts-published").doesNotContain("claim.not-equal");
    }

    @ParameterizedTest
    @CsvSource({
        "annex-k, 'rows: [{cell: 3-medium-100, is: 0 1/h}]', quantity.negative",
        "annex-k, 'rows: [{cell: 3-medium-100, is: 4.4e-8}]', quantity.no-unit",
        "annex-k, 'rows: [{cell: 3-medium-100, is: 44 mm}]', quantity.another-dimension",
        "annex-k, 'rows: [{cell: 3-medium-101, is: 4.4e-8 1/h}]', read.unknown-word",
        "risk-graph, 'rows: [{path: S2-F1-P2, is: e}]', read.unknown-word",
        "common-cause, 'rows: [{measure: separation, is: 20}]', quantity.no-unit",
        "channel-high, 'is: 900 mm', quantity.another-dimension"
    })
    void aRowIsReadInItsUnit(String value, String is, String told) throws IOException {
        copy(value, is);
        assertThat(found()).contains(told);
    }
}
