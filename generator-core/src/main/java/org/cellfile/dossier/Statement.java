package org.cellfile.dossier;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * One thing somebody stated, or one value derived from it, as it counts for signing and comparing: without comments, layout, order
 * of keys, or the file it stands in.
 *
 * @param path the keys and items that lead to it, for example {@code safeguards/curtain-lift/installed/distance}; an item of a
 *     list is called by its tag, and where it has none by what tells it from the others. A derived value stands under
 *     {@code derived/}
 * @param value a JSON string with the characters as written, or an array of such strings; numbers are text, so that
 *     {@code 1.50 m} is another statement than {@code 1.5 m}
 * @param at file, line and column; empty where that is not known
 */
public record Statement(String path, String value, String at) {

    /** What begins the path of a derived value. */
    public static final String DERIVED = "derived/";

    private static final ObjectMapper JSON = new JsonMapper();

    /** Of one value. */
    public static Statement of(String path, String value, String at) {
        return new Statement(path, json(value), at);
    }

    /** Of a list of values. */
    public static Statement of(String path, List<String> values, String at) {
        return new Statement(path, json(values), at);
    }

    /** A value the program derived. */
    public static Statement derived(String tag, String value) {
        return of(DERIVED + tag, value, "");
    }

    /** True when the program derived it. */
    public boolean isDerived() {
        return path.startsWith(DERIVED);
    }

    /** The first key of the path. */
    public String key() {
        int end = path.indexOf('/');
        return end < 0 ? path : path.substring(0, end);
    }

    /** As it is signed. */
    String line() {
        return path + ": " + value;
    }

    /** One step of a path: characters that mean something in a line are written as in addresses (RFC 3986, 2.1, from memory). */
    public static String step(String label) {
        return label.codePoints()
                .mapToObj(character -> character < ' ' || "%/\"[".indexOf(character) >= 0
                        ? "%"
                                + Integer.toHexString(0x100 | character)
                                        .substring(1)
                                        .toUpperCase(Locale.ROOT)
                        : Character.toString(character))
                .collect(Collectors.joining());
    }

    /** The value for people: without quotes; a list between brackets. */
    public String shown() {
        try {
            return value.startsWith("[")
                    ? "[" + String.join(", ", JSON.readValue(value, String[].class)) + "]"
                    : JSON.readValue(value, String.class);
        } catch (JsonProcessingException notJson) {
            return value;
        }
    }

    private static String json(Object value) {
        try {
            return JSON.writeValueAsString(value);
        } catch (JsonProcessingException ours) {
            throw new IllegalStateException("this is a defect in the generator", ours);
        }
    }
}
