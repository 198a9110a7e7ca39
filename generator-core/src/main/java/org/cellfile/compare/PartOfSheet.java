package org.cellfile.compare;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.dossier.Canonical;
import org.cellfile.dossier.Digest;
import org.cellfile.dossier.Sheet;
import org.cellfile.dossier.Sheet.Panel;

/**
 * A part of a posted sheet that says something else now. The days of a sheet and the draft mark do not count.
 *
 * @param title its heading, or what it is
 * @param was lines that are no longer there
 * @param is lines that were not there
 */
public record PartOfSheet(String title, List<String> was, List<String> is) {

    /** What differs between two states of one sheet, in reading order. */
    static List<PartOfSheet> between(Sheet was, Sheet is) {
        List<PartOfSheet> parts = new ArrayList<>();
        add(parts, "title", List.of(in(was.title())), List.of(in(is.title())));
        add(parts, "posting place", lines(was.places()), lines(is.places()));
        add(parts, "marks", lines(was.marks()), lines(is.marks()));
        for (Panel panel : is.panels()) {
            Optional<Panel> before = panel(was, panel.id());
            if (!was.panels().contains(panel)) {
                add(parts, panel.title().get(0), before.map(PartOfSheet::said).orElse(List.of()), said(panel));
            }
        }
        was.panels().stream()
                .filter(panel -> panel(is, panel.id()).isEmpty())
                .forEach(panel -> add(parts, panel.title().get(0), said(panel), List.of()));
        facts(parts, was.foot(), is.foot());
        facts(parts, was.displays(), is.displays());
        return parts;
    }

    private static Optional<Panel> panel(Sheet sheet, String id) {
        return sheet.panels().stream().filter(panel -> panel.id().equals(id)).findFirst();
    }

    private static List<String> said(Panel panel) {
        return Stream.of(
                        Stream.of(in(panel.title())),
                        lines(panel.lines()).stream(),
                        panel.drawings().stream().map(PartOfSheet::drawn))
                .flatMap(Function.identity())
                .toList();
    }

    /** What a drawing tells, and by which it is known that it shows something else. */
    private static String drawn(Block.Drawing drawing) {
        return drawing.alternative() + " (drawing "
                + Digest.sha256(Canonical.json(drawing)).substring(0, 4) + ")";
    }

    private static List<String> lines(List<List<String>> lines) {
        return lines.stream().map(PartOfSheet::in).toList();
    }

    /** What stands there in several languages, on one line. */
    private static String in(List<String> languages) {
        return String.join(" / ", languages);
    }

    private static void facts(List<PartOfSheet> parts, List<Fact> was, List<Fact> is) {
        Set<String> labels = new LinkedHashSet<>();
        is.forEach(fact -> labels.add(fact.label()));
        was.forEach(fact -> labels.add(fact.label()));
        Map<String, List<String>> before = byLabel(was);
        Map<String, List<String>> now = byLabel(is);
        labels.forEach(
                label -> add(parts, label, before.getOrDefault(label, List.of()), now.getOrDefault(label, List.of())));
    }

    private static Map<String, List<String>> byLabel(List<Fact> facts) {
        return facts.stream()
                .collect(Collectors.groupingBy(
                        Fact::label,
                        Collectors.mapping(fact -> (fact.value() + " " + fact.remark()).strip(), Collectors.toList())));
    }

    private static void add(List<PartOfSheet> parts, String title, List<String> was, List<String> is) {
        if (!was.equals(is)) {
            List<String> gone = without(was, is);
            List<String> added = without(is, was);
            // The same lines in another order are other instructions.
            boolean order = gone.isEmpty() && added.isEmpty();
            parts.add(new PartOfSheet(title, order ? was : gone, order ? is : added));
        }
    }

    private static List<String> without(List<String> lines, List<String> others) {
        List<String> left = new ArrayList<>(lines);
        others.forEach(left::remove);
        return left;
    }

    /** The headings of what differs, each once. */
    static List<String> titles(List<PartOfSheet> parts) {
        return parts.stream().map(PartOfSheet::title).distinct().toList();
    }

    /** The same line by line. */
    List<String> lineByLine() {
        return Stream.of(
                        Stream.of(title),
                        was.stream().map(line -> "  was: " + line),
                        is.stream().map(line -> "  is:  " + line))
                .flatMap(Function.identity())
                .toList();
    }
}
