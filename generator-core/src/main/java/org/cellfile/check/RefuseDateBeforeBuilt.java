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

/** Something of the cell that is said to have happened before the cell was built. */
@AutoService(Check.class)
public final class RefuseDateBeforeBuilt implements Check {

    public static final FindingId ID = new FindingId("date.before-built");

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        Stated<LocalDate> built = cell.identity().dates().built();
        List<Finding> findings = new ArrayList<>();
        built.value()
                .filter(first -> cell.identity()
                        .facts()
                        .asOf()
                        .value()
                        .filter(first::isAfter)
                        .isEmpty())
                .ifPresent(first -> DatesAtTheCell.of(cell).forEach((date, what) -> {
                    if (date.value().filter(first::isAfter).isPresent()) {
                        findings.add(Finding.refuses(
                                ID,
                                "",
                                date.where(),
                                what + " is dated " + date.characters() + ", before the cell was built, on " + first
                                        + " (" + built.where().position() + ")",
                                "see in the records which of the two dates is written wrongly; what was measured before it stood"
                                        + " as it does has to be measured again"));
                    }
                }));
        return findings;
    }
}
