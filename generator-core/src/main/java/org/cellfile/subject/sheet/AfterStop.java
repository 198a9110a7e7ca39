package org.cellfile.subject.sheet;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cellfile.dossier.Sheet.Kind;
import org.cellfile.subject.complement.ComplementaryDevice;
import org.cellfile.subject.complement.EmergencyStop;
import org.cellfile.subject.mode.Mode;
import org.cellfile.subject.safeguard.Guarding;
import org.cellfile.subject.safeguard.Safeguard;

/** After a stop: find out why, clear the cause, restart from outside. The order of the steps: common practice. */
@AutoService(SheetSort.class)
public final class AfterStop implements SheetSort {

    @Override
    public String id() {
        return "after-stop";
    }

    @Override
    public List<Part> parts(PostedCell cell, Wording wording) {
        return List.of(
                find(cell, wording),
                clear(cell, wording),
                restart(cell, wording),
                EverySheet.never(cell, wording),
                EverySheet.emergency(cell, wording));
    }

    private static Part find(PostedCell cell, Wording wording) {
        Part part = wording.tell(wording.part("find", Kind.ACTION, true), "outside");
        part = wording.tell(part, "person", wording.shared("every-sheet.emergency"));
        List<ComplementaryDevice> stops = cell.devices(EmergencyStop.class).toList();
        if (!stops.isEmpty()) {
            part = part.line(
                    "stops",
                    Steps.few(stops)
                            ? wording.say("find.stops", places(stops, cell, wording))
                            : wording.say("find.all-stops", String.valueOf(stops.size())));
        }
        List<Safeguard> doors = Steps.doors(cell);
        if (!doors.isEmpty()) {
            part = part.line(
                    "doors",
                    Steps.few(doors)
                            ? wording.say("find.doors", Steps.places(doors, cell, wording))
                            : wording.say("find.all-doors", String.valueOf(doors.size())));
        }
        List<Safeguard> others = cell.safeguards().stream()
                .map(Guarding::safeguard)
                .filter(safeguard ->
                        safeguard.kind().stopsTheHazard() && !safeguard.kind().closedByHand())
                .toList();
        if (!others.isEmpty()) {
            part = wording.tell(part, "others", Steps.listed(others, cell, wording));
        }
        return wording.tell(wording.tell(part, "message"), "unknown", cell.responsible());
    }

    private static String places(List<ComplementaryDevice> devices, PostedCell cell, Wording wording) {
        return devices.stream()
                .map(device -> Steps.place(device.tag(), device.position(), cell, wording))
                .collect(Collectors.joining(", "));
    }

    private static Part clear(PostedCell cell, Wording wording) {
        Part part = wording.part("clear", Kind.ACTION, true);
        Optional<String> enter = enter(cell);
        if (enter.isPresent()) {
            part = wording.tell(part, "enter", wording.shared(enter.get() + ".title"));
        }
        part = wording.tell(part, "remove");
        if (cell.devices(EmergencyStop.class).findAny().isPresent()) {
            part = wording.tell(part, "release");
        }
        return part;
    }

    /** The sheet by which somebody goes in: where no mode lets anybody in, with every energy isolated. */
    private static Optional<String> enter(PostedCell cell) {
        if (cell.mode(Mode.MANUAL_REDUCED_SPEED)
                .filter(mode -> mode.inside() > 0)
                .isPresent()) {
            return Optional.of(ManualReducedSpeed.ID);
        }
        return cell.energies().map(energies -> EnergyIsolation.ID);
    }

    private static Part restart(PostedCell cell, Wording wording) {
        Part part = Steps.out(wording.part("restart", Kind.ACTION, true), wording);
        part = Steps.reset(Steps.closed(part, cell, wording), cell, wording);
        return part.line("start", wording.shared("step.start", wording.shared(AutomaticOperation.ID + ".title")));
    }
}
