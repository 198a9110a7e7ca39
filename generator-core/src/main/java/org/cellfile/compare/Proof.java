package org.cellfile.compare;

/** What proves something about a cell and can be voided by a change: the columns of the matrix of {@link KindOfChange}. */
public enum Proof {
    STOP_TIME("Stop time"),
    DISTANCE("Distance calculation"),
    INSTALLED("Installed distance"),
    FUNCTION_TESTS("Function tests"),
    CHECKSUM("Configuration checksum"),
    RISK("Risk assessment"),
    SHEET("Posted sheet");

    private final String words;

    Proof(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
