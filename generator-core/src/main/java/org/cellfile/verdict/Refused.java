package org.cellfile.verdict;

import java.util.List;
import org.cellfile.finding.Finding;

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

    @Override
    public String word() {
        return "refused";
    }

    @Override
    public String outcome() {
        return outcome;
    }
}
