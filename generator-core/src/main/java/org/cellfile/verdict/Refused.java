package org.cellfile.verdict;

import java.util.List;
import org.cellfile.finding.Finding;

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

    @Override
    public String word() {
        return "refused";
    }

    @Override
    public String outcome() {
        return "nothing was written";
    }
}
