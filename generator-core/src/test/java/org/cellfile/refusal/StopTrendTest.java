package org.cellfile.refusal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.cellfile.FolderWorld;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Findings;
import org.cellfile.subject.due.Due;
import org.cellfile.subject.stopping.StopTrend;
import org.cellfile.subject.stopping.StopTrend.Use;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What is said of a stop that was measured before. The present stop of the base cell takes 0.1920 s on 2026-10-05, and its safeguards
 * allow more; all earlier figures are constructed.
 */
class StopTrendTest {

    @TempDir
    private Path folder;

    private final List<String> history = new ArrayList<>();

    @BeforeEach
    void builtLongAgo() throws IOException {
        BaseCell.copyTo(folder);
        BaseCell.change(folder, "dates.yaml", "built: 2026-08-03", "built: 2015-08-03");
        BaseCell.change(folder, "dates.yaml", "from: 2025-02-12", "from: 2015-02-12");
        BaseCell.change(folder, "instruments.yaml", "calibrated: 2026-03-04", "calibrated: 2015-03-04");
    }

    private void measured(String on, String time) {
        measured(on, time, "30 kg", "1500 mm/s");
    }

    private void measured(String on, String time, String load, String speed) {
        history.add("      - {on: " + on + ", time: " + time
                + ", distance: 86 mm, measured-by: ilse, instrument: stop-meter,"
                + " occasion: recurring, report: SM-4, load: " + load + ", speed: " + speed + "}\n");
    }

    private void rises() {
        measured("2023-10-05", "0.1830 s");
        measured("2024-10-05", "0.1861 s");
        measured("2025-10-05", "0.1889 s");
    }

