package org.cellfile.subject.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Block.Box;
import org.cellfile.dossier.Block.Column;
import org.cellfile.dossier.Block.Entry;
import org.cellfile.dossier.Block.Paragraph;
import org.cellfile.dossier.Block.Points;
import org.cellfile.dossier.Block.Tone;
import org.cellfile.dossier.Block.WriteInTable;
import org.cellfile.dossier.Form;
import org.cellfile.dossier.Words;
import org.cellfile.quantity.Quantity;
import org.cellfile.subject.verification.Protocol.Reading;
import org.cellfile.subject.verification.Protocol.Test;
import org.cellfile.subject.verification.Tested;

/** The check of the safeguards that the operator does at the beginning of each shift. */
public final class ShiftCheck {

    public static final String ID = "shift-check";

    /** As many as find room beside what is to be done. */
    private static final int SHIFTS = 5;

    private static final int REMARKS = 4;

    private static final Words WORDS = Words.of("forms/" + ID);

    private ShiftCheck() {}

    /**
     * The form with nothing filled in but what the cell states.
     *
     * @param things in the order they are checked
     * @param responsible who answers for the cell in the plant
     */
    public static Form form(List<Tested> things, String responsible) {
        List<List<Entry>> checks = things.stream().flatMap(ShiftCheck::checks).toList();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Paragraph(WORDS.get("scope")));
        blocks.add(new Box(
                Tone.CAUTION,
                WORDS.get("when-wrong"),
                List.of(new Points(List.of(
                        WORDS.get("when-wrong.stop"),
                        WORDS.get("when-wrong.leave"),
                        WORDS.get("when-wrong.report", responsible))))));
        if (checks.isEmpty()) {
            blocks.add(new Paragraph(WORDS.get("none")));
        } else {
            blocks.add(new Paragraph(WORDS.get("signed.rule")));
            blocks.add(signed());
            blocks.add(remarks());
            blocks.add(new WriteInTable(WORDS.get("checks"), columns(), checks));
        }
        return new Form(ID, WORDS.get("title"), true, blocks);
    }

    private static Stream<List<Entry>> checks(Tested thing) {
        return thing.protocol().tests().stream().filter(Test::shift).map(test -> check(thing, test));
    }

    private static List<Entry> check(Tested thing, Test test) {
        List<Entry> row = new ArrayList<>();
        row.add(Entry.printed(thing.tag().characters() + "\n" + thing.name().characters()));
        row.add(Entry.printed(test.how(thing)));
        row.add(Entry.printed(rod(thing, test)));
        row.add(Entry.printed(test.expected()));
        for (int shift = 1; shift <= SHIFTS; shift++) {
            row.add(Entry.tick(WORDS.get("yes"), WORDS.get("no")));
        }
        return row;
    }

    private static String rod(Tested thing, Test test) {
        return Optional.of(test.reading())
                .filter(Reading.TEST_PIECE::equals)
                .flatMap(reads -> thing.testPiece())
                .map(Quantity::toString)
                .orElse("–");
    }

    private static List<Column> columns() {
        List<Column> columns = new ArrayList<>(List.of(
                Column.text(WORDS.get("device-and-name"), 41),
                Column.text(WORDS.get("how"), 76),
                Column.text(WORDS.get("rod"), 17),
                Column.text(WORDS.get("expected"), 52)));
        for (int shift = 1; shift <= SHIFTS; shift++) {
            columns.add(Column.text(WORDS.get("shift-numbered", shift), 20));
        }
        return columns;
    }

    private static WriteInTable signed() {
        List<List<Entry>> rows = new ArrayList<>();
        for (int shift = 1; shift <= SHIFTS; shift++) {
            rows.add(List.of(
                    Entry.printed(String.valueOf(shift)),
                    Entry.room(),
                    Entry.room(),
                    Entry.room(),
                    Entry.tick(WORDS.get("yes"), WORDS.get("no")),
                    Entry.room(),
                    Entry.room()));
        }
        return new WriteInTable(
                WORDS.get("signed"),
                List.of(
                        Column.text(WORDS.get("shift"), 13),
                        Column.text(WORDS.get("date"), 32),
                        Column.text(WORDS.get("time"), 24),
                        Column.text(WORDS.get("shift-name"), 36),
                        Column.text(WORDS.get("all"), 34),
                        Column.text(WORDS.get("name"), 60),
                        Column.text(WORDS.get("signature"), 70)),
                rows);
    }

    private static WriteInTable remarks() {
        List<List<Entry>> rows = new ArrayList<>();
        for (int remark = 1; remark <= REMARKS; remark++) {
            rows.add(List.of(Entry.room(), Entry.room(), Entry.room(), Entry.room(), Entry.room()));
        }
        return new WriteInTable(
                WORDS.get("remarks"),
                List.of(
                        Column.text(WORDS.get("shift"), 13),
                        Column.text(WORDS.get("device"), 45),
                        Column.text(WORDS.get("what"), 115),
                        Column.text(WORDS.get("reported"), 50),
                        Column.text(WORDS.get("reported-at"), 38)),
                rows);
    }
}
