package org.cellfile.standard;

import com.google.auto.service.AutoService;
import java.util.Optional;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Term;

/** ISO 13857:2019. */
@AutoService(Edition.class)
public final class Iso13857Ed2019 implements ReachStandard {

    private static final Iso13857Tables TABLES = new Iso13857Tables("ISO 13857:2019", "iso-13857-2019");

    @Override
    public String id() {
        return "ISO 13857:2019";
    }

    @Override
    public String title() {
        return "Safety distances to prevent hazard zones being reached by upper and lower limbs";
    }

    @Override
    public Optional<Term> through(Opening opening) {
        return Optional.of(TABLES.through(opening));
    }

    @Override
    public Optional<Term> throughWithLegs(Opening opening) {
        return Optional.of(TABLES.throughWithLegs(opening));
    }

    @Override
    public Optional<Term> around(String support) {
        return Optional.of(TABLES.around(support));
    }

    @Override
    public Optional<Fixed> widestWithoutBody(String shape) {
        return Optional.of(TABLES.widestWithoutBody(shape));
    }

    @Override
    public Optional<Term> over(Term zoneLowest, Term zoneHighest, Term height) {
        return Optional.of(TABLES.over(zoneLowest, zoneHighest, height));
    }
}
