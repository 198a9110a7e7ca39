package org.cellfile.trace;

import java.util.List;
import java.util.Optional;
import org.cellfile.quantity.Quantity;

/** The largest of several terms; the others stay in the trace. */
public record Greatest(List<Term> operands) implements Term {

    public static Greatest of(Term... operands) {
        return new Greatest(List.of(operands));
    }

    @Override
    public Optional<Quantity> value() {
        return Term.values(operands).flatMap(values -> values.stream().reduce((a, b) -> a.compareTo(b) >= 0 ? a : b));
    }

    /** The first of the operands that has the value of the whole. */
    public Optional<Term> governing() {
        return value().flatMap(value -> operands.stream()
                .filter(operand -> operand.value().equals(Optional.of(value)))
                .findFirst());
    }

    @Override
    public void write(Formula formula) {
        if (formula.symbolic() && Formula.manyAlike(operands)) {
            formula.text("max ").operand(operands.get(0), Binding.SINGLE);
        } else {
            formula.text("max(").list(operands, "; ", Binding.SUM).text(")");
        }
    }

    @Override
    public Binding binding() {
        return Binding.SINGLE;
    }
}
