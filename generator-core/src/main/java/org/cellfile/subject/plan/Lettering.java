package org.cellfile.subject.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * How wide a text is in a drawing. The widths are those of the typeface of the pages, in thousandths of its size, and no narrower where
 * bold letters differ more than others; a test holds them against it. What is not listed is taken to be as wide as a wide letter of its
 * sort, and no text is set wider than was reckoned.
 */
final class Lettering {

    private static final String LISTED =
            " !\"#$%&'()*+,-./0123456789:;<=>?@ABCDEFGHIJKLMNOPQRSTUVWXYZ[\\]^_`abcdefghijklmnopqrstuvwxyz{|}~";

    private static final int[] WIDTHS = {
        278, 278, 413, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556,
                556,
        556, 556, 556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556,
                833,
        722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 523, 556, 333, 556, 556, 500,
                556,
        556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, 556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500,
                334,
        260, 334, 584
    };

    private static final int LETTER = 780;
    private static final int FULL = 1000;
    private static final int FIRST_FULL = 0x2E80;

    /** Bold letters are wider by no more than this, in thousandths of the size. */
    private static final int BOLD = 61;

    private Lettering() {}

    /** In the unit of the size, rounded up. */
    static int width(String text, int size, boolean bold) {
        int thousandths = text.codePoints()
                .map(letter -> thousandths(letter) + (bold ? BOLD : 0))
                .sum();
        return (thousandths * size + 999) / 1000;
    }

    /** In lines that are no wider, broken between words; a single word may be wider. */
    static List<String> wrapped(String text, int size, int width) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : List.of(text.split(" ", -1))) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && width(longer, size, false) > width) {
                lines.add(line);
                line = word;
            } else {
                line = longer;
            }
        }
        lines.add(line);
        return List.copyOf(lines);
    }

    private static int thousandths(int letter) {
        int listed = LISTED.indexOf(letter);
        return listed >= 0 ? WIDTHS[listed] : letter < FIRST_FULL ? LETTER : FULL;
    }
}
