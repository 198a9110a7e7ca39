package org.cellfile.trace;

import java.util.List;
import java.util.Optional;
import org.cellfile.quantity.Quantity;

/**
 * A value that cannot be had, and why; the finding about it was made where the cause lies. It is never zero.
 *
 * @param because a sentence without a full stop
 */
public record Withheld(String symbol, String because, Cause cause) implements Term {

    /** What keeps it from being known. */
    public enum Cause {
        /** something it needs was not stated, or there is nothing to compute */
        NOT_STATED,
        /** what it needs is known, and lies outside the rule of an edition */
        NOT_COVERED,
        /** what it needs is known, and no edition in force has a rule for such a thing at all */
        NO_EDITION
    }

    /** Withheld because something it needs was not stated, or because there is nothing to compute. */
    public Withheld(String symbol, String because) {
        this(symbol, because, Cause.NOT_STATED);
    }

    /** Withheld because the edition has no rule for the value at hand. */
    public static Withheld noRule(String symbol, String because) {
        return new Withheld(symbol, because, Cause.NOT_COVERED);
    }

    /** Withheld because no edition in force has a rule for such a thing, whatever its figures. */
    public static Withheld noEdition(String symbol, String because) {
        return new Withheld(symbol, because, Cause.NO_EDITION);
    }

    /** True when what it needs is known and there is no rule for it. */
    public boolean noRule() {
        return cause != Cause.NOT_STATED;
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
