package org.cellfile.standard;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The editions a cell names.
 *
 * @param named in the order stated
 */
public record Standards(List<Named> named) {

    /**
     * One edition.
     *
     * @param inForce false when it is named for comparison only
     * @param onlyFor tags of the safeguards it is in force for; empty for all that no other edition of the subject is named for
     */
    public record Named(Edition edition, boolean inForce, List<String> onlyFor) {

        public Named {
            onlyFor = List.copyOf(onlyFor);
        }
    }

    public Standards {
        named = List.copyOf(named);
    }

    /** All editions in force for the whole cell. */
    public static Standards of(List<? extends Edition> editions) {
        return new Standards(editions.stream()
                .map(edition -> new Named(edition, true, List.of()))
                .toList());
    }

    /** Every edition of a subject that is in force for anything. */
    public <E extends Edition> List<E> inForce(Class<E> subject) {
        return editions(named.stream().filter(Named::inForce), subject);
    }

    /**
     * The editions of a subject in force for one safeguard: those named for it, or else those named for no safeguard in
     * particular.
     */
    public <E extends Edition> List<E> inForce(Class<E> subject, String safeguard) {
        List<E> narrow =
                editions(named.stream().filter(Named::inForce).filter(one -> one.onlyFor.contains(safeguard)), subject);
        return narrow.isEmpty()
                ? editions(named.stream().filter(Named::inForce).filter(one -> one.onlyFor.isEmpty()), subject)
                : narrow;
    }

    /** The editions of a subject named for one safeguard, and those named for no safeguard in particular beside them. */
    public <E extends Edition> List<E> beside(Class<E> subject, String safeguard) {
        return editions(
                named.stream()
                        .filter(Named::inForce)
                        .filter(one -> one.onlyFor.isEmpty() || one.onlyFor.contains(safeguard)),
                subject);
    }

    /** The editions that are named for comparison only. */
    public List<Edition> compared() {
        return editions(named.stream().filter(one -> !one.inForce), Edition.class);
    }

    /** How stops are measured: the strictest of what the editions in force ask; empty when none of them tells. */
    public Optional<StopMeasurement> stopMeasurement() {
        return inForce(PositioningStandard.class).stream()
                .map(PositioningStandard::stopMeasurement)
                .flatMap(Optional::stream)
                .reduce(StopMeasurement::and);
    }

    private static <E extends Edition> List<E> editions(Stream<Named> named, Class<E> subject) {
        return named.map(Named::edition)
                .filter(subject::isInstance)
                .map(subject::cast)
                .distinct()
                .toList();
    }
}
