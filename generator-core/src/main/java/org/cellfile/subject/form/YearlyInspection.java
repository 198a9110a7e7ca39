package org.cellfile.subject.form;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Block.Column;
import org.cellfile.dossier.Block.Entry;
import org.cellfile.dossier.Block.Line;
import org.cellfile.dossier.Block.Paragraph;
import org.cellfile.dossier.Block.Section;
import org.cellfile.dossier.Block.SignatureLine;
import org.cellfile.dossier.Block.WriteInLines;
import org.cellfile.dossier.Block.WriteInTable;
import org.cellfile.dossier.Form;
import org.cellfile.dossier.Words;
import org.cellfile.quantity.Quantity;
import org.cellfile.subject.identity.Robot;
import org.cellfile.subject.mode.Mode;
import org.cellfile.subject.mode.Mode.State;
import org.cellfile.subject.verification.Protocol.Test;
import org.cellfile.subject.verification.Tested;

/** The function tests that a competent person does at intervals, device by device. */
public final class YearlyInspection {

    public static final String ID = "yearly-inspection";

    private static final int INSTRUMENTS = 3;
    private static final int BYPASSES = 4;

    private static final Words WORDS = Words.of("forms/" + ID);

    private YearlyInspection() {}

    /**
     * The form with nothing filled in but what the cell states.
     *
     * @param things in the order they are tested
     * @param modes of the cell, in each of which a device may do something else
     */
    public static Form form(List<Tested> things, List<Mode> modes, List<Robot> robots) {
        List<WriteInTable> devices =
                things.stream().flatMap(thing -> device(thing, modes).stream()).toList();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Paragraph(WORDS.get("scope")));
        if (devices.isEmpty()) {
            blocks.add(new Paragraph(WORDS.get("none")));
        } else {
            blocks.add(new Section("", WORDS.get("inspection"), inspection(robots)));
            blocks.addAll(devices);
            blocks.add(new Section("", WORDS.get("outcome"), outcome()));
        }
        return new Form(ID, WORDS.get("title"), true, blocks);
    }

    private static List<Block> inspection(List<Robot> robots) {
        List<Line> lines = new ArrayList<>(List.of(
                room("from"),
                room("until"),
                new Line(WORDS.get("kind"), Entry.printed(WORDS.get("kind.function"))),
                ticks("occasion", "first", "recurring", "change"),
                ticks("extent", "all", "some"),
                room("some"),
                room("place"),
                room("tester")));
        for (Robot robot : robots) {
            lines.add(new Line(
                    WORDS.get(
                            "checksum",
                            robot.tag().characters(),
                            robot.controller().checksum().characters()),
                    Entry.room()));
        }
        return List.of(
                new WriteInLines(lines),
                blank("instruments", INSTRUMENTS, "instrument", "serial", "certificate", "valid"),
                blank("bypasses", BYPASSES, "bypass", "path", "device", "made", "removed"));
    }

    private static List<Block> outcome() {
        return List.of(
                new WriteInLines(List.of(
                        ticks("defects", "none", "remedied", "open"),
                        ticks("use", "unrestricted", "restricted", "none"),
                        room("measures"),
                        room("next"))),
                new SignatureLine(WORDS.get("tested"), WORDS.get("tested.who")),
                new SignatureLine(WORDS.get("countersigned"), WORDS.get("countersigned.who")));
    }

    private static Line room(String key) {
        return new Line(WORDS.get(key), Entry.room());
    }

    private static Line ticks(String key, String... choices) {
        return new Line(
                WORDS.get(key),
                Entry.tick(Stream.of(choices)
                        .map(choice -> WORDS.get(key + "." + choice))
                        .toArray(String[]::new)));
    }

    private static WriteInTable blank(String caption, int rows, String... columns) {
        return new WriteInTable(
                WORDS.get(caption),
                Stream.of(columns).map(key -> Column.text(WORDS.get(key), 1)).toList(),
                Collections.nCopies(rows, Collections.nCopies(columns.length, Entry.room())));
    }

    /** The tests of one thing; empty when none is done at intervals. */
    private static Optional<WriteInTable> device(Tested thing, List<Mode> modes) {
        List<List<Entry>> rows = thing.protocol().tests().stream()
                .filter(Test::periodic)
                .flatMap(test -> rows(thing, test, modes))
                .toList();
        if (rows.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new WriteInTable(
                about(thing),
                List.of(
                        Column.text(WORDS.get("test"), 72),
                        Column.text(WORDS.get("mode"), 22),
                        Column.text(WORDS.get("expected"), 60),
                        Column.text(WORDS.get("reading"), 31),
                        Column.text(WORDS.get("bypass-number"), 18),
                        Column.text(WORDS.get("result"), 22),
                        Column.text(WORDS.get("defect"), 39)),
                rows));
    }

    /** Enough to know the device by: its tag and name, and of a safeguard what is on its plate and where it is. */
    private static String about(Tested thing) {
        String about = WORDS.get("about", thing.tag().characters(), thing.name().characters());
        return about
                + thing.safeguard()
                        .map(safeguard -> "\n"
                                + WORDS.get(
                                        "about.more",
                                        safeguard.model().characters(),
                                        safeguard.serial().characters(),
                                        safeguard.position().characters()))
                        .orElse("");
    }

    private static Stream<List<Entry>> rows(Tested thing, Test test, List<Mode> modes) {
        if (!test.everyMode() && test.onlyIn().isEmpty()) {
            return Stream.of(row(thing, test, test.expected(), test.alone(), Optional.empty()));
        }
        return modes.stream()
                .filter(mode -> test.onlyIn().map(mode::is).orElse(true))
                .filter(mode -> state(thing, mode) != State.NOT_APPLICABLE)
                .map(mode -> row(
                        thing,
                        test,
                        expected(thing, test, mode),
                        test.alone() && state(thing, mode) != State.SUSPENDED,
                        Optional.of(mode)));
    }

    /** What becomes of a thing in a mode; what is no safeguard acts in it or means nothing. */
    private static State state(Tested thing, Mode mode) {
        return thing.safeguard()
                .map(mode::state)
                .orElseGet(() -> thing.actsIn(mode) ? State.ACTIVE : State.NOT_APPLICABLE);
    }

    /** What has to happen in a mode in which the thing means something. */
    private static String expected(Tested thing, Test test, Mode mode) {
        return switch (state(thing, mode)) {
            case ACTIVE ->
                test.expected()
                        + thing.safeguard()
                                .flatMap(safeguard -> safeguard.triggers().value())
                                .map(triggers -> " " + WORDS.get("triggers", triggers))
                                .orElse("");
            case SUSPENDED ->
                WORDS.get(
                        "suspended",
                        thing.safeguard()
                                .flatMap(safeguard ->
                                        mode.compensation(safeguard).value())
                                .orElse(WORDS.get("none-named")));
            case UNSTATED -> WORDS.get("unstated");
            case NOT_APPLICABLE -> "";
        };
    }

    private static List<Entry> row(Tested thing, Test test, String expected, boolean alone, Optional<Mode> mode) {
        return List.of(
                Entry.printed(test.title() + "\n" + test.how(thing)),
                Entry.printed(mode.map(one -> one.name().characters()).orElse(WORDS.get("every"))),
                Entry.printed(expected),
                reading(thing, test, mode),
                alone ? Entry.room() : Entry.printed("–"),
                Entry.tick(WORDS.get("passed"), WORDS.get("failed")),
                Entry.room());
    }

    private static Entry reading(Tested thing, Test test, Optional<Mode> mode) {
        return switch (test.reading()) {
            case NONE -> Entry.printed(WORDS.get("reading.none"));
            case TEST_PIECE ->
                measured(
                        "test-piece",
                        thing.testPiece().map(YearlyInspection::unit).orElse("mm"));
            case SPEED ->
                measured(
                        "speed",
                        mode.flatMap(one -> one.speedLimit().value())
                                .map(YearlyInspection::unit)
                                .orElse("mm/s"));
            case SYNCHRONISM -> measured("synchronism", "s");
            case STANDS, MOVES -> Entry.tick(WORDS.get("reading.stood"), WORDS.get("reading.moved"));
        };
    }

    private static Entry measured(String what, String unit) {
        return new Entry(WORDS.get("reading." + what), unit, List.of());
    }

    private static String unit(Quantity quantity) {
        return quantity.unit().symbol();
    }
}
