package org.cellfile.subject.safeguard;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cellfile.claim.Claim;
import org.cellfile.finding.Finding;
import org.cellfile.standard.Position;
import org.cellfile.trace.Derived;

/**
 * What the editions in force ask of a safeguard's position.
 *
 * @param position the separation distance and what comes with it
 * @param others further derived values, in the order to be read
 * @param requirements what must hold besides the distance
 * @param faults what is wrong and not a claim
 * @param margins what is left at places of the safeguard that have a distance of their own
 */
public record Positioning(
        Position position, List<Derived> others, List<Claim> requirements, List<Finding> faults, List<Margin> margins) {

    public Positioning {
        others = List.copyOf(others);
        requirements = List.copyOf(requirements);
        faults = List.copyOf(faults);
        margins = List.copyOf(margins);
    }

    /** As an edition gave it. */
    static Positioning of(Position position, List<Claim> requirements, List<Finding> faults) {
        return with(position, List.of(), requirements, faults);
    }

    /** The same with values that the kind derived itself, which are read first. */
    static Positioning with(Position position, List<Derived> first, List<Claim> requirements, List<Finding> faults) {
        List<Derived> others = new ArrayList<>(first);
        others.addAll(position.parts());
        others.addAll(position.limits());
        return new Positioning(position, others, requirements, faults, List.of());
    }

    /** The same with what something else demands. */
    Positioning and(Demands demands) {
        Demands all = Demands.of(List.of(new Demands(others, requirements, faults, margins), demands));
        return new Positioning(position, all.derived(), all.claims(), all.faults(), all.margins());
    }

    /** The same as the one of several editions with that number, so that their symbols can be told apart. */
    Positioning numbered(int number) {
        return new Positioning(position.numbered(number), others, requirements, faults, margins);
    }

    public Derived distance() {
        return position.distance();
    }

    /** The longest overall response time the installed distance allows; empty for kinds that stop nothing. */
    public Optional<Derived> longestTime() {
        return position.longestTime();
    }
}
