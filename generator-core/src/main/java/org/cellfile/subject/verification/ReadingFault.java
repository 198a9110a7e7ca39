package org.cellfile.subject.verification;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Quantity;
import org.cellfile.source.Span;
import org.cellfile.source.Stated;
import org.cellfile.standard.En574;
import org.cellfile.standard.RobotStandard;
import org.cellfile.subject.mode.Mode;

/** What was read off in a test, held against the test and its result. */
record ReadingFault(Verification verification, Round round, Result result) {

    static final FindingId OF_SEVERAL = new FindingId("test.reading-of-several");
    static final FindingId FOREIGN = new FindingId("test.foreign-reading");
    static final FindingId CONTRADICTED = new FindingId("test.contradicted");

    /** A highest value, and who sets it. */
    private record Limit(Quantity value, String words) {}

    Optional<Finding> finding() {
        if (result.readings().isEmpty()
                || result.of().isEmpty()
                || result.tests().isEmpty()) {
            return Optional.empty();
        }
        if (result.of().size() + result.tests().size() + result.readings().size() > 3) {
            return refuse(
                    OF_SEVERAL,
                    result.where(),
                    "`" + String.join("` and `", result.readings())
                            + (result.readings().size() > 1 ? "` are" : "` is") + " stated for "
                            + together(result.of().size(), "thing") + " in "
                            + together(result.tests().size(), "test"),
                    "write a result of its own for each test of each thing in which something is read off");
        }
        return verification
                .thing(result.of().get(0))
                .flatMap(thing -> thing.protocol()
                        .test(result.tests().get(0).characters())
                        .flatMap(test ->
                                test.reading().key().equals(result.readings().get(0))
                                        ? contradiction(thing, test)
                                        : refuse(
                                                FOREIGN,
                                                result.where(),
                                                "no `" + result.readings().get(0) + "` is read off in `" + test.id()
                                                        + "` of `" + thing.tag().characters() + "`",
                                                test.reading() == Protocol.Reading.NONE
                                                        ? "leave it out, or name the test in which it was read off"
                                                        : "read off in this test is the "
                                                                + test.reading().words() + ", stated as `"
                                                                + test.reading().key() + "`")));
    }

    private static String together(int count, String what) {
        return count == 1 ? "one " + what : count + " " + what + "s at once";
    }

    private Optional<Finding> contradiction(Tested thing, Protocol.Test test) {
        if (!result.passed()) {
            return Optional.empty();
        }
        return switch (test.reading()) {
            case NONE -> Optional.empty();
            case TEST_PIECE -> anotherTestPiece(thing, test);
            case SPEED -> above(thing, test, result.speed(), speedLimits());
            case SYNCHRONISM -> above(thing, test, result.handsApart(), longestApart(thing));
            case STANDS -> machine(thing, test, Result.STANDS);
            case MOVES -> machine(thing, test, Result.MOVES);
        };
    }

    private Optional<Finding> anotherTestPiece(Tested thing, Protocol.Test test) {
        return result.testPiece()
                .value()
                .filter(used ->
                        thing.testPiece().filter(due -> !due.equals(used)).isPresent())
                .flatMap(used -> contradicted(
                        thing,
                        test,
                        result.testPiece(),
                        "with a test piece of " + result.testPiece().characters() + ", and what it has to detect is "
                                + thing.testPiece().orElseThrow(),
                        "test again with the test piece that belongs to the device"));
    }

    private List<Limit> speedLimits() {
        List<Limit> limits = new ArrayList<>();
        verification.mode(round.mode()).ifPresent(mode -> {
            mode.speedLimit()
                    .value()
                    .ifPresent(limit -> limits.add(new Limit(
                            limit,
                            "of `" + mode.tag().characters() + "` ("
                                    + mode.speedLimit().where().position() + ")")));
            if (mode.is(Mode.MANUAL_REDUCED_SPEED)) {
                verification
                        .identity()
                        .standards()
                        .inForce(RobotStandard.class)
                        .forEach(edition -> limits.add(new Limit(
                                edition.manualReducedSpeed().quantity(),
                                "of " + edition.manualReducedSpeed().reference().clause())));
            }
        });
        return limits;
    }

    private static List<Limit> longestApart(Tested thing) {
        return En574.longestAsynchrony(thing.tag().characters()).value().stream()
                .map(limit -> new Limit(limit, "of EN 574 for a control of type III"))
                .toList();
    }

    private Optional<Finding> above(Tested thing, Protocol.Test test, Stated<Quantity> read, List<Limit> limits) {
        return read.value()
                .flatMap(value -> limits.stream()
                        .min(Comparator.comparing(Limit::value))
                        .filter(limit -> value.compareTo(limit.value()) > 0)
                        .flatMap(limit -> contradicted(
                                thing,
                                test,
                                read,
                                "at " + read.characters() + ", more than the " + limit.value() + " " + limit.words(),
                                "a reading like this shows a defect: have it remedied and test again")));
    }

    private Optional<Finding> machine(Tested thing, Protocol.Test test, String due) {
        return result.machine()
                .value()
                .filter(state -> !state.equals(due))
                .flatMap(state -> contradicted(
                        thing,
                        test,
                        result.machine(),
                        "although the machine " + state + " where it " + due + " if all is well",
                        "a reading like this shows a defect: have it remedied and test again"));
    }

    private Optional<Finding> contradicted(
            Tested thing, Protocol.Test test, Stated<?> at, String sentence, String help) {
        return refuse(
                CONTRADICTED,
                at.where(),
                "`" + thing.tag().characters() + "` is recorded to have passed `" + test.id() + "` " + sentence,
                help);
    }

    private Optional<Finding> refuse(FindingId id, Span where, String sentence, String help) {
        return Optional.of(Finding.refuses(id, round.tag().characters(), where, sentence, help));
    }
}
