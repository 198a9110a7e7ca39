package org.cellfile.audit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.cellfile.finding.Finding;

/** Gathers what the checks say. One sort of finding is told a few times in full and then counted, as one cause can show everywhere. */
final class Tally {

    private static final int IN_FULL = 10;

    private final List<String> agrees = new ArrayList<>();
    private final List<Finding> differs = new ArrayList<>();
    private final List<String> unsaid = new ArrayList<>();
    private final Set<String> provenBy = new LinkedHashSet<>();
    private final List<String> notReached = new ArrayList<>();

    void agrees(String line) {
        agrees.add(line);
    }

    void differs(Finding finding) {
        differs.add(finding);
    }

    /**
     * Adds findings of one sort.
     *
     * @param more what further ones are called, for example {@code places on the pages differ}
     */
    void differ(List<Finding> findings, String more) {
        differs.addAll(findings.subList(0, Math.min(IN_FULL, findings.size())));
        if (findings.size() > IN_FULL) {
            Finding last = findings.get(IN_FULL);
            differs.add(Finding.refuses(
                    last.id(), "", last.where(), (findings.size() - IN_FULL) + " more " + more, last.help()));
        }
    }

    void cannotSay(String line) {
        unsaid.add(line);
    }

    void proven(String by) {
        provenBy.add(by);
    }

    void notReached(Collection<String> chapters) {
        notReached.addAll(chapters);
    }

    AuditReport report(String file) {
        return new AuditReport(file, agrees, differs, unsaid, List.copyOf(provenBy), notReached);
    }
}
