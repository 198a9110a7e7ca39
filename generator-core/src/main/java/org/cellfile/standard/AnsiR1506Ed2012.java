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
public final class AnsiR1506Ed2012 implements RobotStandard, RobotCellStandard {

    private static final String ID = "ANSI R15.06:2012";

    /** 254 mm/s exactly, a little more than the 250 mm/s of the ISO edition. */
    private static final Fixed MANUAL_REDUCED_SPEED = fixed(
            "v_max",
            Quantity.of("10", Unit.INCH_PER_SECOND),
            "manual-reduced-speed",
            "highest speed of the tool centre point in manual reduced speed",
            "part 1, cl. 5.6.2",
            "printed as 10 in/s beside 250 mm/s, which is a little less");

    private static final Fixed FENCE_HEIGHT = fixed(
            "h_min",
            Quantity.millimetres("1400"),
            "fence-height",
            "least height of a fixed guard that keeps people out",
            "part 2, cl. 5.10.3",
            "as in ISO 10218-2:2011, of which it is the national adoption");

    private static final Fixed GAP_BELOW = fixed(
            "g_max",
            Quantity.millimetres("180"),
            "gap-below",
            "widest gap below a fixed guard that keeps the body out",
            "part 2, cl. 5.10.3",
            "as in ISO 10218-2:2011, of which it is the national adoption");

    private static final Fixed ENABLING_POSITIONS = fixed(
            "n",
            Quantity.count(3),
            "enabling-positions",
            "positions of an enabling device, only the middle one of which permits motion",
            "part 1, cl. 5.8.3",
            "common practice");

    private static final Reference LOCKABLE_MODES = new Reference(
            "ansi-r15-06-2012.lockable-modes",
            "the mode selector can be locked in each position, or selects by means that amount to it",
            new Clause(ID, "part 1, cl. 5.7.1"),
            new FromMemory("common practice"));

    private static Fixed fixed(String symbol, Quantity quantity, String id, String name, String place, String remark) {
        return new Fixed(
                symbol,
                quantity,
                new Reference("ansi-r15-06-2012." + id, name, new Clause(ID, place), new FromMemory(remark)));
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
        return MANUAL_REDUCED_SPEED;
    }

    @Override
    public Fixed enablingPositions() {
        return ENABLING_POSITIONS;
    }

    @Override
    public Reference lockableModes() {
        return LOCKABLE_MODES;
    }

    @Override
    public Fixed leastFenceHeight() {
        return FENCE_HEIGHT;
    }

    @Override
    public Fixed widestGapBelow() {
        return GAP_BELOW;
    }
}
