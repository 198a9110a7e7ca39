package org.cellfile.trace;

import java.util.List;
import java.util.Optional;
import org.cellfile.quantity.Quantity;

/** The square root of a term. */
public record Root(Term square) implements Term {

    @Override
    public Optional<Quantity> value() {
        return square.value().map(Quantity::root);
    }

    @Override
    public List<Term> operands() {
        return List.of(square);
    }

    @Override
    public void write(Formula formula) {
        formula.text("√(");
        square.write(formula);
        formula.text(")");
    }

    @Override
    public Binding binding() {
        return Binding.SINGLE;
    }
}
