package org.cellfile.subject.stopping;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.cellfile.claim.Claim;
import org.cellfile.claim.Recomputed;
import org.cellfile.claim.Recorded;
import org.cellfile.claim.Relation;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.standard.StopMeasurement;
import org.cellfile.subject.due.Due;
import org.cellfile.subject.identity.Identity;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Given;
import org.cellfile.trace.Greatest;
import org.cellfile.trace.Term;
import org.cellfile.trace.Withheld;

/** A stop test, recomputed: the governing values over all its conditions, and the claim on what was carried forward. */
public final class StopEvidence implements Recomputed {

    /** The value carried forward is below what the runs give. */
    public static final FindingId CARRIED_TOO_LOW = new FindingId("stopping.carried-too-low");

    /** An edition asks for the machine cold and warm, and one of both was not measured. */
    public static final FindingId ONE_STATE_ONLY = new FindingId("coverage.one-state-only");

    private final StopTest test;
    private final MeasuringRecord record;
    private final StopMeasurement rule;
    private final Coverage coverage;
    private final List<ConditionStatistics> conditions;
    private final Derived time;
    private final Derived distance;

    /**
     * @param robots whose movement the stop ends; none when it is that of another machine
     */
    public StopEvidence(StopTest test, Identity identity, StopMeasurement rule, List<MovedRobot> robots) {
        this.test = test;
        this.rule = rule;
        this.record = new MeasuringRecord(test, identity);
        this.coverage = new Coverage(test, robots);
        List<ConditionStatistics> each = new ArrayList<>();
        test.conditions().forEach(condition -> each.add(new ConditionStatistics(condition, each.size() + 1, rule)));
        this.conditions = List.copyOf(each);
        String clause = rule.deviations().reference().clause().toString();
        this.time =
                governing("time", "t_2", clause, ConditionStatistics::time, Rounding.up(Quantity.seconds("0.0001")));
        this.distance = governing(
                "distance",
                "s_2",
                clause,
                ConditionStatistics::distance,
                Rounding.up(Quantity.millimetres("0.1"))
                        .beside(test.carriedDistance().value()));
    }

    private Derived governing(
            String what,
            String symbol,
            String clause,
            Function<ConditionStatistics, List<Derived>> statistics,
            Rounding rounding) {
        List<Term> each = conditions.stream()
                .map(statistics)
                .filter(list -> !list.isEmpty())
                .<Term>map(list -> list.get(list.size() - 1))
                .toList();
        return new Derived(
                tag(),
                "stopping-" + what,
                "stopping " + what + " over all conditions",
                symbol,
                clause,
                each.isEmpty() ? new Withheld(symbol, "no runs were stated") : new Greatest(each),
                rounding);
    }

    public StopTest test() {
        return test;
    }

    public List<ConditionStatistics> conditions() {
        return conditions;
    }

    /** Stopping time over all conditions. */
    Derived time() {
        return time;
    }

    /** Stopping time and distance over all conditions. */
    public List<Derived> governing() {
        return List.of(time, distance);
    }

    /** Whether it was measured with what the machine is used with. */
    public Coverage coverage() {
        return coverage;
    }

    /**
     * The stopping time the distances go on with: what was stated, which the runs must bear out.
     *
     * @param symbol under which it stands in the sum of the links
     */
    public Given carriedTime(String symbol) {
        return new Given(symbol, "stopping time carried forward, " + test.name().characters(), test.carriedTime());
    }

    /** The time at which a monitor of the brake reports a slow stop, if there is one. */
    public Optional<Given> brakeMonitor() {
        return test.brakeMonitor().value().isPresent()
                ? Optional.of(new Given(
                        "T_a",
                        "time at which the brake monitor reports, "
                                + test.name().characters(),
                        test.brakeMonitor()))
                : Optional.empty();
    }

    /** When it has to be measured again. */
    public Optional<Due> due() {
        return test.repeat()
                .flatMap(repeat -> repeat.every()
                        .value()
                        .flatMap(every -> test.on()
                                .value()
                                .map(day -> new Due(
                                        every.after(day),
                                        tag(),
                                        "measure the stop `" + tag() + "` again",
                                        repeat.source().characters(),
                                        repeat.every().where()))));
    }

    /** The stopping distance the hazard zones go on with. */
    public Given carriedDistance() {
        return new Given(
                "s_2", "stopping distance carried forward, " + test.name().characters(), test.carriedDistance());
    }

    @Override
    public String tag() {
        return test.tag().characters();
    }

    @Override
    public List<Derived> derived() {
        List<Derived> derived = new ArrayList<>(governing());
        derived.addAll(coverage.derived());
        return derived;
    }

    @Override
    public Recorded recorded() {
        return test.recorded().without(StopTrend.PART);
    }

    @Override
    public List<Claim> requirements() {
        String help = "carry forward at least the derived value; a lower one would leave out runs that happened";
        List<Claim> claims = new ArrayList<>(coverage.requirements());
        claims.addAll(List.of(
                new Claim(
                        "stopping time carried forward",
                        test.carriedTime(),
                        Relation.AT_LEAST,
                        time,
                        CARRIED_TOO_LOW,
                        help),
                new Claim(
                        "stopping distance carried forward",
                        test.carriedDistance(),
                        Relation.AT_LEAST,
                        distance,
                        CARRIED_TOO_LOW,
                        help)));
        return claims;
    }

    @Override
    public List<Finding> faults() {
        List<Finding> faults = new ArrayList<>(record.faults());
        faults.addAll(coverage.faults());
        oneStateOnly().ifPresent(faults::add);
        return faults;
    }

    private Optional<Finding> oneStateOnly() {
        List<String> states = test.conditions().stream()
                .flatMap(condition -> condition.state().value().stream())
                .distinct()
                .toList();
        return rule.coldAndWarm()
                .filter(due -> states.size() == 1)
                .map(due -> Finding.warns(
                                ONE_STATE_ONLY,
                                tag(),
                                test.tag().where(),
                                "`" + tag() + "` was measured with the machine " + states.get(0)
                                        + " only, and the state in which it takes longer to stop is not known from that",
                                "measure it in the other state as well")
                        .because(List.of(due.name() + ": " + due.clause().edition() + " ("
                                + due.standing().words() + ")")));
    }
}
