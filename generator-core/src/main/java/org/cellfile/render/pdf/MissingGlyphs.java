package org.cellfile.render.pdf;

import java.lang.reflect.RecordComponent;
import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** Looks for characters that would leave a gap, or something else than what was written, on the page. */
public final class MissingGlyphs {

    /** Each such character with the first text it stands in. */
    private final SortedMap<Integer, String> found = new TreeMap<>();

    private MissingGlyphs() {}

    /**
     * Searches a text, or a record, list or map and everything in it.
     *
     * @return each character that cannot be printed, with the first text it stands in
     */
    public static SortedMap<Integer, String> in(Object texts) {
        MissingGlyphs search = new MissingGlyphs();
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

    private static boolean printable(int codePoint) {
        if (codePoint == '\n' || codePoint == '\t') {
            return true;
        }
        return switch (Character.getType(codePoint)) {
            case Character.CONTROL, Character.FORMAT, Character.SURROGATE, Character.UNASSIGNED -> false;
            default -> leftToRight(codePoint) && Fonts.cover(codePoint);
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
