package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.standard.Category;
import org.cellfile.subject.function.PartLife;
import org.cellfile.subject.function.SubsystemLevel;

/** Coverage that counts for nothing, because no channel in which the part stands is of a category that is tested. */
@AutoService(Check.class)
public final class WarnUncountedCoverage implements Check {

    public static final FindingId ID = new FindingId("part.coverage-not-counted");

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        List<Finding> findings = new ArrayList<>();
        for (PartLife part : cell.controlSystem().parts()) {
            List<SubsystemLevel> users = cell.controlSystem().subsystems().stream()
                    .filter(subsystem -> subsystem.parts().contains(part))
                    .toList();
            boolean counts = users.stream()
                    .filter(subsystem -> subsystem.channels().stream()
                            .anyMatch(channel -> channel.parts().contains(part)))
                    .anyMatch(subsystem -> subsystem
                            .subsystem()
                            .category()
                            .value()
                            .map(Category::tested)
                            .orElse(true));
            if (part.part().coverage().value().isPresent() && !users.isEmpty() && !counts) {
                findings.add(Finding.warns(
                        ID,
                        part.tag(),
                        part.part().coverage().where(),
                        "the diagnostic coverage of `" + part.tag() + "` counts for nothing in `"
                                + users.get(0).tag()
                                + "`: only that of parts in channels of the categories 2 to 4 does",
                        "take `coverage` out, or state the category that the structure has"));
            }
        }
        return findings;
    }
}