    private Cell cell() throws IOException {
        if (!history.isEmpty()) {
            Path stops = folder.resolve("stops.yaml");
            Files.writeString(stops, Files.readString(stops) + "    history:\n" + String.join("", history));
        }
        Findings findings = new Findings();
        Cell cell = Cell.read(
                        new FolderWorld(folder, Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC)),
                        findings)
                .orElseThrow();
        assertThat(findings.sorted()).isEmpty();
        return cell;
    }

    private StopTrend trend() throws IOException {
        return cell().trends().get(0);
    }

    private static String shown(StopTrend trend, String name) {
        return trend.derived(name).rounded().orElseThrow().toString();
    }

    private static List<Use> uses(StopTrend trend) {
        return trend.earlier().stream().map(StopTrend.Judged::use).toList();
    }

    private void changed(String on, String touches) throws IOException {
        Files.writeString(
                folder.resolve("changes.yaml"),
                "cellfile: 1\n\nchanges:\n  - {tag: other-brake, on: " + on
                        + ", what: brake replaced, by: ilse, touches: [" + touches + "]}\n");
    }

    @Test
    void aSteadyRiseMeetsTheAllowedTime() throws IOException {
        rises();
        StopTrend trend = trend();

        assertThat(uses(trend)).containsOnly(Use.IN_THE_LINE).hasSize(3);
        assertThat(shown(trend, "drift")).isEqualTo("0.0090 s");
        assertThat(shown(trend, "drift-share")).isEqualTo("4.9 %");
        assertThat(shown(trend, "slope-per-year")).isEqualTo("2.97 ms/year");
        assertThat(trend.advice())
                .matches("The line meets the allowed stopping time of 0\\.\\d{3} s on \\d{4}-\\d\\d-\\d\\d,"
                        + " its 95 % confidence band between \\d{4}-\\d\\d-\\d\\d and \\d{4}-\\d\\d-\\d\\d\\.");
        assertThat(trend.line().orElseThrow().meeting()).hasValueSatisfying(met -> {
            assertThat(met.earliest()).isAfter(LocalDate.of(2026, 10, 5)).isBefore(met.middle());
            assertThat(met.latest())
                    .hasValueSatisfying(latest -> assertThat(latest).isAfter(met.middle()));
        });
    }

    @Test
    void theAllowedTimeIsTheLeastOfTheSafeguards() throws IOException {
        Cell cell = cell();
        StopTrend trend = cell.trends().get(0);

        assertThat(trend.allowed().time().orElseThrow().value())
                .isEqualTo(cell.safeguards().stream()
                        .flatMap(guarding -> guarding.budget().longestStop().stream())
                        .flatMap(longest -> longest.value().stream())
                        .min(java.util.Comparator.naturalOrder()));
    }

    @Test
    void anAllowanceForWearIsTakenOff() throws IOException {
        String before = shown(trend(), "allowed-time");
        BaseCell.change(
                folder,
                "stops.yaml",
                "    used-at:",
                "    wear-allowance: {time: 20 ms, source: instructions of the brake}\n    used-at:");
        StopTrend trend = trend();

        assertThat(shown(trend, "allowed-time"))
                .isEqualTo(
                        new java.math.BigDecimal(before.replace(" s", "")).subtract(new java.math.BigDecimal("0.020"))
                                + " s");
        assertThat(trend.allowed().time().orElseThrow().words()).endsWith("less the allowance for wear");
    }

    @Test
    void twoMeasurementsAreNoLine() throws IOException {
        measured("2025-10-05", "0.1889 s");
        StopTrend trend = trend();

        assertThat(trend.line()).isEmpty();
        assertThat(shown(trend, "drift")).isEqualTo("0.0031 s");
        assertThat(trend.advice())
                .isEqualTo("No date is given: a line needs 3 measurements under the load and speed of the present one"
                        + " since the last change, and there are 2.");
    }

    @Test
    void oneMeasurementHasNoDrift() throws IOException {
        StopTrend trend = trend();

        assertThat(trend.derived()).extracting(one -> one.name()).containsExactly("allowed-time", "reserve");
        assertThat(trend.advice()).endsWith("and there is 1.");
    }

    @Test
    void aStopThatGrowsFasterMeetsNothing() throws IOException {
        measured("2024-10-05", "0.1990 s");
        measured("2025-10-05", "0.1960 s");
        StopTrend trend = trend();

        assertThat(shown(trend, "drift")).isEqualTo("-0.0070 s");
        assertThat(trend.advice()).isEqualTo("No date is given: the line through the measurements does not rise.");
    }

    @Test
    void aRiseWithinTheScatterHasNoDate() throws IOException {
        measured("2023-10-05", "0.1915 s");
        measured("2024-10-05", "0.1900 s");
        measured("2025-10-05", "0.1930 s");

        assertThat(trend().advice())
                .isEqualTo(
                        "No date is given: the rise of the line cannot be told from the scatter of the measurements (95 %"
                                + " confidence).");
    }

    @Test
    void aLineThatHasMetTheAllowedTimeHasNoDateAhead() throws IOException {
        rises();
        BaseCell.change(
                folder,
                "stops.yaml",
                "    used-at:",
                "    wear-allowance: {time: 300 ms, source: instructions of the brake}\n    used-at:");

        assertThat(trend().advice())
                .isEqualTo(
                        "No date is given: the line has met the allowed stopping time by the last measurement already.");
    }

    @Test
    void aVerySlowRiseIsNotFollowedForFiftyYears() throws IOException {
        measured("2024-10-05", "0.19193 s");
        measured("2025-10-05", "0.19194 s");

        assertThat(trend().advice()).contains("more than 50 years ahead");
    }

    @Test
    void measurementsWithAnotherLoadOrSpeedAreLeftOut() throws IOException {
        measured("2022-10-05", "0.1700 s", "20 kg", "1500 mm/s");
        rises();
        measured("2026-04-07", "0.1600 s", "30 kg", "1.2 m/s");
        measured("2026-05-07", "0.1905 s", "30000 g", "1.5 m/s");
        StopTrend trend = trend();

        assertThat(uses(trend))
                .containsExactly(
                        Use.NOT_COMPARABLE,
                        Use.IN_THE_LINE,
                        Use.IN_THE_LINE,
                        Use.IN_THE_LINE,
                        Use.NOT_COMPARABLE,
                        Use.IN_THE_LINE);
        assertThat(trend.line().orElseThrow().first()).isEqualTo("2023-10-05");
        assertThat(trend.line().orElseThrow().times()).hasSize(5);
    }

    @Test
    void aChangeBreaksTheSeries() throws IOException {
        rises();
        changed("2025-10-05", "robot");
        StopTrend trend = trend();

        // What was measured on the day of the change was measured after it.
        assertThat(uses(trend)).containsExactly(Use.BEFORE_A_CHANGE, Use.BEFORE_A_CHANGE, Use.IN_THE_LINE);
        assertThat(trend.advice()).endsWith("and there are 2.");
    }

    @Test
    void aChangeOfSomethingElseDoesNot() throws IOException {
        rises();
        changed("2025-10-05", "curtain");

        assertThat(uses(trend())).containsOnly(Use.IN_THE_LINE);
    }

    @Test
    void aStopThatNoSafeguardTriggersHasNoAllowedTime() throws IOException {
        BaseCell.change(folder, "safeguards.yaml", "    stop-tests: [stop]\n", "    stop-tests: [other]\n");
        Path stops = folder.resolve("stops.yaml");
        String text = Files.readString(stops);
        Files.writeString(
                stops, text + text.substring(text.indexOf("  - tag: stop")).replace("tag: stop\n", "tag: other\n"));
        BaseCell.change(folder, "zones.yaml", "stopped-by: [stop]", "stopped-by: [other]");
        StopTrend other = cell().trends().stream()
                .filter(trend -> trend.tag().equals("stop"))
                .findFirst()
                .orElseThrow();

        assertThat(other.advice())
                .isEqualTo("No date is given: no safeguard triggers this stop, so that none limits its time.");
    }

    @Test
    void itIsMeasuredAgainAfterTheIntervalStated() throws IOException {
        assertThat(cell().dues())
                .extracting(Due::tag, Due::on, Due::source)
                .contains(org.assertj.core.api.Assertions.tuple(
                        "stop", LocalDate.of(2027, 10, 5), "instructions of the robot, section 9"));
    }

    @Test
    void whatSomebodyWorkedOutIsHeldAgainstIt() throws IOException {
        rises();
        BaseCell.change(
                folder,
                "stops.yaml",
                "    used-at:",
                "    stated: {trend.drift: 8.9 ms, trend.gone: 1 s}\n    used-at:");
        StopTrend trend = trend();

        assertThat(BaseCell.ids(trend.findings())).containsExactly("claim.not-equal", "claim.not-derived");
        assertThat(trend.findings())
                .allSatisfy(finding -> assertThat(finding.about()).isEqualTo("stop"));
    }
}
