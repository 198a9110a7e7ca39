package org.cellfile.subject.safeguard;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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

    /** For each edition named for comparison a table of the distances, and one of the working they come by. */
    public static Chapter chapter(List<Guarding> safeguards, List<Edition> compared, Workings workings) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(
                new Paragraph(
                        "What other editions would ask of the same safeguards, from the same inputs. Nothing here decides"
                                + " about the cell: the editions in force do. Margin is what would be left of the distance that counts. A"
                                + " distance marked \"at least\" is a lower bound, from which it cannot be said that a safeguard would hold."));
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
        blocks.add(new Table(
                edition.id() + " beside " + inForce(rows),
                List.of(
                        Column.text("Safeguard", 30),
                        Column.figures("In force", 19),
                        Column.figures("Other", 31),
                        Column.figures("More", 19),
                        Column.figures("Counts as", 19),
                        Column.figures("Margin", 19),
                        Column.text("What can be said", 23)),
                rows.stream()
                        .map(row -> List.of(
                                row.inForce().tag(),
                                Workings.shown(row.inForce().separationDistance()),
                                distance(row),
                                more(row),
                                Workings.shown(row.inForce().budget().counted()),
                                margin(row),
                                Text.capital(row.standing().words())))
                        .toList()));
        blocks.add(new Paragraph(Text.capital(OtherEdition.count(rows)) + "."));
        Map<List<String>, List<String>> remarks = OtherEdition.remarks(rows);
        if (!remarks.isEmpty()) {
            blocks.add(new Table(
                    "What the figures do not show",
                    List.of(Column.text("Safeguards", 50), Column.text("Remarks", 110)),
                    remarks.entrySet().stream()
                            .map(one -> List.of(String.join(", ", one.getKey()), String.join("\n", one.getValue())))
                            .toList()));
        }
        blocks.add(new Table(
                "How the distances under " + edition.id() + " are come by",
                List.of(
                        Column.text("Safeguard", 30),
                        Column.text("Value", 46),
                        Column.text("Working", 64),
                        Column.figures("Result", 20)),
                rows.stream()
                        .flatMap(row -> leadingThere(row)
                                .map(derived -> List.of(
                                        row.inForce().tag(),
                                        named(derived, edition),
                                        Workings.line(derived),
                                        workings.inUnits(derived))))
                        .toList()));
        return new Section("", edition.id(), blocks);
    }

    /** What it is and by which clause; the edition is named only where it is another one than the table is about. */
    private static String named(Derived derived, Edition edition) {
        String words = Text.capital(derived.words());
        return derived.clause().equals(edition.id())
                ? words
                : words + ", " + derived.clause().replace(edition.id() + ", ", "");
    }

    /**
     * What an edition itself gives for the distance and for what is required of the device; the rest, such as the response time,
     * is as under the editions in force. A value that only hands on another one is left out.
     */
    private static Stream<Derived> leadingThere(OtherEdition row) {
        Derived distance = row.under().separationDistance();
        Set<Derived> asked = new HashSet<>(distance.below());
        asked.add(distance);
        row.under().requirements().forEach(claim -> asked.add(claim.derived()));
        return row.under().derived().stream()
                .filter(asked::contains)
                .filter(derived -> derived.value().isPresent() && !(derived.expression() instanceof Derived))
                .filter(derived -> derived.references().stream()
                        .anyMatch(reference ->
                                reference.clause().edition().equals(row.other().id())));
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

    /** The distance under the other edition. */
    public static String distance(OtherEdition row) {
        String shown = Workings.shown(row.under().separationDistance());
        return row.lowerBound() ? "at least " + shown : shown;
    }

    /** The margin under the other edition; not known where only a lower bound of its distance is. */
    public static String margin(OtherEdition row) {
        return Workings.shown(row.under().margin());
    }

    /** How much more the other edition asks; a dash where it is not known. */
    public static String more(OtherEdition row) {
        return row.more()
                .map(more -> (more.number().signum() > 0 ? "+" : "") + more)
                .map(more -> row.lowerBound() ? "at least " + more : more)
                .orElse("–");
    }
}
