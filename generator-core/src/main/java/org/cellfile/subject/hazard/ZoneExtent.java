package org.cellfile.subject.hazard;

import java.util.List;
import java.util.Optional;
import org.cellfile.claim.Claim;
import org.cellfile.claim.Recomputed;
import org.cellfile.claim.Recorded;
import org.cellfile.claim.Relation;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.subject.identity.Robot;
import org.cellfile.subject.stopping.StopEvidence;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Given;
import org.cellfile.trace.Sum;

/** How far a robot gets in its zone, recomputed: reach, tool, part and the overrun of the stop. */
public final class ZoneExtent implements Recomputed {

    /** The robot gets further than its hazard zone. */
    public static final FindingId TOO_SMALL = new FindingId("zone.too-small");

    private final Zone zone;
    private final List<Derived> needed;

    /** Robot and stop evidence are absent when a limitation bounds the zone, or when they were not described. */
    public ZoneExtent(Zone zone, Optional<Robot> robot, Optional<StopEvidence> overrun) {
        this.zone = zone;
        this.needed = zone.limitation().isPresent() || robot.isEmpty() || overrun.isEmpty()
                ? List.of()
                : List.of(needed(zone, robot.get(), overrun.get()));
    }

    private static Derived needed(Zone zone, Robot robot, StopEvidence overrun) {
        return new Derived(
                zone.tag().characters(),
                "needed-extent",
                "extent the robot needs",
                "r",
                "sum of the lengths",
                Sum.of(
                        new Given("l_R", "reach of the robot", robot.reach()),
                        new Given("l_T", "length of the tool", robot.tool().length()),
                        new Given(
                                "l_P",
                                "length of the part beyond the tool",
                                robot.part().length()),
                        overrun.carriedDistance()),
                Rounding.up(Quantity.millimetres("1")).beside(zone.extent().value()));
    }

    public Zone zone() {
        return zone;
    }

    @Override
    public String tag() {
        return zone.tag().characters();
    }

    @Override
    public List<Derived> derived() {
        return needed;
    }

    @Override
    public Recorded recorded() {
        return zone.recorded();
    }

    @Override
    public List<Claim> requirements() {
        return needed.stream()
                .map(one -> new Claim(
                        "extent",
                        zone.extent(),
                        Relation.AT_LEAST,
                        one,
                        TOO_SMALL,
                        "enlarge the hazard zone and measure the distances to it again, or name the limitation that keeps the"
                                + " robot in"))
                .toList();
    }

    @Override
    public List<Finding> faults() {
        return List.of();
    }
}
