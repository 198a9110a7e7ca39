package org.cellfile.render.calendar;

import java.nio.charset.StandardCharsets;

/** Lines as RFC 5545, 3.1, has them: not longer than 75 octets, no character torn apart, the rest after a space. */
final class Folded {

    private static final int LONGEST = 75;
    private static final String FOLD = "\r\n ";

    private Folded() {}

    /** The text in UTF-8, its lines folded. */
    static byte[] bytes(String text) {
        StringBuilder folded = new StringBuilder();
        int octets = 0;
        for (int character : text.codePoints().toArray()) {
            String one = Character.toString(character);
            int more = one.equals("\r") || one.equals("\n") ? 0 : one.getBytes(StandardCharsets.UTF_8).length;
            if (octets + more > LONGEST) {
                folded.append(FOLD);
                octets = 1;
            }
            folded.append(one);
            octets = one.equals("\n") ? 0 : octets + more;
        }
        return folded.toString().getBytes(StandardCharsets.UTF_8);
    }
}
