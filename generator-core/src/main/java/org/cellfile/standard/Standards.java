package org.cellfile.standard;

import java.util.List;
import java.util.Optional;

/**
 * The editions a cell has chosen.
 *
 * @param chosen in the order stated
 */
public record Standards(List<Edition> chosen) {

    /** All that were chosen for a subject; more than one is refused by who reads the cell. */
    public <E extends Edition> List<E> all(Class<E> subject) {
        return chosen.stream()
                .filter(subject::isInstance)
                .map(subject::cast)
                .distinct()
                .toList();
    }

    /** The chosen edition of a subject. */
    public <E extends Edition> Optional<E> of(Class<E> subject) {
        return chosen.stream().filter(subject::isInstance).map(subject::cast).findFirst();
    }
}
