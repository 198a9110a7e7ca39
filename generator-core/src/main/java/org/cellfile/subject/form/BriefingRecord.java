package org.cellfile.subject.form;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Block.Column;
import org.cellfile.dossier.Block.Entry;
import org.cellfile.dossier.Block.Line;
import org.cellfile.dossier.Block.Paragraph;
import org.cellfile.dossier.Block.SignatureLine;
import org.cellfile.dossier.Block.WriteInLines;
import org.cellfile.dossier.Block.WriteInTable;
import org.cellfile.dossier.Form;
import org.cellfile.dossier.Words;

/** Who was told at the machine what its sheets ask, when and by whom. */
public final class BriefingRecord {

    public static final String ID = "briefing-record";

    /** As many as one page, also of Letter, takes beside seven sheets and the signature of whoever briefs. */
    private static final int PEOPLE = 8;

    private static final Words WORDS = Words.of("forms/" + ID);

    private BriefingRecord() {}

    /**
     * The form with nothing filled in but the sheets of the cell.
     *
     * @param sheets their titles
     * @param responsible who answers for them in the plant
     */
    public static Form form(List<String> sheets, String responsible) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Paragraph(WORDS.get("scope", responsible)));
        blocks.add(new WriteInLines(List.of(
                room("date"),
                room("by"),
                room("language"),
                room("next"),
                new Line(
                        WORDS.get("occasion"),
                        Entry.tick(Stream.of("first", "again", "change")
                                .map(choice -> WORDS.get("occasion." + choice))
                                .toArray(String[]::new))))));
        blocks.add(new WriteInTable(
                WORDS.get("sheets"),
                List.of(column("sheet", 5), column("told", 6)),
                sheets.stream()
                        .map(title -> List.of(
                                Entry.printed(title), Entry.tick(WORDS.get("told.read"), WORDS.get("told.shown"))))
                        .toList()));
        blocks.add(new WriteInTable(
                WORDS.get("people"),
                List.of(column("name", 4), column("employer", 3), column("signature", 4)),
                Collections.nCopies(PEOPLE, Collections.nCopies(3, Entry.room()))));
        blocks.add(new SignatureLine(WORDS.get("briefed"), WORDS.get("briefed.who")));
        return new Form(ID, WORDS.get("title"), false, blocks);
    }

    private static Line room(String key) {
        return new Line(WORDS.get(key), Entry.room());
    }

    private static Column column(String key, int width) {
        return Column.text(WORDS.get(key), width);
    }
}
