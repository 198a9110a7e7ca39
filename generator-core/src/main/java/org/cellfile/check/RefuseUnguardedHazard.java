package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;

/** A hazard zone that no safeguard protects. */
@AutoService(Check.class)
public final class RefuseUnguardedHazard implements Check {

    public static final FindingId ID = new FindingId("zone.unguarded");

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        List<String> because =
                cell.safeguards().isEmpty() && !cell.complementary().isEmpty()
                        ? List.of("only complementary devices are listed, and they never guard a hazard zone")
                        : List.of();
        return cell.zones().stream()
                .filter(zone -> cell.safeguards().stream()
                        .noneMatch(guarding -> guarding.zones().contains(zone.zone())))
                .map(zone -> Finding.refuses(
                                ID,
                                zone.tag(),
                                zone.zone().tag().where(),
                                "no safeguard protects the hazard zone `" + zone.tag() + "`",
                                "name it under `protects` of the safeguards that keep people from it, or install one")
                        .because(because))
                .toList();
    }
}
