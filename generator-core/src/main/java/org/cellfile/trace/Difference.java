package org.cellfile.trace;

import java.util.List;
import java.util.Optional;
import org.cellfile.quantity.Quantity;

/** One term less another. */
public record Difference(Term from, Term less) implements Term {

    @Override
    public Optional<Quantity> value() {
        return from.value().flatMap(whole -> less.value().map(whole::minus));
    }

    @Override
    public List<Term> operands() {
        return List.of(from, less);
    }

    @Override
    public void write(Formula formula) {
        formula.operand(from, Binding.SUM).text(" − ").operand(less, Binding.PRODUCT);
    }

    @Override
    public Binding binding() {
        return Binding.SUM;
    }
}
