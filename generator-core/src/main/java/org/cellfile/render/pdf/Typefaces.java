package org.cellfile.render.pdf;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The plant's typefaces by the tags of their languages, beside those of the pages.
 *
 * @param byLanguage by tag
 */
public record Typefaces(SortedMap<String, Typeface> byLanguage) {

    private static final String FAMILY = "Plant ";

    /** None but those of the pages. */
    public static Typefaces none() {
        return new Typefaces(new TreeMap<>());
    }

    /** Those for these languages. */
    public Typefaces of(List<String> languages) {
        SortedMap<String, Typeface> some = new TreeMap<>(byLanguage);
        some.keySet().retainAll(languages);
        return new Typefaces(some);
    }

    /** By which name a page asks for the typeface of each of these languages. */
    public Map<String, String> families(List<String> languages) {
        Map<String, String> families = new TreeMap<>();
        of(languages).byLanguage().keySet().forEach(tag -> families.put(tag, FAMILY + tag));
        return families;
    }

    /** Why a character cannot stand on a page in these languages; empty when it can. */
    public Optional<String> fault(int codePoint, List<String> languages) {
        return MissingGlyphs.fault(codePoint, of(languages).byLanguage().values());
    }
}
