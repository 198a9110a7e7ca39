package org.cellfile.compare;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.cellfile.dossier.Statement;

/**
 * One place at which two states differ: a statement with another value, or something that only one of them has, with all that is
 * stated below it.
 *
 * @param path of the statement, or of the thing that only one state has
 * @param older what the older state has there
 * @param newer what the newer state has there
 */
public record Difference(String path, List<Statement> older, List<Statement> newer) {

    private static final int SHALLOWEST = 2;

    private static final Pattern ESCAPED = Pattern.compile("%([2-7][0-9A-F])");

    /** Everything stated in which two states differ, in the order stated. */
    public static List<Difference> between(List<Statement> older, List<Statement> newer) {
        Map<String, Statement> before = byPath(older);
        Map<String, Statement> after = byPath(newer);
        Set<String> had = beginnings(before.keySet());
        Set<String> has = beginnings(after.keySet());
        Set<String> paths = new LinkedHashSet<>(before.keySet());
        paths.addAll(after.keySet());
        Map<String, Difference> found = new LinkedHashMap<>();
        for (String path : paths) {
            Statement was = before.get(path);
            Statement is = after.get(path);
            if (was == null && is != null) {
                add(found, beginning(path, had), List.of(), List.of(is));
            } else if (is == null && was != null) {
                add(found, beginning(path, has), List.of(was), List.of());
            } else if (was != null && is != null && !was.value().equals(is.value())) {
                add(found, path, List.of(was), List.of(is));
            }
        }
        return List.copyOf(found.values());
    }

    private static void add(Map<String, Difference> found, String path, List<Statement> older, List<Statement> newer) {
        found.merge(
                path,
                new Difference(path, older, newer),
                (one, more) -> new Difference(path, joined(one.older, more.older), joined(one.newer, more.newer)));
    }

    private static List<Statement> joined(List<Statement> some, List<Statement> more) {
        return Stream.concat(some.stream(), more.stream()).toList();
    }

    private static Map<String, Statement> byPath(List<Statement> statements) {
        Map<String, Statement> byPath = new LinkedHashMap<>();
        statements.forEach(statement -> byPath.putIfAbsent(statement.path(), statement));
        return byPath;
    }

    /** Every path, and every beginning of one. */
    private static Set<String> beginnings(Set<String> paths) {
        Set<String> beginnings = new HashSet<>(paths);
        for (String path : paths) {
            for (int end = path.lastIndexOf('/'); end > 0; end = path.lastIndexOf('/', end - 1)) {
                beginnings.add(path.substring(0, end));
            }
        }
        return beginnings;
    }

    /** The shallowest thing on the way to a statement that the other state does not have. */
    private static String beginning(String path, Set<String> other) {
        String beginning = path;
        List<String> steps = List.of(path.split("/", -1));
        for (int length = steps.size() - 1; length >= SHALLOWEST; length--) {
            String shorter = String.join("/", steps.subList(0, length));
            if (other.contains(shorter)) {
                break;
            }
            beginning = shorter;
        }
        return beginning;
    }

    public boolean added() {
        return older.isEmpty();
    }

    public boolean removed() {
        return newer.isEmpty();
    }

    /** All statements that differ. */
    List<Statement> statements() {
        List<Statement> all = new ArrayList<>(newer);
        older.stream()
                .filter(was -> newer.stream().noneMatch(is -> is.path().equals(was.path())))
                .forEach(all::add);
        return all;
    }

    /** The value in the older state, for people. */
    public String before() {
        return shown(older, "not there");
    }

    /** The value in the newer state, for people. */
    public String after() {
        return shown(newer, added() ? "" : "removed");
    }

    private String shown(List<Statement> statements, String none) {
        if (statements.isEmpty()) {
            return none;
        }
        return statements.size() == 1 && statements.get(0).path().equals(path)
                ? statements.get(0).shown()
                : statements.size() + (statements.size() == 1 ? " statement" : " statements");
    }

    /** The path for people: without the signs that stand for others in a single step. */
    public String words() {
        return ESCAPED.matcher(path)
                .replaceAll(sign -> Matcher.quoteReplacement(Character.toString(Integer.parseInt(sign.group(1), 16))));
    }

    /** Where the older state has it; empty where it does not. */
    public String beforeAt() {
        return older.isEmpty() ? "" : older.get(0).at();
    }

    /** Where the newer state has it; empty where it does not. */
    public String afterAt() {
        return newer.isEmpty() ? "" : newer.get(0).at();
    }

    /** What tells the thing from others of its list: its tag, as a rule. */
    String label() {
        String[] steps = path.split("/", -1);
        return steps.length < SHALLOWEST ? "" : steps[1];
    }

    /** The top-level key. */
    String key() {
        return path.split("/", -1)[0];
    }
}
