package org.cellfile.trace;

import java.util.List;
import java.util.Optional;
import org.cellfile.quantity.Quantity;

/** Terms added. */
public record Sum(List<Term> operands) implements Term {

    public static Sum of(Term... operands) {
        return new Sum(List.of(operands));
    }

    @Override
    public Optional<Quantity> value() {
        return Term.values(operands).flatMap(values -> values.stream().reduce(Quantity::plus));
    }

    @Override
    public void write(Formula formula) {
        if (formula.symbolic() && Formula.manyAlike(operands)) {
            formula.text("Σ ").operand(operands.get(0), Binding.PRODUCT);
        } else {
            formula.list(operands, " + ", Binding.SUM);
        }
    }

    @Override
    public Binding binding() {
        return operands.size() == 1 ? operands.get(0).binding() : Binding.SUM;
    }
}
