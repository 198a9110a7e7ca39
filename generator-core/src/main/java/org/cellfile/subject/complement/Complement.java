package org.cellfile.subject.complement;

import java.util.List;
import org.cellfile.claim.Claim;
import org.cellfile.claim.Recomputed;
import org.cellfile.claim.Recorded;
import org.cellfile.finding.Finding;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Reference;

/** A complementary device, held against what is asked of it. */
public final class Complement implements Recomputed {

    private final ComplementaryDevice device;
    private final Demands demands;

    public Complement(ComplementaryDevice device, Surroundings around) {
        this.device = device;
        this.demands = device.sort().demands(device.tag().characters(), around);
    }

    public ComplementaryDevice device() {
        return device;
    }

    /** Every rule in words that it was held against. */
    public List<Reference> rules() {
        return demands.rules();
    }

    @Override
    public String tag() {
        return device.tag().characters();
    }

    @Override
    public List<Derived> derived() {
        return demands.bounds();
    }

    @Override
    public Recorded recorded() {
        return device.recorded();
    }

    @Override
    public List<Claim> requirements() {
        return demands.claims();
    }

    @Override
    public List<Finding> faults() {
        return demands.faults();
    }
}
