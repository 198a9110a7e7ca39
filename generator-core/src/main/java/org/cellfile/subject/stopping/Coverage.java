package org.cellfile.subject.stopping;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.cellfile.claim.Claim;
import org.cellfile.claim.Relation;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.quantity.Unit;
import org.cellfile.source.Stated;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Given;
import org.cellfile.trace.Greatest;
import org.cellfile.trace.Term;

/**
 * Whether a stop was measured with what the machine is used with. Worst-case operating conditions decide: DGUV 209-030, testing of
 * presses, annex 9; that load, speed and extension have to be reached by one condition together is drawn from that.
 */
public final class Coverage {

    /** Nobody has said with what the machine is used. */
    public static final FindingId NOT_STATED = new FindingId("coverage.not-stated");

    /** What a robot tells is stated beside it as well. */
    public static final FindingId STATED_TWICE = new FindingId("coverage.stated-twice");

    /** The machine is used with more than the stop was measured with. */
    public static final FindingId BEYOND_MEASURED = new FindingId("coverage.beyond-measured");

    /** No single condition reaches all that the machine is used with. */
    public static final FindingId NOT_TOGETHER = new FindingId("coverage.not-together");

    private static final String AGAIN =
            "measure the stop again under a condition with the load, the speed and the extension in use; until then use the"
                    + " machine within what was measured";

    /**
     * Load, speed or extension.
     *
     * @param used empty where nobody has said it
     * @param measured the greatest of the conditions; empty where none could be read
     */
    public record Measure(
            String name,
            Optional<Derived> used,
            Optional<Derived> measured,
            Function<StopCondition, Stated<Quantity>> of) {

        /** True when a condition reaches what is in use; open where one of both is not known. */
        boolean reachedBy(StopCondition condition) {
            return used.flatMap(Derived::value)
                    .flatMap(need -> of.apply(condition).value().map(had -> had.compareTo(need) >= 0))
                    .orElse(true);
        }

        /** True when some condition reaches it. */
        public boolean reached() {
            return used.flatMap(Derived::value)
                    .flatMap(need -> measured.flatMap(Derived::value).map(had -> had.compareTo(need) >= 0))
                    .orElse(false);
        }

        private Optional<Claim> claim(List<StopCondition> conditions) {
            return measured.flatMap(Derived::value)
                    .flatMap(greatest -> conditions.stream()
                            .map(of)
                            .filter(one -> one.value().equals(Optional.of(greatest)))
                            .findFirst())
                    .flatMap(stated -> used.map(need -> new Claim(
                                    "greatest measured " + name,
                                    stated,
                                    Relation.AT_LEAST,
                                    need,
                                    BEYOND_MEASURED,
                                    AGAIN)
                            .barringRelease()));
        }
    }

    private final StopTest test;
    private final List<MovedRobot> robots;
    private final List<Measure> measures;

    /**
     * @param robots whose movement the stop ends; none when it is that of another machine
     */
    Coverage(StopTest test, List<MovedRobot> robots) {
        this.test = test;
        this.robots = List.copyOf(robots);
        UsedAt at = test.usedAt();
        measures = List.of(
                measure(
                        UsedAt.LOAD,
                        "m",
                        robots.isEmpty()
                                ? given("m_s", UsedAt.LOAD, at.load())
                                : greatest(robots.stream()
                                        .<Term>map(MovedRobot::load)
                                        .toList()),
                        StopCondition::load,
                        Quantity.of("0.1", Unit.KILOGRAM)),
                measure(
                        UsedAt.SPEED,
                        "v",
                        robots.isEmpty()
                                ? given("v_s", UsedAt.SPEED, at.speed())
                                : greatest(robots.stream()
                                        .filter(robot -> robot.speed().value().isPresent())
                                        .map(MovedRobot::used)
                                        .toList()),
                        StopCondition::speed,
                        Quantity.of("1", Unit.MILLIMETRE_PER_SECOND)),
                measure(
                        UsedAt.EXTENSION,
                        "e",
                        given("e_s", UsedAt.EXTENSION, at.extension()),
                        StopCondition::extension,
                        Quantity.of("0.1", Unit.PERCENT)));
    }

    private static Optional<Term> given(String symbol, String what, Stated<Quantity> stated) {
        return stated.value().map(value -> new Given(symbol, what + " stated for production", stated));
    }

    private static Optional<Term> greatest(List<Term> terms) {
        return terms.size() < 2 ? terms.stream().findFirst() : Optional.of(new Greatest(terms));
    }

