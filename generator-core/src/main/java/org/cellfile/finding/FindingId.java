package org.cellfile.finding;

/**
 * The stable name of a sort of finding: dotted lower-case words. Never renumbered, never reused; each has a page under
 * {@code explain/}.
 */
public record FindingId(String words) implements Comparable<FindingId> {

    public FindingId {
        if (!words.matches("[a-z]+(-[a-z]+)*(\\.[a-z]+(-[a-z]+)*)+")) {
            throw new IllegalArgumentException("not dotted lower-case words: " + words);
        }
    }

    @Override
    public int compareTo(FindingId other) {
        return words.compareTo(other.words);
    }

    @Override
    public String toString() {
        return words;
    }
}
