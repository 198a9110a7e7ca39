package org.cellfile.subject.stopping;

/** How the symbols of several values of one sort are written. */
final class Series {

    /** Up to so many are written one by one in a formula; more are gathered under one symbol. */
    private static final int ONE_BY_ONE = 4;

    private Series() {}

    /** {@code t_1} of a few, {@code t_i} of many. */
    static String symbol(String symbol, int number, int of) {
        return symbol + "_" + (of > ONE_BY_ONE ? "i" : String.valueOf(number));
    }
}
