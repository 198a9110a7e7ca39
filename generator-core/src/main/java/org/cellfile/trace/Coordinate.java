package org.cellfile.trace;

import java.util.List;
import java.util.Optional;
import org.cellfile.quantity.Quantity;

/**
 * A coordinate of a point that was found on the plan. Which point it is was found by geometry; what is computed from it is not.
 *
 * @param name what it is, with the point it belongs to
 * @param origin where the plan is described, file, line and column
 */
public record Coordinate(String symbol, String name, Quantity quantity, String origin) implements Term {

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
        formula.leaf(new Leaf(symbol, Formula.shown(this), name, origin));
    }

    @Override
    public Binding binding() {
        return Binding.SINGLE;
    }
}
