package org.cellfile.subject.safeguard;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.ServiceLoader;

/** Every kind of safeguard this program knows, sorted by id. */
public final class Kinds {

    private static final List<Kind> KNOWN = ServiceLoader.load(Kind.class, Kinds.class.getClassLoader()).stream()
            .map(ServiceLoader.Provider::get)
            .sorted(Comparator.comparing(Kind::id))
            .toList();

    /** Devices that are taken for safeguards and guard no hazard zone; they are listed under {@code complementary}. */
    public static final List<String> COMPLEMENTARY =
            List.of("emergency-stop", "enabling-device", "mode-selector", "pendant", "reset");

    private Kinds() {}

    public static Optional<Kind> of(String id) {
        return KNOWN.stream().filter(kind -> kind.id().equals(id)).findFirst();
    }

    public static List<String> ids() {
        return KNOWN.stream().map(Kind::id).toList();
    }
}
