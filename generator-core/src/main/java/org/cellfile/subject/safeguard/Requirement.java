package org.cellfile.subject.safeguard;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.source.Stated;
import org.cellfile.trace.Case;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Greatest;
import org.cellfile.trace.Least;
import org.cellfile.trace.Term;
import org.cellfile.trace.Withheld;

/** What kinds of safeguard have in common when a value is bounded by an edition or a table has no row for it. */
final class Requirement {

    /** The edition in force has no rule for a value; it is not guessed. */
    static final FindingId NO_RULE = new FindingId("safeguard.no-rule");

    private Requirement() {}

    /** A bound that editions fix, as a value that can be stated and drawn. */
    static Derived bound(String tag, String name, Term bound, Rounding.Side side) {
        Fixed first = (Fixed) (bound instanceof Fixed ? bound : bound.operands().get(0));
        return new Derived(
                tag,
                name,
                first.reference().name(),
                first.symbol(),
                first.reference().clause().toString(),
                bound,
                new Rounding(side, Quantity.millimetres("1")));
    }

    /** The only one, or the greatest of several. */
    static Term greatest(List<? extends Term> terms) {
        return terms.size() == 1 ? terms.get(0) : new Greatest(List.copyOf(terms));
    }

    /** The only one, or the least of several. */
    static Term least(List<? extends Term> terms) {
        return terms.size() == 1 ? terms.get(0) : new Least(List.copyOf(terms));
    }

    /**
     * The findings when a known value lies outside a table: one for the value, however many tables end before it, and one for each
     * way that no edition in force has a rule for.
     */
    static List<Finding> covered(String tag, Stated<?> value, Term lookedUp, String help) {
        List<Finding> findings = new ArrayList<>();
        List<String> ends = because(lookedUp, Withheld.Cause.NOT_COVERED);
        if (!ends.isEmpty()) {
            findings.add(Finding.refuses(NO_RULE, tag, value.where(), String.join("; ", ends), help));
        }
        because(lookedUp, Withheld.Cause.NO_EDITION)
                .forEach(because -> findings.add(Finding.refuses(
                        NO_RULE,
                        tag,
                        value.where(),
                        because,
                        "put an edition in force that has one and name it under `standards`; nothing that is changed at"
                                + " the safeguard makes up for it")));
        return findings;
    }

    private static List<String> because(Term lookedUp, Withheld.Cause cause) {
        return withoutRule(lookedUp)
                .filter(withheld -> withheld.cause() == cause)
                .map(Withheld::because)
                .distinct()
                .toList();
    }

    /** Why a value is withheld by an edition, anywhere below it, each once. */
    static Set<String> withoutRuleBelow(Derived derived) {
        Set<String> because = new LinkedHashSet<>();
        List<Derived> all = new ArrayList<>(derived.below());
        all.add(derived);
        all.forEach(one -> withoutRuleWithin(one.expression(), because));
        return because;
    }

    private static void withoutRuleWithin(Term term, Set<String> because) {
        if (term instanceof Withheld withheld && withheld.noRule()) {
            because.add(withheld.because());
        } else if (!(term instanceof Derived)
                && !(term instanceof Case open && open.taken().isEmpty())) {
            term.operands().forEach(operand -> withoutRuleWithin(operand, because));
        }
    }

    /** True when no edition in force has a rule for what was looked up. */
    static boolean noRule(Term lookedUp) {
        return withoutRule(lookedUp).findAny().isPresent();
    }

    private static Stream<Withheld> withoutRule(Term term) {
        if (term instanceof Withheld withheld) {
            return withheld.noRule() ? Stream.of(withheld) : Stream.empty();
        }
        return term instanceof Greatest greatest
                ? greatest.operands().stream().flatMap(Requirement::withoutRule)
                : Stream.empty();
    }
}
