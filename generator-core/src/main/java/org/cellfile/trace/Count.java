package org.cellfile.trace;

import java.util.List;
import java.util.Optional;
import org.cellfile.quantity.Quantity;

/** A number that belongs to the arithmetic itself, such as how many readings were taken. No clause fixes it. */
public record Count(Quantity quantity) implements Term {

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
        formula.text(quantity.toString());
    }

    @Override
    public Binding binding() {
        return Binding.SINGLE;
    }
}
