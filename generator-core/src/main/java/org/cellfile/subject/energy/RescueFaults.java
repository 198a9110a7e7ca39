package org.cellfile.subject.energy;

import java.util.List;
import java.util.Optional;
import org.cellfile.dossier.Text;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.subject.hazard.ZoneExtent;
import org.cellfile.subject.identity.Identity;

/** What does not hold of how somebody is freed. */
public final class RescueFaults {

    /** Nothing is said of it. */
    public static final FindingId MISSING = new FindingId("rescue.missing");

    /** Somebody can be trapped in a hazard zone, and nothing tells how that person is freed. */
    static final FindingId LEFT_OUT = new FindingId("rescue.zone-left-out");

    private RescueFaults() {}

    public static List<Finding> of(Optional<Rescue> rescue, List<ZoneExtent> zones, Identity identity) {
        if (rescue.isEmpty()) {
            return List.of(Finding.barsRelease(
                    MISSING,
                    "",
                    identity.where(),
                    "nothing tells how somebody who is trapped in this cell is freed",
                    "state under `rescue` who frees whom with what, where first aid is found and where helpers are met; until"
                            + " then the sheet for emergencies is not printed"));
        }
        List<String> without = zones.stream()
                .map(ZoneExtent::tag)
                .filter(zone -> rescue.get().ways().stream().noneMatch(way -> way.isOf(zone)))
                .toList();
        return without.isEmpty()
                ? List.of()
                : List.of(Finding.barsRelease(
                        LEFT_OUT,
                        "",
                        rescue.get().where(),
                        "nothing tells how somebody is freed who is trapped in " + Text.tagged(without),
                        "name each zone under `of` of the way by which somebody is freed there, and try that way at the machine"
                                + " at rest"));
    }
}
