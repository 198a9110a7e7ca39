package org.cellfile.trace;

import java.util.List;
import java.util.Optional;
import org.cellfile.quantity.Quantity;

/**
 * A value that cannot be had, and why; the finding about it was made where the cause lies. It is never zero.
 *
 * @param because a sentence without a full stop
 */
public record Withheld(String symbol, String because) implements Term {

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
        formula.leaf(new Leaf(symbol, "not known", because, ""));
    }

    @Override
    public Binding binding() {
        return Binding.SINGLE;
    }
}
