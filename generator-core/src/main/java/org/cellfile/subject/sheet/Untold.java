package org.cellfile.subject.sheet;

import java.util.List;
import java.util.stream.Stream;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.finding.Findings;
import org.cellfile.source.Stated;
import org.cellfile.subject.complement.EnablingDevice;
import org.cellfile.subject.complement.ModeSelector;
import org.cellfile.subject.complement.Pendant;
import org.cellfile.subject.complement.Reset;
import org.cellfile.subject.energy.UnitedStates;
import org.cellfile.subject.mode.Mode;

/**
 * What sheets cannot tell of the cell. A missing pendant and a mode that nobody can select are told elsewhere, at their cause; the
 * step is left out then.
 */
final class Untold {

    /** A step or a mode that no sheet tells of. */
    static final FindingId CANNOT_TELL = new FindingId("sheet.cannot-tell");

    /** Something is stated of a sheet that there is not for this cell. */
    static final FindingId NOT_OF_THIS_CELL = new FindingId("sheet.not-of-this-cell");

    private Untold() {}

    static void report(PostedCell cell, Findings findings) {
        if (cell.devices(Reset.class).findAny().isEmpty()) {
            findings.add(Finding.barsRelease(
                    CANNOT_TELL,
                    "",
                    cell.sheets().where(),
                    "no sheet tells how the cell is reset, because it has no reset",
                    "describe each under `complementary`, with the place where it is"));
        }
        Stream.of(ModeSelector.class, Pendant.class, EnablingDevice.class)
                .map(sort -> cell.devices(sort).toList())
                .filter(alike -> alike.size() > 1 && cell.identity().robots().size() > 1)
                .flatMap(List::stream)
                .filter(device -> cell.robotOf(device).isEmpty())
                .forEach(
                        device -> findings.add(
                                Finding.barsRelease(
                                        CANNOT_TELL,
                                        device.tag().characters(),
                                        device.tag().where(),
                                        "no sheet tells which robot `"
                                                + device.tag().characters()
                                                + "` belongs to, and the cell has several robots and several such devices",
                                        "name the robot under `robot` of the device; that of a pendant holds for the enabling device it carries")));
        List<Mode> slow = cell.modes().stream()
                .filter(mode -> mode.is(Mode.MANUAL_REDUCED_SPEED))
                .toList();
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
                .filter(sheet -> sheet.value().isPresent() && !made(sheet, cell) && !missed(sheet.characters(), cell))
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

    /** That the cell says nothing at all of what such a sheet tells is found where it is due. */
    private static boolean missed(String sheet, PostedCell cell) {
        return switch (sheet) {
            case ManualReducedSpeed.ID -> !cell.identity().robots().isEmpty();
            case EnergyIsolation.ID -> cell.energies().isEmpty();
            case EnergyRules.ID -> cell.energies().isEmpty() || UnitedStates.holds(cell.identity());
            case Emergency.ID -> cell.rescue().isEmpty();
            default -> false;
        };
    }
}
