package org.cellfile.claim;

import java.util.ArrayList;
import java.util.List;
import org.cellfile.finding.Finding;
import org.cellfile.trace.Derived;

/** A thing of the cell whose values have been derived, ready to be held against what was stated. */
public interface Recomputed {

    String tag();

    /** Every value derived for it, in the order to be read. */
    List<Derived> derived();

    /** What somebody recorded beside its inputs. */
    Recorded recorded();

    /** What must hold besides the recorded values: installed against required, carried forward against measured. */
    List<Claim> requirements();

    /** What is wrong with it that is not a claim. */
    List<Finding> faults();

    /** All claims. */
    default List<Claim> claims() {
        List<Claim> claims = new ArrayList<>(recorded().claims(derived()));
        claims.addAll(requirements());
        return claims;
    }

    /** All that does not hold. */
    default List<Finding> findings() {
        List<Finding> findings = new ArrayList<>(faults());
        claims().forEach(claim -> claim.finding().ifPresent(findings::add));
        findings.addAll(recorded().orphans(derived()));
        return findings.stream().map(this::ofTheThing).toList();
    }

    private Finding ofTheThing(Finding finding) {
        // Where a thing is recomputed under several editions its values stand under tags of their own, which nobody
        // wrote.
        String part = finding.about();
        return part.startsWith(tag() + ".") ? finding.about(tag()).say(part, tag()) : finding.about(tag());
    }

    /** The derived value of that name. */
    default Derived derived(String name) {
        return derived().stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(tag() + " has no " + name));
    }
}
