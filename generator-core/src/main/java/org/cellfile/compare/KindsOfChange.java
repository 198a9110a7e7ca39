package org.cellfile.compare;

import java.util.Comparator;
import java.util.List;
import java.util.ServiceLoader;

/** Every kind of change, sorted by id. */
public final class KindsOfChange {

    private static final List<KindOfChange> ALL =
            ServiceLoader.load(KindOfChange.class, KindsOfChange.class.getClassLoader()).stream()
                    .map(ServiceLoader.Provider::get)
                    .sorted(Comparator.comparing(KindOfChange::id))
                    .toList();

    private KindsOfChange() {}

    public static List<KindOfChange> all() {
        return ALL;
    }
}
