package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.subject.register.Bypass;

/** A safeguard or another stop path is out of action, within the time it was to be or beyond. */
@AutoService(Check.class)
public final class BarOpenBypass implements Check {

    public static final FindingId OPEN = new FindingId("bypass.open");
    public static final FindingId EXPIRED = new FindingId("bypass.expired");
    public static final FindingId EXPIRED_TODAY = new FindingId("bypass.expired-since");

    private static final String TAKE_OUT =
            "take it out, test what was bypassed, and write down under `ended` and `ended-by` when and who saw it";

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        Optional<LocalDate> asOf = cell.identity().facts().asOf().value();
        List<Finding> findings = new ArrayList<>();
        for (Bypass bypass : cell.registers().bypasses()) {
            if (bypass.open()) {
                findings.add(finding(bypass, asOf, today));
            }
        }
        return findings;
    }

    private static Finding finding(Bypass bypass, Optional<LocalDate> asOf, Optional<LocalDate> today) {
        String tag = bypass.tag().characters();
        String until = bypass.until().characters();
        if (over(bypass, asOf)) {
            return Finding.barsRelease(
                    EXPIRED,
                    tag,
                    bypass.until().where(),
                    "the bypass `" + tag + "` was to be taken out by " + until + " and is still in place",
                    TAKE_OUT
                            + "; if it cannot be taken out yet, keep the cell stopped until a person answers for it anew");
        }
        if (over(bypass, today)) {
            return Finding.barsRelease(
                    EXPIRED_TODAY,
                    tag,
                    bypass.until().where(),
                    "the bypass `" + tag + "` was to be taken out by " + until
                            + ", which has passed since the day this description speaks of",
                    TAKE_OUT + "; then describe the cell as it is now");
        }
        return Finding.barsRelease(
                OPEN,
                tag,
                bypass.tag().where(),
                "the bypass `" + tag + "` is in place"
                        + bypass.until()
                                .value()
                                .map(day -> ", until " + day + " at the latest")
                                .orElse(""),
                TAKE_OUT);
    }

    private static boolean over(Bypass bypass, Optional<LocalDate> day) {
        return day.flatMap(one -> bypass.until().value().filter(one::isAfter)).isPresent();
    }
}
