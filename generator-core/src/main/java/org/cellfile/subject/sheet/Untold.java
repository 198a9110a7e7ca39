package org.cellfile.subject.sheet;

import java.util.List;
import java.util.stream.Stream;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.finding.Findings;
import org.cellfile.source.Stated;
import org.cellfile.subject.complement.Pendant;
import org.cellfile.subject.complement.Reset;
import org.cellfile.subject.mode.Mode;

/** Steps that sheets cannot tell because the cell does not say with what they are done. The step is left out, and that is told. */
final class Untold {

    /** A sheet leaves a step out because the device for it is not described. */
    static final FindingId CANNOT_TELL = new FindingId("sheet.cannot-tell");

    /** Something is stated of a sheet that there is not for this cell. */
    static final FindingId NOT_OF_THIS_CELL = new FindingId("sheet.not-of-this-cell");

    private Untold() {}

    static void report(PostedCell cell, Findings findings) {
        if (cell.devices(Reset.class).findAny().isEmpty()) {
            findings.add(
                    Finding.barsRelease(
                            CANNOT_TELL,
                            "",
                            cell.sheets().where(),
                            "no sheet tells how the cell is reset, because it has no reset",
                            "describe each under `complementary`; where a protective stop is reset in another way, describe by what"));
        }
        List<Mode> slow = cell.modes().stream()
                .filter(mode -> mode.is(Mode.MANUAL_REDUCED_SPEED))
                .toList();
        slow.stream().limit(1).forEach(mode -> manual(mode, cell, findings));
        slow.stream()
                .skip(1)
                .forEach(
                        mode -> findings.add(
                                Finding.barsRelease(
                                        CANNOT_TELL,
                                        mode.tag().characters(),
                                        mode.tag().where(),
                                        "no sheet tells of `" + mode.tag().characters()
                                                + "`: the one about manual reduced speed tells of `"
                                                + slow.get(0).tag().characters() + "` alone",
                                        "describe as one mode what is switched together; robots that are switched apart are cells of their own")));
        Stream.concat(
                        cell.sheets().copies().stream().map(Sheets.PostedCopy::sheet),
                        cell.sheets().steps().stream().map(Sheets.OwnStep::sheet))
                .filter(sheet -> sheet.value().isPresent() && !made(sheet, cell))
                .forEach(sheet -> findings.add(Finding.refuses(
                        NOT_OF_THIS_CELL,
                        "",
                        sheet.where(),
                        "the cell has no sheet `" + sheet.characters()
                                + "`, because it has nothing that this sheet tells of",
                        "sheets it has: `"
                                + String.join(
                                        "`, `",
                                        SheetSorts.telling(cell).stream()
                                                .map(SheetSort::id)
                                                .toList()) + "`")));
    }

    private static boolean made(Stated<String> sheet, PostedCell cell) {
        return SheetSorts.telling(cell).stream().anyMatch(sort -> sort.id().equals(sheet.characters()));
    }

    private static void manual(Mode mode, PostedCell cell, Findings findings) {
        String tag = mode.tag().characters();
        if (Steps.selectors(mode, cell).findAny().isEmpty()) {
            findings.add(Finding.barsRelease(
                    CANNOT_TELL,
                    tag,
                    mode.tag().where(),
                    "the sheet `" + ManualReducedSpeed.ID + "` cannot tell how `" + tag
                            + "` is selected, because no mode selector lists it",
                    "describe the selector under `complementary`, with this mode under its `modes`"));
        }
        if (cell.devices(Pendant.class).findAny().isEmpty()) {
            findings.add(Finding.barsRelease(
                    CANNOT_TELL,
                    tag,
                    mode.tag().where(),
                    "the sheet `" + ManualReducedSpeed.ID
                            + "` cannot tell where the pendant is, because the cell has none",
                    "describe it under `complementary`, with its position and the devices it carries"));
        }
    }
}
