package org.cellfile.verdict;

import java.util.List;
import org.cellfile.finding.Finding;
import org.cellfile.finding.Severity;

/** At least one finding refuses. There is no dossier to get at, so nothing can be printed. */
public final class Refused implements Verdict {

    static final String NOTHING_WRITTEN = "nothing was written";

    private final List<Finding> findings;
    private final String outcome;

    Refused(List<Finding> findings, String outcome) {
        this.findings = findings;
        this.outcome = outcome;
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
        return outcome;
    }
}
