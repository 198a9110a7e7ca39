package org.cellfile.check;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import org.cellfile.cell.Cell;
import org.cellfile.source.Stated;

/** What was measured or done at the cell as it stands, by its date: neither before it was built nor after the day it is described. */
final class DatesAtTheCell {

    private DatesAtTheCell() {}

    /** In words, as the subject of a sentence. Stops and function tests are told by findings of their own where they are too early. */
    static Map<Stated<LocalDate>, String> of(Cell cell) {
        Map<Stated<LocalDate>, String> dates = new LinkedHashMap<>();
        cell.zones()
                .forEach(zone -> zone.zone()
                        .limitation()
                        .ifPresent(limitation -> dates.put(limitation.on(), "the limitation of `" + zone.tag() + "`")));
        cell.layout().ifPresent(layout -> dates.put(layout.plan().on(), "the plan, held against the floor,"));
        cell.clearances().forEach(gap -> dates.put(gap.clearance().on(), "the measured gap of `" + gap.tag() + "`"));
        cell.safeguards().forEach(guarding -> {
            dates.put(guarding.safeguard().installed().on(), "the installed distance of `" + guarding.tag() + "`");
            guarding.safeguard()
                    .device()
                    .places()
                    .forEach(place -> dates.put(
                            place.installed().on(),
                            "the distance at " + place.words() + " of `" + guarding.tag() + "`"));
        });
        cell.registers().dates().forEach(dates::put);
        return dates;
    }
}
