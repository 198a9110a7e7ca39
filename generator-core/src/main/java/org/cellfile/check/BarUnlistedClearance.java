package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.subject.clearance.ClearanceGap;
import org.cellfile.subject.hazard.ZoneExtent;

/** A hazard zone with a robot for which nobody has listed how much room the robot leaves. */
@AutoService(Check.class)
public final class BarUnlistedClearance implements Check {

    public static final FindingId ID = new FindingId("clearance.missing");

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        // A clearance whose zone cannot be found may be just the one that is missed; why it cannot is told elsewhere.
        boolean lost =
                cell.clearances().stream().anyMatch(gap -> cell.zones().stream().noneMatch(zone -> isIn(gap, zone)));
        if (lost) {
            return List.of();
        }
        return cell.zones().stream()
                .filter(zone -> zone.zone().robot().value().isPresent())
                .filter(zone -> cell.clearances().stream().noneMatch(gap -> isIn(gap, zone)))
                .map(zone -> Finding.barsRelease(
                        ID,
                        zone.tag(),
                        zone.zone().tag().where(),
                        "no clearance is listed for the hazard zone `" + zone.tag() + "`, in which a robot moves",
                        "measure the narrowest gaps the robot leaves with tool, part and overrun, and list them under"
                                + " `clearances`"))
                .toList();
    }

    private static boolean isIn(ClearanceGap gap, ZoneExtent zone) {
        return gap.clearance().zone().characters().equals(zone.tag());
    }
}