    private Measure measure(
            String name,
            String symbol,
            Optional<Term> used,
            Function<StopCondition, Stated<Quantity>> of,
            Quantity step) {
        List<Stated<Quantity>> read = test.conditions().stream()
                .map(of)
                .filter(one -> one.value().isPresent())
                .toList();
        List<Term> each = new ArrayList<>();
        read.forEach(one -> each.add(
                new Given(Series.symbol(symbol, each.size() + 1, read.size()), name + " of each condition", one)));
        Optional<Quantity> written = read.stream().findFirst().flatMap(Stated::value);
        return new Measure(
                name,
                used.map(term -> new Derived(
                        test.tag().characters(),
                        "used-" + name,
                        name + " in use",
                        symbol + "_u",
                        robots.isEmpty() || name.equals(UsedAt.EXTENSION) ? "as stated" : "the robot",
                        term,
                        Rounding.up(step).beside(written))),
                each.isEmpty()
                        ? Optional.empty()
                        : Optional.of(new Derived(
                                test.tag().characters(),
                                "measured-" + name,
                                "greatest measured " + name,
                                symbol + "_g",
                                "the greatest of the conditions",
                                new Greatest(each),
                                Rounding.down(step).beside(written))),
                of);
    }

    /** Load, speed and extension, in this order. */
    public List<Measure> measures() {
        return measures;
    }

    /** The greatest measured load. */
    Optional<Quantity> measuredLoad() {
        return measures.get(0).measured().flatMap(Derived::value);
    }

    /** The greatest measured speed. */
    Optional<Quantity> measuredSpeed() {
        return measures.get(1).measured().flatMap(Derived::value);
    }

    /** The first condition that reaches all that is known of the use. */
    public Optional<StopCondition> together() {
        return test.conditions().stream()
                .filter(condition -> measures.stream().allMatch(measure -> measure.reachedBy(condition)))
                .findFirst();
    }

    List<Derived> derived() {
        return measures.stream()
                .flatMap(measure -> Stream.concat(measure.used().stream(), measure.measured().stream()))
                .toList();
    }

    List<Claim> requirements() {
        return measures.stream()
                .flatMap(measure -> measure.claim(test.conditions()).stream())
                .toList();
    }

    List<Finding> faults() {
        List<Finding> faults = new ArrayList<>();
        notStated().ifPresent(faults::add);
        statedTwice(UsedAt.LOAD, test.usedAt().load(), "handled-mass").ifPresent(faults::add);
        statedTwice(UsedAt.SPEED, test.usedAt().speed(), "speeds").ifPresent(faults::add);
        notTogether().ifPresent(faults::add);
        return faults;
    }

    private Optional<Finding> notStated() {
        List<String> due = new ArrayList<>(
                robots.isEmpty() ? List.of(UsedAt.LOAD, UsedAt.SPEED, UsedAt.EXTENSION) : List.of(UsedAt.EXTENSION));
        due.removeAll(test.usedAt().written());
        String tag = test.tag().characters();
        return due.isEmpty()
                ? Optional.empty()
                : Optional.of(Finding.barsRelease(
                        NOT_STATED,
                        tag,
                        test.tag().where(),
                        "nobody has said at which " + String.join(" and ", due) + " the movement that `" + tag
                                + "` ends is used in production",
                        "state `" + String.join("`, `", due) + "` under `used-at` as the program in use has it"));
    }

    private Optional<Finding> statedTwice(String key, Stated<Quantity> stated, String told) {
        return robots.isEmpty() || !test.usedAt().written().contains(key)
                ? Optional.empty()
                : Optional.of(Finding.refuses(
                        STATED_TWICE,
                        test.tag().characters(),
                        stated.where(),
                        "the " + key + " of `" + test.tag().characters() + "` is stated under `used-at`, and `"
                                + robots.get(0).robot().tag() + "`, which it stops, tells it as well (`" + told + "`)",
                        "delete it here; tool, part and speeds are stated once, with the robot"));
    }

    private Optional<Finding> notTogether() {
        boolean eachReached = measures.stream().allMatch(Measure::reached);
        if (!eachReached || together().isPresent()) {
            return Optional.empty();
        }
        String tag = test.tag().characters();
        return Optional.of(Finding.barsRelease(
                        NOT_TOGETHER,
                        tag,
                        test.tag().where(),
                        "load, speed and extension in use are each reached by some condition of `" + tag
                                + "`, and no condition reaches all three",
                        AGAIN)
                .because(List.of("worst-case operating conditions decide: DGUV 209-030, testing of presses, annex 9")));
    }
}
