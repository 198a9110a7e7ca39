package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.subject.hazard.Hazard;
import org.cellfile.subject.hazard.Risk;

/** A hazard zone in which no hazard is described, in a cell whose hazards are. */
@AutoService(Check.class)
public final class BarUnassessedZone implements Check {

    public static final FindingId ID = new FindingId("zone.no-hazard");

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        List<Hazard> hazards = cell.risks().stream().map(Risk::hazard).toList();
        // A zone that could not be read, or is described nowhere, may be just the one that is meant.
        if (hazards.isEmpty() || hazards.stream().anyMatch(hazard -> !Zones.known(cell, hazard.zones()))) {
            return List.of();
        }
        return cell.zones().stream()
                .filter(zone -> zone.zone().tag().value().isPresent())
                .filter(zone -> hazards.stream().noneMatch(hazard -> hazard.in(zone.tag())))
                .map(zone -> Finding.barsRelease(
                        ID,
                        zone.tag(),
                        zone.zone().tag().where(),
                        "no hazard is described in the hazard zone `" + zone.tag() + "`",
                        "describe under `hazards` what can hurt there and in which task, or name the zone under `zones` of a"
                                + " hazard that is met there too"))
                .toList();
    }
}
