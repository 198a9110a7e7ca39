package org.cellfile.trace;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cellfile.quantity.Quantity;

/** The working of one derived value, ready to be printed in a refusal or on a page. */
public record Drawing(Derived derived, Formula formula) {

    private static final int CLAUSE_COLUMN = 44;

    public static Drawing of(Derived derived) {
        return new Drawing(derived, Formula.of(derived.expression(), Formula.Reading.SYMBOLS));
    }

    /** Where a fixed value comes from: clause and standing. */
    public static String origin(Reference reference) {
        if (reference.standing() instanceof Standing.ReadInCopy read) {
            return reference.clause() + " (read in a copy, " + read.place() + ")";
        }
        return reference.clause() + (reference.fromMemory() ? " (from memory)" : "");
    }

    /** What each symbol stands for, each once. Many readings under one symbol are gathered into one line. */
    public List<Leaf> leaves() {
        Set<Leaf> leaves = new LinkedHashSet<>();
        formula.places().forEach(place -> leaves.add(gathered(place.leaf())));
        return List.copyOf(leaves);
    }

    /** A symbol that stands for a row of readings shows how many and from where to where. */
    private Leaf gathered(Leaf leaf) {
        List<Leaf> all = new ArrayList<>();
        readings(derived.expression(), leaf.symbol(), all);
        if (all.stream().distinct().count() < 2) {
            return leaf;
        }
        Leaf first = all.get(0);
        Leaf last = all.get(all.size() - 1);
        return new Leaf(
                leaf.symbol(),
                all.size() + " readings, " + first.value() + " to " + last.value() + " in the order taken",
                leaf.name(),
                first.origin() + " to " + last.origin());
    }

    private static void readings(Term term, String symbol, List<Leaf> into) {
        if (term instanceof Given given) {
            if (given.symbol().equals(symbol)) {
                into.add(new Leaf(
                        symbol,
                        Formula.shown(given),
                        given.name(),
                        given.stated().where().position()));
            }
        } else if (term instanceof Derived derived) {
            if (derived.symbol().equals(symbol)) {
                into.add(new Leaf(symbol, Formula.shown(derived), derived.words(), "derived: " + derived.tag()));
            }
        } else {
            term.operands().forEach(operand -> readings(operand, symbol, into));
        }
    }

    /** Branches tried, rows of tables taken, and which of several governed: sentences without full stops. */
    public List<String> remarks() {
        List<String> remarks = new ArrayList<>();
        remark(derived.expression(), remarks);
        return remarks.stream().distinct().toList();
    }

    private static void remark(Term term, List<String> into) {
        if (term instanceof Case branches) {
            into.addAll(branches.reasons());
        } else if (term instanceof Greatest greatest) {
            governing("the greatest governs", greatest.operands(), greatest.governing(), into);
        } else if (term instanceof Least least) {
            governing("the least governs", least.operands(), least.governing(), into);
        } else if (term instanceof Lookup lookup) {
            into.add(lookup.taken());
        } else if (term instanceof Withheld withheld) {
            into.add(withheld.because());
        }
        if (!(term instanceof Derived)) {
            term.operands().forEach(operand -> remark(operand, into));
        }
    }

    /** The derived value that decides, when the whole is only the greatest or the least of several. */
    private Optional<Derived> governing() {
        Optional<Term> governing = derived.expression() instanceof Greatest greatest
                ? greatest.governing()
                : derived.expression() instanceof Least least ? least.governing() : Optional.empty();
        return governing.filter(Derived.class::isInstance).map(Derived.class::cast);
    }

    private static void governing(String rule, List<Term> operands, Optional<Term> governing, List<String> into) {
        if (Formula.manyAlike(operands)) {
            return;
        }
        governing.ifPresent(term -> into.add(rule + ": " + term.symbols() + " = " + Formula.shown(term)));
    }

    /** The unrounded result. */
    public String result() {
        return derived.unrounded().map(Quantity::toString).orElse("");
    }

    /** What is carried on and how it was rounded; empty when the result has no digit to round. */
    public String rounded() {
        return derived.value()
                .flatMap(value -> derived.rounded()
                        .filter(rounded -> !rounded.equals(value))
                        .map(rounded -> rounded + ", " + derived.rounding()))
                .orElse("");
    }

    /** The working as lines of text: the formula, what hangs from each of its symbols, the result. */
    public List<String> lines() {
        String head = derived.symbol() + " = ";
        List<String> lines = new ArrayList<>();
        if (derived.expression() instanceof Fixed fixed) {
            String fixedHead = head + fixed.quantity();
            lines.add(fixedHead
                    + " ".repeat(Math.max(2, CLAUSE_COLUMN - fixedHead.length()))
                    + origin(fixed.reference()));
            return lines;
        }
        String first = head + formula;
        lines.add(first + " ".repeat(Math.max(2, CLAUSE_COLUMN - first.length())) + derived.clause());
        List<Formula.Place> places = formula.places();
        lines.add(stems(head.length(), places, places.size()));
        for (int i = places.size() - 1; i >= 0; i--) {
            Leaf leaf = gathered(places.get(i).leaf());
            String stems = stems(head.length(), places, i);
            int column = head.length() + places.get(i).column();
            String line = stems + " ".repeat(Math.max(0, column - stems.length())) + leaf.value();
            lines.add(line + " ".repeat(Math.max(2, CLAUSE_COLUMN - line.length())) + leaf.origin());
        }
        remarks().forEach(lines::add);
        String result = result();
        if (!result.isEmpty()) {
            lines.add(rounded().isEmpty() ? result : result + " → " + rounded());
        }
        governing().ifPresent(governing -> lines.addAll(Drawing.of(governing).lines()));
        return lines;
    }

    private static String stems(int offset, List<Formula.Place> places, int count) {
        StringBuilder stems = new StringBuilder();
        for (Formula.Place place : places.subList(0, count)) {
            stems.append(" ".repeat(offset + place.column() - stems.length())).append('│');
        }
        return stems.toString();
    }
}
