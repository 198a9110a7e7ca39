package org.cellfile.finding;

/** What a finding does to the run. */
public enum Severity {
    /** Nothing is written: unreadable, contradictory, stated differs from derived, or installed short of required. */
    REFUSES("error"),
    /** A draft is written; a release is not: missing, overdue, open, or resting on an unconfirmed value from memory. */
    BARS_RELEASE("bars release"),
    /** Worth a look. */
    WARNS("warning");

    private final String word;

    Severity(String word) {
        this.word = word;
    }

    /** The word printed before the sentence. */
    public String word() {
        return word;
    }
}
