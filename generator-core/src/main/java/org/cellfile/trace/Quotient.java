package org.cellfile.trace;

import java.util.List;
import java.util.Optional;
import org.cellfile.quantity.Quantity;

/** One term divided by another. */
public record Quotient(Term dividend, Term divisor) implements Term {

    @Override
    public Optional<Quantity> value() {
        return dividend.value()
                .flatMap(whole -> divisor.value().filter(part -> !part.zero()).map(whole::per));
    }

    @Override
    public List<Term> operands() {
        return List.of(dividend, divisor);
    }

    @Override
    public void write(Formula formula) {
        formula.operand(dividend, Binding.PRODUCT).text(" / ").operand(divisor, Binding.SINGLE);
    }

    @Override
    public Binding binding() {
        return Binding.PRODUCT;
    }
}
