package org.cellfile.subject.safeguard;

import org.cellfile.standard.PositioningStandard;
import org.cellfile.standard.ReachStandard;
import org.cellfile.standard.RobotCellStandard;
import org.cellfile.trace.Term;

/**
 * What a safeguard's position depends on besides the safeguard itself.
 *
 * @param tag of the safeguard
 * @param responseTime overall, in s; withheld for kinds that stop nothing
 * @param zoneLowest lowest point of the zones it protects, in mm
 * @param zoneHighest highest point of the zones it protects, in mm
 * @param installed distance, in mm
 */
public record Surroundings(
        String tag, Rules rules, Term responseTime, Term zoneLowest, Term zoneHighest, Term installed) {

    /** The editions in force. */
    public record Rules(PositioningStandard positioning, ReachStandard reach, RobotCellStandard robotCell) {}
}
