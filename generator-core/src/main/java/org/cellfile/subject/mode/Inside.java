package org.cellfile.subject.mode;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.source.Stated;
import org.cellfile.standard.Edition;
import org.cellfile.standard.RobotStandard;
import org.cellfile.subject.complement.ComplementaryDevice;
import org.cellfile.subject.complement.Demands;
import org.cellfile.subject.complement.EnablingDevice;
import org.cellfile.trace.Reference;

/** Who may be inside in one mode, and what that person needs. */
final class Inside {

    static final FindingId IN_AUTOMATIC = new FindingId("mode.inside-in-automatic");

    /** Somebody may be inside, and nobody says who. */
    static final FindingId NOT_NAMED = new FindingId("mode.nobody-named");

    static final FindingId NO_ENABLING_DEVICE = new FindingId("mode.no-enabling-device");
    static final FindingId TOO_FEW = new FindingId("mode.too-few-enabling-devices");

    /** An enabling device without hold-to-run in a mode that is said to have it. */
    static final FindingId CONTRADICTION = new FindingId("mode.enabling-without-hold-to-run");

    static final FindingId NO_HOLD_TO_RUN = new FindingId("mode.no-hold-to-run");

    /** Somebody else can start the robot while it is moved by hand. */
    static final FindingId REMOTE_START = new FindingId("mode.remote-start");

    static final FindingId AT_HIGH_SPEED = new FindingId("mode.inside-at-high-speed");

    /** One person is inside in manual high speed, where the edition permits it. */
    static final FindingId TO_JUSTIFY = new FindingId("mode.high-speed-to-justify");

    /** What a collaborative mode rests on was not stated. */
    static final FindingId NO_CLAIMS = new FindingId("mode.no-collaborative-claims");

    private static final String EACH_HOLDS_ONE =
            "a maker's manual of a robot control (published); by the law of Alberta nobody but the holder of the pendant is"
                    + " inside (Occupational Health and Safety Code, s. 385, published)";
    private static final String HOLD_TO_RUN =
            "common practice; a maker's documentation of manual moves (published) cites ISO 10218-1, cl. 5.7.3, for it";
    private static final String LOCKED_OUT =
            "law of Alberta (Occupational Health and Safety Code, s. 385, published); common practice elsewhere";

    private final Mode mode;
    private final List<ComplementaryDevice> devices;
    private final Demands demands;
    private final int persons;

    Inside(Mode mode, List<ComplementaryDevice> devices, Demands demands) {
        this.mode = mode;
        this.devices = devices;
        this.demands = demands;
        this.persons = mode.inside();
    }

    void hold(List<RobotStandard> robots) {
        if (mode.is(Mode.AUTOMATIC)) {
            demands.practice(
                    "nobody is inside in automatic",
                    Demands.TRADE,
                    words(),
                    found(
                            persons > 0,
                            IN_AUTOMATIC,
                            mode.persons(),
                            "runs the cell by itself with " + words() + " inside",
                            "keep everybody out in this mode; work that needs somebody inside is done in a manual mode, or in a"
                                    + " collaborative one with what it rests on"));
            return;
        }
        who();
        if (mode.is(Mode.COLLABORATIVE)) {
            claims();
            return;
        }
        if (mode.manual() || persons > 0) {
            enabling();
            remoteStart();
        }
        if (mode.manual()) {
            holdToRun();
        }
        if (mode.is(Mode.MANUAL_HIGH_SPEED)) {
            highSpeed(robots);
        }
    }

    private void who() {
        if (persons > 0) {
            demands.practice(
                    "who may be inside is named",
                    Demands.TRADE,
                    mode.who().value().orElse("nobody named"),
                    found(
                            mode.who().value().isEmpty(),
                            NOT_NAMED,
                            mode.persons(),
                            "lets " + words() + " be inside and does not say who",
                            "say under `who` which trained person that is"));
        }
    }

    private void claims() {
        demands.practice(
                "people and robot share a space only where values were measured and held against limits",
                Demands.TRADE,
                mode.claims().size() + " measured",
                found(
                        mode.claims().isEmpty(),
                        NO_CLAIMS,
                        mode.sort(),
                        "is collaborative, and nothing it rests on is stated",
                        "state under `collaborative-claims` what was measured, its limit and where the limit comes from"));
    }

