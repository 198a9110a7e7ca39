package org.cellfile.subject.verification;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.cellfile.quantity.Interval;
import org.cellfile.subject.due.Due;
import org.cellfile.subject.mode.Mode;

/**
 * A test that has to be done of a thing at an interval, with what was planned and recorded of it.
 *
 * @param mode in which it is done; empty when one mode is as good as another
 * @param plans that are about it
 * @param outcomes that are about it, in the order written
 */
record RequiredTest(
        Tested thing,
        Protocol protocol,
        Protocol.Test test,
        Optional<Mode> mode,
        List<TestPlan> plans,
        List<Outcome> outcomes) {

    /** One result of the test, with the round in which it was found. */
    record Outcome(Round round, Result result) {

        /** False while a part of it that could not be read leaves open when and with what result it was. */
        boolean known() {
            return round.on().value().isPresent()
                    && round.mode().value().isPresent()
                    && result.outcome().value().isPresent();
        }

        LocalDate on() {
            return round.on().value().orElseThrow();
        }
    }

    /** True while something about it could not be read; it was reported there, and nothing is concluded here. */
    boolean open() {
        return !outcomes.stream().allMatch(Outcome::known);
    }

    /** The latest result; of those of one day the one written last. */
    Optional<Outcome> latest() {
        return open()
                ? Optional.empty()
                : outcomes.stream().sorted(Comparator.comparing(Outcome::on)).reduce((earlier, later) -> later);
    }

    /** The latest result, if it was a pass. */
    Optional<Outcome> latestPass() {
        return latest().filter(outcome -> outcome.result().passed());
    }

    /** What is planned; of several the one with the shortest interval. */
    Optional<TestPlan> plan() {
        return plans.stream()
                .filter(plan -> plan.every().value().isPresent())
                .reduce((one, other) -> interval(one).longerThan(interval(other)) ? other : one);
    }

    private static Interval interval(TestPlan plan) {
        return plan.every().value().orElseThrow();
    }

    /** The last day on which the latest pass still holds, where an interval is planned. */
    Optional<LocalDate> holdsUntil() {
        return latestPass().flatMap(outcome -> plan().map(plan -> interval(plan).after(outcome.on())));
    }

    /** That it falls due. */
    Optional<Due> due() {
        return holdsUntil()
                .map(day -> new Due(
                        day,
                        tag(),
                        "function test: " + test.title()
                                + mode.map(one -> " (in " + one.name().characters() + ")")
                                        .orElse(""),
                        plan().map(plan -> plan.every().characters() + ", "
                                        + plan.source().characters())
                                .orElse(""),
                        latestPass().orElseThrow().round().on().where()));
    }

    String tag() {
        return thing.tag().characters();
    }

    /** As it is named in a message about its thing. */
    String words() {
        return "`" + test.id() + "`"
                + mode.map(one -> " in `" + one.tag().characters() + "`").orElse("");
    }
}
