package org.cellfile.subject.sheet;

import java.util.Comparator;
import java.util.List;
import java.util.ServiceLoader;

/** Every sort of posted sheet this program knows, sorted by id. */
public final class SheetSorts {

    private static final List<SheetSort> KNOWN =
            ServiceLoader.load(SheetSort.class, SheetSorts.class.getClassLoader()).stream()
                    .map(ServiceLoader.Provider::get)
                    .sorted(Comparator.comparing(SheetSort::id))
                    .toList();

    private SheetSorts() {}

    public static List<SheetSort> all() {
        return KNOWN;
    }

    /** Those of which the cell has something to tell. */
    static List<SheetSort> of(PostedCell cell) {
        return KNOWN.stream().filter(sort -> sort.isOf(cell)).toList();
    }

    public static List<String> ids() {
        return KNOWN.stream().map(SheetSort::id).toList();
    }
}
