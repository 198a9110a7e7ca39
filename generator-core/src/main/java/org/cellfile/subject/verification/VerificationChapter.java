package org.cellfile.subject.verification;

import static org.cellfile.dossier.Text.listed;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Block.Column;
import org.cellfile.dossier.Block.Paragraph;
import org.cellfile.dossier.Block.Section;
import org.cellfile.dossier.Block.Table;
import org.cellfile.dossier.Chapter;
import org.cellfile.dossier.Text;
import org.cellfile.quantity.Quantity;
import org.cellfile.read.Evidence;
import org.cellfile.source.Stated;
import org.cellfile.subject.complement.EmergencyStop;
import org.cellfile.subject.identity.Identity;
import org.cellfile.subject.mode.Mode;

/**
 * How function tests are printed. The protocol of a kind stands once, and rows that would differ in nothing but the thing are one
 * row, so that a cell with many safeguards and years of history stays readable.
 */
public final class VerificationChapter {

    private static final String NOTHING = "–";

    private final Verification verification;
    private final Identity identity;

    private VerificationChapter(Verification verification) {
        this.verification = verification;
        this.identity = verification.identity();
    }

    public static Chapter chapter(Verification verification) {
        return new Chapter("function-tests", "Function tests", new VerificationChapter(verification).blocks());
    }

