package org.cellfile.trace;

import java.util.List;
import java.util.Optional;
import org.cellfile.quantity.Quantity;

/** A value that an edition fixes and that is not publicly known; only a copy of the standard can tell it. */
public record NotPublic(String symbol, Reference reference) implements Term {

    @Override
    public Optional<Quantity> value() {
        return Optional.empty();
    }

    @Override
    public List<Term> operands() {
        return List.of();
    }

    @Override
    public void write(Formula formula) {
        formula.leaf(new Leaf(symbol, "not publicly known", reference.name(), Drawing.origin(reference)));
    }

    @Override
    public Binding binding() {
        return Binding.SINGLE;
    }
}
