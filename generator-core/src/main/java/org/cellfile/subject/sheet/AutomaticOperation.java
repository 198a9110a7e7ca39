package org.cellfile.subject.sheet;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.stream.Stream;
import org.cellfile.dossier.Sheet.Kind;
import org.cellfile.dossier.Sign;
import org.cellfile.dossier.Text;
import org.cellfile.subject.hazard.Hazard.Residual;
import org.cellfile.subject.safeguard.Guarding;

/** Starting and running in automatic mode: for the operator, who stays outside. */
@AutoService(SheetSort.class)
public final class AutomaticOperation implements SheetSort {

    /** More doors than these are counted, not named: the line has to be read at a glance. */
    private static final int MOST_NAMED = 3;

    @Override
    public String id() {
        return "automatic-operation";
    }

    @Override
    public List<Part> parts(PostedCell cell, Wording wording) {
        return List.of(
                hazards(cell, wording),
                start(cell, wording),
                running(wording),
                EverySheet.never(cell, wording),
                EverySheet.emergency(cell, wording));
    }

    /** What can hurt and what remains of it; what is said alike of several stands there once. */
    private static Part hazards(PostedCell cell, Wording wording) {
        Stream<String> zones = cell.zones().stream()
                .map(zone -> Text.capital(wording.text(zone.zone().hazard())));
        Stream<String> remaining = cell.risks().stream()
                .flatMap(risk -> risk.hazard().residual().stream())
                .filter(Residual::onSheets)
                .map(one ->
                        Text.sentence(wording.text(one.risk())) + " " + Text.sentence(wording.text(one.instruction())));
        Part part = wording.part("hazards", Kind.HAZARD, false).with(Sign.AUTOMATIC_START);
        for (String line : Stream.concat(zones, remaining).distinct().toList()) {
            part = part.line(line);
        }
        return part;
    }

    private static Part start(PostedCell cell, Wording wording) {
        Part part = wording.tell(wording.part("start", Kind.ACTION, true), "nobody");
        List<String> doors = cell.safeguards().stream()
                .filter(guarding -> guarding.safeguard().kind().closedByHand())
                .map(Guarding::tag)
                .toList();
        if (doors.size() > MOST_NAMED) {
            part = wording.tell(part, "all-closed", String.valueOf(doors.size()));
        } else if (!doors.isEmpty()) {
            part = wording.tell(part, "closed", String.join(", ", doors));
        }
        return wording.tell(part, "check");
    }

    private static Part running(Wording wording) {
        return wording.tell(
                wording.tell(wording.part("running", Kind.PROHIBITION, false).with(Sign.NO_ENTRY), "outside"), "stop");
    }
}
