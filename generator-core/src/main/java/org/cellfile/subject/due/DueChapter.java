package org.cellfile.subject.due;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Block.Column;
import org.cellfile.dossier.Block.Paragraph;
import org.cellfile.dossier.Block.Table;
import org.cellfile.dossier.Chapter;

/** How what falls due is printed. */
public final class DueChapter {

    private DueChapter() {}

    /**
     * The chapter.
     *
     * @param dues the earliest first
     * @param asOf the day from which is counted
     */
    public static Chapter chapter(List<Due> dues, LocalDate asOf) {
        List<Block> blocks = new ArrayList<>();
        if (dues.isEmpty()) {
            blocks.add(new Paragraph("Nothing of what is stated falls due on a day."));
        } else {
            blocks.add(new Paragraph("The earliest day is " + dues.get(0).on() + ": "
                    + dues.get(0).tag() + ", "
                    + dues.get(0).what() + ". Each day named is the last one on which what is there still holds, as"
                    + " stated on " + asOf
                    + ", the day this description speaks of; what was done since stands in a later"
                    + " one. A file for calendar programs with the same days lies beside this one."));
            blocks.add(new Table(
                    "What falls due, by day",
                    List.of(
                            Column.text("On", 4),
                            Column.text("Thing", 5),
                            Column.text("What", 9),
                            Column.text("Source", 8)),
                    dues.stream()
                            .map(due -> List.of(
                                    due.on() + (due.on().isBefore(asOf) ? ", overdue" : ""),
                                    due.tag(),
                                    due.what(),
                                    due.source()))
                            .toList()));
        }
        return new Chapter("due", "What falls due", blocks);
    }
}
