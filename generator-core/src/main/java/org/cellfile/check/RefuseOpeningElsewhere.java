package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.source.Stated;
import org.cellfile.subject.safeguard.Device.LeftOpen;
import org.cellfile.subject.safeguard.Guarding;

/** An opening in a fixed guard is said to lead to a hazard zone that the guard does not protect. */
@AutoService(Check.class)
public final class RefuseOpeningElsewhere implements Check {

    public static final FindingId ID = new FindingId("safeguard.opening-leads-elsewhere");

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        List<String> zones = cell.zones().stream().map(zone -> zone.tag()).toList();
        List<Finding> findings = new ArrayList<>();
        for (Guarding fence : cell.safeguards()) {
            List<String> protectedOnes = fence.safeguard().protects().stream()
                    .map(Stated::characters)
                    .toList();
            for (LeftOpen opening : fence.safeguard().device().leftOpen()) {
                opening.leadsTo().stream()
                        .filter(zone -> zones.contains(zone.characters()))
                        .filter(zone -> !protectedOnes.contains(zone.characters()))
                        .forEach(zone -> findings.add(Finding.refuses(
                                ID,
                                fence.tag(),
                                zone.where(),
                                "the opening `" + opening.name().characters() + "` of `" + fence.tag() + "` leads to `"
                                        + zone.characters() + "`, which the fence does not protect",
                                "name under `protects` every hazard zone that is reached through the fence, and under"
                                        + " `leads-to` some of these")));
            }
        }
        return findings;
    }
}
