package org.cellfile.subject.clearance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cellfile.claim.Claim;
import org.cellfile.claim.Recomputed;
import org.cellfile.claim.Recorded;
import org.cellfile.claim.Relation;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.standard.CrushingStandard;
import org.cellfile.subject.identity.Instrument;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Difference;
import org.cellfile.trace.Given;
import org.cellfile.trace.Sum;
import org.cellfile.trace.Term;
import org.cellfile.trace.Withheld;

/**
 * A clearance, recomputed: the least gap for the part of the body, and the gap needed so that the least one is there even when
 * the measured one is off by its uncertainty.
 */
public final class ClearanceGap implements Recomputed {

    /** The gap is narrower than a part of the body needs, and nothing else is named that keeps it from being crushed. */
    public static final FindingId TOO_NARROW = new FindingId("installed.crushing-gap");

    /** The gap is narrower than a part of the body needs, and a measure is named in its place. */
    public static final FindingId MEASURE_INSTEAD = new FindingId("clearance.measure-instead");

    private final Clearance clearance;
    private final Optional<Instrument> instrument;
    private final Derived least;
    private final Derived needed;
    private final Derived margin;

    /**
     * @param standard absent when the cell chose no edition, which is refused by who reads the cell
     * @param instrument the gap was measured with
     */
    public ClearanceGap(Clearance clearance, Optional<CrushingStandard> standard, Optional<Instrument> instrument) {
        this.clearance = clearance;
        this.instrument = instrument;
        Term row = standard.flatMap(edition -> clearance.part().value().map(edition::leastGap))
                .orElseGet(() -> new Withheld("a", "the edition or the part of the body is not known"));
        least = new Derived(
                tag(),
                "least-gap",
                "least gap",
                "a_min",
                standard.map(edition -> edition.id() + ", table 1").orElse("table 1"),
                row,
                Rounding.up(Quantity.millimetres("1")).beside(clearance.gap().value()));
        needed = new Derived(
                tag(),
                "needed-gap",
                "needed gap",
                "a_n",
                "sum of the lengths",
                Sum.of(row, new Given("u", "uncertainty of the measured gap", clearance.uncertainty())),
                Rounding.up(Quantity.millimetres("1")).beside(clearance.gap().value()));
        margin = new Derived(
                tag(),
                "margin",
                "margin of the gap",
                "M",
                "difference",
                new Difference(new Given("g", "measured gap", clearance.gap()), needed),
                Rounding.down(Quantity.millimetres("1")).beside(clearance.gap().value()));
    }

    public Clearance clearance() {
        return clearance;
    }

    public Derived leastGap() {
        return least;
    }

    public Derived neededGap() {
        return needed;
    }

    public Derived margin() {
        return margin;
    }

    @Override
    public String tag() {
        return clearance.tag().characters();
    }

    @Override
    public List<Derived> derived() {
        return List.of(least, needed, margin);
    }

    @Override
    public Recorded recorded() {
        return clearance.recorded();
    }

    private Claim wideEnough() {
        return new Claim(
                "measured gap",
                clearance.gap(),
                Relation.AT_LEAST,
                needed,
                TOO_NARROW,
                "move the fixed part or limit the movement, and measure the gap again; or name under `measure` what keeps people"
                        + " from being crushed there; until then a named person may state a deviation");
    }

    private boolean measureIsNamed() {
        return clearance.measure().value().isPresent();
    }

    /** True when the gap is known to be narrower than needed. */
    public boolean isNarrow() {
        return wideEnough().finding().isPresent();
    }

    @Override
    public List<Claim> requirements() {
        return measureIsNamed() ? List.of() : List.of(wideEnough());
    }

    @Override
    public List<Finding> faults() {
        List<Finding> faults = new ArrayList<>();
        instrument
                .flatMap(one -> one.notCalibrated(tag(), clearance.instrument(), clearance.on()))
                .ifPresent(faults::add);
        if (measureIsNamed()) {
            wideEnough().finding().map(this::measureInstead).ifPresent(faults::add);
        }
        return faults;
    }

    private Finding measureInstead(Finding narrow) {
        return Finding.warns(
                        MEASURE_INSTEAD,
                        tag(),
                        narrow.where(),
                        narrow.sentence() + "; a measure is named in its place ("
                                + clearance.measure().where().position() + ")",
                        "see that it is there, and that whoever answers for the risk assessment finds it enough; neither is"
                                + " recomputed here")
                .because(narrow.because());
    }
}
