package org.cellfile.verdict;

import java.util.List;
import java.util.function.Supplier;
import org.cellfile.dossier.Dossier;
import org.cellfile.finding.Finding;
import org.cellfile.finding.Severity;
import org.jspecify.annotations.Nullable;

/** Nothing refuses. Only this package makes one, and only one of these can be rendered. */
public final class Printable implements Verdict {

    private final Supplier<Dossier> composed;
    private final List<Finding> findings;
    private @Nullable Dossier dossier;

    Printable(Supplier<Dossier> composed, List<Finding> findings) {
        this.composed = composed;
        this.findings = findings;
    }

    /** What is printed; composed when it is asked for first, as a check alone prints nothing. */
    public synchronized Dossier dossier() {
        Dossier known = dossier;
        if (known == null) {
            known = composed.get();
            dossier = known;
        }
        return known;
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
