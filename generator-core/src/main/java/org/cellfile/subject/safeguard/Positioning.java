package org.cellfile.subject.safeguard;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cellfile.claim.Claim;
import org.cellfile.finding.Finding;
import org.cellfile.standard.PositioningStandard.Position;
import org.cellfile.trace.Derived;

/**
 * What the editions in force ask of a safeguard's position.
 *
 * @param distance the separation distance
 * @param longestTime the longest overall response time the installed distance allows; empty for kinds that stop nothing
 * @param others further derived values, in the order to be read
 * @param requirements what must hold besides the distance
 * @param faults what is wrong and not a claim
 */
public record Positioning(
        Derived distance,
        Optional<Derived> longestTime,
        List<Derived> others,
        List<Claim> requirements,
        List<Finding> faults) {

    /** As an edition gave it. */
    static Positioning of(Position position, List<Claim> requirements, List<Finding> faults) {
        List<Derived> others = new ArrayList<>(position.parts());
        others.addAll(position.limits());
        return new Positioning(position.distance(), Optional.of(position.longestTime()), others, requirements, faults);
    }
}
