package org.cellfile.audit;

import java.util.List;

/**
 * What a page says, in the order in which it was drawn.
 *
 * @param number from 1
 * @param margin what stands in the head and foot, which are marked as belonging to the page and not to its text
 * @param runs the text itself
 */
public record PageText(int number, String margin, List<Run> runs) {

    /**
     * A piece of text that is marked as one.
     *
     * @param drawing true when it stands in a drawing
     */
    public record Run(boolean drawing, String text) {}
}
