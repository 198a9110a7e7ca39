package org.cellfile.subject.hazard;

import java.util.List;
import org.cellfile.claim.Claim;
import org.cellfile.claim.Recomputed;
import org.cellfile.claim.Recorded;
import org.cellfile.finding.Finding;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.standard.ControlStandard;
import org.cellfile.trace.Derived;

/** A hazard with the performance level that what safeguards against it must reach. */
public final class Risk implements Recomputed {

    private final Hazard hazard;
    private final Derived required;

    public Risk(Hazard hazard, ControlStandard standard) {
        this.hazard = hazard;
        this.required = new Derived(
                hazard.tag().characters(),
                "required-level",
                "required performance level",
                "PL_r",
                standard.id() + ", Annex A",
                standard.requiredLevel(hazard.before()),
                Rounding.up(Quantity.level("a")));
    }

    public Hazard hazard() {
        return hazard;
    }

    /** The required performance level. */
    public Derived required() {
        return required;
    }

    @Override
    public String tag() {
        return hazard.tag().characters();
    }

    @Override
    public List<Derived> derived() {
        return List.of(required);
    }

    @Override
    public Recorded recorded() {
        return hazard.recorded();
    }

    @Override
    public List<Claim> requirements() {
        return List.of();
    }

    @Override
    public List<Finding> faults() {
        return List.of();
    }
}
