package org.cellfile.standard;

import com.google.auto.service.AutoService;
import java.util.Optional;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Unit;
import org.cellfile.trace.Clause;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Reference;
import org.cellfile.trace.Standing.FromMemory;
import org.cellfile.trace.Standing.Published;

/** ISO 10218-1:2011; the clause numbers are from memory. */
@AutoService(Edition.class)
public final class Iso10218Part1Ed2011 extends FixedValues implements RobotStandard {

    private static final String ID = "ISO 10218-1:2011";

    private final Fixed manualReducedSpeed = fixed(
            "v_max",
            Quantity.of("250", Unit.MILLIMETRE_PER_SECOND),
            "manual-reduced-speed",
            "highest speed of the tool centre point in manual reduced speed",
            new Clause(ID, "cl. 5.6.2"),
            new Published("OSHA Technical Manual, section IV chapter 4, as quoted in public notes (at second hand)"));

    private final Fixed enablingPositions = fixed(
            "n_3",
            Quantity.count(3),
            "enabling-positions",
            "positions of an enabling device, only the middle one of which permits motion",
            new Clause(ID, "cl. 5.8.3"),
            new FromMemory("common practice"));

    private final Reference lockableModes = reference(
            "lockable-modes",
            "the mode selector can be locked in each position, or selects by means that amount to it",
            new Clause(ID, "cl. 5.7.1"),
            new FromMemory("common practice"));

    private final Fixed functionLevel = fixed(
            "PL_min",
            Quantity.level("d"),
            "function-level",
            "least performance level of a safety function of a robot",
            new Clause(ID, "cl. 5.4.2"),
            new FromMemory("or SIL 2 with a fault tolerance of one and a proof test of 20 years"));

    private final LeastCategory functionCategory = new LeastCategory(
            Category.THREE,
            reference(
                    "function-category",
                    "everything that carries out a safety function of a robot has category 3 at least",
                    new Clause(ID, "cl. 5.4.2"),
                    new FromMemory("")));

    /** As its values are held here. */
    public Iso10218Part1Ed2011() {
        this(CopyValues.NONE);
    }

    private Iso10218Part1Ed2011(CopyValues copy) {
        super("iso-10218-1-2011", copy);
    }

    @Override
    public Iso10218Part1Ed2011 reading(CopyValues copy) {
        return new Iso10218Part1Ed2011(copy);
    }

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Safety requirements for industrial robots, part 1: robots";
    }

    @Override
    public Fixed manualReducedSpeed() {
        return manualReducedSpeed;
    }

    @Override
    public Fixed enablingPositions() {
        return enablingPositions;
    }

    @Override
    public Reference lockableModes() {
        return lockableModes;
    }

    @Override
    public Optional<Fixed> functionLevel() {
        return Optional.of(functionLevel);
    }

    @Override
    public Optional<LeastCategory> functionCategory() {
        return Optional.of(functionCategory);
    }
}
