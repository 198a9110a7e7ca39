package org.cellfile.standard;

import com.google.auto.service.AutoService;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Unit;
import org.cellfile.trace.Clause;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Reference;
import org.cellfile.trace.Standing.FromMemory;
import org.cellfile.trace.Standing.Published;

/** ISO 10218-1:2011; the clause numbers are from memory. */
@AutoService(Edition.class)
public final class Iso10218Part1Ed2011 implements RobotStandard {

    private static final Fixed MANUAL_REDUCED_SPEED = new Fixed(
            "v_max",
            Quantity.of("250", Unit.MILLIMETRE_PER_SECOND),
            new Reference(
                    "iso-10218-1-2011.manual-reduced-speed",
                    "highest speed of the tool centre point in manual reduced speed",
                    new Clause("ISO 10218-1:2011", "cl. 5.6.2"),
                    new Published(
                            "OSHA Technical Manual, section IV chapter 4, as quoted in public notes (at second hand)")));

    private static final Fixed ENABLING_POSITIONS = new Fixed(
            "n_3",
            Quantity.count(3),
            new Reference(
                    "iso-10218-1-2011.enabling-positions",
                    "positions of an enabling device, only the middle one of which permits motion",
                    new Clause("ISO 10218-1:2011", "cl. 5.8.3"),
                    new FromMemory("common practice")));

    private static final Reference LOCKABLE_MODES = new Reference(
            "iso-10218-1-2011.lockable-modes",
            "the mode selector can be locked in each position, or selects by means that amount to it",
            new Clause("ISO 10218-1:2011", "cl. 5.7.1"),
            new FromMemory("common practice"));

    @Override
    public String id() {
        return "ISO 10218-1:2011";
    }

    @Override
    public String title() {
        return "Safety requirements for industrial robots, part 1: robots";
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
}
