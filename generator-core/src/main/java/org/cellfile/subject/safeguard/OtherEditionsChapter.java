package org.cellfile.subject.safeguard;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.cellfile.claim.Recorded;
import org.cellfile.claim.Workings;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Block.Column;
import org.cellfile.dossier.Block.Paragraph;
import org.cellfile.dossier.Block.Section;
import org.cellfile.dossier.Block.Table;
import org.cellfile.dossier.Chapter;
import org.cellfile.dossier.Text;
import org.cellfile.standard.Edition;
import org.cellfile.trace.Derived;

/** How the safeguards are printed as they would be under editions that are not in force. */
public final class OtherEditionsChapter {

    private OtherEditionsChapter() {}

    /** A table for each edition named for comparison, with the working of every distance in it. */
    public static Chapter chapter(List<Guarding> safeguards, List<Edition> compared, Workings workings) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Paragraph(
                "What other editions would ask of the same safeguards, from the same inputs. Nothing here decides"
                        + " about the cell: the editions in force do. A distance marked \"at least\" is a lower bound, from which it"
                        + " cannot be said that a safeguard would hold."));
        for (Edition edition : compared) {
            List<OtherEdition> rows = OtherEdition.of(safeguards, edition);
            if (rows.isEmpty()) {
                blocks.add(new Paragraph(edition.id() + " makes no difference to a safeguard of this cell."));
            } else {
                blocks.add(section(edition, rows, workings));
            }
        }
        return new Chapter("other-editions", "Under other editions", blocks);
    }

    private static Section section(Edition edition, List<OtherEdition> rows, Workings workings) {
        List<Block> blocks = new ArrayList<>();
        edition.remark().ifPresent(remark -> blocks.add(new Paragraph(remark)));
        blocks.add(new Paragraph(Text.capital(count(rows)) + "."));
        blocks.add(new Table(
                edition.id() + " beside " + inForce(rows),
                List.of(
                        Column.text("Safeguard", 4),
                        Column.figures("In force", 3),
                        Column.figures("Other", 3),
                        Column.figures("More", 2),
                        Column.figures("Margin", 2),
                        Column.text("What can be said", 8)),
                rows.stream()
                        .map(row -> List.of(
                                row.inForce().tag(),
                                Workings.shown(row.inForce().separationDistance()),
                                distance(row),
                                more(row),
                                margin(row),
                                Text.capital(row.said())))
                        .toList()));
        for (OtherEdition row : rows) {
            List<Derived> derived = row.under().derived().stream()
                    .filter(one -> one.references().stream()
                            .anyMatch(reference -> reference.clause().edition().equals(edition.id())))
                    .toList();
            blocks.add(workings.rows(
                    row.inForce().tag() + " under " + edition.id(),
                    derived,
                    Recorded.none(row.under().toString())));
        }
        return new Section("", edition.id(), blocks);
    }

    /** The editions in force that the rows are compared with. */
    public static String inForce(List<OtherEdition> rows) {
        return rows.stream()
                .flatMap(row -> row.inForce().editionsReplacedBy(row.other()).stream())
                .map(Edition::id)
                .distinct()
                .sorted()
                .collect(Collectors.joining(" and "));
    }

    /** How many safeguards hold, fall short, and how many it cannot be said of. */
    public static String count(List<OtherEdition> rows) {
        return OtherEdition.count(rows, OtherEdition.Standing.HOLDS) + " of " + rows.size() + " still hold, "
                + OtherEdition.count(rows, OtherEdition.Standing.FALLS_SHORT) + " would not, of "
                + OtherEdition.count(rows, OtherEdition.Standing.CANNOT_BE_SAID) + " it cannot be said";
    }

    /** The distance under the other edition. */
    public static String distance(OtherEdition row) {
        String shown = Workings.shown(row.under().separationDistance());
        return row.lowerBound() ? "at least " + shown : shown;
    }

    /** The margin under the other edition; not known where only a lower bound of its distance is. */
    public static String margin(OtherEdition row) {
        return Workings.shown(row.under().margin());
    }

    /** How much more the other edition asks. */
    public static String more(OtherEdition row) {
        return row.more()
                .map(more -> (more.number().signum() > 0 ? "+" : "") + more)
                .map(more -> row.lowerBound() ? "at least " + more : more)
                .orElse("–");
    }
}
