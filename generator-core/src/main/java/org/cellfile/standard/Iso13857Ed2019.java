package org.cellfile.standard;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Term;

/** ISO 13857:2019. */
@AutoService(Edition.class)
public final class Iso13857Ed2019 implements ReachStandard {

    private static final String ID = "ISO 13857:2019";

    private final Iso13857Tables tables;

    /** As its values are held here. */
    public Iso13857Ed2019() {
        this(CopyValues.NONE);
    }

    private Iso13857Ed2019(CopyValues copy) {
        tables = new Iso13857Tables(ID, "iso-13857-2019", copy);
    }

    @Override
    public Iso13857Ed2019 reading(CopyValues copy) {
        return new Iso13857Ed2019(copy);
    }

    @Override
    public List<Asked> asked() {
        return tables.asked();
    }

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Safety distances to prevent hazard zones being reached by upper and lower limbs";
    }

    @Override
    public Optional<Term> through(Opening opening) {
        return Optional.of(tables.through(opening));
    }

    @Override
    public Optional<Term> throughWithLegs(Opening opening) {
        return Optional.of(tables.throughWithLegs(opening));
    }

    @Override
    public Optional<Term> around(String support) {
        return Optional.of(tables.around(support));
    }

    @Override
    public Optional<Fixed> widestWithoutBody(String shape) {
        return Optional.of(tables.widestWithoutBody(shape));
    }

    @Override
    public Optional<Term> over(Term zoneLowest, Term zoneHighest, Term height) {
        return Optional.of(tables.over(zoneLowest, zoneHighest, height));
    }
}
