package org.cellfile.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cellfile.quantity.Quantity;

/**
 * Alternatives, of which the first whose condition holds is taken; the others, and why not, stay in the trace.
 *
 * @param branches in the order they are tried
 * @param otherwise taken when no condition holds
 */
public record Case(List<Branch> branches, Term otherwise) implements Term {

    /** One alternative. */
    public record Branch(Condition condition, Term term) {}

    /** The branch taken; empty when a condition before it cannot be decided. */
    public Optional<Term> taken() {
        for (Branch branch : branches) {
            Optional<Boolean> holds = branch.condition().holds();
            if (holds.isEmpty()) {
                return Optional.empty();
            }
            if (holds.get()) {
                return Optional.of(branch.term());
            }
        }
        return Optional.of(otherwise);
    }

    /** Each alternative that was tried and what came of it, a sentence each, without a full stop. */
    public List<String> reasons() {
        List<String> reasons = new ArrayList<>();
        for (Branch branch : branches) {
            Optional<Boolean> holds = branch.condition().holds();
            if (holds.isEmpty()) {
                return reasons;
            }
            if (holds.get()) {
                reasons.add(branch.condition().found() + ", so " + branch.term().symbols() + " is taken");
                return reasons;
            }
            if (!(branch.term() instanceof Withheld)) {
                reasons.add(branch.condition().found() + ", so " + branch.term().symbols() + " is not taken");
            }
        }
        return reasons;
    }

    @Override
    public Optional<Quantity> value() {
        return taken().flatMap(Term::value);
    }

    @Override
    public List<Term> operands() {
        return List.of(taken().orElse(otherwise));
    }

    @Override
    public void write(Formula formula) {
        taken().orElse(otherwise).write(formula);
    }

    @Override
    public Binding binding() {
        return taken().orElse(otherwise).binding();
    }
}
