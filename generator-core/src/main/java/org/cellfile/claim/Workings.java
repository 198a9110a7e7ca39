package org.cellfile.claim;

import java.util.List;
import java.util.Optional;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Text;
import org.cellfile.quantity.Quantity;
import org.cellfile.source.Stated;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Drawing;

/** Derived values as they are printed. */
public final class Workings {

    private Workings() {}

    /** The full working of a value of a thing, with what was recorded beside it. */
    public static Block.Working of(Derived derived, Recorded recorded) {
        Drawing drawing = Drawing.of(derived);
        List<Block.Step> steps = drawing.leaves().stream()
                .map(leaf -> new Block.Step(leaf.symbol(), leaf.value(), leaf.name(), leaf.origin()))
                .toList();
        return new Block.Working(
                derived.tag(),
                derived.words(),
                derived.symbol(),
                derived.expression().symbols(),
                derived.expression().figures(),
                drawing.result(),
                drawing.rounded(),
                derived.clause(),
                steps,
                drawing.remarks(),
                agreement(derived, recorded));
    }

    /** Several values whose working is short, a row each. */
    public static Block.Table rows(String caption, List<Derived> derived, Recorded recorded) {
        return new Block.Table(
                caption,
                List.of(
                        Block.Column.text("Value", 5),
                        Block.Column.text("Working", 7),
                        Block.Column.figures("Result", 3),
                        Block.Column.text("Recorded", 5)),
                derived.stream()
                        .map(one -> List.of(
                                Text.capital(one.words()),
                                one.symbol() + " = " + one.expression().symbols() + " = "
                                        + one.expression().figures(),
                                shown(one),
                                recorded.of(one)
                                        .map(stated -> brief(one, stated))
                                        .orElse("–")))
                        .toList());
    }

    private static String brief(Derived derived, Stated<Quantity> stated) {
        if (derived.value().isEmpty()) {
            return stated.characters() + " (" + stated.where().position() + "), not held against anything";
        }
        return stated.characters() + " (" + stated.where().position() + "), "
                + (Claim.recorded(stated, derived).holds() ? "agrees" : "does not agree");
    }

    /** What was recorded, and that the recomputation agrees with it; empty when nothing was recorded. */
    public static String agreement(Derived derived, Recorded recorded) {
        Optional<Stated<Quantity>> stated = recorded.of(derived);
        if (stated.isEmpty()) {
            return "";
        }
        if (derived.value().isEmpty()) {
            return "recorded " + stated.get().characters() + " ("
                    + stated.get().where().position() + "); there is nothing to hold it against";
        }
        boolean agrees = Claim.recorded(stated.get(), derived).holds();
        return "recorded " + stated.get().characters() + " ("
                + stated.get().where().position() + "); "
                + (agrees ? "recomputed, agrees with the recorded value" : "the recomputation does not agree with it");
    }

    /** The rounded value, or a dash when it could not be derived. */
    public static String shown(Derived derived) {
        return derived.rounded().map(Quantity::toString).orElse("–");
    }
}
