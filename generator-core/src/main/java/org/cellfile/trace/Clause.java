package org.cellfile.trace;

/**
 * A place in one edition of a standard.
 *
 * @param edition for example {@code ISO 13855:2010}
 * @param place for example {@code cl. 6.2} or {@code table 1}
 */
public record Clause(String edition, String place) {
    @Override
    public String toString() {
        return edition + ", " + place;
    }
}
