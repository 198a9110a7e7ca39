package org.cellfile.trace;

import java.util.List;
import java.util.Optional;
import org.cellfile.quantity.Quantity;

/**
 * A value that cannot be had, and why; the finding about it was made where the cause lies. It is never zero.
 *
 * @param because a sentence without a full stop
 * @param noRule true when what it needs is known and the edition has no rule for it
 */
public record Withheld(String symbol, String because, boolean noRule) implements Term {

    /** Withheld because something it needs was not stated, or because there is nothing to compute. */
    public Withheld(String symbol, String because) {
        this(symbol, because, false);
    }

    /** Withheld because the edition has no rule for the value at hand. */
    public static Withheld noRule(String symbol, String because) {
        return new Withheld(symbol, because, true);
    }

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
