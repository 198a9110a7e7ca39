package org.cellfile.standard;

import java.util.List;
import java.util.Optional;

/**
 * The editions a cell has chosen.
 *
 * @param chosen in the order stated, one for each subject
 */
public record Standards(List<Edition> chosen) {

    /** The chosen edition of a subject. */
    public <E extends Edition> Optional<E> of(Class<E> subject) {
        return chosen.stream().filter(subject::isInstance).map(subject::cast).findFirst();
    }
}
