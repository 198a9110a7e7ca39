package org.cellfile.trace;

import java.util.List;
import java.util.Optional;
import org.cellfile.quantity.Quantity;

/** A value that a clause of an edition fixes. */
public record Fixed(String symbol, Quantity quantity, Reference reference) implements Term {

    @Override
    public Optional<Quantity> value() {
        return Optional.of(quantity);
    }

    @Override
    public List<Term> operands() {
        return List.of();
    }

    @Override
    public void write(Formula formula) {
        formula.leaf(new Leaf(symbol, quantity.toString(), reference.name(), Drawing.origin(reference)));
    }

    @Override
    public Binding binding() {
        return Binding.SINGLE;
    }
}
