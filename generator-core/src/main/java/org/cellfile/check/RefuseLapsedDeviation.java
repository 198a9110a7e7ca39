package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Deviation;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;

/** A deviation whose last day is over. */
@AutoService(Check.class)
public final class RefuseLapsedDeviation implements Check {

    public static final FindingId LAPSED = new FindingId("deviation.lapsed");
    public static final FindingId LAPSED_TODAY = new FindingId("deviation.lapsed-since");

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        List<Finding> findings = new ArrayList<>();
        Optional<LocalDate> asOf = cell.identity().facts().asOf().value();
        for (Deviation deviation : cell.deviations()) {
            if (asOf.filter(day -> day.isAfter(deviation.until())).isPresent()) {
                findings.add(Finding.refuses(
                        LAPSED,
                        deviation.tag(),
                        deviation.where(),
                        "the deviation `" + deviation.tag() + "` ended on " + deviation.until(),
                        "put the installation right; if it cannot be yet, a person has to answer for it anew"));
            } else if (today.filter(day -> day.isAfter(deviation.until())).isPresent()) {
                findings.add(Finding.barsRelease(
                        LAPSED_TODAY,
                        deviation.tag(),
                        deviation.where(),
                        "the deviation `" + deviation.tag() + "` has ended on " + deviation.until()
                                + ", since the day this description speaks of",
                        "put the installation right and describe the cell as it is now"));
            }
        }
        return findings;
    }
}
