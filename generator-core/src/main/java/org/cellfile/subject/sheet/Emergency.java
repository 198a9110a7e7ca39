package org.cellfile.subject.sheet;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.stream.Collectors;
import org.cellfile.dossier.Sheet.Kind;
import org.cellfile.dossier.Sign;
import org.cellfile.dossier.Text;
import org.cellfile.source.Stated;
import org.cellfile.subject.complement.EmergencyStop;
import org.cellfile.subject.energy.Rescue;

/** Somebody is hurt or trapped: stop, call, free. For everybody at the cell. */
@AutoService(SheetSort.class)
public final class Emergency implements SheetSort {

    static final String ID = "emergency";

    @Override
    public String id() {
        return ID;
    }

    @Override
    public boolean tells(PostedCell cell) {
        return cell.rescue().isPresent();
    }

    @Override
    public List<Part> parts(PostedCell cell, Wording wording) {
        Rescue rescue = cell.rescue().orElseThrow();
        return List.of(
                stop(cell, wording),
                call(rescue, cell, wording),
                free(rescue, wording),
                EverySheet.never(cell, wording));
    }

    private static Part stop(PostedCell cell, Wording wording) {
        Part part =
                wording.part("stop", Kind.EMERGENCY, true).line("stop", wording.shared("every-sheet.emergency.stop"));
        String places = cell.devices(EmergencyStop.class)
                .filter(device -> device.sort() instanceof EmergencyStop stop && !stop.handHeld())
                .map(device -> wording.text(device.position()))
                .collect(Collectors.joining("; "));
        if (!places.isEmpty()) {
            part = wording.tell(part, "places", places);
        }
        if (cell.devices(EmergencyStop.class)
                .anyMatch(device -> device.sort() instanceof EmergencyStop stop && stop.handHeld())) {
            part = wording.tell(part, "pendant");
        }
        return wording.tell(part, "leave", cell.responsible());
    }

    private static Part call(Rescue rescue, PostedCell cell, Wording wording) {
        Part part = wording.part("call", Kind.EMERGENCY, true)
                .with(Sign.FIRST_AID)
                .line("call", EverySheet.call(cell, wording));
        part = wording.tell(part, "meet", wording.text(rescue.meetingPlace()));
        return wording.tell(part, "first-aid", wording.text(rescue.firstAid()), wording.text(rescue.aiders()));
    }

    private static Part free(Rescue rescue, Wording wording) {
        Part part = wording.part("free", Kind.EMERGENCY, false).with(Sign.RESCUE);
        for (Rescue.Way way : rescue.ways()) {
            part = part.line(wording.say(
                    "free.way",
                    Text.capital(wording.text(way.when())),
                    wording.text(way.with()),
                    wording.text(way.by())));
            if (way.beware().value().isPresent()) {
                part = part.line(wording.say("free.beware", Text.sentence(wording.text(way.beware()))));
            }
            int number = 1;
            for (Stated<String> step : way.steps()) {
                part = part.line(wording.say("free.step", String.valueOf(number), Text.sentence(wording.text(step))));
                number++;
            }
        }
        return part;
    }
}
