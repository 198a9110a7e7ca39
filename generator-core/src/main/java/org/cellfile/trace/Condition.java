package org.cellfile.trace;

import java.util.Optional;
import org.cellfile.quantity.Quantity;

/** A comparison of two terms on which a branch depends. */
public record Condition(Term left, Comparison comparison, Term right) {

    /** How the two are compared. */
    public enum Comparison {
        LESS("is less than", "is not less than"),
        AT_MOST("is at most", "is more than");

        private final String holds;
        private final String fails;

        Comparison(String holds, String fails) {
            this.holds = holds;
            this.fails = fails;
        }
    }

    /** Whether it holds; empty when a side is not known. */
    Optional<Boolean> holds() {
        return left.value().flatMap(a -> right.value().map(b -> holds(a, b)));
    }

    private boolean holds(Quantity a, Quantity b) {
        return comparison == Comparison.LESS ? a.compareTo(b) < 0 : a.compareTo(b) <= 0;
    }

    /** As a statement of fact with the figures: what was found, whichever way it went. */
    String found() {
        boolean held = holds().orElse(false);
        String side = left.figures();
        String value = Formula.shown(left);
        return (side.equals(value) ? value : side + " = " + value)
                + " "
                + (held ? comparison.holds : comparison.fails)
                + " "
                + Formula.shown(right);
    }
}
