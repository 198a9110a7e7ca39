package org.cellfile.check;

import java.util.List;
import org.cellfile.cell.Cell;
import org.cellfile.source.Stated;

/** Hazard zones by the tags others name them with. */
final class Zones {

    private Zones() {}

    /** True when at least one is named, and each is described in the cell. */
    static boolean known(Cell cell, List<Stated<String>> named) {
        return !named.isEmpty()
                && named.stream()
                        .allMatch(tag -> cell.zones().stream()
                                .anyMatch(zone -> zone.tag().equals(tag.characters())));
    }
}
