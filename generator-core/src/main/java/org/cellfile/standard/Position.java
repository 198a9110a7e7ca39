package org.cellfile.standard;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cellfile.trace.Derived;

/**
 * What an edition asks of the position of a safeguard.
 *
 * @param distance the separation distance, or what it is not less than while something is {@code open}, in mm
 * @param longestTime the longest overall response time the installed distance allows, in s; empty where no time counts
 * @param parts what these rest on, in the order to be read
 * @param limits bounds on figures of the device, by name; only those that the edition has and that apply to it
 * @param strict true when the safeguard must stand further away than the distance, not at it
 * @param open what the edition asks besides and is not publicly known; then the distance is a lower bound, which can refuse a
 *     safeguard and never clear it
 * @param remarks sentences to be printed beside the working
 */
public record Position(
        Derived distance,
        Optional<Derived> longestTime,
        List<Derived> parts,
        List<Derived> limits,
        boolean strict,
        Optional<Open> open,
        List<String> remarks) {

    /**
     * What is not known of an edition.
     *
     * @param because a sentence without a full stop
     * @param help what to do
     */
    public record Open(String because, String help) {}

    public Position {
        parts = List.copyOf(parts);
        limits = List.copyOf(limits);
        remarks = List.copyOf(remarks);
    }

    /** A complete rule, at or above whose distance a safeguard may stand. */
    public static Position of(Derived distance, Derived longestTime, List<Derived> parts, List<Derived> limits) {
        return new Position(distance, Optional.of(longestTime), parts, limits, false, Optional.empty(), List.of());
    }

    /** The same where the distance itself is not enough. */
    public Position further() {
        return new Position(distance, longestTime, parts, limits, true, open, remarks);
    }

    /** The same as a lower bound only. */
    public Position atLeast(Open unknown) {
        return new Position(distance, longestTime, parts, limits, strict, Optional.of(unknown), remarks);
    }

    /** The same with a sentence to be printed beside it. */
    public Position remark(String sentence) {
        List<String> all = new ArrayList<>(remarks);
        all.add(sentence);
        return new Position(distance, longestTime, parts, limits, strict, open, all);
    }

    /** The same with a number at the symbols of distance and time, to tell several editions apart. */
    public Position numbered(int number) {
        return new Position(
                distance.numbered(number),
                longestTime.map(longest -> longest.numbered(number)),
                parts,
                limits,
                strict,
                open,
                remarks);
    }

    /** The part of that name, which the edition is known to have. */
    public Derived part(String name) {
        return named(parts, name).orElseThrow();
    }

    /** The limit of that name, if the edition has one that applies. */
    public Optional<Derived> limit(String name) {
        return named(limits, name);
    }

    private static Optional<Derived> named(List<Derived> derived, String name) {
        return derived.stream().filter(one -> one.name().equals(name)).findFirst();
    }
}
