package org.cellfile.subject.due;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
                            Column.text("On", 3),
                            Column.text("Thing", 4),
                            Column.text("What", 8),
                            Column.text("Source", 9)),
                    byThing(dues, asOf)));
        }
        return new Chapter("due", "What falls due", blocks);
    }

    /** What falls due of one thing on one day and for one reason stands in one row. */
    private static List<List<String>> byThing(List<Due> dues, LocalDate asOf) {
        Map<List<String>, List<String>> whats = new LinkedHashMap<>();
        for (Due due : dues) {
            String on = due.on() + (due.on().isBefore(asOf) ? ", overdue" : "");
            whats.computeIfAbsent(List.of(on, due.tag(), due.source()), row -> new ArrayList<>())
                    .add(due.what());
        }
        return whats.entrySet().stream()
                .map(row -> List.of(
                        row.getKey().get(0),
                        row.getKey().get(1),
                        together(row.getValue()),
                        row.getKey().get(2)))
                .toList();
    }

    /** What is of one sort names its sort once. */
    private static String together(List<String> whats) {
        StringBuilder together = new StringBuilder();
        String before = "";
        for (String what : whats) {
            String sort = what.substring(0, what.indexOf(": ") < 0 ? 0 : what.indexOf(": ") + 2);
            together.append(together.isEmpty() ? "" : "; ")
                    .append(sort.equals(before) ? what.substring(sort.length()) : what);
            before = sort;
        }
        return together.toString();
    }
}
