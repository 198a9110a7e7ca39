package org.cellfile.compare;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.cellfile.cell.Composition;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.dossier.Sheet;

/**
 * A posted sheet on which something else is printed now. Its days and the draft mark do not count.
 *
 * @param place where it is posted
 * @param parts headings of what differs on it
 */
public record SheetChange(String id, String title, String place, List<String> parts) {

    private static final String ALL_OF_IT = "all of it, as it is new";

    static List<SheetChange> between(State older, State newer) {
        Map<String, Sheet> before =
                Composition.sheets(older.cell()).stream().collect(Collectors.toMap(Sheet::file, Function.identity()));
        List<SheetChange> changes = new ArrayList<>();
        for (Sheet sheet : Composition.sheets(newer.cell())) {
            List<String> parts = Optional.ofNullable(before.get(sheet.file()))
                    .map(was -> parts(was, sheet))
                    .orElse(List.of(ALL_OF_IT));
            if (!older.label().cellName().equals(newer.label().cellName())) {
                parts = new ArrayList<>(parts);
                parts.add(0, "name of the cell");
            }
            if (!parts.isEmpty()) {
                changes.add(new SheetChange(sheet.file(), sheet.title().get(0), place(sheet), parts));
            }
        }
        return changes;
    }

    private static String place(Sheet sheet) {
        return sheet.places().stream().map(place -> place.get(0)).collect(Collectors.joining("; "));
    }

    private static List<String> parts(Sheet was, Sheet is) {
        Set<String> parts = new LinkedHashSet<>();
        if (!was.title().equals(is.title())) {
            parts.add("title");
        }
        if (!was.places().equals(is.places())) {
            parts.add("posting place");
        }
        is.panels().stream()
                .filter(panel -> !was.panels().contains(panel))
                .forEach(panel -> parts.add(panel.title().get(0)));
        was.panels().stream()
                .filter(panel ->
                        is.panels().stream().noneMatch(other -> other.id().equals(panel.id())))
                .forEach(panel -> parts.add(panel.title().get(0)));
        Set<Fact> foot = new LinkedHashSet<>(is.foot());
        was.foot().forEach(fact -> {
            if (!foot.remove(fact)) {
                foot.add(fact);
            }
        });
        foot.stream().map(Fact::label).forEach(parts::add);
        return List.copyOf(parts);
    }
}
