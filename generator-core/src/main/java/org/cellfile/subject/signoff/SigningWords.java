package org.cellfile.subject.signoff;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What somebody says by signing (common practice). */
public enum SigningWords {
    /** Somebody competent tested the safeguards as the file has it. */
    TESTED("tested"),
    /** Somebody other than who tested went through it. */
    CHECKED("checked"),
    /** Somebody who answers for it agreed. */
    APPROVED("approved"),
    /** The plant lets the cell be used. */
    RELEASED("released for use"),
    /** Somebody read it. */
    NOTED("taken note");

    private final String words;

    SigningWords(String words) {
        this.words = words;
    }

    /**
     * True when these words are said only after others (common practice): nobody checks what was not tested, and the plant releases
     * last of all. Who approves or takes note may do so at any time.
     */
    boolean follows(SigningWords first) {
        return switch (this) {
            case CHECKED -> first == TESTED;
            case RELEASED -> first == TESTED || first == CHECKED || first == APPROVED;
            case TESTED, APPROVED, NOTED -> false;
        };
    }

    /** As they are written and printed. */
    public String words() {
        return words;
    }

    /** All of them, in the order in which they are said. */
    public static List<String> all() {
        return Arrays.stream(values()).map(SigningWords::words).toList();
    }

    /** The ones written so. */
    public static Optional<SigningWords> of(String words) {
        return Arrays.stream(values()).filter(one -> one.words.equals(words)).findFirst();
    }
}
