package org.cellfile.subject.complement;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.cellfile.claim.Claim;
import org.cellfile.claim.Relation;
import org.cellfile.claim.Workings;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Quantity;
import org.cellfile.source.Stated;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Drawing;
import org.cellfile.trace.Reference;

/** What is asked of one complementary device: values it is held against, and rules in words. */
final class Demands {

    private static final String TRADE = "common practice";

    /**
     * One demand, for print.
     *
     * @param from edition and clause with its standing, or who else asks for it
     */
    record Asked(String demand, String from, String stated, boolean holds) {}

    private final String tag;
    private final List<Asked> asked = new ArrayList<>();
    private final List<Derived> bounds = new ArrayList<>();
    private final List<Claim> claims = new ArrayList<>();
    private final List<Reference> rules = new ArrayList<>();
    private final List<Finding> faults = new ArrayList<>();

    Demands(String tag) {
        this.tag = tag;
    }

    /** A stated value is held against a bound. */
    void bound(String what, Stated<Quantity> stated, Relation relation, Derived bound, FindingId id, String help) {
        Claim claim = new Claim(what, stated, relation, bound, id, help);
        bounds.add(bound);
        claims.add(claim);
        String from =
                bound.references().stream().map(Drawing::origin).findFirst().orElse(bound.clause());
        String demand = what + (relation == Relation.AT_LEAST ? " at least " : " at most ") + Workings.shown(bound);
        asked.add(new Asked(demand, from, stated.characters(), claim.holds()));
    }

    /** A stated word is held against a rule of an edition. */
    void rule(Reference rule, Stated<String> stated, Set<String> kept, FindingId id, String said, String help) {
        rules.add(rule);
        word(rule.name(), Drawing.origin(rule), stated, kept, id, said, help);
    }

    /** A stated word is held against a practice of the trade. */
    void practice(Stated<String> stated, Set<String> kept, FindingId id, String said, String practice, String help) {
        word(practice, TRADE, stated, kept, id, said, help);
    }

    private void word(
            String demand,
            String from,
            Stated<String> stated,
            Set<String> kept,
            FindingId id,
            String said,
            String help) {
        boolean holds = kept.contains(stated.characters());
        asked.add(new Asked(demand, from, stated.characters(), holds));
        if (stated.value().isPresent() && !holds) {
            fault(id, stated, said, demand + ": " + from, help);
        }
    }

    /** What does not hold, and is no matter of one word. */
    void fault(FindingId id, Stated<String> at, String said, String because, String help) {
        faults.add(Finding.refuses(id, tag, at.where(), "`" + tag + "` " + said, help)
                .because(List.of(because)));
    }

    List<Asked> asked() {
        return asked;
    }

    List<Derived> bounds() {
        return bounds;
    }

    List<Claim> claims() {
        return claims;
    }

    /** Every rule in words of an edition, kept or not. */
    List<Reference> rules() {
        return rules;
    }

    List<Finding> faults() {
        return faults;
    }
}
