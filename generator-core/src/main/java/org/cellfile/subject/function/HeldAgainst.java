package org.cellfile.subject.function;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.cellfile.claim.Claim;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Rounding;
import org.cellfile.source.Span;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Drawing;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Reference;
import org.cellfile.trace.Term;

/** What a subsystem was held against: rules of the edition, values that must hold, and what does not. */
final class HeldAgainst {

    private final String tag;
    private final Set<Reference> rules = new LinkedHashSet<>();
    private final List<Claim> claims = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    private HeldAgainst(String tag) {
        this.tag = tag;
    }

    /** One without a category was reported and is held against nothing. */
    static HeldAgainst of(SubsystemLevel level) {
        HeldAgainst held = new HeldAgainst(level.tag());
        Subsystem subsystem = level.subsystem();
        subsystem.category().value().ifPresent(category -> {
            if (subsystem.maker().isPresent() && subsystem.channels().isEmpty()) {
                new MakerFaults(level, category, held).hold(subsystem.maker().get());
            } else if (!subsystem.channels().isEmpty()) {
                new StructureFaults(level, category, held).hold();
                new TestFaults(level, category, held).hold();
                new CommonCauseFaults(level, category, held).hold();
            }
        });
        return held;
    }

    String tag() {
        return tag;
    }

    /** A rule in words, kept or not. */
    void rule(Reference rule) {
        rules.add(rule);
    }

    void claim(Claim claim) {
        rules.addAll(claim.derived().references());
        claims.add(claim);
    }

    void refuse(FindingId id, Span where, String sentence, String help) {
        findings.add(Finding.refuses(id, tag, where, sentence, help));
    }

    /** What breaks a rule in words. */
    void refuse(FindingId id, Span where, String sentence, Reference rule, String help) {
        findings.add(Finding.refuses(id, tag, where, sentence, help)
                .because(List.of(rule.name() + ": " + Drawing.origin(rule))));
    }

    void found(Finding finding) {
        findings.add(finding);
    }

    /** A bound that the edition fixes, to be drawn as the values beside it are. */
    Derived bound(Fixed fixed, Rounding rounding) {
        return bound(fixed.reference().name(), fixed.symbol(), fixed, fixed.reference(), rounding);
    }

    /** A bound that rests on what the edition fixes. */
    Derived bound(String words, String symbol, Term bound, Reference by, Rounding rounding) {
        return new Derived(tag, "bound", words, symbol, by.clause().toString(), bound, rounding);
    }

    /** A derived value must reach a bound. */
    void atLeast(Derived reached, Derived bound, FindingId id, Span where, String help) {
        rules.addAll(bound.references());
        if (reached.value().isEmpty()
                || bound.value().isEmpty()
                || reached.value().get().compareTo(bound.value().get()) >= 0) {
            return;
        }
        List<String> because = new ArrayList<>(Drawing.of(reached).lines());
        because.addAll(Drawing.of(bound).lines());
        findings.add(Finding.refuses(
                        id,
                        tag,
                        where,
                        "the " + reached.words() + " of `" + tag + "` is "
                                + reached.rounded().orElseThrow() + ", less than the " + bound.words() + ", "
                                + bound.rounded().orElseThrow().plain(),
                        help)
                .because(because));
    }

    Set<Reference> rules() {
        return rules;
    }

    List<Claim> claims() {
        return claims;
    }

    List<Finding> findings() {
        return findings;
    }
}
