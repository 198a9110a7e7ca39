package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.source.Stated;
import org.cellfile.subject.hazard.Zone;
import org.cellfile.subject.safeguard.Guarding;

/** A safeguard that triggers no stop of a hazard zone it protects, or the stop of something it does not protect. */
@AutoService(Check.class)
public final class RefuseForeignStop implements Check {

    public static final FindingId NOT_STOPPED = new FindingId("safeguard.zone-not-stopped");
    public static final FindingId FOREIGN = new FindingId("safeguard.foreign-stop");

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        List<Finding> findings = new ArrayList<>();
        for (Guarding guarding : cell.safeguards()) {
            List<Stated<String>> stops = guarding.safeguard().stopTests();
            if (!stops.isEmpty()) {
                int before = findings.size();
                notStopped(guarding, tags(stops), findings);
                if (findings.size() == before) {
                    foreign(guarding, stops, findings);
                }
            }
        }
        return findings;
    }

    private static void notStopped(Guarding guarding, Set<String> stops, List<Finding> findings) {
        for (Zone zone : guarding.zones()) {
            Set<String> due = tags(zone.stoppedBy());
            if (!due.isEmpty() && due.stream().noneMatch(stops::contains)) {
                findings.add(Finding.refuses(
                        NOT_STOPPED,
                        guarding.tag(),
                        guarding.safeguard().stopTests().get(0).where(),
                        "`" + guarding.tag() + "` protects `" + zone.tag().characters()
                                + "`, and none of its stop tests ends the movement there",
                        "name under `stop-tests` also one of `" + String.join("`, `", due)
                                + "`, which the zone is stopped by ("
                                + zone.stoppedBy().get(0).where().position() + ")"));
            }
        }
    }

    private static void foreign(Guarding guarding, List<Stated<String>> stops, List<Finding> findings) {
        Set<String> due = guarding.zones().stream()
                .flatMap(zone -> tags(zone.stoppedBy()).stream())
                .collect(Collectors.toSet());
        boolean everyZoneTells =
                guarding.zones().stream().noneMatch(zone -> zone.stoppedBy().isEmpty());
        for (Stated<String> stop : stops) {
            if (everyZoneTells && !due.isEmpty() && !due.contains(stop.characters())) {
                findings.add(Finding.refuses(
                        FOREIGN,
                        guarding.tag(),
                        stop.where(),
                        "`" + stop.characters() + "` stops no hazard zone that `" + guarding.tag() + "` protects",
                        "name the stop of the zone it protects; the distance follows from that one"));
            }
        }
    }

    private static Set<String> tags(List<Stated<String>> stated) {
        return stated.stream().map(Stated::characters).collect(Collectors.toSet());
    }
}
