package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.source.Span;
import org.cellfile.subject.due.Due;
import org.cellfile.subject.identity.Instrument;

/** Something is overdue, or falls due soon. What falls due on one day from one source is told together. */
@AutoService(Check.class)
public final class BarOverdue implements Check {

    public static final FindingId OVERDUE = new FindingId("due.overdue");
    public static final FindingId OVERDUE_TODAY = new FindingId("due.overdue-since");
    public static final FindingId SOON = new FindingId("due.soon");

    /** What is due on one day, as one source asks. */
    private record Together(LocalDate on, String source) {}

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        List<Finding> findings = new ArrayList<>();
        cell.identity().facts().asOf().value().ifPresent(asOf -> {
            LocalDate latest = today.filter(asOf::isBefore).orElse(asOf);
            List<Due> all = cell.dues();
            boolean anyPast = all.stream().anyMatch(due -> due.on().isBefore(latest));
            // To see what is told elsewhere the whole cell is judged once more.
            Set<String> told = anyPast ? toldElsewhere(cell) : Set.of();
            Map<Together, List<Due>> groups = new LinkedHashMap<>();
            for (Due due : all) {
                if (!(due.on().isBefore(latest) && told.contains(due.tag()))) {
                    groups.computeIfAbsent(new Together(due.on(), due.source()), key -> new ArrayList<>())
                            .add(due);
                }
            }
            groups.forEach((together, dues) ->
                    finding(cell, together, dues, asOf, latest).ifPresent(findings::add));
        });
        return findings;
    }

    private static Optional<Finding> finding(
            Cell cell, Together together, List<Due> dues, LocalDate asOf, LocalDate latest) {
        String what = together(together, dues);
        String about = dues.get(0).tag();
        Span where = dues.get(0).where();
        if (together.on.isBefore(asOf)) {
            return Optional.of(Finding.barsRelease(
                            OVERDUE,
                            about,
                            where,
                            "due by " + together.on + " and not done: " + what,
                            "have it done and state what was done; until then the cell is not to be released")
                    .because(listed(dues)));
        }
        if (together.on.isBefore(latest)) {
            return Optional.of(Finding.barsRelease(
                            OVERDUE_TODAY,
                            about,
                            where,
                            "due by " + together.on + ", which has passed since the day this description speaks of, "
                                    + asOf + ": " + what,
                            "have it done, and describe the cell as it is now")
                    .because(listed(dues)));
        }
        return cell.identity()
                .dates()
                .warnAhead()
                .value()
                .filter(ahead -> !together.on.isAfter(ahead.after(latest)))
                .map(ahead -> Finding.warns(
                                SOON,
                                about,
                                where,
                                "due by " + together.on + ", within " + ahead + ": " + what,
                                "arrange for it now")
                        .because(listed(dues)));
    }

    private static String together(Together together, List<Due> dues) {
        return (dues.size() == 1 ? one(dues.get(0)) : dues.size() + " things") + " (" + together.source + ")";
    }

    /** Each by its name, where one sentence cannot hold them. */
    private static List<String> listed(List<Due> dues) {
        return dues.size() == 1 ? List.of() : dues.stream().map(BarOverdue::one).toList();
    }

    private static String one(Due due) {
        return "`" + due.tag() + "`, " + due.what();
    }

    /** What has a finding of its own when its last day is over, or one that says the same. */
    private static Set<String> toldElsewhere(Cell cell) {
        Set<String> told = new HashSet<>();
        cell.deviations().forEach(deviation -> told.add(deviation.tag()));
        cell.registers().bypasses().forEach(bypass -> told.add(bypass.tag().characters()));
        cell.registers().openPoints().stream()
                .filter(point -> point.barsRelease())
                .forEach(point -> told.add(point.tag().characters()));
        Set<Span> notCalibrated = new HashSet<>();
        cell.findings().stream()
                .filter(finding -> finding.id().equals(Instrument.NOT_CALIBRATED))
                .forEach(finding -> notCalibrated.add(finding.where()));
        cell.instrumentsUsed().stream()
                .filter(instrument -> notCalibrated.contains(instrument.where()))
                .forEach(instrument -> told.add(instrument.characters()));
        return told;
    }
}
