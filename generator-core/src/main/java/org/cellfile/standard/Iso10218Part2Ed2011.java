package org.cellfile.standard;

import com.google.auto.service.AutoService;
import org.cellfile.quantity.Quantity;
import org.cellfile.trace.Clause;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Reference;
import org.cellfile.trace.Standing;
import org.cellfile.trace.Standing.Published;

/** ISO 10218-2:2011; the clause number is from memory. */
@AutoService(Edition.class)
public final class Iso10218Part2Ed2011 implements RobotCellStandard {

    private static final Clause PERIMETER = new Clause("ISO 10218-2:2011", "cl. 5.10.3");

    private static final Fixed FENCE_HEIGHT = fixed(
            "h_min",
            "1400",
            "fence-height",
            "least height of a fixed guard that keeps people out",
            new Published("robot-safety.net, material entry and exit"));

    private static final Fixed GAP_BELOW = fixed(
            "g_max",
            "180",
            "gap-below",
            "widest gap below a fixed guard that keeps the body out",
            new Published(
                    "robot-safety.net, material entry and exit; Access s.r.l., minimum clearances floor to fence"));

    private static Fixed fixed(String symbol, String millimetres, String id, String name, Standing standing) {
        return new Fixed(
                symbol,
                Quantity.millimetres(millimetres),
                new Reference("iso-10218-2-2011." + id, name, PERIMETER, standing));
    }

    @Override
    public String id() {
        return "ISO 10218-2:2011";
    }

    @Override
    public String title() {
        return "Safety requirements for industrial robots, part 2: robot systems and integration";
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
