package org.cellfile.subject.sheet;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cellfile.dossier.Sheet.Kind;
import org.cellfile.dossier.Sign;
import org.cellfile.dossier.Text;
import org.cellfile.source.Stated;
import org.cellfile.subject.complement.EmergencyStop;
import org.cellfile.subject.energy.Rescue;
import org.cellfile.subject.hazard.ZoneExtent;
import org.cellfile.subject.identity.Robot;

/** Somebody is hurt or trapped: stop, call, free. For everybody at the cell. */
@AutoService(SheetSort.class)
public final class Emergency implements SheetSort {

    static final String ID = "emergency";

    @Override
    public String id() {
        return ID;
    }

    @Override
    public Optional<String> mode() {
        return Optional.empty();
    }

    @Override
    public boolean tells(PostedCell cell) {
        return cell.rescue().isPresent();
    }

    @Override
    public List<Part> parts(PostedCell cell, Wording wording) {
        Rescue rescue = cell.rescue().orElseThrow();
        List<Part> parts = new ArrayList<>();
        parts.add(stop(cell, wording));
        parts.add(call(rescue, cell, wording));
        for (Rescue.Way way : rescue.ways()) {
            parts.add(free("free-" + (parts.size() - 1), way, cell, wording));
        }
        parts.add(EverySheet.never(cell, wording));
        return parts;
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

    /** One way of freeing somebody: in which plight and with what, then the steps. */
    private static Part free(String id, Rescue.Way way, PostedCell cell, Wording wording) {
        String title = wording.say("free", Text.capital(wording.text(way.when())), wording.text(way.with()));
        Part part = new Part(id, Sign.RESCUE, named(way, title, cell, wording), true, List.of())
                .line("who", wording.say("free.who", wording.text(way.by())));
        if (way.beware().value().isPresent()) {
            part = part.line("beware", wording.say("free.beware", Text.sentence(wording.text(way.beware()))));
        }
        for (Stated<String> step : way.steps()) {
            part = part.line(Text.sentence(wording.text(step)));
        }
        return part;
    }

    /** Where the cell has several robots, the one that somebody is freed from stands first. */
    private static String named(Rescue.Way way, String title, PostedCell cell, Wording wording) {
        List<Robot> robots = cell.zones().stream()
                .map(ZoneExtent::zone)
                .filter(zone -> way.of().stream()
                        .anyMatch(one -> one.value().equals(zone.tag().value())))
                .flatMap(zone -> cell.identity().robot(zone.robot()).stream())
                .distinct()
                .toList();
        return cell.identity().robots().size() > 1 && robots.size() == 1
                ? Steps.ofRobot(robots.get(0), title, wording)
                : title;
    }
}
