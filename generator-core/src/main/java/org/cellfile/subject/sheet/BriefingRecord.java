package org.cellfile.subject.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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

/** Who was told at the machine what its sheets ask, when and by whom: the shift signs it, so it stands in the language of the shift. */
final class BriefingRecord {

    static final String ID = "briefing-record";

    /** As many as one page, also of Letter, takes beside seven sheets and the signature of whoever briefs. */
    private static final int PEOPLE = 8;

    private final Wording wording;

    private BriefingRecord(Wording wording) {
        this.wording = wording;
    }

    /**
     * The form with nothing filled in but the sheets of the cell.
     *
     * @param wording of this form in its language
     * @param sheets their titles in it
     * @param responsible who answers for them in the plant
     * @param frame what stands around the text of a sheet in the same language
     */
    static Form form(Wording wording, List<String> sheets, String responsible, Map<String, String> frame) {
        return new BriefingRecord(wording).form(sheets, responsible, frame);
    }

    private Form form(List<String> sheets, String responsible, Map<String, String> frame) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Paragraph(wording.say("scope", responsible)));
        blocks.add(new WriteInLines(List.of(
                room("date"),
                room("by"),
                new Line(
                        wording.say("language"),
                        Entry.printed(wording.language().name())),
                room("next"),
                new Line(wording.say("occasion"), tick("occasion", "first", "again", "change")))));
        blocks.add(new WriteInTable(
                wording.say("sheets"),
                List.of(column("sheet", 5), column("told", 6)),
                sheets.stream()
                        .map(title -> List.of(Entry.printed(title), tick("told", "read", "shown")))
                        .toList()));
        blocks.add(new WriteInTable(
                wording.say("people"),
                List.of(column("name", 4), column("employer", 3), column("signature", 4)),
                Collections.nCopies(PEOPLE, Collections.nCopies(3, Entry.room()))));
        blocks.add(new SignatureLine(wording.say("briefed"), wording.say("briefed.who")));
        String tag = wording.language().tag();
        return new Form(ID + "-" + tag, wording.say("title"), false, blocks, tag, around(frame));
    }

    private Map<String, String> around(Map<String, String> frame) {
        Map<String, String> around = new HashMap<>(frame);
        around.put("form.caution", wording.say("caution"));
        around.put("signature.name", wording.say("name"));
        around.put("signature.date", wording.say("date"));
        around.put("signature.signature", wording.say("signature"));
        return around;
    }

    private Line room(String key) {
        return new Line(wording.say(key), Entry.room());
    }

    private Entry tick(String key, String... choices) {
        return Entry.tick(Stream.of(choices)
                .map(choice -> wording.say(key + "." + choice))
                .toArray(String[]::new));
    }

    private Column column(String key, int width) {
        return Column.text(wording.say(key), width);
    }
}
