package org.cellfile.trace;

import java.util.List;
import java.util.Optional;
import org.cellfile.quantity.Quantity;

/**
 * An expression that computes itself and writes itself. The formula in print comes from the very objects that were
 * evaluated, so it cannot drift from the number.
 */
public sealed interface Term
        permits Given,
                Coordinate,
                Fixed,
                Count,
                Sum,
                Difference,
                Product,
                Quotient,
                Root,
                Greatest,
                Least,
                Case,
                Lookup,
                Withheld,
                NotPublic,
                Derived {

    /** The value; empty when something it needs was not stated or could not be derived. */
    Optional<Quantity> value();

    /** The terms it was computed from; for a {@link Case} those of the branch taken. */
    List<Term> operands();

    /** Writes itself into a formula. */
    void write(Formula formula);

    /** How tightly its outermost sign binds; decides about brackets. */
    Binding binding();

    /** As the standard writes it: {@code K · T + C}. */
    default String symbols() {
        return Formula.of(this, Formula.Reading.SYMBOLS).toString();
    }

    /** The same with the numbers in place. */
    default String figures() {
        return Formula.of(this, Formula.Reading.FIGURES).toString();
    }

    /** From loose to tight. */
    enum Binding {
        SUM,
        PRODUCT,
        SINGLE
    }

    /** The values of all terms, or empty if one is missing. */
    static Optional<List<Quantity>> values(List<Term> terms) {
        List<Quantity> values =
                terms.stream().map(Term::value).flatMap(Optional::stream).toList();
        return values.size() == terms.size() ? Optional.of(values) : Optional.empty();
    }
}
