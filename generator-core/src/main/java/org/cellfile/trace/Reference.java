package org.cellfile.trace;

/**
 * A value, table or rule that an edition fixes, as the register of fixed values lists it.
 *
 * @param id what a confirmation names, for example {@code iso-13855-2010.approach-speed-fast}
 * @param name what it is
 */
public record Reference(String id, String name, Clause clause, Standing standing) {

    /** True when nobody outside can check it without the standard. */
    public boolean fromMemory() {
        return standing instanceof Standing.FromMemory;
    }
}
