package org.cellfile.subject.complement;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.cellfile.claim.Claim;
import org.cellfile.claim.Relation;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Quantity;
import org.cellfile.source.Stated;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Drawing;
import org.cellfile.trace.Reference;

/** What is asked of one complementary device: values it is held against, and rules in words. */
final class Demands {

    private final String tag;
    private final List<Derived> bounds = new ArrayList<>();
    private final List<Claim> claims = new ArrayList<>();
    private final List<Reference> rules = new ArrayList<>();
    private final List<Finding> faults = new ArrayList<>();

    Demands(String tag) {
        this.tag = tag;
    }

    /** A stated value is held against a bound. */
    void bound(String what, Stated<Quantity> stated, Relation relation, Derived bound, FindingId id, String help) {
        bounds.add(bound);
        claims.add(new Claim(what, stated, relation, bound, id, help));
    }

    /** A stated word is held against a rule of an edition. */
    void rule(Reference rule, Stated<String> stated, Set<String> kept, FindingId id, String said, String help) {
        rules.add(rule);
        fault(stated, kept, id, said, rule.name() + ": " + Drawing.origin(rule), help);
    }

    /** A stated word is held against a practice of the trade. */
    void practice(Stated<String> stated, Set<String> kept, FindingId id, String said, String practice, String help) {
        fault(stated, kept, id, said, practice + ": common practice", help);
    }

    private void fault(
            Stated<String> stated, Set<String> kept, FindingId id, String said, String because, String help) {
        if (stated.value().isPresent() && !kept.contains(stated.characters())) {
            fault(id, stated, said, because, help);
        }
    }

    /** What does not hold, and is no matter of one word. */
    void fault(FindingId id, Stated<String> at, String said, String because, String help) {
        faults.add(Finding.refuses(id, tag, at.where(), "`" + tag + "` " + said, help)
                .because(List.of(because)));
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
