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
import org.cellfile.subject.safeguard.Guarding;

/** An opening in a fixed guard is said to be covered by a safeguard that does not stop what lies behind it. */
@AutoService(Check.class)
public final class RefuseUncoveredOpening implements Check {

    public static final FindingId ID = new FindingId("safeguard.opening-not-covered");

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        List<Finding> findings = new ArrayList<>();
        for (Guarding guarding : cell.safeguards()) {
            for (Stated<String> tag : guarding.safeguard().device().coveredBy()) {
                cell.safeguards().stream()
                        .filter(other -> other.tag().equals(tag.characters()) && !covers(other, guarding))
                        .forEach(other -> findings.add(Finding.refuses(
                                ID,
                                guarding.tag(),
                                tag.where(),
                                "`" + other.tag() + "` does not cover an opening in `" + guarding.tag() + "`: "
                                        + because(other),
                                "name the safeguard that stops the hazard when somebody comes through the opening")));
            }
        }
        return findings;
    }

    private static boolean covers(Guarding other, Guarding guarding) {
        return other.safeguard().kind().stopsTheHazard()
                && other.zones().stream().anyMatch(guarding.zones()::contains);
    }

    private static String because(Guarding other) {
        return other.safeguard().kind().stopsTheHazard()
                ? "it protects none of the same hazard zones"
                : "it stops nothing when somebody comes through";
    }
}
