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

    private final boolean released;

    Printable(Supplier<Dossier> composed, List<Finding> findings, boolean released) {
        this.composed = composed;
        this.findings = findings;
        this.released = released;
    }

    /** The same as a release, when nothing bars one. */
    Printable released() {
        return new Printable(this::dossier, findings, true);
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

    /** True unless a release was asked for and nothing bars it: every page then says so. */
    public boolean draft() {
        return !released;
    }

    /** What bars release. */
    public List<Finding> missing() {
        return findings.stream()
                .filter(finding -> finding.severity() == Severity.BARS_RELEASE)
                .toList();
    }

    @Override
    public String word() {
        return released ? "released" : missing().isEmpty() ? "releasable" : "draft";
    }

    @Override
    public String outcome() {
        if (!missing().isEmpty()) {
            return "this can be printed as a draft only";
        }
        return "every recomputed value agrees with the recorded one, and nothing bars release"
                + (released ? "; these pages are a release" : "");
    }
}
