package org.cellfile.subject.mode;

import java.util.List;
import java.util.Map;
import java.util.Optional;
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
import org.cellfile.standard.EmergencyStopStandard;
import org.cellfile.standard.RobotStandard;
import org.cellfile.standard.Standards;
import org.cellfile.subject.complement.ComplementaryDevice;
import org.cellfile.subject.complement.Demands;
import org.cellfile.subject.complement.EmergencyStop;
import org.cellfile.subject.complement.EnablingDevice;
import org.cellfile.subject.complement.Sort;
import org.cellfile.subject.identity.RobotLoad;
import org.cellfile.subject.safeguard.Safeguard;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Given;
import org.cellfile.trace.Reference;

/** A mode of the cell, held against what is asked of it: one column of the mode matrix. */
public final class Operation implements Recomputed {

    /** The mode lets the robot go faster than manual reduced speed may be. */
    public static final FindingId TOO_FAST = new FindingId("mode.speed-too-high");

    /** No emergency stop acts. */
    public static final FindingId NO_EMERGENCY_STOP = new FindingId("mode.no-emergency-stop");

    /** An emergency stop of the cell does not act. */
    public static final FindingId LEFT_OUT = new FindingId("mode.emergency-stop-left-out");

    /** A device is named for what it is not. */
    public static final FindingId ANOTHER_DEVICE = new FindingId("mode.another-device");

    /** Something measured at a collaborative cell is on the wrong side of its limit. */
    public static final FindingId BEYOND_LIMIT = new FindingId("mode.collaborative-limit");

    private final Mode mode;
    private final Demands demands;

    /**
     * @param safeguards of the cell
     * @param devices that complement them
     */
    public Operation(Mode mode, List<Safeguard> safeguards, List<ComplementaryDevice> devices, Standards standards) {
        this.mode = mode;
        this.demands = new Demands(tag());
        List<RobotStandard> robots = standards.inForce(RobotStandard.class);
        speed(robots);
        new Inside(mode, devices, demands).hold(robots);
        collaborativeClaims();
        only(mode.enablingDevices(), EnablingDevice.class, "an enabling device", devices);
        only(mode.emergencyStops(), EmergencyStop.class, "an emergency stop", devices);
        emergencyStops(
                devices,
                standards.inForce(EmergencyStopStandard.class).stream()
                        .findFirst()
                        .map(EmergencyStopStandard::availability));
        new SafeguardStates(mode, safeguards, demands).hold();
    }

    private void speed(List<RobotStandard> robots) {
        if (mode.is(Mode.MANUAL_REDUCED_SPEED)) {
            RobotLoad.manualSpeed(tag(), robots, mode.speedLimit())
                    .ifPresent(
                            limit -> demands.bound(
                                    "speed limit",
                                    mode.speedLimit(),
                                    Relation.AT_MOST,
                                    limit,
                                    TOO_FAST,
                                    "limit the speed of the tool centre point in this mode to that, and see at the robot that it is"));
        }
    }

    private void collaborativeClaims() {
        for (Mode.CollaborativeClaim claim : mode.claims()) {
            if (claim.comparable()) {
                demands.bound(
                        claim.name().characters(),
                        claim.measured(),
                        claim.atMost() ? Relation.AT_MOST : Relation.AT_LEAST,
                        limit(claim, demands.bounds().size() + 1),
                        BEYOND_LIMIT,
                        "change the application until it holds, and measure again; until then nobody is inside in this mode");
            }
        }
    }

    private Derived limit(Mode.CollaborativeClaim claim, int number) {
        String name = claim.name().characters();
        Quantity step = claim.limit().value().map(Quantity::lastDigit).orElse(Quantity.of("1", Unit.ONE));
        return new Derived(
                tag(),
                "limit-" + number,
                (claim.atMost() ? "highest " : "least ") + name,
                "l_" + number,
                claim.source().characters(),
                new Given("l", "limit, " + claim.source().characters(), claim.limit()),
                claim.atMost() ? Rounding.down(step) : Rounding.up(step));
    }

    private void only(
            List<Stated<String>> named, Class<? extends Sort> sort, String due, List<ComplementaryDevice> devices) {
        for (Stated<String> tag : named) {
            Inside.device(tag, devices)
                    .filter(device -> !sort.isInstance(device.sort()))
                    .ifPresent(device -> demands.fault(
                            ANOTHER_DEVICE,
                            tag,
                            "names `" + tag.characters() + "` where " + due + " is due",
                            "`" + tag.characters() + "` is described at "
                                    + device.tag().where().position(),
                            "name the device that is meant"));
        }
    }

    /** Every one acts in every mode: ISO 13850, where it is in force, and common practice where no edition is. */
    private void emergencyStops(List<ComplementaryDevice> devices, Optional<Reference> availability) {
        List<ComplementaryDevice> all = devices.stream()
                .filter(device -> device.sort() instanceof EmergencyStop)
                .toList();
        List<String> leftOut = all.stream()
                .filter(device -> !mode.stopsBy(device))
                .map(device -> device.tag().characters())
                .toList();
        Optional<Finding> found = Optional.empty();
        if (mode.emergencyStops().isEmpty()) {
            found = Optional.of(Finding.refuses(
                    NO_EMERGENCY_STOP,
                    tag(),
                    mode.tag().where(),
                    "`" + tag() + "` names no emergency stop that acts",
                    "list under `emergency-stops` all that act in this mode; each of the cell has to"));
        } else if (!leftOut.isEmpty()) {
            found = Optional.of(
                    Finding.refuses(
                            LEFT_OUT,
                            tag(),
                            mode.emergencyStops().get(0).where(),
                            "`" + tag() + "` leaves out `" + String.join("`, `", leftOut) + "`",
                            "see at the machine that it acts in this mode too, and list it; one that does not act has to be changed"));
        }
        String stated = leftOut.isEmpty() ? "all " + all.size() : "without " + String.join(", ", leftOut);
        if (availability.isPresent() && !all.isEmpty()) {
            demands.rule(availability.get(), stated, found);
        } else {
            demands.practice("an emergency stop acts in every mode", Demands.TRADE, stated, found);
        }
    }

    public Mode mode() {
        return mode;
    }

    Demands demands() {
        return demands;
    }

    /** Every rule in words of an edition that it was held against. */
    public List<Reference> rules() {
        return demands.rules();
    }

    @Override
    public String tag() {
        return mode.tag().characters();
    }

    @Override
    public List<Derived> derived() {
        return demands.bounds();
    }

    /** Nothing: what bounds a mode is fixed or stated. */
    @Override
    public Recorded recorded() {
        return new Recorded(tag(), mode.tag().where(), Map.of());
    }

    @Override
    public List<Claim> requirements() {
        return demands.claims();
    }

    @Override
    public List<Finding> faults() {
        return demands.faults();
    }
}
