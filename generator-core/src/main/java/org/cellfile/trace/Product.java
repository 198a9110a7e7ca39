package org.cellfile.trace;

import java.util.List;
import java.util.Optional;
import org.cellfile.quantity.Quantity;

/** One term times another; a term times itself is written as a square. */
public record Product(Term left, Term right) implements Term {

    @Override
    public Optional<Quantity> value() {
        return left.value().flatMap(factor -> right.value().map(factor::times));
    }

    @Override
    public List<Term> operands() {
        return left.equals(right) ? List.of(left) : List.of(left, right);
    }

    @Override
    public void write(Formula formula) {
        if (left.equals(right)) {
            formula.operand(left, Binding.SINGLE).text("²");
        } else {
            formula.operand(left, Binding.PRODUCT)
                    .text(formula.symbolic() ? " · " : " × ")
                    .operand(right, Binding.PRODUCT);
        }
    }

    @Override
    public Binding binding() {
        return Binding.PRODUCT;
    }
}
