package org.cellfile.cell;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.cellfile.dossier.Statement;
import org.cellfile.dossier.Substance;
import org.cellfile.read.CsvFile;
import org.cellfile.read.Reading;
import org.cellfile.read.WordsFile;
import org.cellfile.trace.Derived;

/** What of a cell belongs to the substance of which chapter. */
public final class Substances {

    /** Key and chapter; what is derived on the plan stands under the tag of its thing with this behind it. */
    private static final String PLAN = "plan";

    /** The chapter in which each top-level key of the description is printed. */
    private static final Map<String, String> CHAPTERS = Map.ofEntries(
            Map.entry("cell", "identity"),
            Map.entry("dates", "identity"),
            Map.entry("people", "identity"),
            Map.entry("competences", "identity"),
            Map.entry("instruments", "identity"),
            Map.entry("robots", "identity"),
            Map.entry("standards", "identity"),
            Map.entry("zones", "hazard-zones"),
            Map.entry("hazards", "risks"),
            Map.entry("clearances", "clearances"),
            Map.entry("safeguards", "safeguards"),
            Map.entry("complementary", "complementary"),
            Map.entry("functions", "functions"),
            Map.entry("subsystems", "subsystems"),
            Map.entry("parts", "subsystems"),
            Map.entry("modes", "modes"),
            Map.entry(PLAN, PLAN),
            Map.entry("tests", "function-tests"),
            Map.entry("test-plan", "function-tests"),
            Map.entry("stop-tests", "stop-evidence"),
            Map.entry(CsvFile.TABLE, "stop-evidence"),
            Map.entry("configurations", "configurations"),
            Map.entry("changes", "registers"),
            Map.entry("bypasses", "registers"),
            Map.entry("spare-actuators", "registers"),
            Map.entry("no-spares", "registers"),
            Map.entry("mode-keys", "registers"),
            Map.entry("open-points", "registers"),
            Map.entry("deviations", "deviations"),
            Map.entry("confirmations", "register"),
            Map.entry("copy-values", "register"),
            Map.entry("energies", "energies"),
            Map.entry("rescue", "rescue"),
            Map.entry("sheets", "sheets"),
            Map.entry("translations", "sheets"),
            Map.entry(WordsFile.FOLDER, "sheets"),
            Map.entry(Reading.FILE, "sheets"),
            Map.entry("sign-off-policy", "signatures"),
            Map.entry("revisions", "revisions"));

    /**
     * What is about signing, printing and people, not about the cell: keys, who left, the sign-offs, the
     * ledger, what a copy holds and who was briefed on the sheets void nothing.
     */
    private static final Set<String> NO_SUBSTANCE =
            Set.of("derived", "keys", "sign-offs", "decisions", "copies", "left-out", "briefings");

    /** Single statements of the same sort. */
    private static final Pattern NO_SUBSTANCE_EITHER = Pattern.compile("cell/as-of|people/[^/]+/left");

    private Substances() {}

    /** Chapters that can be signed by themselves; {@code sheets} are the posted ones. */
    public static Set<String> chapters() {
        return Set.copyOf(CHAPTERS.values());
    }

    /** The chapter to which what stands under a top-level key belongs; empty for what is no substance. */
    public static Optional<String> chapter(String key) {
        return Optional.ofNullable(CHAPTERS.get(key));
    }

    /** True when a top-level key is known here. */
    public static boolean knows(String key) {
        return CHAPTERS.containsKey(key) || NO_SUBSTANCE.contains(key);
    }

    static Substance of(String cellId, List<Statement> stated, Iterable<Derived> derived) {
        Map<String, List<Statement>> chapters = new TreeMap<>();
        Map<String, String> things = new HashMap<>();
        for (Statement statement : stated) {
            String chapter = CHAPTERS.get(statement.key());
            if (chapter != null
                    && !NO_SUBSTANCE_EITHER.matcher(statement.path()).matches()) {
                chapters.computeIfAbsent(chapter, any -> new ArrayList<>()).add(statement);
                String[] steps = statement.path().split("/", 3);
                if (steps.length > 1) {
                    things.putIfAbsent(steps[1], chapter);
                }
                if (chapter.equals(PLAN) && steps.length > 2) {
                    things.put(steps[2].split("/", 2)[0] + "." + PLAN, chapter);
                }
            }
        }
        for (Derived one : derived) {
            chapters.computeIfAbsent(of(one.tag(), things), any -> new ArrayList<>())
                    .add(Statement.derived(
                            one.tag(), one.rounded().map(Object::toString).orElse("")));
        }
        return Substance.of(cellId, chapters);
    }

    /** The chapter of the thing whose tag begins the value's. */
    private static String of(String tag, Map<String, String> things) {
        for (int end = tag.lastIndexOf('.'); end > 0; end = tag.lastIndexOf('.', end - 1)) {
            String chapter = things.get(tag.substring(0, end));
            if (chapter != null) {
                return chapter;
            }
        }
        return "identity";
    }
}
