package org.cellfile.trace;

import java.util.List;
import java.util.Optional;
import org.cellfile.quantity.Quantity;
import org.cellfile.source.Stated;

/**
 * A value somebody stated.
 *
 * @param symbol as the standard writes it
 * @param name what it is
 */
public record Given(String symbol, String name, Stated<Quantity> stated) implements Term {

    @Override
    public Optional<Quantity> value() {
        return stated.value();
    }

    @Override
    public List<Term> operands() {
        return List.of();
    }

    @Override
    public void write(Formula formula) {
        formula.leaf(new Leaf(symbol, Formula.shown(this), name, stated.where().position()));
    }

    @Override
    public Binding binding() {
        return Binding.SINGLE;
    }
}
