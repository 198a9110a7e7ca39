package org.cellfile.verdict;

import java.util.List;
import org.cellfile.dossier.Dossier;
import org.cellfile.finding.Finding;
import org.cellfile.finding.Severity;

/** Nothing refuses. Only this package makes one, and only one of these can be rendered. */
public final class Printable implements Verdict {

    private final Dossier dossier;
    private final List<Finding> findings;

    Printable(Dossier dossier, List<Finding> findings) {
        this.dossier = dossier;
        this.findings = findings;
    }

    public Dossier dossier() {
        return dossier;
    }

    @Override
    public List<Finding> findings() {
        return findings;
    }

    /** True when something bars release: every page then says so. */
    public boolean draft() {
        return !missing().isEmpty();
    }

    /** What bars release. */
    public List<Finding> missing() {
        return findings.stream()
                .filter(finding -> finding.severity() == Severity.BARS_RELEASE)
                .toList();
    }

    @Override
    public String word() {
        return draft() ? "draft" : "releasable";
    }

    @Override
    public String outcome() {
        return draft()
                ? "this can be printed as a draft only"
                : "every recomputed value agrees with the recorded one, and nothing bars release";
    }
}
