package org.cellfile.standard;

import org.cellfile.trace.Fixed;

/** What robot systems and their perimeter must have: the subject of ISO 10218-2. */
public interface RobotCellStandard extends Edition {

    /** The least height of a fixed guard that keeps people out, in mm. */
    Fixed leastFenceHeight();

    /** The widest gap below it through which nobody gets in, in mm. */
    Fixed widestGapBelow();
}
