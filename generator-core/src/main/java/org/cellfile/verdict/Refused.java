package org.cellfile.verdict;

import java.util.List;
import org.cellfile.finding.Finding;
import org.cellfile.finding.Severity;

/** At least one finding refuses. There is no dossier to get at, so nothing can be printed. */
public final class Refused implements Verdict {

    private final List<Finding> findings;

    Refused(List<Finding> findings) {
        this.findings = findings;
    }

    @Override
    public List<Finding> findings() {
        return findings;
    }

    /** The findings that refuse, without what only bars release and what is only told. */
    public List<Finding> refusing() {
        return findings.stream()
                .filter(finding -> finding.severity() == Severity.REFUSES)
                .toList();
    }

    @Override
    public String word() {
        return "refused";
    }

    @Override
    public String outcome() {
        return "nothing was written";
    }
}
