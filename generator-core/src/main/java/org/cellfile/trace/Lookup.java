package org.cellfile.trace;

import java.util.List;
import java.util.Optional;
import org.cellfile.quantity.Quantity;

/**
 * A cell of a table.
 *
 * @param taken which row and column were taken and why, as one sentence without a full stop
 */
public record Lookup(String symbol, Quantity cell, Reference reference, List<Term> keys, String taken) implements Term {

    @Override
    public Optional<Quantity> value() {
        return Optional.of(cell);
    }

    @Override
    public List<Term> operands() {
        return keys;
    }

    @Override
    public void write(Formula formula) {
        formula.leaf(new Leaf(symbol, cell.toString(), reference.name(), Drawing.origin(reference)));
    }

    @Override
    public Binding binding() {
        return Binding.SINGLE;
    }
}
