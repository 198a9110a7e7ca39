package org.cellfile.refusal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.cellfile.FolderWorld;
import org.cellfile.cell.Cell;
import org.cellfile.cell.Composition;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Dossier;
import org.cellfile.finding.Findings;
import org.cellfile.subject.register.Configuration;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What falls due when, and what of it is printed. All figures are constructed. */
class FallsDueTest {

    private static final String CALIBRATIONS = "2027-03-04 stop-meter|2027-03-05 tape|";

    private static final String STOP = "2027-10-05 stop|";

    @TempDir
    private Path folder;

    @BeforeEach
    void start() throws IOException {
        BaseCell.copyTo(folder);
        // What is due again of the function tests has tests of its own.
        Files.delete(folder.resolve("tests.yaml"));
        Files.delete(folder.resolve("bypasses.yaml"));
        // So has what is replaced.
        Files.delete(folder.resolve("functions.yaml"));
        BaseCell.withoutConfirmationsOfFunctions(folder);
    }

    private static Cell read(Path folder) {
        Findings findings = new Findings();
        Cell cell = Cell.read(FolderWorld.of(folder), findings).orElseThrow();
        assertThat(findings.sorted()).isEmpty();
        return cell;
    }

    private String due() {
        StringBuilder due = new StringBuilder();
        Composition.compose(read(folder))
                .due()
                .forEach(one ->
                        due.append(one.on()).append(' ').append(one.tag()).append('|'));
        return due.toString();
    }

    @Test
    void calibrationsAndCompetences() {
        assertThat(due()).isEqualTo(CALIBRATIONS + STOP + "2028-02-11 ilse|2028-02-12 ilse|");
    }

    @Test
    void theLatestProofOfAPersonForASubjectCounts() throws IOException {
        BaseCell.change(folder, "dates.yaml", "competences:\n", """
                competences:
                  - {person: ilse, for: function tests, from: 2028-01-10, until: 2031-01-10, proof: course certificate FT-203}
                  - {person: ilse, for: stop measurement, from: 2022-02-12, until: 2025-02-12, proof: course certificate SM-11}
                """);
        assertThat(due()).isEqualTo(CALIBRATIONS + STOP + "2028-02-12 ilse|2031-01-10 ilse|");
    }

    @Test
    void theLatestCalibrationOfAnInstrumentThatIsUsedCounts() throws IOException {
        BaseCell.change(folder, "instruments.yaml", "instruments:\n", """
                instruments:
                  - tag: gauge
                    name: feeler gauge
                    serial: FG-03
                    resolution: 0.05 mm
                    certificate: C-20
                    calibrated: 2026-03-06
                    calibration-due: 2026-12-24
                """);
        BaseCell.change(folder, "instruments.yaml", "calibration-due: 2027-03-05\n", """
                calibration-due: 2027-03-05
                    earlier-calibrations:
                      - {certificate: C-02, calibrated: 2025-03-01, calibration-due: 2026-03-01}
                """);
        assertThat(due()).startsWith(CALIBRATIONS).doesNotContain("gauge", "2026");
    }

    @Test
    void whatIsOpenAndNothingThatIsEnded() throws IOException {
        Files.writeString(folder.resolve("open.yaml"), """
                cellfile: 1
                bypasses:
                  - {tag: one, what: a, why: b, by: ilse, from: 2026-11-01, until: 2026-12-31, compensation: c}
                  - {tag: two, what: a, why: b, by: ilse, from: 2026-11-01, until: 2026-12-30, compensation: c, ended: 2026-11-02, ended-by: ilse}
                open-points:
                  - {tag: three, what: a, owner: ilse, since: 2026-11-01, until: 2027-01-01, before-release: no}
                  - {tag: four, what: a, owner: ilse, since: 2026-11-01, until: 2027-01-02, before-release: yes, closed: 2026-11-03, closed-by: ilse}
                deviations:
                  - {tag: five, finding: installed.too-close, of: door, reason: a, interim-measure: b, responsible: ilse, until: 2027-01-03}
                """);
        assertThat(due()).startsWith("2026-12-31 one|2027-01-01 three|2027-01-03 five|" + CALIBRATIONS);
    }

    @Test
    void aMonthAheadIsCountedInTheCalendar() throws IOException {
        BaseCell.change(folder, "dates.yaml", "warn-ahead: 30 days", "warn-ahead: 1 month");
        assertThat(Composition.compose(read(folder)).due().get(0).ahead()).isEqualTo("2027-02-04");
    }

    /** The chapter says the same as the calendar is made of, the earliest day at the top. */
    @Test
    void theChapterHoldsTheSame() {
        Dossier dossier = Composition.compose(read(folder));
        List<Block> blocks = dossier.chapters().stream()
                .filter(chapter -> chapter.id().equals("due"))
                .findFirst()
                .orElseThrow()
                .blocks();
        assertThat(((Block.Paragraph) blocks.get(0)).text())
                .startsWith("The earliest day is 2027-03-04: stop-meter, ")
                .contains("as stated on 2026-11-20");
        assertThat(((Block.Table) blocks.get(1)).rows())
                .isEqualTo(dossier.due().stream()
                        .map(due -> List.of(due.on(), due.tag(), due.what(), due.source()))
                        .toList());
    }

    @Test
    void whatIsOverdueIsMarkedSo() throws IOException {
        BaseCell.change(folder, "instruments.yaml", "calibration-due: 2027-03-04", "calibration-due: 2026-11-19");
        assertThat(Composition.compose(read(folder)).chapters().toString()).contains("2026-11-19, overdue");
    }

    /** As read at the machine, with the place where it is shown. */
    @Test
    void everyConfigurationStandsOnTheSheet() {
        Cell cell = read(Path.of("..", "examples", "kettlebrook-palletising", "src", "main", "cell"));
        String displays = Composition.compose(cell).sheets().get(0).displays().toString();
        assertThat(cell.registers().configurations())
                .hasSizeGreaterThan(5)
                .allSatisfy(one -> assertThat(displays)
                        .contains(
                                one.thing() + " " + one.installed().value().characters(),
                                one.shownAt().characters()));
        assertThat(cell.registers().configurations())
                .extracting(Configuration::thing)
                .contains("robot-1", "safety controller");
    }
}
