package org.cellfile.subject.complement;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cellfile.claim.Claim;
import org.cellfile.claim.Relation;
import org.cellfile.claim.Workings;
import org.cellfile.dossier.Block.Column;
import org.cellfile.dossier.Block.Table;
import org.cellfile.dossier.Text;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Quantity;
import org.cellfile.source.Stated;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Drawing;
import org.cellfile.trace.Reference;

/** What is asked of one complementary device, or of one mode: values it is held against, and rules in words. */
public final class Demands {

    /** Who asks for what no edition asks for. */
    public static final String TRADE = "common practice";

    /**
     * One demand, for print.
     *
     * @param from edition and clause with its standing, or who else asks for it
     */
    private record Asked(String demand, String from, String stated, boolean holds) {}

    private final String tag;
    private final List<Asked> asked = new ArrayList<>();
    private final List<Derived> bounds = new ArrayList<>();
    private final List<Claim> claims = new ArrayList<>();
    private final List<Reference> rules = new ArrayList<>();
    private final List<Finding> faults = new ArrayList<>();

    /**
     * @param tag of the thing that is held against them
     */
    public Demands(String tag) {
        this.tag = tag;
    }

    /** A stated value is held against a bound. */
    public void bound(
            String what, Stated<Quantity> stated, Relation relation, Derived bound, FindingId id, String help) {
        Claim claim = new Claim(what, stated, relation, bound, id, help);
        bounds.add(bound);
        claims.add(claim);
        String from =
                bound.references().stream().map(Drawing::origin).findFirst().orElse(bound.clause());
        String demand = what + (relation == Relation.AT_LEAST ? " at least " : " at most ") + Workings.shown(bound);
        asked.add(new Asked(demand, from, stated.characters(), claim.holds()));
    }

    /** A stated word is held against a rule of an edition. */
    public void rule(Reference rule, Stated<String> stated, Set<String> kept, FindingId id, String said, String help) {
        rules.add(rule);
        word(rule.name(), Drawing.origin(rule), stated, kept, id, said, help);
    }

    /** A stated word is held against a practice of the trade. */
    public void practice(
            Stated<String> stated, Set<String> kept, FindingId id, String said, String practice, String help) {
        word(practice, TRADE, stated, kept, id, said, help);
    }

    /** Something that is no matter of one word is held against a rule of an edition. */
    public void rule(Reference rule, String stated, Optional<Finding> broken) {
        rules.add(rule);
        practice(rule.name(), Drawing.origin(rule), stated, broken);
    }

    /**
     * Something that is no matter of one word is held against a rule that no edition known here has.
     *
     * @param from who asks for it
     * @param stated for print
     * @param broken what is found where it is not kept
     */
    public void practice(String demand, String from, String stated, Optional<Finding> broken) {
        asked.add(new Asked(demand, from, stated, broken.isEmpty()));
        broken.ifPresent(finding -> faults.add(finding.because(List.of(demand + ": " + from))));
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
    public void fault(FindingId id, Stated<String> at, String said, String because, String help) {
        faults.add(Finding.refuses(id, tag, at.where(), "`" + tag + "` " + said, help)
                .because(List.of(because)));
    }

    /** Something is found that breaks no demand. */
    public void remark(Finding finding) {
        faults.add(finding);
    }

    /** Each demand once, with all things that were held against it. */
    public static Table table(List<Demands> all) {
        Map<List<String>, List<String>> stated = new LinkedHashMap<>();
        for (Demands demands : all) {
            for (Asked one : demands.asked) {
                stated.computeIfAbsent(
                                List.of(Text.capital(one.demand()), Text.capital(one.from())), key -> new ArrayList<>())
                        .add(demands.tag + ": " + one.stated() + (one.holds() ? "" : ", which falls short"));
            }
        }
        return new Table(
                "What each is held against",
                List.of(Column.text("Asked", 6), Column.text("By", 6), Column.text("Stated", 8)),
                stated.entrySet().stream()
                        .map(row ->
                                List.of(row.getKey().get(0), row.getKey().get(1), String.join("; ", row.getValue())))
                        .toList());
    }

    public List<Derived> bounds() {
        return bounds;
    }

    public List<Claim> claims() {
        return claims;
    }

    /** Every rule in words of an edition, kept or not. */
    public List<Reference> rules() {
        return rules;
    }

    public List<Finding> faults() {
        return faults;
    }
}