    private void enabling() {
        List<Stated<String>> named = mode.enablingDevices();
        boolean otherThings = named.stream()
                .flatMap(tag -> device(tag, devices).stream())
                .anyMatch(device -> !(device.sort() instanceof EnablingDevice));
        long held = named.stream().map(Stated::characters).distinct().count();
        // More than one person at high speed is refused as such.
        int needed = mode.is(Mode.MANUAL_HIGH_SPEED) ? 1 : Math.max(persons, mode.manual() ? 1 : 0);
        boolean tooFew = held < needed && !otherThings;
        demands.practice(
                "whoever moves the robot by hand, and each person inside, holds an enabling device",
                EACH_HOLDS_ONE,
                words() + ", " + (named.isEmpty() ? "no enabling device" : tags(named)),
                tooFew && named.isEmpty()
                        ? found(
                                true,
                                NO_ENABLING_DEVICE,
                                mode.persons(),
                                "names no enabling device",
                                "list under `enabling-devices` the one that whoever moves the robot holds, and one for each"
                                        + " person inside")
                        : found(
                                tooFew,
                                TOO_FEW,
                                mode.persons(),
                                "lets " + words() + " be inside and names " + held + " enabling device"
                                        + (held == 1 ? "" : "s"),
                                "let only as many people in as hold an enabling device each, and let them see each other"));
        named.stream()
                .filter(tag -> mode.holdToRun().characters().equals("yes"))
                .filter(tag -> device(tag, devices)
                        .filter(device -> device.sort() instanceof EnablingDevice enabling
                                && enabling.holdToRun().characters().equals("no"))
                        .isPresent())
                .forEach(tag -> demands.fault(
                        CONTRADICTION,
                        tag,
                        "has hold-to-run, and its enabling device `" + tag.characters() + "` has none",
                        "`hold-to-run` is `yes` at " + mode.holdToRun().where().position()
                                + " and `no` where the device is described",
                        "see at the machine whether the movement stops when the control is let go, and correct the entry that is"
                                + " wrong"));
    }

    private void holdToRun() {
        demands.practice(
                "in a manual mode the robot moves only while a control is held",
                HOLD_TO_RUN,
                mode.holdToRun().characters(),
                found(
                        mode.holdToRun().characters().equals("no"),
                        NO_HOLD_TO_RUN,
                        mode.holdToRun(),
                        "moves the robot without hold-to-run",
                        "have the movement end when the control is let go"));
    }

    private void remoteStart() {
        demands.practice(
                "nothing but the pendant starts the robot while somebody moves it by hand or is inside",
                LOCKED_OUT,
                mode.remoteStart().characters(),
                found(
                        mode.remoteStart().characters().equals("possible"),
                        REMOTE_START,
                        mode.remoteStart(),
                        "lets the robot be started from elsewhere",
                        "have every command and signal from outside locked out in this mode"));
    }

    /** The trade: nobody under the edition of 2025 (published), before that one trained person (from memory). */
    private void highSpeed(List<RobotStandard> robots) {
        Optional<Reference> nobody = robots.stream()
                .map(RobotStandard::nobodyInsideAtHighSpeed)
                .flatMap(Optional::stream)
                .findFirst();
        String said = "moves the robot at high speed with " + words() + " inside";
        if (nobody.isPresent()) {
            demands.rule(
                    nobody.get(),
                    words(),
                    found(
                            persons > 0,
                            AT_HIGH_SPEED,
                            mode.persons(),
                            said,
                            "use this mode from outside the safeguards only, or do the work at reduced speed"));
            return;
        }
        demands.practice(
                "at most one trained person is inside in manual high speed, and that is justified",
                Demands.TRADE,
                words(),
                found(
                        persons > 1,
                        AT_HIGH_SPEED,
                        mode.persons(),
                        said,
                        "let one trained person in at the most, and only where the risk assessment justifies it"));
        if (persons == 1) {
            String editions = robots.stream().map(Edition::id).collect(Collectors.joining(" and "));
            demands.remark(
                    Finding.warns(
                                    TO_JUSTIFY,
                                    tag(),
                                    mode.persons().where(),
                                    "`" + tag() + "` " + said,
                                    "say in the risk assessment why the work can be done neither at reduced speed nor from outside, and"
                                            + " who is trained for it")
                            .because(
                                    List.of(
                                            editions
                                                    + " permits one trained person where that is justified (from memory)",
                                            "ISO 10218-1:2025 permits nobody (published: robot-safety.net, does T2 mode become history)")));
        }
    }

    private Optional<Finding> found(boolean broken, FindingId id, Stated<?> at, String said, String help) {
        return Optional.of(Finding.refuses(id, tag(), at.where(), "`" + tag() + "` " + said, help))
                .filter(finding -> broken);
    }

    private String tag() {
        return mode.tag().characters();
    }

    private String words() {
        return persons == 0 ? "nobody" : persons == 1 ? "1 person" : persons + " persons";
    }

    static Optional<ComplementaryDevice> device(Stated<String> tag, List<ComplementaryDevice> devices) {
        return devices.stream()
                .filter(device -> device.tag().value().equals(tag.value()))
                .findFirst();
    }

    static String tags(List<Stated<String>> tags) {
        return tags.stream().map(Stated::characters).distinct().collect(Collectors.joining(", "));
    }
}
