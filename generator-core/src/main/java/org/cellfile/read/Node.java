package org.cellfile.read;

import java.util.List;
import org.cellfile.source.Span;

/** A file's content as a tree, every part of it with its place. */
sealed interface Node {

    Span where();

    /** What it is, for messages. */
    String sort();

    /**
     * Characters as written, whether quoted or not.
     *
     * @param from where it begins in the file with its quotes, in code points from 0
     * @param to where the file goes on after it; of a text in a block of its own that is the line after it
     */
    record Scalar(String text, Span where, int from, int to) implements Node {
        @Override
        public String sort() {
            return "a single value";
        }
    }

    /** Items in order. */
    record Sequence(List<Node> items, Span where) implements Node {
        @Override
        public String sort() {
            return "a list";
        }
    }

    /** Keys and values in order. */
    record Mapping(List<Pair> pairs, Span where) implements Node {
        @Override
        public String sort() {
            return "a group of keys";
        }
    }

    /** One key with its value. */
    record Pair(Scalar key, Node value) {}
}
