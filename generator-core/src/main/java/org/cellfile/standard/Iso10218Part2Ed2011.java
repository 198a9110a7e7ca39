package org.cellfile.standard;

import com.google.auto.service.AutoService;
import org.cellfile.trace.Clause;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Standing.Published;

/** ISO 10218-2:2011; the clause number is from memory. */
@AutoService(Edition.class)
public final class Iso10218Part2Ed2011 extends FixedValues implements RobotCellStandard {

    private static final String ID = "ISO 10218-2:2011";
    private static final Clause PERIMETER = new Clause(ID, "cl. 5.10.3");

    private final Fixed fenceHeight = length(
            "h_min",
            "1400",
            "fence-height",
            "least height of a fixed guard that keeps people out",
            PERIMETER,
            new Published("robot-safety.net, material entry and exit"));

    private final Fixed gapBelow = length(
            "g_max",
            "180",
            "gap-below",
            "widest gap below a fixed guard that keeps the body out",
            PERIMETER,
            new Published(
                    "robot-safety.net, material entry and exit; Access s.r.l., minimum clearances floor to fence"));

    /** As its values are held here. */
    public Iso10218Part2Ed2011() {
        this(CopyValues.NONE);
    }

    private Iso10218Part2Ed2011(CopyValues copy) {
        super("iso-10218-2-2011", copy);
    }

    @Override
    public Iso10218Part2Ed2011 reading(CopyValues copy) {
        return new Iso10218Part2Ed2011(copy);
    }

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Safety requirements for industrial robots, part 2: robot systems and integration";
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
