package org.cellfile.dossier;

import java.util.List;

/** Small matters of setting text. */
public final class Text {

    private Text() {}

    /** With a capital first letter, as a heading or a sentence begins. */
    public static String capital(String text) {
        return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    /** As a sentence of its own: with a capital first letter, and a full stop where it has no other end. */
    public static String sentence(String text) {
        return capital(text) + (text.isEmpty() || ".!?".indexOf(text.charAt(text.length() - 1)) >= 0 ? "" : ".");
    }

    /** As a sentence names several things: {@code a, b and c}. */
    public static String listed(List<String> names) {
        int last = names.size() - 1;
        return last < 1
                ? String.join("", names)
                : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
    }

    /** The same for tags, each between backticks. */
    public static String tagged(List<String> tags) {
        return listed(tags.stream().map(tag -> "`" + tag + "`").toList());
    }
}
