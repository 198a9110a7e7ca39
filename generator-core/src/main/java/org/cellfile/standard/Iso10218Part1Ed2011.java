package org.cellfile.standard;

import com.google.auto.service.AutoService;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Unit;
import org.cellfile.trace.Clause;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Reference;
import org.cellfile.trace.Standing.Published;

/** ISO 10218-1:2011; the clause number is from memory. */
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
}
