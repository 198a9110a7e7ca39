package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.source.Stated;
import org.cellfile.subject.complement.Reset;

/**
 * A hazard zone that is started again by a reset from which it is not in view. Whoever resets has to see that nobody is inside:
 * common practice. A zone that only fences guard is never stopped, so nothing there is reset.
 */
@AutoService(Check.class)
public final class BarUnseenZone implements Check {

    public static final FindingId ID = new FindingId("complementary.zone-not-seen");

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        List<Reset> resets = cell.complementary().stream()
                .map(one -> one.device().sort())
                .filter(Reset.class::isInstance)
                .map(Reset.class::cast)
                .toList();
        if (resets.isEmpty()) {
            return List.of();
        }
        Set<String> seen = resets.stream()
                .flatMap(reset -> reset.sees().stream())
                .map(Stated::characters)
                .collect(Collectors.toSet());
        Set<String> stopped = cell.safeguards().stream()
                .filter(guarding -> guarding.safeguard().kind().stopsTheHazard())
                .flatMap(guarding -> guarding.safeguard().protects().stream())
                .map(Stated::characters)
                .collect(Collectors.toSet());
        return cell.zones().stream()
                .filter(zone -> stopped.contains(zone.tag()) && !seen.contains(zone.tag()))
                .map(zone -> Finding.barsRelease(
                                ID,
                                zone.tag(),
                                zone.zone().tag().where(),
                                "safeguards stop the movement in `" + zone.tag() + "`, and no reset has it in view",
                                "name it under `sees` of the reset from which all of it is in full view, or fit one there")
                        .because(List.of("whoever resets has to see that nobody is inside: common practice")))
                .toList();
    }
}
