package org.cellfile.standard;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.ServiceLoader;
import java.util.stream.Stream;
import org.cellfile.trace.Clause;
import org.cellfile.trace.Fixed;

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

    /** What an edition, or EN 574, can be told from a copy under an id; empty when none has such an id. */
    public static Optional<Asked> asked(String id) {
        return asked().filter(one -> one.reference().id().equals(id)).findFirst();
    }

    /** The id under which a cell of the same table is asked for; empty when the table has no such cell. */
    public static Optional<String> idOf(Clause table, CopyKey cell) {
        return asked().filter(one ->
                        one.reference().clause().equals(table) && one.ours().containsKey(cell))
                .map(one -> one.reference().id())
                .findFirst();
    }

    /** The ids of all that can be told from copies. */
    public static List<String> askedIds() {
        return asked().map(one -> one.reference().id()).toList();
    }

    private static Stream<Asked> asked() {
        return Stream.concat(KNOWN.stream().flatMap(edition -> edition.asked().stream()), En574.asked().stream());
    }

    /**
     * The least depth over which nobody steps as the first edition about positions has it that knows one, which is published: for what
     * no edition in force has a value for, by analogy.
     */
    public static Fixed depthToStepOver() {
        return KNOWN.stream()
                .filter(PositioningStandard.class::isInstance)
                .flatMap(edition -> ((PositioningStandard) edition).leastDepthToStepOver().stream())
                .findFirst()
                .orElseThrow();
    }

    /** Those of one subject. */
    public static List<String> ids(Class<? extends Edition> subject) {
        return KNOWN.stream().filter(subject::isInstance).map(Edition::id).toList();
    }
}
