package org.cellfile.standard;

import java.util.Optional;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Reference;

/** What the robot itself must have: the subject of ISO 10218-1. */
public interface RobotStandard extends Edition {

    /** The highest speed of the tool centre point in manual reduced speed, in mm/s. */
    Fixed manualReducedSpeed();

    /** How many positions an enabling device has. */
    Fixed enablingPositions();

    /** The mode selector can be locked in each position, or is as good as locked. */
    Reference lockableModes();

    /** The performance level that every safety function of a robot reaches; empty where the edition sets it for each function. */
    Optional<Fixed> functionLevel();

    /** The category of everything that carries out such a function; empty where the edition sets no common one. */
    Optional<LeastCategory> functionCategory();

    /** That the edition sets the level for each function; which one, only a copy can tell. */
    default Optional<Reference> levelOfEachFunction() {
        return Optional.empty();
    }

    /**
     * Nobody is inside the safeguards in manual high speed. Empty where the edition lets one trained person stay there, which has
     * to be justified (from memory).
     */
    default Optional<Reference> nobodyInsideAtHighSpeed() {
        return Optional.empty();
    }
}
