package org.cellfile.subject.signoff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.cellfile.dossier.Statement;
import org.cellfile.dossier.Substance;
import org.cellfile.read.Reading;
import org.jspecify.annotations.Nullable;

/** What changed in what a sign-off covers, statement by statement: what people stated first, what follows from that after it. */
final class ChangedSince {

    /** A longer list is for comparing two states, not for a page. */
    private static final int MOST = 12;

    private static final int LONGEST = 60;

    private ChangedSince() {}

    /** A sentence without full stop for each change. */
    static List<String> list(SignOff signOff, KeptTexts kept, Substance now) {
        Optional<Substance> then = kept.signed(signOff);
        if (then.isEmpty()) {
            return List.of("what was signed was not kept under `" + Reading.SIGNED
                    + "`, so that it cannot be said what changed since");
        }
        String covers = signOff.covers().characters();
        Map<String, Statement> before = statements(then.get(), covers);
        Map<String, Statement> after = statements(now, covers);
        TreeSet<String> paths =
                new TreeSet<>(Comparator.<String, Boolean>comparing(path -> path.startsWith(Statement.DERIVED))
                        .thenComparing(Comparator.naturalOrder()));
        paths.addAll(before.keySet());
        paths.addAll(after.keySet());
        List<String> changes = new ArrayList<>();
        for (String path : paths) {
            Statement old = before.get(path);
            Statement present = after.get(path);
            if (old == null || present == null || !old.value().equals(present.value())) {
                changes.add(path + ": " + shown(old) + " → " + shown(present) + place(present));
            }
        }
        return shortened(changes);
    }

    private static List<String> shortened(List<String> changes) {
        if (changes.isEmpty()) {
            return List.of(
                    "every statement is as it was; they are arranged in other chapters than by the version with which it"
                            + " was signed");
        }
        if (changes.size() <= MOST + 1) {
            return changes;
        }
        List<String> first = new ArrayList<>(changes.subList(0, MOST));
        first.add("and " + (changes.size() - MOST) + " more");
        return List.copyOf(first);
    }

    private static Map<String, Statement> statements(Substance substance, String covers) {
        Map<String, Statement> statements = new LinkedHashMap<>();
        List<Statement> all = covers.equals(Substance.WHOLE)
                ? substance.statements()
                : substance.part(covers).map(Substance.Part::statements).orElse(List.of());
        all.forEach(one -> statements.put(one.path(), one));
        return statements;
    }

    private static String shown(@Nullable Statement statement) {
        if (statement == null) {
            return "(not there)";
        }
        String shown = statement.shown().isEmpty() ? "(empty)" : statement.shown();
        return shown.length() <= LONGEST ? shown : shown.substring(0, LONGEST) + "…";
    }

    private static String place(@Nullable Statement statement) {
        return statement == null || statement.at().isEmpty() ? "" : " (" + statement.at() + ")";
    }
}
