package org.cellfile.trace;

/** How far a value that a clause fixes was verified. */
public sealed interface Standing {

    /** In words, for the printed file. */
    String words();

    /**
     * Read in a public source.
     *
     * @param source title and page
     */
    record Published(String source) implements Standing {
        @Override
        public String words() {
            return "published: " + source;
        }
    }

    /**
     * Seen in no public source; a named person who holds the standard has to confirm it.
     *
     * @param remark what ties it down nevertheless; may be empty
     */
    record FromMemory(String remark) implements Standing {
        @Override
        public String words() {
            return remark.isEmpty() ? "from memory" : "from memory; " + remark;
        }
    }
}
