package org.cellfile.standard;

import java.util.Optional;
import org.cellfile.quantity.Quantity;

/** For what a value that was read in a copy holds. */
public sealed interface CopyKey {

    /** In words, to follow the id; empty for the whole. */
    String words();

    /** Throughout. */
    record Whole() implements CopyKey {
        @Override
        public String words() {
            return "";
        }
    }

    /** For one safeguard, by its tag. */
    record OfSafeguard(String tag) implements CopyKey {
        @Override
        public String words() {
            return " for `" + tag + "`";
        }
    }

    /** A cell of a table of reach by height of the hazard and of the edge reached over, in mm. */
    record Heights(Quantity hazard, Quantity edge) implements CopyKey {
        @Override
        public String words() {
            return " for a hazard at " + hazard.plain() + " and an edge at " + edge.plain();
        }
    }

    /**
     * A cell of a table of openings.
     *
     * @param shape heading the column; empty where the table has one column for every shape
     * @param upTo the greatest opening of the row
     */
    record Opening(Optional<String> shape, Quantity upTo) implements CopyKey {
        @Override
        public String words() {
            return shape.map(one -> " for a " + one + " opening").orElse(" for an opening") + " up to " + upTo.plain();
        }
    }

    /**
     * A row of a table that a word heads.
     *
     * @param column what the word is, for example {@code body-part}
     */
    record Row(String column, String word) implements CopyKey {
        @Override
        public String words() {
            return " for the " + column.replace('-', ' ') + " `" + word + "`";
        }
    }
}
