package org.cellfile.subject.signoff;

/** What a sign-off is worth today. */
public enum SignOffStatus {
    /** What it covers is what was signed. */
    VALID("valid"),
    /** What it covers was changed since. */
    SUPERSEDED("superseded by a change"),
    /** It was signed before something that has to be signed first. */
    TOO_EARLY("signed too early"),
    /** There is no such chapter. */
    COVERS_NOTHING("covers nothing"),
    /** Nobody asks for it. It counts all the same. */
    NOT_ASKED_FOR("not asked for"),
    /** The same person signed the same with the same words before. */
    REPEATED("repeated");

    private final String words;

    SignOffStatus(String words) {
        this.words = words;
    }

    /** As it is printed. */
    public String words() {
        return words;
    }
}
