package org.cellfile.standard;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The structure of a part of a control system, as ISO 13849-1 has it. */
public enum Category {
    /** one channel, nothing asked of its parts but that they do what they are for */
    B("B"),
    /** one channel of well-tried components */
    ONE("1"),
    /** one channel that is tested */
    TWO("2"),
    /** two channels; one fault does not lose the function, and some are found */
    THREE("3"),
    /** two channels; one fault does not lose the function, and nearly all are found in time */
    FOUR("4");

    private final String word;

    Category(String word) {
        this.word = word;
    }

    /** As it is written. */
    public String word() {
        return word;
    }

    /** All, as they are written. */
    public static List<String> words() {
        return Stream.of(values()).map(Category::word).toList();
    }

    /** The one written so. */
    public static Optional<Category> of(String word) {
        return Stream.of(values()).filter(one -> one.word.equals(word)).findFirst();
    }

    /** True when the function is carried out twice. */
    public boolean twoChannels() {
        return compareTo(THREE) >= 0;
    }

    /** True when something tells of faults, and causes common to several parts count. */
    public boolean tested() {
        return compareTo(TWO) >= 0;
    }

    @Override
    public String toString() {
        return "category " + word;
    }
}
