package org.cellfile.trace;

import java.util.ArrayList;
import java.util.List;
import org.cellfile.quantity.Quantity;

/** A formula as it is being written, remembering at which column each symbol stands. */
public final class Formula {

    /** What is written in the place of a symbol. */
    public enum Reading {
        SYMBOLS,
        FIGURES
    }

    /**
     * A symbol in the formula.
     *
     * @param column from 0
     */
    public record Place(int column, Leaf leaf) {}

    private static final int LONGEST_LIST = 4;

    private final StringBuilder text = new StringBuilder();
    private final List<Place> places = new ArrayList<>();
    private final Reading reading;

    private Formula(Reading reading) {
        this.reading = reading;
    }

    static Formula of(Term term, Reading reading) {
        Formula formula = new Formula(reading);
        term.write(formula);
        return formula;
    }

    Formula text(String more) {
        text.append(more);
        return this;
    }

    Formula leaf(Leaf leaf) {
        places.add(new Place(text.length(), leaf));
        text.append(reading == Reading.SYMBOLS ? leaf.symbol() : leaf.value());
        return this;
    }

    /** Writes an operand, in brackets when its sign binds less tightly than the one around it. */
    Formula operand(Term term, Term.Binding around) {
        if (term.binding().compareTo(around) < 0) {
            text.append('(');
            term.write(this);
            text.append(')');
        } else {
            term.write(this);
        }
        return this;
    }

    /**
     * Writes operands with a sign between them. Many operands that look alike are written once: {@code Σ tᵢ}, with the
     * first and the last figure.
     */
    Formula list(List<Term> operands, String sign, Term.Binding around) {
        for (int i = 0; i < operands.size(); i++) {
            if (i > 0) {
                text.append(sign);
            }
            if (manyAlike(operands) && i == 1) {
                text.append('…');
                i = operands.size() - 2;
            } else {
                operand(operands.get(i), around);
            }
        }
        return this;
    }

    boolean symbolic() {
        return reading == Reading.SYMBOLS;
    }

    static boolean manyAlike(List<Term> operands) {
        return operands.size() > LONGEST_LIST
                && operands.stream().map(Term::symbols).distinct().count() == 1;
    }

    /** The value of a term as printed. */
    public static String shown(Term term) {
        return (term instanceof Derived derived ? derived.unrounded() : term.value())
                .map(value -> term instanceof Given ? value : value.plain())
                .map(Quantity::toString)
                .orElse("not known");
    }

    public List<Place> places() {
        return List.copyOf(places);
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
