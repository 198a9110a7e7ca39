package org.cellfile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cellfile.cell.Cell;
import org.cellfile.claim.Workings;
import org.cellfile.finding.Nearest;
import org.cellfile.standard.Edition;
import org.cellfile.standard.Editions;
import org.cellfile.subject.safeguard.OtherEdition;
import org.cellfile.subject.safeguard.OtherEditionsChapter;
import org.cellfile.verdict.Refused;

/** The safeguards of a cell under editions that are not in force, as text beside those that are. */
public final class SideBySide {

    private static final int MARK = 2;

    private static final int WIDTH = 100;

    private SideBySide() {}

    /**
     * The editions to compare under.
     *
     * @param asked ids; when there are none, those the cell names for comparison, and when it names none, every other edition
     */
    public static List<Edition> editions(Cell cell, List<String> asked) {
        if (!asked.isEmpty()) {
            return asked.stream()
                    .map(Editions::of)
                    .flatMap(Optional::stream)
                    .map(cell::holding)
                    .toList();
        }
        List<Edition> named = cell.identity().standards().compared();
        if (!named.isEmpty()) {
            return named;
        }
        List<String> inForce = cell.identity().standards().inForce(Edition.class).stream()
                .map(Edition::id)
                .toList();
        return Editions.ids().stream()
                .filter(id -> !inForce.contains(id))
                .map(Editions::of)
                .flatMap(Optional::stream)
                .map(cell::holding)
                .toList();
    }

    /** The sentence for ids that are no edition's; empty when all are known. */
    public static Optional<String> unknown(List<String> asked) {
        return asked.stream()
                .filter(id -> Editions.of(id).isEmpty())
                .findFirst()
                .map(id -> "`" + id + "` is not an edition whose rules are known here; known: "
                        + Nearest.listed(id, Editions.ids()));
    }

    /** What {@link #text} tells of a checked cell, and that the cell itself is refused where it is. */
    public static String of(Generator.Checked checked, List<String> asked) {
        if (checked.cell().isEmpty()) {
            return "the cell's files leave nothing to recompute; `check` tells why\n";
        }
        Cell cell = checked.cell().get();
        String text = text(cell, editions(cell, asked));
        return checked.verdict() instanceof Refused
                ? text + "the cell is refused under the editions in force; `check` tells why\n"
                : text;
    }

    /** A table for each edition to which any safeguard is sensitive. */
    public static String text(Cell cell, List<Edition> editions) {
        StringBuilder text = new StringBuilder();
        for (Edition edition : editions) {
            List<OtherEdition> rows = OtherEdition.of(cell.safeguards(), edition);
            if (!rows.isEmpty()) {
                text.append(edition.id())
                        .append(" beside ")
                        .append(OtherEditionsChapter.inForce(rows))
                        .append('\n');
                edition.remark().ifPresent(remark -> wrapped(text, MARK, remark));
                text.append('\n');
                table(text, rows);
                OtherEdition.remarks(rows).forEach((tags, remarks) -> {
                    text.append('\n');
                    wrapped(text, MARK, String.join(", ", tags));
                    remarks.forEach(remark -> wrapped(text, 2 * MARK, remark));
                });
                text.append("\n  ").append(OtherEdition.count(rows)).append("\n\n");
            }
        }
        if (text.isEmpty()) {
            text.append("none of these editions makes a difference to a safeguard of this cell\n");
        }
        return text.toString();
    }

    private static void table(StringBuilder text, List<OtherEdition> rows) {
        List<List<String>> lines = new ArrayList<>();
        lines.add(List.of("safeguard", "in force", "other", "more", "counts as", "margin", ""));
        rows.forEach(row -> lines.add(List.of(
                row.inForce().tag(),
                Workings.shown(row.inForce().separationDistance()),
                OtherEditionsChapter.distance(row),
                OtherEditionsChapter.more(row),
                Workings.shown(row.inForce().budget().counted()),
                OtherEditionsChapter.margin(row),
                row.standing().words())));
        List<Integer> widths = new ArrayList<>();
        for (int column = 0; column < lines.get(0).size(); column++) {
            int at = column;
            widths.add(
                    lines.stream().mapToInt(line -> line.get(at).length()).max().orElse(0));
        }
        for (List<String> line : lines) {
            StringBuilder row = new StringBuilder();
            for (int column = 0; column < widths.size(); column++) {
                String cell = line.get(column);
                String space = " ".repeat(widths.get(column) - cell.length());
                boolean figures = column > 0 && column < widths.size() - 1;
                row.append(figures ? space + cell : cell + space).append("  ");
            }
            text.append("  ").append(row.toString().stripTrailing()).append('\n');
        }
    }

    /** Words in lines that a terminal shows whole. */
    private static void wrapped(StringBuilder text, int indent, String words) {
        StringBuilder line = new StringBuilder(" ".repeat(indent));
        int start = line.length();
        for (String word : words.split(" ", -1)) {
            if (line.length() > start && line.length() + 1 + word.length() > WIDTH) {
                text.append(line).append('\n');
                line = new StringBuilder(" ".repeat(indent));
                start = line.length();
            }
            line.append(line.length() > start ? " " : "").append(word);
        }
        text.append(line).append('\n');
    }
}
