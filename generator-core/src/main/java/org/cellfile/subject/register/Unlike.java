package org.cellfile.subject.register;

import java.util.Locale;

/** Where two values differ that somebody may take for the same at a display. */
public final class Unlike {

    private Unlike() {}

    /** In words, so that a letter O and a zero cannot be mistaken for one another here too. The values are not the same. */
    public static String words(String one, String other) {
        int[] first = one.codePoints().toArray();
        int[] second = other.codePoints().toArray();
        if (first.length != second.length) {
            return "`" + one + "` has " + first.length + " characters and `" + other + "` has " + second.length
                    + "; zeros in front count";
        }
        int at = 0;
        while (first[at] == second[at]) {
            at++;
        }
        return "character " + (at + 1) + " of `" + one + "` is the " + name(first[at]) + ", that of `" + other
                + "` the " + name(second[at]);
    }

    private static String name(int character) {
        return String.valueOf(Character.getName(character)).toLowerCase(Locale.ROOT);
    }
}
