package org.cellfile.compare;

import java.util.List;
import java.util.Optional;

/**
 * Differences of one kind, and what they void.
 *
 * @param kind empty for what no row of the matrix covers
 * @param values derived values that differ and rest on these differences
 */
public record Group(
        Optional<KindOfChange> kind,
        List<Difference> differences,
        List<ValueChange> values,
        List<Consequence> consequences) {

    public String id() {
        return kind.map(KindOfChange::id).orElse("no-row");
    }

    public String title() {
        return kind.map(KindOfChange::title)
                .orElse("No row of the matrix; to be judged by whoever answers for the cell");
    }

    /** True for changes of the machine, and for what may be one. */
    public boolean ofTheMachine() {
        return kind.map(KindOfChange::ofTheMachine).orElse(true);
    }
}
