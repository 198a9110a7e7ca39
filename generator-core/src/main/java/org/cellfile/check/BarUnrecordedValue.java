package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.subject.safeguard.Guarding;
import org.cellfile.trace.Derived;

/** A response time or separation distance that no person has recorded. */
@AutoService(Check.class)
public final class BarUnrecordedValue implements Check {

    public static final FindingId ID = new FindingId("safeguard.not-recorded");

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        List<Finding> findings = new ArrayList<>();
        for (Guarding guarding : cell.safeguards()) {
            guarding.responseTime()
                    .flatMap(derived -> missing(guarding, derived))
                    .ifPresent(findings::add);
            if (!guarding.governing().bounded()) {
                missing(guarding, guarding.separationDistance()).ifPresent(findings::add);
            }
        }
        return findings;
    }

    private static Optional<Finding> missing(Guarding guarding, Derived derived) {
        if (guarding.recorded().of(derived).isPresent()) {
            return Optional.empty();
        }
        return Optional.of(Finding.barsRelease(
                ID,
                guarding.tag(),
                guarding.recorded().where(),
                "nobody has recorded the " + derived.words() + " of `" + guarding.tag() + "`",
                "work it out by hand from the same inputs and state it as `" + derived.name()
                        + "` under `stated`; a value" + " copied from this program proves nothing"));
    }
}
