package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.subject.hazard.ZoneExtent;
import org.cellfile.subject.safeguard.Guarding;

/**
 * A hazard zone whose safeguards all protect only the person who works them. Source: Axelent Safety Book, enabling solutions, and
 * WAC 296-806-45524: a two-hand control protects only its user.
 */
@AutoService(Check.class)
public final class BarUnprotectedOthers implements Check {

    public static final FindingId ID = new FindingId("zone.others-unprotected");

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        return cell.zones().stream()
                .filter(zone -> !protecting(cell, zone).isEmpty())
                .filter(zone -> protecting(cell, zone).stream()
                        .allMatch(guarding -> guarding.safeguard().kind().protectsOnlyItsUser()))
                .map(zone -> Finding.barsRelease(
                        ID,
                        zone.tag(),
                        zone.zone().tag().where(),
                        "the hazard zone `" + zone.tag() + "` is protected by "
                                + protecting(cell, zone).stream()
                                        .map(guarding -> "`" + guarding.tag() + "`")
                                        .collect(Collectors.joining(", "))
                                + " only, and a two-hand control protects nobody but the person who works it",
                        "name the safeguard that keeps everybody else from the zone, or install one"))
                .toList();
    }

    private static List<Guarding> protecting(Cell cell, ZoneExtent zone) {
        return cell.safeguards().stream()
                .filter(guarding -> guarding.zones().contains(zone.zone()))
                .toList();
    }
}
