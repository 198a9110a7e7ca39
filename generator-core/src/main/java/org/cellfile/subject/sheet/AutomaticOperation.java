package org.cellfile.subject.sheet;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cellfile.dossier.Sheet.Kind;
import org.cellfile.dossier.Sign;
import org.cellfile.dossier.Text;
import org.cellfile.subject.hazard.Hazard.Residual;
import org.cellfile.subject.mode.Mode;

/** Starting and running in automatic mode: for the operator, who stays outside. */
@AutoService(SheetSort.class)
public final class AutomaticOperation implements SheetSort {

    static final String ID = "automatic-operation";

    @Override
    public String id() {
        return ID;
    }

    @Override
    public List<Part> parts(PostedCell cell, Wording wording) {
        return List.of(
                hazards(cell, wording),
                start(cell, wording),
                running(cell, wording),
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
        Part part = Steps.nobody(wording.part("start", Kind.ACTION, true), wording);
        part = wording.tell(Steps.closed(part, cell, wording), "check");
        part = Steps.reset(Steps.stopsReleased(part, cell, wording), cell, wording);
        Optional<Mode> automatic = cell.mode(Mode.AUTOMATIC);
        return automatic.isPresent() ? Steps.selected(part, automatic.get(), cell, wording) : part;
    }

    private static Part running(PostedCell cell, Wording wording) {
        Part part = wording.part("running", Kind.PROHIBITION, false).with(Sign.NO_ENTRY);
        if (cell.mode(Mode.AUTOMATIC).filter(mode -> mode.inside() > 0).isEmpty()) {
            part = wording.tell(part, "outside");
        }
        return wording.tell(part, "stop");
    }
}
