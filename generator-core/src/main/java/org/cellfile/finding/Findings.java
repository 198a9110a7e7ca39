package org.cellfile.finding;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Gathers the findings of one run: each once, sorted by place. */
public final class Findings {

    private final Set<Finding> found = new LinkedHashSet<>();

    public void add(Finding finding) {
        found.add(finding);
    }

    public void addAll(Collection<Finding> findings) {
        found.addAll(findings);
    }

    public List<Finding> sorted() {
        List<Finding> sorted = new ArrayList<>(found);
        sorted.sort(null);
        return List.copyOf(sorted);
    }
}
