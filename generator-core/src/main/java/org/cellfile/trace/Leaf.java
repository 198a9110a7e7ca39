package org.cellfile.trace;

/** What a symbol of a formula stands for, as the lists under a formula print it. */
public record Leaf(String symbol, String value, String name, String origin) {}
