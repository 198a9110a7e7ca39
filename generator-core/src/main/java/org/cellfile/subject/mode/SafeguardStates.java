package org.cellfile.subject.mode;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.source.Stated;
import org.cellfile.subject.complement.Demands;
import org.cellfile.subject.mode.Mode.State;
import org.cellfile.subject.safeguard.Safeguard;

/** What becomes of the safeguards in one mode: each has one state, and what is suspended has something in its place. Common practice. */
final class SafeguardStates {

    /** Nothing says whether a safeguard acts. */
    static final FindingId WITHOUT_STATE = new FindingId("mode.safeguard-without-state");

    /** A safeguard is named twice. */
    static final FindingId NAMED_TWICE = new FindingId("mode.safeguard-named-twice");

    /** Nothing takes the place of a suspended safeguard. */
    static final FindingId NO_COMPENSATION = new FindingId("mode.no-compensation");

    /** A fixed guard is listed as suspended, and nobody says that it is taken away. */
    static final FindingId FIXED_GUARD = new FindingId("mode.fixed-guard-suspended");

    /** A safeguard does not act in automatic. */
    static final FindingId IN_AUTOMATIC = new FindingId("mode.suspended-in-automatic");

    /** A safeguard is said not to matter, and nobody says why. */
    static final FindingId NO_REASON = new FindingId("mode.no-reason");

    private final Mode mode;
    private final List<Safeguard> safeguards;
    private final Demands demands;

    SafeguardStates(Mode mode, List<Safeguard> safeguards, Demands demands) {
        this.mode = mode;
        this.safeguards = safeguards;
        this.demands = demands;
    }

    void hold() {
        eachHasOne();
        onceEach();
        if (mode.is(Mode.AUTOMATIC)) {
            actInAutomatic();
        } else {
            haveSomethingInTheirPlace();
            fixedGuards();
        }
        reasons();
    }

    private void eachHasOne() {
        List<Safeguard> unstated = in(State.UNSTATED).stream()
                .filter(safeguard -> mode.named()
                        .noneMatch(named -> named.value().equals(safeguard.tag().value())))
                .toList();
        demands.practice(
                "every safeguard has a state in every mode",
                Demands.TRADE,
                (safeguards.size() - unstated.size()) + " of " + safeguards.size(),
                found(
                        unstated,
                        WITHOUT_STATE,
                        mode.tag(),
                        "does not say what becomes of ",
                        "list each under `active`, `suspended` or `not-applicable`, or say under `others` what becomes of all that"
                                + " are not listed"));
    }

    private void onceEach() {
        Map<String, Stated<String>> first = new HashMap<>();
        mode.named().filter(named -> named.value().isPresent()).forEach(named -> {
            Stated<String> before = first.putIfAbsent(named.characters(), named);
            if (before != null) {
                demands.fault(
                        NAMED_TWICE,
                        named,
                        "says twice what becomes of `" + named.characters() + "`",
                        "the first time at " + before.where().position(),
                        "name it once, with what becomes of it in this mode");
            }
        });
    }

    private void actInAutomatic() {
        List<Safeguard> suspended = in(State.SUSPENDED);
        demands.practice(
                "every safeguard acts in automatic",
                Demands.TRADE,
                suspended.isEmpty() ? "none suspended" : "suspended: " + tags(suspended),
                found(
                        suspended,
                        IN_AUTOMATIC,
                        at(suspended),
                        "runs the cell by itself and suspends ",
                        "have it act; list it under `not-applicable` only where its zone is at rest in this mode, and say why"));
    }

    private void haveSomethingInTheirPlace() {
        List<Safeguard> suspended = in(State.SUSPENDED);
        List<Safeguard> without = suspended.stream()
                .filter(safeguard -> safeguard.kind().stopsTheHazard())
                .filter(safeguard -> mode.compensation(safeguard).value().isEmpty())
                .toList();
        demands.practice(
                "something named takes the place of every safeguard that is suspended",
                Demands.TRADE,
                suspended.isEmpty() ? "none suspended" : suspended.size() + " suspended",
                found(
                        without,
                        NO_COMPENSATION,
                        at(without),
                        "names nothing in place of ",
                        "say under `compensation` what protects people meanwhile: for one safeguard beside its tag, for all together"
                                + " beside `others`"));
    }

    /** It stands there whatever the mode; suspended it can only be by being taken away, which is said for each. */
    private void fixedGuards() {
        List<Safeguard> without = in(State.SUSPENDED).stream()
                .filter(safeguard -> !safeguard.kind().stopsTheHazard())
                .filter(safeguard -> mode.ownCompensation(safeguard).isEmpty())
                .toList();
        found(
                        without,
                        FIXED_GUARD,
                        at(without),
                        "suspends ",
                        "take it out of `suspended` if it stays where it is; otherwise say beside its tag, under `compensation`, who takes"
                                + " it away and what protects people until it is back")
                .ifPresent(finding -> demands.practice(
                        "a fixed guard stands in every mode, unless it is said how it is taken away",
                        Demands.TRADE,
                        tags(without),
                        Optional.of(finding)));
    }

    private void reasons() {
        List<Safeguard> without = in(State.NOT_APPLICABLE).stream()
                .filter(safeguard -> mode.notApplicableBecause(safeguard)
                        .flatMap(Stated::value)
                        .isEmpty())
                .toList();
        for (Safeguard safeguard : without) {
            demands.fault(
                    NO_REASON,
                    mode.place(safeguard),
                    "does not say why `" + safeguard.tag().characters() + "` is not applicable",
                    "without a reason nobody can tell it from a safeguard that was forgotten: " + Demands.TRADE,
                    "say it under `because`, for example which movement is at rest and what keeps it so");
        }
    }

    private List<Safeguard> in(State state) {
        return safeguards.stream()
                .filter(safeguard -> mode.state(safeguard) == state)
                .toList();
    }

    /** Where the first of them is put into its state. */
    private Stated<String> at(List<Safeguard> found) {
        return found.isEmpty() ? mode.tag() : mode.place(found.get(0));
    }

    private Optional<Finding> found(List<Safeguard> found, FindingId id, Stated<String> at, String said, String help) {
        String tag = mode.tag().characters();
        return found.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        Finding.refuses(id, tag, at.where(), "`" + tag + "` " + said + "`" + tags(found) + "`", help));
    }

    private static String tags(List<Safeguard> safeguards) {
        return safeguards.stream()
                .map(safeguard -> safeguard.tag().characters())
                .collect(Collectors.joining("`, `"));
    }
}
