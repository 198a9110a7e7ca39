package org.cellfile.audit;

/** A file cannot be read as a PDF, or holds more than is read. The message is a sentence for people, without a full stop. */
public final class UnreadablePdf extends Exception {

    private static final long serialVersionUID = 1;

    public UnreadablePdf(String sentence) {
        super(sentence);
    }
}
