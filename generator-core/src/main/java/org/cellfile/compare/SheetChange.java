package org.cellfile.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.cellfile.cell.Composition;
import org.cellfile.dossier.Sheet;
import org.cellfile.dossier.Text;

/**
 * A posted sheet of which copies have to be changed at the cell. Its days and the draft mark do not count.
 *
 * @param id the name of its file
 * @param exchange places at which the copy that hangs there says something else than what is printed now
 * @param post places at which none hung
 * @param takeDown places at which none is to hang any more
 * @param parts headings of what differs on it
 */
public record SheetChange(
        String id, List<String> exchange, List<String> post, List<String> takeDown, List<String> parts) {

    private static final String NEW = "all of it, as it is new";
    private static final String GONE = "all of it, as it is not printed any more";

    static List<SheetChange> between(State older, State newer) {
        Map<String, Sheet> before = byFile(older);
        Map<String, Sheet> now = byFile(newer);
        boolean renamed = !older.label().cellName().equals(newer.label().cellName());
        List<SheetChange> changes = new ArrayList<>();
        now.forEach((file, sheet) -> {
            Optional<Sheet> was = Optional.ofNullable(before.get(file));
            List<String> parts = new ArrayList<>(was.map(one -> PartOfSheet.titles(PartOfSheet.between(one, sheet)))
                    .orElse(List.of(NEW)));
            if (renamed) {
                parts.add(0, "name of the cell");
            }
            if (!parts.isEmpty()) {
                List<String> hung = was.map(SheetChange::places).orElse(List.of());
                changes.add(new SheetChange(
                        file,
                        places(sheet).stream().filter(hung::contains).toList(),
                        places(sheet).stream()
                                .filter(place -> !hung.contains(place))
                                .toList(),
                        hung.stream()
                                .filter(place -> !places(sheet).contains(place))
                                .toList(),
                        parts));
            }
        });
        before.forEach((file, sheet) -> {
            if (!now.containsKey(file)) {
                changes.add(new SheetChange(file, List.of(), List.of(), places(sheet), List.of(GONE)));
            }
        });
        return changes;
    }

    private static Map<String, Sheet> byFile(State state) {
        return Composition.sheets(state.cell()).stream()
                .collect(Collectors.toMap(Sheet::file, Function.identity(), (a, b) -> a, LinkedHashMap::new));
    }

    /** Where copies hang, in the first of its languages. */
    static List<String> places(Sheet sheet) {
        return sheet.places().stream().map(place -> place.get(0)).distinct().toList();
    }

    /** What is to be done with its copies, where; nothing when none hangs anywhere. */
    public String toBeDone() {
        List<String> due = new ArrayList<>();
        add(due, "exchange at ", exchange);
        add(due, "post at ", post);
        add(due, "take down at ", takeDown);
        return due.isEmpty() ? "hangs nowhere" : String.join("; ", due);
    }

    private static void add(List<String> due, String what, List<String> places) {
        if (!places.isEmpty()) {
            due.add(what + Text.listed(places));
        }
    }
}
