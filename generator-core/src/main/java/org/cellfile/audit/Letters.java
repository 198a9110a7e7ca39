package org.cellfile.audit;

import java.util.Arrays;

/** A text without its spaces, which pages do not keep, and with its spaces for whoever reads about it. */
final class Letters {

    private final StringBuilder whole = new StringBuilder();
    private final StringBuilder letters = new StringBuilder();
    private int[] places = new int[1 << 12];

    /** Adds a piece and a space after it. */
    void add(String piece) {
        for (int i = 0; i < piece.length(); i++) {
            char one = piece.charAt(i);
            if (isSpace(one)) {
                space();
            } else {
                letter(one);
            }
        }
        space();
    }

    private void letter(char one) {
        if (letters.length() == places.length) {
            places = Arrays.copyOf(places, places.length * 2);
        }
        places[letters.length()] = whole.length();
        letters.append(one);
        whole.append(one);
    }

    /** Spaces are one space. */
    private void space() {
        if (!whole.isEmpty() && whole.charAt(whole.length() - 1) != ' ') {
            whole.append(' ');
        }
    }

    /** Also the ones that do not break. */
    static boolean isSpace(char one) {
        return Character.isWhitespace(one) || one == '\u00A0';
    }

    static String withoutSpaces(String text) {
        Letters letters = new Letters();
        letters.add(text);
        return letters.letters.toString();
    }

    int length() {
        return letters.length();
    }

    char at(int place) {
        return letters.charAt(place);
    }

    boolean startsWith(String text, int place) {
        return letters.length() >= place + text.length()
                && text.contentEquals(letters.subSequence(place, place + text.length()));
    }

    String part(int from, int to) {
        return letters.substring(Math.min(from, length()), Math.min(to, length()));
    }

    /** The words that hold the letters, with as many letters before and after as a reader needs to find the place. */
    String words(int from, int to, int around) {
        int start = Math.max(0, from - around);
        int end = Math.min(length(), to + around);
        if (start >= end) {
            return "";
        }
        int first = places[start];
        int last = places[end - 1] + 1;
        while (first > 0 && whole.charAt(first - 1) != ' ') {
            first--;
        }
        while (last < whole.length() && whole.charAt(last) != ' ') {
            last++;
        }
        return whole.substring(first, last);
    }
}
