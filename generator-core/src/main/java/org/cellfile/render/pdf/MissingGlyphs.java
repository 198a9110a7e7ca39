package org.cellfile.render.pdf;

import java.lang.Character.UnicodeScript;
import java.lang.reflect.RecordComponent;
import java.util.Collection;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/** Looks for characters that would leave a gap, or something else than what was written, on the page. */
public final class MissingGlyphs {

    /** What another typeface would mend. */
    public static final String NO_TYPEFACE = "no typeface of the pages has it";

    private static final String UNSEEN = "it would leave no mark on the page";

    /** Scripts whose letters stand one after the other as they are, which is all the pages are set for. */
    private static final Set<UnicodeScript> SET = EnumSet.of(
            UnicodeScript.COMMON,
            UnicodeScript.INHERITED,
            UnicodeScript.LATIN,
            UnicodeScript.GREEK,
            UnicodeScript.CYRILLIC,
            UnicodeScript.ARMENIAN,
            UnicodeScript.GEORGIAN,
            UnicodeScript.HAN,
            UnicodeScript.HIRAGANA,
            UnicodeScript.KATAKANA,
            UnicodeScript.BOPOMOFO,
            UnicodeScript.HANGUL);

    private final Collection<Typeface> own;

    /** Each such character with the first text it stands in. */
    private final SortedMap<Integer, String> found = new TreeMap<>();

    private MissingGlyphs(Collection<Typeface> own) {
        this.own = own;
    }

    /**
     * Searches a text, or a record, list or map and everything in it.
     *
     * @return each character that cannot be printed, with the first text it stands in
     */
    public static SortedMap<Integer, String> in(Object texts) {
        return in(texts, Typefaces.none());
    }

    /** The same where the plant has typefaces of its own. */
    public static SortedMap<Integer, String> in(Object texts, Typefaces own) {
        MissingGlyphs search = new MissingGlyphs(own.byLanguage().values());
        search.look(texts);
        return search.found;
    }

    /** For example {@code U+2764 HEAVY BLACK HEART}. */
    public static String name(int codePoint) {
        String name = Character.getName(codePoint);
        String number = String.format(Locale.ROOT, "U+%04X", codePoint);
        return name == null ? number : number + " " + name;
    }

    private void look(Object value) {
        if (value instanceof String text) {
            text.codePoints()
                    .filter(codePoint -> !printable(codePoint))
                    .forEach(codePoint -> found.putIfAbsent(codePoint, text));
        } else if (value instanceof Collection<?> values) {
            values.forEach(this::look);
        } else if (value instanceof Map<?, ?> map) {
            map.values().forEach(this::look);
        } else if (value instanceof Record record) {
            for (RecordComponent component : record.getClass().getRecordComponents()) {
                try {
                    look(component.getAccessor().invoke(record));
                } catch (ReflectiveOperationException e) {
                    throw new IllegalStateException(e);
                }
            }
        }
    }

    private boolean printable(int codePoint) {
        return fault(codePoint, own).isEmpty();
    }

    /**
     * Why a character cannot be printed; empty when it can.
     *
     * @param own typefaces beside those of the pages
     */
    static Optional<String> fault(int codePoint, Collection<Typeface> own) {
        if (codePoint == '\n' || codePoint == '\t' || (codePoint >= ' ' && codePoint <= '~')) {
            return Optional.empty();
        }
        return switch (Character.getType(codePoint)) {
            case Character.CONTROL, Character.FORMAT, Character.SURROGATE, Character.UNASSIGNED -> Optional.of(UNSEEN);
            default -> {
                if (!leftToRight(codePoint)) {
                    yield Optional.of("it is written from right to left, and pages are set from left to right only");
                }
                if (Fonts.cover(codePoint)) {
                    yield Optional.empty();
                }
                if (own.stream().noneMatch(face -> face.has(codePoint))) {
                    yield Optional.of(NO_TYPEFACE);
                }
                yield SET.contains(UnicodeScript.of(codePoint))
                        ? Optional.empty()
                        : Optional.of("letters of its script join or change places, for which the pages are not set");
            }
        };
    }

    /** Pages are set from left to right only: Hebrew or Arabic would come out in the wrong order. */
    private static boolean leftToRight(int codePoint) {
        return switch (Character.getDirectionality(codePoint)) {
            case Character.DIRECTIONALITY_RIGHT_TO_LEFT, Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC -> false;
            default -> true;
        };
    }
}
