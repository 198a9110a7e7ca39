package org.cellfile.dossier;

/** Small matters of setting text. */
public final class Text {

    private Text() {}

    /** With a capital first letter, as a heading or a sentence begins. */
    public static String capital(String text) {
        return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
