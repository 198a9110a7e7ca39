package org.cellfile.subject.complement;

import java.util.List;
import java.util.Map;
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

    Demands demands() {
        return demands;
    }

    @Override
    public String tag() {
        return device.tag().characters();
    }

    @Override
    public List<Derived> derived() {
        return demands.bounds();
    }

    /** Nothing: what bounds a device is fixed or stated, and recording it once more would prove nothing. */
    @Override
    public Recorded recorded() {
        return new Recorded(tag(), device.tag().where(), Map.of());
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
