package org.cellfile.standard;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.ServiceLoader;

/** Every edition this program knows, sorted by id. */
public final class Editions {

    private static final List<Edition> KNOWN =
            ServiceLoader.load(Edition.class, Editions.class.getClassLoader()).stream()
                    .map(ServiceLoader.Provider::get)
                    .sorted(Comparator.comparing(Edition::id))
                    .toList();

    private Editions() {}

    public static Optional<Edition> of(String id) {
        return KNOWN.stream().filter(edition -> edition.id().equals(id)).findFirst();
    }

    public static List<String> ids() {
        return KNOWN.stream().map(Edition::id).toList();
    }

    /** Those of one subject. */
    public static List<String> ids(Class<? extends Edition> subject) {
        return KNOWN.stream().filter(subject::isInstance).map(Edition::id).toList();
    }
}
