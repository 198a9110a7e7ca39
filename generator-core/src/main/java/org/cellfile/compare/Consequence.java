package org.cellfile.compare;

import java.util.List;

/**
 * What a change asks of one proof of the cell, and how far that has been done.
 *
 * @param asks the words of the matrix
 */
public record Consequence(Proof proof, String asks, List<Item> items) {

    /**
     * One thing that is to be done, or was.
     *
     * @param about tag of the thing; empty when it is about the cell
     * @param words what is to be done, or that it was done and when
     * @param open true while it was not done
     */
    public record Item(String about, String words, boolean open) {}
}
