package org.cellfile.subject.identity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cellfile.claim.Claim;
import org.cellfile.claim.Recomputed;
import org.cellfile.claim.Recorded;
import org.cellfile.claim.Relation;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.quantity.Unit;
import org.cellfile.source.Stated;
import org.cellfile.standard.RobotStandard;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Given;
import org.cellfile.trace.Least;
import org.cellfile.trace.Sum;
import org.cellfile.trace.Term;

/** What a robot carries and how fast it may go, recomputed. */
public final class RobotLoad implements Recomputed {

    /** Tool and part are heavier than the robot may carry. */
    public static final FindingId OVERLOADED = new FindingId("robot.overloaded");

    /** Manual reduced speed is above the edition's limit. */
    public static final FindingId TOO_FAST = new FindingId("robot.manual-speed-too-high");

    private final Robot robot;
    private final Derived handledMass;
    private final Optional<Derived> manualSpeed;

    /**
     * @param standards in force; where several limit the speed, the least limit counts
     */
    public RobotLoad(Robot robot, List<RobotStandard> standards) {
        this.robot = robot;
        String tag = robot.tag().characters();
        handledMass = new Derived(
                tag,
                "handled-mass",
                "mass of tool and part",
                "m",
                "sum of the masses",
                Sum.of(
                        new Given("m_T", "mass of the tool", robot.tool().mass()),
                        new Given("m_P", "mass of the part", robot.part().mass())),
                Rounding.up(Quantity.of("0.1", Unit.KILOGRAM)));
        manualSpeed = manualSpeed(tag, standards, robot.manualReducedSpeed());
    }

    /**
     * What manual reduced speed is held against; empty where no edition in force has a limit.
     *
     * @param stated in whose unit it is printed
     */
    public static Optional<Derived> manualSpeed(String tag, List<RobotStandard> standards, Stated<Quantity> stated) {
        List<Term> limits =
                standards.stream().<Term>map(RobotStandard::manualReducedSpeed).toList();
        return limits.isEmpty()
                ? Optional.empty()
                : Optional.of(new Derived(
                        tag,
                        "manual-reduced-limit",
                        "limit of manual reduced speed",
                        "v_max",
                        standards.stream().map(RobotStandard::id).collect(Collectors.joining(" and ")),
                        limits.size() == 1 ? limits.get(0) : new Least(limits),
                        Rounding.down(Quantity.of("1", Unit.MILLIMETRE_PER_SECOND))
                                .beside(stated.value())));
    }

    public Robot robot() {
        return robot;
    }

    @Override
    public String tag() {
        return robot.tag().characters();
    }

    @Override
    public List<Derived> derived() {
        List<Derived> derived = new ArrayList<>(List.of(handledMass));
        manualSpeed.ifPresent(derived::add);
        return derived;
    }

    @Override
    public Recorded recorded() {
        return robot.recorded();
    }

    @Override
    public List<Claim> requirements() {
        List<Claim> claims = new ArrayList<>(
                List.of(
                        new Claim(
                                "payload",
                                robot.payload(),
                                Relation.AT_LEAST,
                                handledMass,
                                OVERLOADED,
                                "use a lighter tool, or a robot for the mass it has to carry; stopping times measured with less do not hold")));
        manualSpeed.ifPresent(
                limit -> claims.add(
                        new Claim(
                                "manual reduced speed",
                                robot.manualReducedSpeed(),
                                Relation.AT_MOST,
                                limit,
                                TOO_FAST,
                                "set the robot's manual reduced speed to the limit or below, and measure it at the tool centre point")));
        return claims;
    }

    @Override
    public List<Finding> faults() {
        return List.of();
    }
}
