package org.cellfile.compare;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cellfile.dossier.Statement;
import org.cellfile.quantity.Quantity;
import org.cellfile.read.CsvFile;
import org.cellfile.trace.Case;
import org.cellfile.trace.Coordinate;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Given;
import org.cellfile.trace.Term;

/**
 * A derived value that is another one in two states.
 *
 * @param tag thing and name
 * @param older as printed; empty when there was none
 * @param newer as printed; empty when there is none
 */
public record ValueChange(String tag, String older, String newer) {

    private static final String NONE = "";

    /** A thing on the plan. */
    private static final Pattern DRAWN = Pattern.compile("plan/[^/]+/[^/]+/");

    /** All that differ, by tag. */
    static List<ValueChange> between(State older, State newer) {
        Map<String, Derived> before = older.cell().derived();
        Map<String, Derived> after = newer.cell().derived();
        Set<String> tags = new TreeSet<>(before.keySet());
        tags.addAll(after.keySet());
        List<ValueChange> changes = new ArrayList<>();
        for (String tag : tags) {
            Derived was = before.get(tag);
            Derived is = after.get(tag);
            String from = was == null ? NONE : shown(was);
            String to = is == null ? NONE : shown(is);
            if (!from.equals(to)) {
                changes.add(new ValueChange(tag, from, to));
            }
        }
        return changes;
    }

    /** Values that both states have and that rest on other fixed values, tables or clauses in one than in the other. */
    static Set<String> byOtherRules(State older, State newer) {
        Map<String, Derived> before = older.cell().derived();
        Set<String> tags = new TreeSet<>();
        newer.cell().derived().forEach((tag, is) -> {
            Derived was = before.get(tag);
            if (was != null && !rules(was).equals(rules(is))) {
                tags.add(tag);
            }
        });
        return tags;
    }

    private static Set<String> rules(Derived derived) {
        Set<String> rules = new TreeSet<>(Set.of(derived.clause()));
        derived.references().forEach(reference -> rules.add(reference.id()));
        return rules;
    }

    private static String shown(Derived derived) {
        return derived.rounded().map(Quantity::toString).orElse("not computed");
    }

    /** Where a value rests on a statement: at its characters, or anywhere in the row of a table. */
    private static String place(Statement statement) {
        return statement.key().equals(CsvFile.TABLE) ? line(statement.at()) : statement.at();
    }

    /** Every place at which a value may rest on a statement. What is found on a plan rests on the thing as it is drawn there. */
    static Set<String> places(Statement statement, State state) {
        Set<String> places = new TreeSet<>(Set.of(place(statement)));
        Matcher drawn = DRAWN.matcher(statement.path());
        if (drawn.lookingAt()) {
            state.cell().statements().stream()
                    .filter(one -> one.path().equals(drawn.group() + "of"))
                    .forEach(one -> places.add(one.at()));
        }
        return places;
    }

    private static String line(String position) {
        return position.substring(0, position.lastIndexOf(':') + 1);
    }

    /** The derived values of a state that rest on something stated at one of these places. */
    static Set<String> resting(State state, Set<String> places) {
        Map<Derived, Boolean> known = new HashMap<>();
        Set<String> resting = new TreeSet<>();
        state.cell().derived().values().forEach(derived -> {
            if (rests(derived, places, known)) {
                resting.add(derived.tag());
            }
        });
        return resting;
    }

    private static boolean rests(Term term, Set<String> places, Map<Derived, Boolean> known) {
        if (term instanceof Given given) {
            String position = given.stated().where().position();
            return places.contains(position) || places.contains(line(position));
        }
        if (term instanceof Coordinate coordinate) {
            return places.contains(coordinate.origin());
        }
        if (term instanceof Derived derived) {
            Boolean before = known.get(derived);
            if (before == null) {
                before = rests(derived.expression(), places, known);
                known.put(derived, before);
            }
            return before;
        }
        if (term instanceof Case branches
                && branches.branches().stream()
                        .anyMatch(branch -> rests(branch.condition().left(), places, known)
                                || rests(branch.condition().right(), places, known))) {
            return true;
        }
        return term.operands().stream().anyMatch(operand -> rests(operand, places, known));
    }
}
