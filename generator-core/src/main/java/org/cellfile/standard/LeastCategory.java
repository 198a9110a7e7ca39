package org.cellfile.standard;

import org.cellfile.trace.Reference;

/** The least category that a standard asks for, and where it does. */
public record LeastCategory(Category category, Reference reference) {

    /** True when a structure of that category is enough. */
    public boolean keptBy(Category other) {
        return other.compareTo(category) >= 0;
    }
}
