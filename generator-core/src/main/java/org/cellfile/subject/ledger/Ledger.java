package org.cellfile.subject.ledger;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cellfile.claim.Workings;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Quantity;
import org.cellfile.read.Section;
import org.cellfile.source.Span;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Drawing;

/**
 * The derived values as they were when the program last wrote them down, kept under version control beside the description. Where
 * there is a ledger, every run holds what it derives against it, value by value and as a set, so that no derived value changes
 * unseen: neither by a change of the description nor by another version of this program. It is not stated by anybody, and what it
 * holds proves nothing about the cell.
 *
 * @param where the key it stands under
 */
public record Ledger(List<Entry> entries, Span where) {

    /** The file of the cell's folder in which it lies, and nothing else does. */
    public static final String FILE = "derived.yaml";

    /** A value of the ledger differs from the recomputed one. */
    public static final FindingId NOT_EQUAL = new FindingId("ledger.not-equal");

    /** A value of the ledger is not derived any longer, or cannot be computed now. */
    public static final FindingId NOT_DERIVED = new FindingId("ledger.not-derived");

    /** A derived value does not stand in the ledger. */
    public static final FindingId MISSING = new FindingId("ledger.missing");

    /** A value stands in the ledger twice. */
    public static final FindingId REPEATED = new FindingId("ledger.repeated");

    /** The ledger lies in another file, or something else lies in its file. */
    public static final FindingId MISPLACED = new FindingId("ledger.misplaced");

    private static final String KEY = "derived";

    /** More values than these are only counted. */
    private static final int MOST_LISTED = 10;

    private static final String HELP =
            "see what was changed in the description, or whether another version of the program"
                    + " computed it; when every difference is meant, let `derive` write the ledger again";

    private static final String HEAD = "cellfile: 1\n\n"
            + "# Every derived value as the program computed it. Written by the program (`derive`) and not by hand: each run\n"
            + "# recomputes the values and refuses any that differs. Keep this file under version control beside the others.\n\n";

    /** Reads the ledger of a cell; empty when it has none. */
    public static Optional<Ledger> read(Section top) {
        top.keys().stream()
                .filter(key -> inItsFile(top.where(key)) != key.equals(KEY))
                .map(key -> misplaced(key, top.where(key)))
                .forEach(top::report);
        return top.has(KEY)
                ? Optional.of(new Ledger(Section.each(top.listIfStated(KEY), Entry::read), top.where(KEY)))
                : Optional.empty();
    }

    private static boolean inItsFile(Span key) {
        return key.file().path().equals(FILE);
    }

    private static Finding misplaced(String key, Span where) {
        return key.equals(KEY)
                ? Finding.refuses(
                        MISPLACED,
                        "",
                        where,
                        "the ledger of derived values stands in `"
                                + where.file().path() + "`, and the program writes it to `" + FILE + "`",
                        "move `" + KEY + "`, with all that stands under it, to `" + FILE + "` in the cell's folder")
                : Finding.refuses(
                        MISPLACED,
                        "",
                        where,
                        "`" + key + "` stands in `" + FILE
                                + "`, which is the program's own and is written anew by `derive`",
                        "move `" + key + "` to another file of the cell");
    }

    /**
     * What does not agree with it.
     *
     * @param derived every value derived now, by its tag
     */
    public List<Finding> held(Map<String, Derived> derived) {
        List<Finding> findings = new ArrayList<>();
        Map<String, Entry> byTag = new HashMap<>();
        List<Entry> idle = new ArrayList<>();
        for (Entry entry : entries) {
            entry.tag().value().ifPresent(tag -> {
                Entry first = byTag.putIfAbsent(tag, entry);
                Derived now = derived.get(tag);
                if (first != null) {
                    findings.add(repeated(entry, first));
                } else if (now == null || now.rounded().isEmpty()) {
                    idle.add(entry);
                } else {
                    notEqual(entry, now).ifPresent(findings::add);
                }
            });
        }
        notDerived(idle, derived).ifPresent(findings::add);
        if (entries.stream().allMatch(entry -> entry.tag().value().isPresent())) {
            // Otherwise one of those missing is the one whose tag could not be read, which was reported there.
            missing(derived.values().stream()
                            .filter(one -> one.rounded().isPresent() && !byTag.containsKey(one.tag()))
                            .toList())
                    .ifPresent(findings::add);
        }
        return findings;
    }

    private static Finding repeated(Entry entry, Entry first) {
        return Finding.refuses(
                REPEATED,
                thing(entry.tag().characters()),
                entry.tag().where(),
                "`" + entry.tag().characters() + "` stands in the ledger twice, first at "
                        + first.tag().where().position(),
                HELP);
    }

