package org.cellfile.standard;

import org.cellfile.trace.Fixed;
import org.cellfile.trace.Reference;

/** What an emergency stop must be like: the subject of ISO 13850. */
public interface EmergencyStopStandard extends Edition {

    /** The least height of a fixed actuator above the level people stand on, in mm. */
    Fixed leastHeight();

    /** Its greatest height, in mm. */
    Fixed greatestHeight();

    /** The machine is stopped by category 0 or 1. */
    Reference stopCategory();

    /** The stop stays in effect until somebody resets it by hand. */
    Reference latching();

    /** The function is available at all times, whatever the mode. */
    Reference availability();

    /** The least performance level of the function. */
    Fixed functionLevel();

    /** The colours of actuator and background. */
    Reference colours();
}
