package org.cellfile.trace;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;

/**
 * A value the program computed, with all that is needed to compute it again. It is itself a term, so a number can be
 * followed through several calculations down to the lines that state its inputs.
 *
 * <p>Calculation goes on with the exact {@link #value()}; what is printed and compared is {@link #rounded()}, on the safe
 * side.
 */
public final class Derived implements Term {

    private final String about;
    private final String name;
    private final String words;
    private final String symbol;
    private final String clause;
    private final Term expression;
    private final Rounding rounding;
    private final String tag;
    private final Optional<Quantity> value;
    private final Set<Reference> references;

    /**
     * @param about tag of the thing it belongs to
     * @param name the key under which it can be stated, for example {@code separation-distance}
     * @param words what it is, in words
     * @param symbol as the standard writes it
     * @param clause edition and clause that ask for it, or {@code definition} for plain arithmetic
     * @param rounding the safe side, and the step it is printed at
     */
    public Derived(
            String about, String name, String words, String symbol, String clause, Term expression, Rounding rounding) {
        this.about = about;
        this.name = name;
        this.words = words;
        this.symbol = symbol;
        this.clause = clause;
        this.expression = expression;
        this.rounding = rounding;
        this.tag = about + "." + name;
        this.value = expression.value();
        Set<Reference> below = new LinkedHashSet<>();
        collect(expression, below);
        this.references = Collections.unmodifiableSet(below);
    }

    /** The same, printed at another step. */
    public Derived at(Rounding another) {
        return new Derived(about, name, words, symbol, clause, expression, another);
    }

    /** The same with a number at its symbol, to tell several of one sort apart. */
    public Derived numbered(int number) {
        String numbered = symbol.contains("_") ? symbol + "," + number : symbol + "_" + number;
        return new Derived(about, name, words, numbered, clause, expression, rounding);
    }

    /** Tag of the thing it belongs to. */
    public String about() {
        return about;
    }

    /** The key under which it can be stated. */
    public String name() {
        return name;
    }

    /** Thing and name: what `explain` calls it. */
    public String tag() {
        return tag;
    }

    /** What it is, in words. */
    public String words() {
        return words;
    }

    public String symbol() {
        return symbol;
    }

    public String clause() {
        return clause;
    }

    public Term expression() {
        return expression;
    }

    public Rounding rounding() {
        return rounding;
    }

    /** Exact. */
    @Override
    public Optional<Quantity> value() {
        return value;
    }

    /** Exact, in the unit of the step it is printed at, without zeros at the end of its decimals. */
    public Optional<Quantity> unrounded() {
        return value.map(exact -> exact.in(rounding.step().unit()).plain());
    }

    /** On the safe side, at the step it is printed at. */
    public Optional<Quantity> rounded() {
        return value.map(rounding::round);
    }

    /** On the safe side, at the last digit of a value somebody wrote. */
    public Optional<Quantity> roundedLike(Quantity written) {
        return value.map(exact -> rounding.like(written, exact).round(exact));
    }

    /** Every value and table of an edition that this one rests on, through all calculations below it. */
    public Set<Reference> references() {
        return references;
    }

    private static void collect(Term term, Set<Reference> references) {
        if (term instanceof Derived derived) {
            references.addAll(derived.references);
            return;
        }
        if (term instanceof Fixed fixed) {
            references.add(fixed.reference());
        } else if (term instanceof Lookup lookup) {
            references.add(lookup.reference());
        } else if (term instanceof NotPublic unknown) {
            references.add(unknown.reference());
        } else if (term instanceof Case branches) {
            for (Case.Branch branch : branches.branches()) {
                collect(branch.condition().left(), references);
                collect(branch.condition().right(), references);
            }
        }
        term.operands().forEach(operand -> collect(operand, references));
    }

    /** Every derived value it was computed from, nearest first, each once; not itself. */
    public List<Derived> below() {
        Set<Derived> below = new LinkedHashSet<>();
        gather(expression, below);
        return new ArrayList<>(below);
    }

    private static void gather(Term term, Set<Derived> below) {
        if (term instanceof Derived derived) {
            if (!below.add(derived)) {
                return;
            }
            gather(derived.expression, below);
        } else {
            term.operands().forEach(operand -> gather(operand, below));
        }
    }

    @Override
    public List<Term> operands() {
        return List.of(expression);
    }

    @Override
    public void write(Formula formula) {
        formula.leaf(new Leaf(symbol, Formula.shown(this), words, "derived: " + tag()));
    }

    @Override
    public Binding binding() {
        return Binding.SINGLE;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Derived derived && tag().equals(derived.tag());
    }

    @Override
    public int hashCode() {
        return Objects.hash(about, name);
    }

    @Override
    public String toString() {
        return tag() + " = " + Formula.shown(this);
    }
}
