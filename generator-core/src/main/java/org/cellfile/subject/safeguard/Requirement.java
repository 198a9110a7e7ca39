package org.cellfile.subject.safeguard;

import java.util.ArrayList;
import java.util.List;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.source.Stated;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Term;
import org.cellfile.trace.Withheld;

/** What kinds of safeguard have in common when a value is bounded by an edition or a table has no row for it. */
final class Requirement {

    /** The edition in force has no rule for a value; it is not guessed. */
    static final FindingId NO_RULE = new FindingId("safeguard.no-rule");

    private Requirement() {}

    /** A bound that an edition fixes, as a value that can be stated and drawn. */
    static Derived bound(String tag, String name, Fixed fixed, Rounding.Side side) {
        return new Derived(
                tag,
                name,
                fixed.reference().name(),
                fixed.symbol(),
                fixed.reference().clause().toString(),
                fixed,
                new Rounding(side, Quantity.millimetres("1")));
    }

    /** The finding when a known value lies outside a table. */
    static List<Finding> covered(String tag, Stated<Quantity> value, Term lookedUp, String help) {
        List<Finding> findings = new ArrayList<>();
        if (lookedUp instanceof Withheld withheld && withheld.noRule()) {
            findings.add(Finding.refuses(NO_RULE, tag, value.where(), withheld.because(), help));
        }
        return findings;
    }
}
