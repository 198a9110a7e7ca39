package org.cellfile.claim;

/** How a stated value has to stand to a derived one. */
public enum Relation {
    /** the same at the precision written */
    EQUAL_TO,
    AT_LEAST,
    MORE_THAN,
    AT_MOST
}
