package org.cellfile.subject.stopping;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.cellfile.calculation.StopStatistics;
import org.cellfile.claim.Claim;
import org.cellfile.claim.Recomputed;
import org.cellfile.claim.Recorded;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.source.Stated;
import org.cellfile.standard.StopMeasurement;
import org.cellfile.subject.stopping.StopCondition.Run;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Given;
import org.cellfile.trace.Greatest;
import org.cellfile.trace.Term;

/** Mean, spread and highest of the runs under one condition, recomputed. */
public final class ConditionStatistics implements Recomputed {

    /** Fewer runs than the edition asks for. */
    public static final FindingId TOO_FEW_RUNS = new FindingId("stopping.too-few-runs");

    private static final Rounding TIME = Rounding.up(Quantity.seconds("0.0001"));
    private static final Rounding LENGTH = Rounding.up(Quantity.millimetres("0.1"));

    private final StopCondition condition;
    private final StopMeasurement rule;
    private final List<Derived> time;
    private final List<Derived> distance;

    /**
     * @param number of the condition within its test, from 1
     */
    ConditionStatistics(StopCondition condition, int number, StopMeasurement rule) {
        this.condition = condition;
        this.rule = rule;
        this.time = statistics("time", "t", number, Run::time, TIME);
        this.distance = statistics("distance", "s", number, Run::distance, LENGTH);
    }

    private List<Derived> statistics(
            String what, String symbol, int number, Function<Run, Stated<Quantity>> reading, Rounding step) {
        List<Term> readings = condition.runs().stream()
                .map(reading)
                .<Term>map(stated -> new Given(symbol + "_i", "stopping " + what + " of each run", stated))
                .toList();
        if (readings.isEmpty()) {
            return List.of();
        }
        Rounding rounding = step.beside(readings.get(0).value());
        Fixed deviations = rule.deviations();
        String clause = deviations.reference().clause().toString();
        StopStatistics statistics = new StopStatistics(readings);
        Derived mean = derived(
                "mean-" + what, "mean stopping " + what, symbol + "_m", "arithmetic mean", statistics.mean(), rounding);
        Derived deviation = derived(
                "deviation-" + what,
                "standard deviation of the stopping " + what,
                "σ_" + symbol,
                "sample standard deviation",
                statistics.deviation(mean),
                rounding);
        Derived highest = derived(
                "highest-" + what, "highest stopping " + what, symbol + "_max", clause, statistics.highest(), rounding);
        Derived meanPlusThree = derived(
                "mean-plus-three-" + what,
                "mean and three standard deviations of the stopping " + what,
                symbol + "_3σ",
                clause,
                StopStatistics.meanAnd(deviations, deviation, mean),
                rounding);
        Derived governing = derived(
                "governing-" + what,
                "governing stopping " + what + " of the condition",
                symbol + "_g" + number,
                clause,
                Greatest.of(highest, meanPlusThree),
                rounding);
        return List.of(mean, deviation, highest, meanPlusThree, governing);
    }

    private Derived derived(
            String name, String words, String symbol, String clause, Term expression, Rounding rounding) {
        return new Derived(condition.tag(), name, words, symbol, clause, expression, rounding);
    }

    public StopCondition condition() {
        return condition;
    }

    /** Mean, deviation, highest, mean and three deviations, governing: of the time. Empty when there are no runs. */
    public List<Derived> time() {
        return time;
    }

    /** The same of the distance. */
    public List<Derived> distance() {
        return distance;
    }

    @Override
    public String tag() {
        return condition.tag();
    }

    @Override
    public List<Derived> derived() {
        List<Derived> derived = new ArrayList<>(time);
        derived.addAll(distance);
        return derived;
    }

    @Override
    public Recorded recorded() {
        return condition.recorded();
    }

    @Override
    public List<Claim> requirements() {
        return List.of();
    }

    @Override
    public List<Finding> faults() {
        Fixed least = rule.leastRuns();
        int runs = condition.runs().size();
        if (runs == 0 || Quantity.count(runs).compareTo(least.quantity()) >= 0) {
            return List.of();
        }
        return List.of(Finding.refuses(
                        TOO_FEW_RUNS,
                        tag(),
                        condition.where(),
                        "`" + tag() + "` holds " + runs + (runs == 1 ? " run" : " runs") + ", and at least "
                                + least.quantity() + " are due under each condition",
                        "measure again; a run must not be copied or made up")
                .because(List.of(least.reference().clause() + ", "
                        + least.reference().standing().words())));
    }
}
