package org.cellfile;

/** A state of a cell cannot be got at. The message is a sentence for people, without a full stop. */
public final class NoSuchState extends Exception {

    private static final long serialVersionUID = 1;

    NoSuchState(String sentence) {
        super(sentence);
    }
}
