package org.cellfile.verdict;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.cellfile.dossier.Dossier;
import org.cellfile.finding.Deviation;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.finding.Findings;
import org.cellfile.finding.Severity;
import org.cellfile.read.Redaction;
import org.cellfile.source.SourceFile;
import org.cellfile.source.Span;

/** Turns findings into a verdict. Nothing else in the program does. */
public final class Decision {

    /** A deviation covers no finding. */
    public static final FindingId COVERS_NOTHING = new FindingId("deviation.covers-nothing");

    private Decision() {}

    /**
     * Decides.
     *
     * @param found everything found
     * @param deviations stated departures; one turns the finding it covers into one that bars release
     * @param dossier what would be printed; asked for only when nothing refuses and pages are wanted
     */
    public static Verdict decide(List<Finding> found, List<Deviation> deviations, Supplier<Dossier> dossier) {
        Findings decided = new Findings();
        List<Deviation> idle = new ArrayList<>(deviations);
        for (Finding finding : found) {
            Optional<Deviation> covering = finding.severity() == Severity.REFUSES
                    ? deviations.stream()
                            .filter(deviation -> deviation.covers(finding))
                            .findFirst()
                    : Optional.empty();
            covering.ifPresent(idle::remove);
            decided.add(covering.map(deviation -> covered(finding, deviation)).orElse(finding));
        }
        idle.forEach(deviation -> decided.add(Finding.barsRelease(
                COVERS_NOTHING,
                deviation.tag(),
                deviation.where(),
                "the deviation `" + deviation.tag() + "` covers nothing: `" + deviation.of() + "` has no finding `"
                        + deviation.finding() + "`",
                "take it out when the installation has been put right, or name the finding it is for")));
        List<Finding> sorted = decided.sorted();
        return sorted.stream().anyMatch(finding -> finding.severity() == Severity.REFUSES)
                ? new Refused(sorted, Refused.NOTHING_WRITTEN)
                : new Printable(dossier, sorted, false);
    }

    /** What becomes of a wish to release: where anything bars one, each of those things refuses it. */
    public static Verdict release(Verdict verdict) {
        if (!(verdict instanceof Printable printable)) {
            return verdict;
        }
        if (printable.missing().isEmpty()) {
            return printable.released();
        }
        Findings findings = new Findings();
        printable
                .findings()
                .forEach(finding -> findings.add(
                        finding.severity() == Severity.BARS_RELEASE ? finding.with(Severity.REFUSES) : finding));
        return new Refused(
                findings.sorted(),
                "the release was refused, and nothing was written; a draft can be printed by not asking for a release");
    }

    /**
     * What is printed of a copy from which parts were left out: judged as the full description was, told in the words of the copy.
     * What only the full description shows is told without its words.
     *
     * @param found everything found in the copy
     */
    public static Printable copy(
            Printable full, List<Finding> found, List<Deviation> deviations, Supplier<Dossier> dossier) {
        if (!(decide(found, deviations, dossier) instanceof Printable copy)) {
            throw new IllegalStateException("a copy was refused of what was not: " + found);
        }
        Map<List<Object>, Deque<Finding>> told = new HashMap<>();
        copy.findings()
                .forEach(finding -> told.computeIfAbsent(matter(finding), any -> new ArrayDeque<>())
                        .add(finding));
        List<Finding> findings = new ArrayList<>();
        for (Finding finding : full.findings()) {
            Deque<Finding> same = told.getOrDefault(matter(finding), new ArrayDeque<>());
            findings.add(same.isEmpty() ? untold(finding) : same.remove());
        }
        return new Printable(copy::dossier, List.copyOf(findings), !full.draft());
    }

    /** By which a finding is known again; the columns of a copy may be others. */
    private static List<Object> matter(Finding finding) {
        Span where = finding.where();
        return List.of(
                finding.id(), finding.severity(), finding.about(), where.file().path(), where.line());
    }

    private static Finding untold(Finding finding) {
        Span where = finding.where();
        return new Finding(
                finding.id(),
                finding.severity(),
                finding.about(),
                new Span(SourceFile.unread(where.file().path()), where.line(), 1, 0),
                "what bars release here is " + Redaction.MARK,
                List.of(),
                "ask the plant, which keeps the full file");
    }

    /** Refuses, because of findings for which there is nothing to print: unreadable files, or pages that cannot be laid out. */
    public static Refused refuse(List<Finding> found) {
        Findings findings = new Findings();
        findings.addAll(found);
        return new Refused(findings.sorted(), Refused.NOTHING_WRITTEN);
    }

    private static Finding covered(Finding finding, Deviation deviation) {
        return new Finding(
                finding.id(),
                Severity.BARS_RELEASE,
                finding.about(),
                finding.where(),
                finding.sentence() + "; deviation `" + deviation.tag() + "` covers it until " + deviation.until(),
                finding.because(),
                finding.help());
    }
}
