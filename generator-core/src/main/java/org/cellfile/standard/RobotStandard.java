package org.cellfile.standard;

import org.cellfile.trace.Fixed;

/** What the robot itself must have: the subject of ISO 10218-1. */
public interface RobotStandard extends Edition {

    /** The highest speed of the tool centre point in manual reduced speed, in mm/s. */
    Fixed manualReducedSpeed();
}
