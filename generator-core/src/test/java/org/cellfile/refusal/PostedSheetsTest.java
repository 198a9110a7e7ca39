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
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.cellfile.Comparison;
import org.cellfile.FolderWorld;
import org.cellfile.PostedSheets;
import org.cellfile.cell.Cell;
import org.cellfile.cell.Composition;
import org.cellfile.compare.ReadSheet;
import org.cellfile.compare.ReadSheet.Standing;
import org.cellfile.dossier.Block.Table;
import org.cellfile.dossier.Chapter;
import org.cellfile.dossier.Dossier;
import org.cellfile.dossier.Sheet;
import org.cellfile.dossier.SheetCode;
import org.cellfile.subject.due.Due;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was read off a sheet at the machine, held against a description that went on since. All figures are constructed. */
class PostedSheetsTest {

    private static final String TODAY = "2026-11-25";

    @TempDir
    private Path temporary;

    private Path cell;
    private SheetCode code;

    @BeforeEach
    void aSheetHangs() {
        cell = BaseCell.copyTo(temporary.resolve("cell"));
        code = code(cell, "automatic-operation");
    }

    private static Dossier dossier(Path folder) {
        return Composition.compose(BaseCell.checked(folder).cell().orElseThrow());
    }

    private static Sheet sheet(Dossier dossier, String id) {
        return dossier.sheets().stream()
                .filter(sheet -> sheet.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static SheetCode code(Path folder, String id) {
        Dossier dossier = dossier(folder);
        return SheetCode.of(sheet(dossier, id), dossier.label(), false);
    }

    private static FolderWorld world(Path folder, String today) {
        return new FolderWorld(folder, Clock.fixed(Instant.parse(today + "T12:00:00Z"), ZoneOffset.UTC));
    }

    private ReadSheet answer(String read, String today, Optional<Comparison.Source> earlier) {
        PostedSheets.Outcome outcome = PostedSheets.of(world(cell, today), List.of(read), earlier, Optional.empty());
        assertThat(outcome).isInstanceOf(PostedSheets.Told.class);
        PostedSheets.Told told = (PostedSheets.Told) outcome;
        assertThat(told.allCurrent()).isEqualTo(told.sheets().get(0).standing() == Standing.CURRENT);
        return told.sheets().get(0);
    }

    private ReadSheet answer(String read) {
        return answer(read, TODAY, Optional.empty());
    }

    @Test
    void whatWouldBePrintedNowIsCurrent() {
        ReadSheet answer = answer(code.text());

        assertThat(answer.standing()).isEqualTo(Standing.CURRENT);
        assertThat(answer.text())
                .isEqualTo("`automatic-operation-en` of `small-cell`: current\n  valid until " + code.until() + "\n");
        assertThat(answer(SheetCode.grouped(code.digest())).standing()).isEqualTo(Standing.CURRENT);
    }

    @Test
    void theEarliestDayOnWhichAnythingAtTheMachineFallsDueEndsIt() {
        Cell described = BaseCell.checked(cell).cell().orElseThrow();
        LocalDate tested = described.verification().dues().stream()
                .map(Due::on)
                .min(LocalDate::compareTo)
                .orElseThrow();

        assertThat(code.until()).isEqualTo(tested.toString());
    }

    /** What was measured with an instrument before its calibration ends holds on. */
    @Test
    void theCalibrationOfAnInstrumentDoesNotEndIt() {
        LocalDate until = LocalDate.parse(code.until());

        assertThat(BaseCell.checked(cell).cell().orElseThrow().dues())
                .anyMatch(due -> due.tag().equals("stop-meter") && due.on().isBefore(until));
    }

    private static final String PEOPLE_AND_PAPERS = """
            cellfile: 1
            open-points:
              - {tag: lamp, what: fix the lamp, owner: ilse, since: 2026-11-02, until: 2026-12-04, before-release: no}
            briefings:
              - {sheets: [automatic-operation], language: en, who: [R. Quint], by: ilse, on: 2026-10-20, next: 2026-12-05}
            """;

    /** Who is competent and until when, what is open, who is briefed again: the machine is the same on the next day. */
    @Test
    void whatFallsDueOfPeopleAndPapersDoesNotEndIt() throws IOException {
        Files.writeString(cell.resolve("more.yaml"), PEOPLE_AND_PAPERS);
        BaseCell.change(cell, "dates.yaml", "until: 2028-02-11", "until: 2026-12-03");

        assertThat(BaseCell.checked(cell).cell().orElseThrow().dues())
                .extracting(due -> due.tag() + " " + due.on())
                .contains("ilse 2026-12-03", "lamp 2026-12-04", "automatic-operation 2026-12-05");
        assertThat(code(cell, "automatic-operation").until()).isEqualTo(code.until());
        assertThat(code(cell, "energy-isolation").until()).isEqualTo(code.until());
    }

    /** The inspection of the procedure counts from the last one, and from its first use before there was any. */
    @Test
    void theInspectionOfTheProcedureEndsWhatTellsOfIsolating() throws IOException {
        assertThat(BaseCell.checked(cell).cell().orElseThrow().dues())
                .as("outside of the United States nobody asks for it but the plant")
                .noneMatch(due -> due.what().contains("inspect how energies"));

        BaseCell.change(cell, "energies.yaml", "since: 2026-08-10", "since: 2026-08-10\n    every: 4 months");
        assertThat(untils()).containsExactly(code.until(), "2026-12-10", "2026-12-10");

        Files.writeString(
                cell.resolve("energies.yaml"),
                Files.readString(cell.resolve("energies.yaml"))
                        + "  inspections:\n"
                        + "    - {on: 2026-10-05, by: ilse, with: [ilse], found: all steps done as written}\n"
                        + "    - {on: 2026-09-05, by: ilse, with: [ilse], found: all steps done as written}\n");
        assertThat(untils()).containsExactly(code.until(), "2027-02-05", "2027-02-05");

        BaseCell.change(cell, "energies.yaml", "every: 4 months", "every: 5 years");
        assertThat(untils()).containsOnly(code.until());
    }

    private List<String> untils() {
        return List.of(
                code(cell, "automatic-operation").until(),
                code(cell, "energy-isolation").until(),
                code(cell, "energy-rules").until());
    }

    @Test
    void onItsLastDayItIsStillValidAndOnTheNextNoMore() {
        String next = LocalDate.parse(code.until()).plusDays(1).toString();

        assertThat(answer(code.text(), code.until(), Optional.empty()).standing())
                .isEqualTo(Standing.CURRENT);
        ReadSheet answer = answer(code.text(), next, Optional.empty());
        assertThat(answer.standing()).isEqualTo(Standing.OUTDATED);
        assertThat(answer.because())
                .containsExactly(
                        "it was valid until " + code.until() + ", and today is " + next,
                        "exchange it at operator panel");
        assertThat(answer(code.digest(), next, Optional.empty()).standing()).isEqualTo(Standing.OUTDATED);
    }

    @Test
    void itIsJudgedByTheDayThatWasAskedFor() {
        LocalDate last = LocalDate.parse(code.until());
        FolderWorld later = world(cell, last.plusDays(30).toString());
        List<String> read = List.of(code.text());

        assertThat(PostedSheets.of(later, read, Optional.empty(), Optional.of(last)))
                .isInstanceOfSatisfying(
                        PostedSheets.Told.class,
                        told -> assertThat(told.allCurrent()).isTrue());
        assertThat(PostedSheets.of(later, read, Optional.empty(), Optional.of(last.plusDays(31))))
                .isInstanceOf(PostedSheets.Unsaid.class);
        assertThat(PostedSheets.of(later, read, Optional.empty(), Optional.of(LocalDate.parse("2026-11-19"))))
                .isInstanceOf(PostedSheets.Unsaid.class);
    }

    @Test
    void whatFallsDueEarlierThanItSaysEndsItToo() throws IOException {
        BaseCell.change(cell, "tests.yaml", "every: 6 months", "every: 3 months");

        ReadSheet answer = answer(code.text());
        assertThat(code(cell, "automatic-operation").digest()).isEqualTo(code.digest());
        assertThat(answer.standing()).isEqualTo(Standing.OUTDATED);
        assertThat(answer.because())
                .contains(
                        "it says valid until " + code.until() + ", and something it rests on falls due on 2027-01-14");
    }

    @Test
    void whatFallsDueLaterLeavesItHanging() {
        String earlier = code.text().replace("until " + code.until(), "until 2026-12-24");

        ReadSheet answer = answer(earlier);
        assertThat(answer.standing()).isEqualTo(Standing.CURRENT);
        assertThat(answer.because())
                .containsExactly("valid until 2026-12-24", "printed anew it would be valid until " + code.until());
    }

    @Test
    void aDraftIsTold() {
        ReadSheet answer = answer(code.text().replace("; released; ", "; draft; "));

        assertThat(answer.standing()).isEqualTo(Standing.DRAFT);
        assertThat(answer.because()).contains("it was printed as a draft, which is not to be posted");
    }

    @Test
    void itsPartsTellWhatChangedWithoutAnyHistory() throws IOException {
        change();

        ReadSheet answer = answer(code.text());
        assertThat(answer.standing()).isEqualTo(Standing.OUTDATED);
        assertThat(answer.because()).contains("what differs: Starting", "exchange it at operator panel");
        assertThat(answer.text()).doesNotContain("line by line");
        assertThat(answer(code.digest()).standing())
                .as("a digest alone does not say of which sheet it is")
                .isEqualTo(Standing.UNKNOWN);
    }

    private void change() throws IOException {
        BaseCell.change(cell, "sheets.yaml", "Turn the key to automatic.", "Turn the key to A.");
    }

    @Test
    void anEarlierStateTellsItLineByLine() throws IOException, org.cellfile.NoSuchState {
        Path before = BaseCell.copyTo(temporary.resolve("before"));
        change();
        Optional<Comparison.Source> earlier = Optional.of(Comparison.at(before));

        for (String read : List.of(code.text(), code.digest())) {
            ReadSheet answer = answer(read, TODAY, earlier);
            assertThat(answer.standing()).isEqualTo(Standing.OUTDATED);
            assertThat(answer.because())
                    .containsSubsequence(
                            "  Starting",
                            "    was: Turn the key to automatic.",
                            "    is:  Turn the key to A.",
                            "exchange it at operator panel");
        }
        String another = code.text().replace(code.digest(), "000000000000");
        assertThat(answer(another, TODAY, earlier).because())
                .anySatisfy(line -> assertThat(line).contains("nothing can be told line by line"));
        assertThat(answer("0000 0000 0000", TODAY, earlier).text())
                .contains(": unknown", "and none as printed from folder");
    }

    @Test
    void oneThatSaysSomethingElseAndIsOverdueIsToldBoth() throws IOException {
        change();
        String next = LocalDate.parse(code.until()).plusDays(1).toString();

        assertThat(answer(code.text(), next, Optional.empty()).because())
                .contains("what differs: Starting", "it was valid until " + code.until() + ", and today is " + next);
        assertThat(answer(code.text()).because())
                .as("while it is valid, its day is no matter")
                .noneMatch(line -> line.contains("valid until"));
    }

    @Test
    void revisionsSinceAreNamed() throws IOException {
        BaseCell.change(cell, "cell.yaml", "revision: A\n", "revision: B\n");
        BaseCell.change(
                cell,
                "cell.yaml",
                "{revision: A, on: 2026-11-20, by: ilse, change: First issue.}",
                "{revision: A, on: 2026-11-19, by: ilse, change: First issue.}\n"
                        + "  - {revision: B, on: 2026-11-20, by: ilse, change: The panel was moved.}");

        assertThat(answer(code.text()).because())
                .contains(
                        "what differs: foot (revision, who answers for it, what to compare)",
                        "revision B, 2026-11-20: The panel was moved.")
                .as("what was there when it was printed is told by nobody")
                .noneMatch(line -> line.startsWith("revision A, "));
        assertThat(answer(code.text().replace("revision A", "revision Z")).because())
                .contains("revision Z is not in the list of revisions");
    }

    @Test
    void whatIsOfNoSheetHereIsUnknown() {
        assertThat(answer(code.text().replace("small-cell", "other-cell")).text())
                .contains(": unknown", "it is a sheet of another cell than the one described here, `small-cell`");
        assertThat(answer(code.text().replace("automatic-operation", "dancing")).text())
                .contains(": unknown", "the description has no sheet `dancing`");
        assertThat(answer("0000 0000 0000").standing()).isEqualTo(Standing.UNKNOWN);
        assertThat(answer("a poster\u202e of the canteen").text())
                .contains("`a poster\u00b7 of the canteen`: unknown", "neither the text of the code");
    }

    /** However it was typed or copied: in capitals, broken at line ends, with blanks that keep a line together. */
    @Test
    void capitalsAndBlanksDoNotCount() {
        for (String read : List.of(
                code.text().toUpperCase(Locale.ROOT),
                "  " + code.text().replace(" ", "\n  ") + "\r\n",
                code.digest().toUpperCase(Locale.ROOT),
                " " + SheetCode.grouped(code.digest()).replace(" ", "\u00a0") + " ",
                SheetCode.grouped(code.digest()).replace(" ", "\n"))) {
            assertThat(answer(read).standing()).as(read).isEqualTo(Standing.CURRENT);
        }
    }

    @Test
    void halfADigestAndABrokenCodeAreUnknown() {
        for (String read : List.of(
                "",
                code.digest().substring(0, 8),
                code.digest() + "0",
                code.text().substring(0, code.text().length() / 2),
                code.text().replace("as of 2026-11-20", "as of 2026-02-30"),
                code.text().replace("; " + code.digest() + ";", ";"),
                code.text() + "; more")) {
            ReadSheet answer = answer(read);
            assertThat(answer.standing()).as(read).isEqualTo(Standing.UNKNOWN);
            assertThat(answer.text()).contains("neither the text of the code", "read it again, the whole of it");
        }
    }

    @Test
    void aCodeOfAnotherVersionIsTold() {
        ReadSheet answer = answer(code.text().replace("sheet 1;", "sheet 2;"));

        assertThat(answer.standing()).isEqualTo(Standing.UNKNOWN);
        assertThat(answer.because())
                .containsExactly(
                        "this is a code of version 2, and this program reads version 1; exchange the sheet for one that this"
                                + " program printed");
        assertThat(answer("cellfile sheet 12; and so on").text()).contains("of version 12");
    }

    /** The parts read as those of today, the whole does not: no order of parts was changed, one of the two was read wrongly. */
    @Test
    void aDigestReadWronglyIsNotToldAsAnotherOrder() {
        ReadSheet answer = answer(code.text().replace(code.digest(), "000000000000"));

        assertThat(answer.standing()).isEqualTo(Standing.OUTDATED);
        assertThat(answer.text())
                .contains("each of its parts reads as it is printed now, and its short digest does not: read it again")
                .doesNotContain("what differs");
    }

    @Test
    void partsReadInAnotherOrderAreTold() {
        List<String> parts = new ArrayList<>(code.parts());
        Collections.swap(parts, 1, 2);
        String read = code.text()
                .replace(String.join(" ", code.parts()), String.join(" ", parts))
                .replace(code.digest(), "000000000000");

        assertThat(answer(read).because()).contains("what differs: the order of its parts");
    }

    @Test
    void partsThatAreGoneAreCounted() {
        String read = code.text().replace(code.digest(), "000000000000");

        assertThat(answer(read + " 0000").because()).contains("what differs: 1 part not there any more");
        assertThat(answer(read + " 0000 1111").because()).contains("what differs: 2 parts not there any more");
    }

    @Test
    void anOwnStepStandsDirectlyBeforeTheOneItNames() throws IOException {
        BaseCell.change(
                cell,
                "sheets.yaml",
                "part: start, do: Turn the key to automatic.",
                "part: start, before: closed, do: Look at the gauge.");

        List<String> lines = sheet(dossier(cell), "automatic-operation").panels().stream()
                .filter(panel -> panel.id().equals("start"))
                .flatMap(panel -> panel.lines().stream())
                .map(line -> line.get(0))
                .toList();
        assertThat(lines).containsSequence("Look at the gauge.", "See that every door is closed: door (west side).");
    }

    @Test
    void aLanguageThatIsNotPrintedAnyMoreIsOutdated() {
        assertThat(answer(code.text().replace("; en; ", "; sv; ")).text())
                .contains(": outdated", "but in `en`; take it down");
    }

    @Test
    void whereNothingIsPrintedNoSheetIsCurrent() throws IOException {
        BaseCell.change(cell, "sheets.yaml", "responsible: ilse", "responsible: nobody");

        assertThat(PostedSheets.of(world(cell, TODAY), List.of(code.text()), Optional.empty(), Optional.empty()))
                .isInstanceOfSatisfying(
                        PostedSheets.Unsaid.class,
                        unsaid -> assertThat(unsaid.why())
                                .startsWith("the description leaves nothing to hold the sheets against (1 error"));
    }

    @Test
    void theFileListsWhichCopiesHangWhere() {
        Dossier dossier = dossier(cell);
        Chapter chapter = dossier.chapters().stream()
                .filter(one -> one.id().equals("sheets"))
                .findFirst()
                .orElseThrow();

        assertThat(((Table) chapter.blocks().get(1)).rows())
                .contains(List.of(
                        "operator panel",
                        "Running in automatic mode (automatic-operation)",
                        "en",
                        "A4",
                        code.until(),
                        SheetCode.grouped(code.digest()).replace(' ', '\u00a0')));
    }
}
