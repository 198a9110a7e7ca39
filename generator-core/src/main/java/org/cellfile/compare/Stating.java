package org.cellfile.compare;

import java.util.regex.Pattern;

/**
 * A statement that differs, among the states that do or do not have it.
 *
 * @param path of the statement
 */
public record Stating(String path, State older, State newer) {

    /** True when the path is like that. */
    boolean like(Pattern pattern) {
        return pattern.matcher(path).matches();
    }

    /** True when the thing it is about has such a key in either state. */
    boolean thingHas(String key) {
        String[] steps = path.split("/", -1);
        String thing = steps.length < 2 ? path : steps[0] + "/" + steps[1];
        return older.states(thing + "/" + key) || newer.states(thing + "/" + key);
    }
}
