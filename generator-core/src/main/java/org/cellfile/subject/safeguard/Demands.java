package org.cellfile.subject.safeguard;

import java.util.List;
import java.util.function.Function;
import org.cellfile.claim.Claim;
import org.cellfile.finding.Finding;
import org.cellfile.trace.Derived;

/**
 * What one part of a safeguard adds to what is asked of its position.
 *
 * @param derived in the order to be read
 * @param claims what must hold
 * @param faults what is wrong and not a claim
 * @param margins what is left of the distances that were measured at places of the safeguard
 */
record Demands(List<Derived> derived, List<Claim> claims, List<Finding> faults, List<Margin> margins) {

    static final Demands NONE = new Demands(List.of(), List.of(), List.of());

    Demands {
        derived = List.copyOf(derived);
        claims = List.copyOf(claims);
        faults = List.copyOf(faults);
        margins = List.copyOf(margins);
    }

    /** Those of a part without a distance of its own. */
    Demands(List<Derived> derived, List<Claim> claims, List<Finding> faults) {
        this(derived, claims, faults, List.of());
    }

    /** Those of several parts together. */
    static Demands of(List<Demands> parts) {
        return new Demands(
                all(parts, Demands::derived),
                all(parts, Demands::claims),
                all(parts, Demands::faults),
                all(parts, Demands::margins));
    }

    private static <T> List<T> all(List<Demands> parts, Function<Demands, List<T>> which) {
        return parts.stream().flatMap(part -> which.apply(part).stream()).toList();
    }
}