    private static Optional<Finding> notEqual(Entry entry, Derived derived) {
        Quantity now = derived.rounded().orElseThrow();
        return entry.shown().filter(shown -> !shown.equals(now.toString())).map(shown -> {
            List<String> workings = new ArrayList<>();
            entry.working().value().ifPresent(working -> {
                workings.add("in the ledger:");
                workings.add(working.endsWith(" = " + shown) ? working : working + " = " + shown);
            });
            workings.add("recomputed:");
            workings.addAll(Drawing.of(derived).lines());
            return Finding.refuses(
                            NOT_EQUAL,
                            derived.about(),
                            entry.where(now),
                            "the ledger has " + shown + " for `" + derived.tag() + "`, the derived value is " + now,
                            HELP)
                    .because(workings);
        });
    }

    private static Optional<Finding> notDerived(List<Entry> idle, Map<String, Derived> derived) {
        return idle.stream()
                .findFirst()
                .map(first -> Finding.refuses(
                                NOT_DERIVED,
                                thing(first.tag().characters()),
                                first.tag().where(),
                                (idle.size() == 1
                                                ? "one value of the ledger is"
                                                : idle.size() + " values of the ledger are")
                                        + " not derived now",
                                HELP)
                        .because(listed(
                                idle,
                                entry -> entry.tag().characters() + " (line "
                                        + entry.tag().where().line() + "): "
                                        + (derived.containsKey(entry.tag().characters())
                                                ? "something it needs is not stated, or not known"
                                                : "no such value is derived"))));
    }

    private Optional<Finding> missing(List<Derived> absent) {
        return absent.isEmpty()
                ? Optional.empty()
                : Optional.of(Finding.refuses(
                                MISSING,
                                "",
                                where,
                                (absent.size() == 1 ? "one derived value is" : absent.size() + " derived values are")
                                        + " not in the ledger",
                                HELP)
                        .because(listed(absent, one -> one.tag() + " = " + Workings.shown(one))));
    }

    private static <T> List<String> listed(List<T> all, java.util.function.Function<T, String> line) {
        List<String> lines = new ArrayList<>(all.stream()
                .limit(all.size() > MOST_LISTED + 1 ? MOST_LISTED : all.size())
                .map(line)
                .toList());
        if (lines.size() < all.size()) {
            lines.add("and " + (all.size() - lines.size()) + " more");
        }
        return lines;
    }

    /** The thing a value belongs to. */
    private static String thing(String tag) {
        int end = tag.lastIndexOf('.');
        return end < 0 ? tag : tag.substring(0, end);
    }

    /** What is in its file when these values are derived; those that cannot be computed are left out. */
    public static String text(Collection<Derived> derived) {
        String lines = derived.stream()
                .flatMap(one -> one.rounded().stream().map(value -> Entry.line(one, value)))
                .collect(Collectors.joining());
        return HEAD + KEY + ":" + (lines.isEmpty() ? " []\n" : "\n" + lines);
    }

    /**
     * What is written anew.
     *
     * @param before the ledger as it is; empty when there is none
     * @param derived every value derived now, by its tag
     */
    public static Change change(Optional<Ledger> before, Map<String, Derived> derived) {
        Map<String, Entry> known = new HashMap<>();
        before.ifPresent(ledger ->
                ledger.entries.forEach(entry -> known.putIfAbsent(entry.tag().characters(), entry)));
        int added = 0;
        List<String> changed = new ArrayList<>();
        for (Derived one : derived.values()) {
            Optional<Quantity> now = one.rounded();
            if (now.isPresent()) {
                Entry entry = known.remove(one.tag());
                String old = entry == null ? "" : entry.shown().orElse("");
                if (entry == null) {
                    added++;
                } else if (!old.equals(now.get().toString())) {
                    changed.add(one.tag() + ": " + old + " → " + now.get());
                }
            }
        }
        return new Change(added, changed, known.keySet().stream().sorted().toList());
    }

    /**
     * How the ledger written anew differs from the one before.
     *
     * @param added how many values it did not hold
     * @param changed tag, old and new value of each that differs, sorted
     * @param dropped tags of the values it holds no longer, sorted
     */
    public record Change(int added, List<String> changed, List<String> dropped) {

        /** As lines of text; the first one counts. */
        public List<String> lines() {
            List<String> lines = new ArrayList<>();
            lines.add("added: " + added + ", changed: " + changed.size() + ", dropped: " + dropped.size());
            changed.forEach(line -> lines.add("changed: " + line));
            dropped.forEach(tag -> lines.add("dropped: " + tag));
            return lines;
        }
    }
}
