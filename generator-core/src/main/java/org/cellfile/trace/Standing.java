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

    /**
     * Read in a copy of the standard by a named person; it counts as confirmed.
     *
     * @param by name of the person
     * @param on the day
     * @param copy which copy
     * @param place where that is stated
     * @param here what is held here in its place, and the difference
     */
    record ReadInCopy(String by, String on, String copy, String place, String here) implements Standing {
        @Override
        public String words() {
            return "read in a copy (" + copy + ") by " + by + " on " + on + ", stated at " + place + "; " + here;
        }
    }

    /**
     * Not publicly known; only a copy of the standard can tell.
     *
     * @param key under which what the copy says is stated
     */
    record NotPublic(String key) implements Standing {

        /** Stated under {@code copy-values}. */
        public NotPublic() {
            this("copy-values");
        }

        @Override
        public String words() {
            return "not publicly known; asked for under `" + key + "`";
        }
    }
}
