package org.cellfile.subject.safeguard;

import java.util.List;
import org.cellfile.source.Stated;

/**
 * A place of a safeguard that has a distance of its own, such as an end of a fence.
 *
 * @param sort in a word: {@code opening} or {@code end}
 * @param number among those of its sort, from 1
 * @param index of the symbols of its values
 * @param leadsTo tags of the hazard zones that can be reached there; empty for all that the safeguard protects
 * @param installed the distance from it to the nearest hazard
 */
public record Place(
        String sort,
        int number,
        String index,
        Stated<String> name,
        List<Stated<String>> leadsTo,
        Safeguard.Installed installed) {

    /** What the names of its values end with. */
    String key() {
        return sort + "-" + number;
    }

    /** The tag of its safeguard with its own name. */
    String about(String safeguard) {
        return safeguard + ", " + name.characters();
    }

    /** In words, within its safeguard. */
    public String words() {
        return "the " + sort + " `" + name.characters() + "`";
    }
}
