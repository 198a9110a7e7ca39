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
 */
record Demands(List<Derived> derived, List<Claim> claims, List<Finding> faults) {

    static final Demands NONE = new Demands(List.of(), List.of(), List.of());

    Demands {
        derived = List.copyOf(derived);
        claims = List.copyOf(claims);
        faults = List.copyOf(faults);
    }

    /** Those of several parts together. */
    static Demands of(List<Demands> parts) {
        return new Demands(all(parts, Demands::derived), all(parts, Demands::claims), all(parts, Demands::faults));
    }

    private static <T> List<T> all(List<Demands> parts, Function<Demands, List<T>> which) {
        return parts.stream().flatMap(part -> which.apply(part).stream()).toList();
    }
}
