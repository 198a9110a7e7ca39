package org.cellfile.standard;

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

    /** A cell of a table of openings, by shape and the greatest size of its row, in mm. */
    record Opening(String shape, Quantity size) implements CopyKey {
        @Override
        public String words() {
            return " for a " + shape + " opening of " + size.plain();
        }
    }
}