    private List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Paragraph(
                "Each device is tested alone: every other stop path is healthy, and the path that is no safety function, such as"
                        + " that of an ordinary controller, is neutralised. Otherwise something else may stop the machine, and"
                        + " nobody sees that the device itself does not (common practice). A defect is remedied and the test done again before"
                        + " the cell is used. After a change, what it touches is tested again whatever the interval."));
        blocks.add(reactions());
        blocks.add(plan());
        kinds().forEach((folder, things) -> blocks.add(kind(things)));
        if (verification.rounds().isEmpty()) {
            blocks.add(new Paragraph("No function test of this cell is recorded."));
        } else {
            blocks.add(new Section("", "Rounds of tests", List.of(rounds())));
            blocks.add(new Section("", "Results", List.of(results())));
        }
        return blocks;
    }

    /** The things by the folder of their kind, in the order described. */
    private Map<String, List<Tested>> kinds() {
        return verification.things().stream()
                .collect(Collectors.groupingBy(Tested::folder, LinkedHashMap::new, Collectors.toList()));
    }

    /** What has to happen in each mode when a device is worked. */
    private Table reactions() {
        List<Column> columns = new ArrayList<>(List.of(Column.text("Device", 4)));
        verification
                .modes()
                .forEach(
                        mode -> columns.add(Column.text(Text.capital(mode.name().characters()), 6)));
        List<Row> rows = merged(verification.things().stream()
                .filter(VerificationChapter::stops)
                .map(thing -> new Row(
                        thing.tag().characters(),
                        verification.modes().stream()
                                .map(mode -> reaction(thing, mode))
                                .toList()))
                .toList());
        return new Table(
                "Expected reaction by mode",
                columns,
                rows.stream().map(Row::all).toList());
    }

    private static boolean stops(Tested thing) {
        return thing.safeguard().isPresent()
                || thing.device()
                        .filter(device -> device.sort() instanceof EmergencyStop)
                        .isPresent();
    }

    private static String reaction(Tested thing, Mode mode) {
        if (thing.safeguard().isEmpty()) {
            return thing.actsIn(mode) ? "stops the machine" : "does not act";
        }
        return switch (mode.state(thing.safeguard().get())) {
            case ACTIVE -> "acts: " + thing.safeguard().get().triggers().value().orElse("stands in the way");
            case SUSPENDED ->
                "suspended, no reaction of its own; instead: "
                        + mode.compensation(thing.safeguard().get()).value().orElse("not stated");
            case NOT_APPLICABLE -> "means nothing in this mode";
            case UNSTATED -> "not stated";
        };
    }

    private Block plan() {
        if (verification.plan().isEmpty()) {
            return new Paragraph("No interval is planned for these tests.");
        }
        return new Table(
                "Intervals planned; where several are about a test, the shortest counts",
                List.of(
                        Column.text("Every", 2),
                        Column.text("Tests", 3),
                        Column.text("Of", 9),
                        Column.text("Because of", 5)),
                verification.plan().stream()
                        .map(plan -> List.of(
                                plan.every().characters(),
                                plan.tests().isEmpty() ? "all" : joined(plan.tests()),
                                joined(plan.of()),
                                plan.source().characters()))
                        .toList());
    }

    private Section kind(List<Tested> things) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(protocol(things));
        blocks.add(state(things));
        return new Section("", things.get(0).kind(), blocks);
    }

    /** The tests that any thing of the kind has. */
    private static Table protocol(List<Tested> things) {
        String testPieces = things.stream()
                .map(Tested::testPiece)
                .flatMap(Optional::stream)
                .distinct()
                .sorted()
                .map(Quantity::toString)
                .collect(Collectors.joining(" or "));
        Protocol all = Protocol.in(things.get(0).folder());
        return new Table(
                "Protocol; longest interval " + all.longest() + " (" + all.longestSource() + ")",
                List.of(
                        Column.text("Test", 4),
                        Column.text("How", 7),
                        Column.text("What has to happen", 6),
                        Column.text("Source", 5)),
                all.tests().stream()
                        .filter(test -> things.stream()
                                .anyMatch(thing ->
                                        thing.protocol().test(test.id()).isPresent()))
                        .map(test -> List.of(
                                test.id() + ": " + test.title()
                                        + (test.particulars().isEmpty() ? "" : " (" + test.particulars() + ")"),
                                test.how(testPieces),
                                test.expected(),
                                test.source()))
                        .toList());
    }

    private Table state(List<Tested> things) {
        List<String> order = Protocol.in(things.get(0).folder()).tests().stream()
                .map(Protocol.Test::id)
                .toList();
        List<Row> tests = verification.required().stream()
                .filter(test -> things.contains(test.thing()))
                .sorted(Comparator.comparing(test -> order.indexOf(test.test().id())))
                .map(test -> new Row(
                        test.tag(),
                        List.of(
                                test.test().id(),
                                test.mode()
                                        .map(mode -> mode.name().characters())
                                        .orElse("any"),
                                latest(test),
                                test.plan()
                                        .map(plan -> plan.every().characters())
                                        .orElse("not planned"),
                                test.holdsUntil().map(Object::toString).orElse(NOTHING))))
                .toList();
        return new Table(
                "Latest results",
                List.of(
                        Column.text("Of", 7),
                        Column.text("Tests", 3),
                        Column.text("Mode", 3),
                        Column.text("Latest result", 5),
                        Column.text("Every", 3),
                        Column.text("Holds until", 3)),
                merged(merged(tests).stream().map(Row::byTest).toList()).stream()
                        .map(Row::byTest)
                        .map(Row::all)
                        .toList());
    }

    private String latest(RequiredTest test) {
        return test.latest()
                .map(outcome -> outcome.on() + " "
                        + outcome.result().outcome().characters()
                        + (outcome.result().read().isEmpty()
                                ? ""
                                : ", " + outcome.result().read())
                        + verification.changesSince(test, outcome).stream()
                                .map(change -> ", before change " + change.tag().characters())
                                .collect(Collectors.joining()))
                .orElse("none");
    }

    /** A row of a table, and what it says of what stands first in it. */
    private record Row(String first, List<String> rest) {

        /** The same with its first two columns exchanged. */
        Row byTest() {
            return new Row(
                    rest.get(0),
                    Stream.concat(Stream.of(first), rest.stream().skip(1)).toList());
        }

        List<String> all() {
            return Stream.concat(Stream.of(first), rest.stream()).toList();
        }
    }

    /** Rows that say the same of several things are one row. */
    private static List<Row> merged(List<Row> rows) {
        Map<List<String>, List<String>> firsts = new LinkedHashMap<>();
        rows.forEach(row ->
                firsts.computeIfAbsent(row.rest(), key -> new ArrayList<>()).add(row.first()));
        return firsts.entrySet().stream()
                .map(entry -> new Row(String.join(", ", entry.getValue()), entry.getKey()))
                .toList();
    }

    private Table rounds() {
        return new Table(
                "Who tested when, and how each device was tested alone",
                List.of(
                        Column.text("Round", 4),
                        Column.text("Date, occasion", 3),
                        Column.text("Mode", 3),
                        Column.text("Tested, countersigned", 4),
                        Column.text("Path that is no safety function", 5),
                        Column.text("Instrument, evidence", 5)),
                latestFirst().stream()
                        .map(round -> List.of(
                                round.tag().characters(),
                                round.on().characters() + ", "
                                        + round.occasion().characters(),
                                verification
                                        .mode(round.mode())
                                        .map(mode -> mode.name().characters())
                                        .orElse(round.mode().characters()),
                                identity.nameOf(round.by())
                                        + (round.countersignedBy().value().isPresent()
                                                ? "; " + identity.nameOf(round.countersignedBy())
                                                : ""),
                                round.otherPath(),
                                proof(round)))
                        .toList());
    }

    private static String proof(Round round) {
        List<String> proof = new ArrayList<>();
        round.instrument().value().ifPresent(proof::add);
        round.evidence().stream().map(Evidence::brief).forEach(proof::add);
        return proof.isEmpty() ? NOTHING : String.join("; ", proof);
    }

    /** As they were stated, the latest round first; passes of the same tests in a round are one row. */
    private Table results() {
        Map<List<String>, List<String>> rows = new LinkedHashMap<>();
        for (Round round : latestFirst()) {
            for (Result result : round.results()) {
                rows.computeIfAbsent(
                                List.of(round.tag().characters(), joined(result.tests()), outcome(result)),
                                key -> new ArrayList<>())
                        .add(joined(result.of()) + (result.read().isEmpty() ? "" : " (" + result.read() + ")"));
            }
        }
        return new Table(
                "What came out, and what was read off; the latest first",
                List.of(
                        Column.text("Round", 4),
                        Column.text("Tests", 4),
                        Column.text("Of", 9),
                        Column.text("Result", 4)),
                rows.entrySet().stream()
                        .map(row -> List.of(
                                row.getKey().get(0),
                                row.getKey().get(1),
                                String.join(", ", row.getValue()),
                                row.getKey().get(2)))
                        .toList());
    }

    private List<Round> latestFirst() {
        return verification.rounds().stream()
                .sorted(Comparator.comparing((Round round) -> round.on().characters())
                        .reversed())
                .toList();
    }

    /** Pass, or the defect and what was done about it. */
    private String outcome(Result result) {
        return result.outcome().characters()
                + result.defect().value().map(defect -> ": " + defect).orElse("")
                + result.remedy()
                        .map(remedy -> "; remedied on " + remedy.on().characters() + " by "
                                + identity.nameOf(remedy.by()) + ": "
                                + remedy.how().characters())
                        .orElse(result.failed() ? "; not remedied" : "");
    }

    private static String joined(List<Stated<String>> texts) {
        return listed(texts.stream().map(Stated::characters).toList());
    }
}
