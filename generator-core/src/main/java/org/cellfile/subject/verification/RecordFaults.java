package org.cellfile.subject.verification;

import static org.cellfile.dossier.Text.listed;
import static org.cellfile.dossier.Text.tagged;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.finding.Nearest;
import org.cellfile.source.Span;
import org.cellfile.source.Stated;
import org.cellfile.subject.identity.Competence;
import org.cellfile.subject.mode.Mode;
import org.cellfile.subject.register.Bypass;
import org.cellfile.subject.verification.RequiredTest.Outcome;

/** What cannot be as it was recorded. */
final class RecordFaults {

    static final FindingId BEFORE_BUILT = new FindingId("test.before-built");
    static final FindingId NOT_COMPETENT = new FindingId("test.not-competent");
    static final FindingId OWN_COUNTERSIGNATURE = new FindingId("test.countersigned-by-tester");
    static final FindingId NOT_NEUTRALISED = new FindingId("test.not-neutralised");
    static final FindingId NO_SUCH_TEST = new FindingId("test.not-of-this-thing");
    static final FindingId OTHER_MODE = new FindingId("test.not-in-this-mode");
    static final FindingId REPEATED = new FindingId("test.repeated");
    static final FindingId REMEDIED_BEFORE = new FindingId("test.remedied-before-found");

    private final Verification verification;
    private final List<Finding> findings = new ArrayList<>();

    RecordFaults(Verification verification) {
        this.verification = verification;
    }

    List<Finding> findings() {
        verification.plan().forEach(plan -> noSuchTest(plan.of(), plan.tests()));
        for (Round round : verification.rounds()) {
            round.on().value().ifPresent(day -> onThatDay(round, day));
            countersigned(round);
            verification
                    .identity()
                    .instrument(round.instrument())
                    .flatMap(one -> one.notCalibrated(round.tag().characters(), round.instrument(), round.on()))
                    .ifPresent(findings::add);
            for (Result result : round.results()) {
                noSuchTest(result.of(), result.tests());
                otherMode(round, result);
                remedied(round, result);
                new ReadingFault(verification, round, result).finding().ifPresent(findings::add);
            }
        }
        competence();
        repeated();
        return findings;
    }

    private void refuse(FindingId id, Round round, Span where, String sentence, String help) {
        findings.add(Finding.refuses(id, round.tag().characters(), where, sentence, help));
    }

    private void onThatDay(Round round, LocalDate day) {
        Stated<LocalDate> built = verification.identity().dates().built();
        if (built.value().filter(day::isBefore).isPresent()) {
            refuse(
                    BEFORE_BUILT,
                    round,
                    round.on().where(),
                    "`" + round.tag().characters() + "` is dated " + day
                            + ", before there was a cell to be tested: it was built on " + built.characters() + " ("
                            + built.where().position() + ")",
                    "correct the date that is wrong; tests at the maker's works are not tests of the installed cell");
        }
        bypass(round.neutralised()).ifPresent(bypass -> neutralised(round, bypass, day));
    }

    /** One finding a person, however many rounds it concerns. */
    private void competence() {
        Map<String, List<Round>> rounds = new LinkedHashMap<>();
        for (Round round : verification.rounds()) {
            if (verification.identity().person(round.by()).isPresent()
                    && round.on()
                            .value()
                            .filter(day ->
                                    !verification.identity().competent(round.by(), Competence.FUNCTION_TESTS, day))
                            .isPresent()) {
                rounds.computeIfAbsent(round.by().characters(), key -> new ArrayList<>())
                        .add(round);
            }
        }
        rounds.forEach(
                (person, theirs) -> refuse(
                        NOT_COMPETENT,
                        theirs.get(0),
                        theirs.get(0).by().where(),
                        "nobody states that `" + person + "` was competent for function tests on "
                                + listed(theirs.stream()
                                        .map(round -> round.on().characters())
                                        .distinct()
                                        .toList())
                                + ", and "
                                + tagged(theirs.stream()
                                        .map(round -> round.tag().characters())
                                        .toList())
                                + (theirs.size() == 1 ? " rests" : " rest") + " on that",
                        "state under `competences` since when and by what proof, if it was so; else have somebody competent test again"));
    }

    private Optional<Bypass> bypass(Stated<String> tag) {
        return verification.registers().bypasses().stream()
                .filter(bypass ->
                        bypass.tag().value().isPresent() && bypass.tag().value().equals(tag.value()))
                .findFirst();
    }

    private void neutralised(Round round, Bypass bypass, LocalDate day) {
        if (!bypass.inPlaceOn(day)) {
            refuse(
                    NOT_NEUTRALISED,
                    round,
                    round.neutralised().where(),
                    "the bypass `" + bypass.tag().characters() + "` was not in place on " + day + " ("
                            + bypass.tag().where().position() + "), and `"
                            + round.tag().characters() + "` rests on it",
                    "name the bypass that was in place that day; if there was none, test again");
        } else if (!bypass.of().isEmpty()) {
            refuse(
                    NOT_NEUTRALISED,
                    round,
                    round.neutralised().where(),
                    "the bypass `" + bypass.tag().characters() + "` puts "
                            + tagged(
                                    bypass.of().stream().map(Stated::characters).toList())
                            + " out of action, and in a test of function every other safeguard has to be healthy",
                    "take it out, neutralise the path that is no safety function instead, and test again");
        }
    }

