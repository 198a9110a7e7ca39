package org.cellfile.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.cellfile.dossier.Canonical;
import org.cellfile.dossier.Dossier;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.source.SourceFile;

/** Holds the dossier embedded in a file against the one recomputed from its embedded sources. */
final class DossierComparison {

    /** A derived value is another one. */
    static final FindingId VALUE = new FindingId("audit.value");

    /** Something else in the dossier is another one. */
    static final FindingId DOSSIER = new FindingId("audit.dossier");

    /** The file was made by another version of this program, and that shows. */
    static final FindingId OTHER_VERSION = new FindingId("audit.other-version");

    private static final String VALUES = "values";
    private static final String REGISTER = "register";
    private static final String MADE_BY = "madeBy";
    private static final int SHOWN = 160;

    private final String file;
    private final Dossier recomputed;
    private final Map<List<String>, String> embedded;
    private final Map<List<String>, String> due;

    private DossierComparison(
            String file, Dossier recomputed, Map<List<String>, String> embedded, Map<List<String>, String> due) {
        this.file = file;
        this.recomputed = recomputed;
        this.embedded = embedded;
        this.due = due;
    }

    /** Compares; empty when what is embedded is no dossier. */
    static Optional<DossierComparison> of(String file, String embedded, Dossier recomputed) {
        return Canonical.leaves(embedded)
                .filter(leaves -> leaves.containsKey(List.of(MADE_BY)))
                .map(leaves -> new DossierComparison(
                        file,
                        recomputed,
                        leaves,
                        Canonical.leaves(Canonical.json(recomputed)).orElseThrow()));
    }

    /** The version that says it made the embedded one, when it is not this one. */
    Optional<String> otherVersion() {
        return Optional.ofNullable(embedded.get(List.of(MADE_BY))).filter(made -> !made.equals(recomputed.madeBy()));
    }

    /** Derived values that differ, those that only one of the two has as well; both numbers are told. */
    List<Finding> values() {
        Set<String> tags = new LinkedHashSet<>();
        different().stream()
                .filter(path -> path.get(0).equals(VALUES) && path.size() > 1)
                .forEach(path -> tags.add(path.get(1)));
        return tags.stream().map(this::value).toList();
    }

    private Finding value(String tag) {
        String before = shown(embedded, tag);
        String now = shown(due, tag);
        String sentence = before.isEmpty()
                ? "`" + tag + "` is not in the embedded dossier; recomputed from the embedded sources it is " + now
                : now.isEmpty()
                        ? "`" + tag + "` is " + before
                                + " in the embedded dossier; from the embedded sources nothing of that"
                                + " name is derived"
                        : "`" + tag + "` is " + before
                                + " in the embedded dossier, recomputed from the embedded sources " + now;
        return Finding.refuses(
                VALUE,
                tag,
                SourceFile.unread(file).whole(),
                sentence,
                "have the working of both explained (`explain " + tag
                        + "`) and ask whoever handed the file over which of the two the cell was released with");
    }

    private static String shown(Map<List<String>, String> leaves, String tag) {
        String value = leaves.get(List.of(VALUES, tag, "value"));
        String exact = leaves.get(List.of(VALUES, tag, "exact"));
        if (value == null && exact == null) {
            return "";
        }
        String rounded = value == null || value.isEmpty() ? "not computed" : value;
        return exact == null || exact.isEmpty() || exact.equals(rounded)
                ? rounded
                : rounded + " (exactly " + exact + ")";
    }

    /** Everything else that differs, part by part: what it is called, and the first text that differs in it. */
    List<String> parts() {
        Map<String, List<String>> first = new LinkedHashMap<>();
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (List<String> path : different()) {
            if (!path.get(0).equals(VALUES) && !path.equals(List.of(MADE_BY))) {
                first.putIfAbsent(part(path), path);
                counts.merge(part(path), 1, Integer::sum);
            }
        }
        List<String> parts = new ArrayList<>();
        first.forEach((part, path) -> parts.add(part + ": " + told(path) + more(counts.getOrDefault(part, 1))));
        return parts;
    }

    private static String more(int count) {
        return count == 1 ? "" : ", and " + (count - 1) + " more";
    }

    private String told(List<String> path) {
        String before = embedded.get(path);
        String now = due.get(path);
        return (before == null ? "nothing embedded" : "embedded `" + brief(before) + "`") + ", "
                + (now == null ? "nothing due" : "due `" + brief(now) + "`");
    }

    private static String brief(String text) {
        return text.length() <= SHOWN ? text : text.substring(0, SHOWN) + "…";
    }

    /** For example {@code the chapter "Stopping"}. */
    private String part(List<String> path) {
        String name = path.size() > 1 ? path.get(1) : "";
        return switch (path.get(0)) {
            case "chapters" ->
                "the chapter `"
                        + Optional.ofNullable(due.get(List.of("chapters", name, "title")))
                                .orElse(name) + "`" + (name.equals(REGISTER) ? " (rules of another version?)" : "");
            case "sheets" -> "the sheet `" + name + "`";
            case "forms" -> "the form `" + name + "`";
            case "digests" -> "the digest of `" + name + "`";
            case "due" -> "what falls due for `" + name + "`";
            case "label" -> "the label on every page";
            default -> "`" + path.get(0) + "`";
        };
    }

    /** Paths whose texts differ, or that only one of the two has. */
    private List<List<String>> different() {
        Set<List<String>> all = new LinkedHashSet<>(due.keySet());
        all.addAll(embedded.keySet());
        return all.stream()
                .filter(path -> !Objects.equals(due.get(path), embedded.get(path)))
                .sorted(Comparator.comparingInt(path -> path.get(0).equals("label") ? 0 : 1))
                .toList();
    }

    /** Fixed values and rules that the register of the file holds otherwise than this version does, a line each. */
    List<String> rules() {
        Map<String, String> before = register(embedded);
        Map<String, String> now = register(due);
        return before.entrySet().stream()
                .filter(row -> now.containsKey(row.getKey()) && !row.getValue().equals(now.get(row.getKey())))
                .map(row -> "`" + row.getKey() + "`: in the file `" + brief(row.getValue()) + "`, in this version `"
                        + brief(now.getOrDefault(row.getKey(), "")) + "`")
                .toList();
    }

    /** The rows of the register by their first cell. */
    private static Map<String, String> register(Map<List<String>, String> leaves) {
        Map<List<String>, StringBuilder> rows = new LinkedHashMap<>();
        leaves.forEach((path, text) -> {
            int cell = path.size() - 1;
            if (cell > 2 && path.get(1).equals(REGISTER) && path.get(cell - 2).equals("rows")) {
                rows.computeIfAbsent(path.subList(0, cell), row -> new StringBuilder())
                        .append(text)
                        .append('\n');
            }
        });
        Map<String, String> byName = new LinkedHashMap<>();
        rows.values().forEach(row -> {
            String[] cells = row.toString().split("\n", 2);
            byName.put(cells[0], cells[1].strip().replace("\n", ", "));
        });
        return byName;
    }
}
