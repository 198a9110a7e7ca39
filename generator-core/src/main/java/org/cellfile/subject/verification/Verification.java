package org.cellfile.subject.verification;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.cellfile.finding.Finding;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.subject.complement.ComplementaryDevice;
import org.cellfile.subject.due.Due;
import org.cellfile.subject.function.ControlSystem;
import org.cellfile.subject.identity.Identity;
import org.cellfile.subject.identity.Robot;
import org.cellfile.subject.mode.Mode;
import org.cellfile.subject.register.Change;
import org.cellfile.subject.register.Registers;
import org.cellfile.subject.safeguard.Safeguard;
import org.cellfile.subject.verification.RequiredTest.Outcome;

/** The function tests of a cell: which have to be done, and what was planned and recorded of them. */
public final class Verification {

    /**
     * What was stated about tests.
     *
     * @param plan the intervals
     * @param rounds in the order written
     */
    public record Records(List<TestPlan> plan, List<Round> rounds) {
        public static Records read(Section top) {
            return new Records(
                    Section.each(top.listIfStated("test-plan"), TestPlan::read),
                    Section.each(top.listIfStated("tests"), Round::read));
        }
    }

    private final Records records;
    private final Identity identity;
    private final ControlSystem.Described controlSystem;
    private final List<Mode> modes;
    private final Registers registers;
    private final List<Reached> reached;
    private final List<Tested> things;
    private final List<RequiredTest> required;

    public Verification(
            Records records,
            Identity identity,
            List<Safeguard> safeguards,
            List<ComplementaryDevice> devices,
            ControlSystem.Described controlSystem,
            List<Mode> modes,
            Registers registers) {
        this.records = records;
        this.identity = identity;
        this.controlSystem = controlSystem;
        this.modes = modes;
        this.registers = registers;
        this.reached = registers.changes().stream()
                .map(change -> new Reached(change, reached(change, controlSystem)))
                .toList();
        this.things = Stream.of(
                        safeguards.stream().map(Tested::of),
                        devices.stream().map(Tested::of),
                        identity.robots().stream().map((Robot robot) -> Tested.of(robot)))
                .flatMap(each -> each)
                .filter(thing -> thing.tag().value().isPresent())
                .toList();
        this.required =
                things.stream().flatMap(thing -> required(thing).stream()).toList();
    }

    /** What a change touches, and what acts through that. */
    private record Reached(Change change, Set<String> things) {}

    private static Set<String> reached(Change change, ControlSystem.Described controlSystem) {
        Set<String> things = new HashSet<>();
        change.touches().stream().map(Stated::characters).forEach(touched -> {
            things.add(touched);
            things.addAll(controlSystem.triggers(touched));
        });
        return things;
    }

    private List<RequiredTest> required(Tested thing) {
        Protocol protocol = thing.protocol();
        List<RequiredTest> tests = new ArrayList<>();
        for (Protocol.Test test : protocol.tests()) {
            if (test.periodic()) {
                for (Optional<Mode> mode : modesOf(thing, test)) {
                    tests.add(new RequiredTest(
                            thing,
                            protocol,
                            test,
                            mode,
                            plan().stream()
                                    .filter(plan -> plan.covers(thing, test))
                                    .toList(),
                            outcomes(thing, test, mode)));
                }
            }
        }
        return tests;
    }

    /**
     * The modes in which a test is due; one that stands for all when it is not tied to modes. What acts in no mode is tested all the
     * same, since that it does not act is said elsewhere and may be a slip.
     */
    private List<Optional<Mode>> modesOf(Tested thing, Protocol.Test test) {
        List<Optional<Mode>> fitting = modes.stream()
                .filter(mode -> possible(thing, test, mode))
                .map(Optional::of)
                .toList();
        boolean tied = test.everyMode() && !fitting.isEmpty();
        return tied || test.onlyIn().isPresent() ? fitting : List.of(Optional.empty());
    }

    /** True when a test of a thing can be done in a mode. */
    static boolean possible(Tested thing, Protocol.Test test, Mode mode) {
        return (!test.everyMode() || thing.actsIn(mode))
                && test.onlyIn().map(mode::is).orElse(true);
    }

    private List<Outcome> outcomes(Tested thing, Protocol.Test test, Optional<Mode> mode) {
        return rounds().stream()
                .filter(round -> mode.isEmpty()
                        || round.mode().value().isEmpty()
                        || round.mode().value().equals(mode.get().tag().value()))
                .flatMap(round -> round.results().stream()
                        .filter(result -> result.tells(thing, test))
                        .map(result -> new Outcome(round, result)))
                .toList();
    }

    public List<Round> rounds() {
        return records.rounds();
    }

    List<TestPlan> plan() {
        return records.plan();
    }

    Identity identity() {
        return identity;
    }

    List<Mode> modes() {
        return modes;
    }

    Registers registers() {
        return registers;
    }

    /** Everything that is tested, in the order described. */
    public List<Tested> things() {
        return things;
    }

    List<RequiredTest> required() {
        return required;
    }

    /** The thing with that tag. */
    Optional<Tested> thing(Stated<String> tag) {
        return things.stream()
                .filter(thing -> thing.tag().value().equals(tag.value()))
                .findFirst();
    }

    /** The mode with that tag. */
    Optional<Mode> mode(Stated<String> tag) {
        return modes.stream()
                .filter(mode -> mode.tag().value().equals(tag.value()))
                .findFirst();
    }

    /** The things that change touches and through which a thing acts; the thing itself, where it is touched. */
    List<String> through(Change change, String thing) {
        return change.touches().stream()
                .map(Stated::characters)
                .filter(touched ->
                        touched.equals(thing) || controlSystem.triggers(touched).contains(thing))
                .toList();
    }

    /**
     * The day since which every test of a thing stands passed: that of the oldest of the latest passes. Empty when one of them is
     * missing, or nothing of it is tested.
     */
    public Optional<LocalDate> passedSince(String thing) {
        List<Optional<LocalDate>> passes = passes(thing);
        return passes.stream().allMatch(Optional::isPresent)
                ? passes.stream().flatMap(Optional::stream).min(Comparator.naturalOrder())
                : Optional.empty();
    }

    /** The day of the latest pass of any test of a thing. */
    public Optional<LocalDate> latestPass(String thing) {
        return passes(thing).stream().flatMap(Optional::stream).max(Comparator.naturalOrder());
    }

    private List<Optional<LocalDate>> passes(String thing) {
        return required.stream()
                .filter(test -> test.tag().equals(thing))
                .map(test -> test.latestPass().map(Outcome::on))
                .toList();
    }

    /** The changes that touch a thing, or something through which it acts, and are later than a result of it. */
    List<Change> changesSince(RequiredTest test, Outcome outcome) {
        return reached.stream()
                .filter(one -> one.things().contains(test.tag()))
                .map(Reached::change)
                .filter(change ->
                        change.on().value().filter(outcome.on()::isBefore).isPresent())
                .toList();
    }

    /** What falls due of them. */
    public List<Due> dues() {
        return required.stream()
                .map(RequiredTest::due)
                .flatMap(Optional::stream)
                .toList();
    }

    /** What does not hold. */
    public List<Finding> findings() {
        return Stream.concat(new RecordFaults(this).findings().stream(), new OpenTests(this).findings().stream())
                .toList();
    }
}