    private void countersigned(Round round) {
        if (round.countersignedBy().value().isPresent()
                && round.countersignedBy().value().equals(round.by().value())) {
            refuse(
                    OWN_COUNTERSIGNATURE,
                    round,
                    round.countersignedBy().where(),
                    "`" + round.by().characters() + "` tested and countersigned `"
                            + round.tag().characters() + "`",
                    "have somebody else look at the record and countersign, or leave the countersignature out");
        }
    }

    private void noSuchTest(List<Stated<String>> of, List<Stated<String>> tests) {
        for (Stated<String> test : tests) {
            List<Tested> without = of.stream()
                    .map(verification::thing)
                    .flatMap(Optional::stream)
                    .filter(thing -> thing.protocol().test(test.characters()).isEmpty())
                    .toList();
            if (!without.isEmpty()) {
                Tested first = without.get(0);
                findings.add(Finding.refuses(
                        NO_SUCH_TEST,
                        first.tag().characters(),
                        test.where(),
                        "the protocol of "
                                + tagged(without.stream()
                                        .map(thing -> thing.tag().characters())
                                        .toList())
                                + " has no test `" + test.characters() + "`",
                        "tests of `" + first.tag().characters() + "`: "
                                + Nearest.listed(
                                        test.characters(),
                                        first.protocol().tests().stream()
                                                .map(Protocol.Test::id)
                                                .toList())));
            }
        }
    }

    private void otherMode(Round round, Result result) {
        verification.mode(round.mode()).ifPresent(mode -> {
            List<String> impossible = new ArrayList<>();
            Set<String> because = new LinkedHashSet<>();
            for (Stated<String> tag : result.of()) {
                verification
                        .thing(tag)
                        .filter(thing -> !unstated(thing, mode))
                        .ifPresent(thing -> thing.protocol().tests().stream()
                                .filter(test -> result.tells(thing, test))
                                .filter(test -> !Verification.possible(thing, test, mode))
                                .forEach(test -> {
                                    impossible.add("`" + test.id() + "` of `" + tag.characters() + "`");
                                    because.add(test.onlyIn()
                                            .map(sort -> "`" + test.id() + "` is a test for a mode of the sort `" + sort
                                                    + "`")
                                            .orElse("`" + tag.characters() + "` does not act in `"
                                                    + mode.tag().characters() + "` ("
                                                    + mode.tag().where().position() + ")"));
                                }));
            }
            if (!impossible.isEmpty()) {
                findings.add(Finding.refuses(
                                OTHER_MODE,
                                round.tag().characters(),
                                result.where(),
                                listed(impossible) + " cannot have been tested in `"
                                        + mode.tag().characters() + "`",
                                "name the mode in which it was tested, or correct under `modes` what acts in this one")
                        .because(List.copyOf(because)));
            }
        });
    }

    /** That nobody says what becomes of a safeguard in a mode is found there. */
    private static boolean unstated(Tested thing, Mode mode) {
        return thing.safeguard()
                .filter(safeguard -> mode.state(safeguard) == Mode.State.UNSTATED)
                .isPresent();
    }

    private void remedied(Round round, Result result) {
        result.remedy()
                .ifPresent(remedy -> remedy.on()
                        .value()
                        .filter(day -> round.on().value().filter(day::isBefore).isPresent())
                        .ifPresent(day -> refuse(
                                REMEDIED_BEFORE,
                                round,
                                remedy.on().where(),
                                "the defect was found on " + round.on().characters() + " and remedied on " + day
                                        + ", before that",
                                "correct the date that is wrong")));
    }

    /** A second result of one day counts only as the test after a repair of that day. */
    private void repeated() {
        Map<List<String>, Outcome> last = new HashMap<>();
        Map<Outcome, Map<Outcome, List<String>>> twice = new LinkedHashMap<>();
        for (Round round : verification.rounds()) {
            for (Result result : round.results()) {
                Outcome outcome = new Outcome(round, result);
                if (outcome.known()) {
                    for (Stated<String> thing : result.of()) {
                        for (Stated<String> test : result.tests()) {
                            Outcome before = last.put(
                                    List.of(
                                            thing.characters(),
                                            test.characters(),
                                            round.mode().characters(),
                                            round.on().characters()),
                                    outcome);
                            if (before != null && !remediedThatDay(before)) {
                                twice.computeIfAbsent(outcome, key -> new LinkedHashMap<>())
                                        .computeIfAbsent(before, key -> new ArrayList<>())
                                        .add("`" + test.characters() + "` of `" + thing.characters() + "`");
                            }
                        }
                    }
                }
            }
        }
        twice.forEach((outcome, befores) -> befores.forEach((before, what) -> refuse(
                REPEATED,
                outcome.round(),
                outcome.result().where(),
                "this is a second result of " + outcome.on() + " in `"
                        + outcome.round().mode().characters() + "` for " + listed(what) + "; the first stands at "
                        + before.result().where().position(),
                "keep the one that is right; a second test of one day belongs here only after a failed one that was `remedied`"
                        + " that day")));
    }

    private static boolean remediedThatDay(Outcome outcome) {
        return outcome.result()
                .remedy()
                .flatMap(remedy -> remedy.on().value())
                .filter(outcome.on()::equals)
                .isPresent();
    }
}
