package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.subject.register.OpenPoint;

/** Something that is to be done before the cell is released is not done. */
@AutoService(Check.class)
public final class BarOpenPoint implements Check {

    public static final FindingId ID = new FindingId("open-point.before-release");

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        Optional<LocalDate> day = today.or(() -> cell.identity().facts().asOf().value());
        List<Finding> findings = new ArrayList<>();
        for (OpenPoint point : cell.registers().openPoints()) {
            if (point.open() && point.barsRelease()) {
                String tag = point.tag().characters();
                findings.add(Finding.barsRelease(
                        ID,
                        tag,
                        point.tag().where(),
                        "the open point `" + tag + "` has to be closed before the cell is released"
                                + point.until()
                                        .value()
                                        .map(until -> until(until, day))
                                        .orElse("")
                                + ": " + point.what().characters(),
                        "do what it says, and write down under `closed` and `closed-by` when and who saw it"));
            }
        }
        return findings;
    }

    private static String until(LocalDate until, Optional<LocalDate> day) {
        return day.filter(until::isBefore).isPresent()
                ? ", and should have been by " + until
                : ", by " + until + " at the latest";
    }
}
