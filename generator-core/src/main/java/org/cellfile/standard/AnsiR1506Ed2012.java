package org.cellfile.standard;

import com.google.auto.service.AutoService;
import java.util.Optional;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Unit;
import org.cellfile.trace.Clause;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Reference;
import org.cellfile.trace.Standing.FromMemory;

/** ANSI/RIA R15.06-2012, the national adoption of ISO 10218-1:2011 and ISO 10218-2:2011; from memory throughout. */
@AutoService(Edition.class)
public final class AnsiR1506Ed2012 extends FixedValues implements RobotStandard, RobotCellStandard {

    private static final String ID = "ANSI R15.06:2012";

    /** 254 mm/s exactly, a little more than the 250 mm/s of the ISO edition. */
    private final Fixed manualReducedSpeed = fixed(
            "v_max",
            Quantity.of("10", Unit.INCH_PER_SECOND),
            "manual-reduced-speed",
            "highest speed of the tool centre point in manual reduced speed",
            "part 1, cl. 5.6.2",
            "printed as 10 in/s beside 250 mm/s, which is a little less");

    private final Fixed fenceHeight = fixed(
            "h_min",
            Quantity.millimetres("1400"),
            "fence-height",
            "least height of a fixed guard that keeps people out",
            "part 2, cl. 5.10.3",
            "as in ISO 10218-2:2011, of which it is the national adoption");

    private final Fixed gapBelow = fixed(
            "g_max",
            Quantity.millimetres("180"),
            "gap-below",
            "widest gap below a fixed guard that keeps the body out",
            "part 2, cl. 5.10.3",
            "as in ISO 10218-2:2011, of which it is the national adoption");

    private final Fixed enablingPositions = fixed(
            "n",
            Quantity.count(3),
            "enabling-positions",
            "positions of an enabling device, only the middle one of which permits motion",
            "part 1, cl. 5.8.3",
            "common practice");

    private final Reference lockableModes = reference(
            "lockable-modes",
            "the mode selector can be locked in each position, or selects by means that amount to it",
            new Clause(ID, "part 1, cl. 5.7.1"),
            new FromMemory("common practice"));

    private final Fixed functionLevel = fixed(
            "PL_min",
            Quantity.level("d"),
            "function-level",
            "least performance level of a safety function of a robot",
            "part 1, cl. 5.4.2",
            "as in ISO 10218-1:2011, of which it is the national adoption");

    private final LeastCategory functionCategory = new LeastCategory(
            Category.THREE,
            reference(
                    "function-category",
                    "everything that carries out a safety function of a robot has category 3 at least",
                    new Clause(ID, "part 1, cl. 5.4.2"),
                    new FromMemory("as in ISO 10218-1:2011, of which it is the national adoption")));

    private Fixed fixed(String symbol, Quantity quantity, String id, String name, String place, String remark) {
        return fixed(symbol, quantity, id, name, new Clause(ID, place), new FromMemory(remark));
    }

    /** As its values are held here. */
    public AnsiR1506Ed2012() {
        this(CopyValues.NONE);
    }

    private AnsiR1506Ed2012(CopyValues copy) {
        super("ansi-r15-06-2012", copy);
    }

    @Override
    public AnsiR1506Ed2012 reading(CopyValues copy) {
        return new AnsiR1506Ed2012(copy);
    }

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Industrial robots and robot systems: safety requirements";
    }

    @Override
    public Optional<String> remark() {
        return Optional.of(
                "The national adoption of ISO 10218-1:2011 and ISO 10218-2:2011; its values are from memory throughout.");
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

    @Override
    public Fixed leastFenceHeight() {
        return fenceHeight;
    }

    @Override
    public Fixed widestGapBelow() {
        return gapBelow;
    }
}
