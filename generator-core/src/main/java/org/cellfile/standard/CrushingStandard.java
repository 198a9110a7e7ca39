package org.cellfile.standard;

import java.util.List;
import org.cellfile.trace.Term;

/** How wide a gap must stay so that nobody is crushed in it: the subject of ISO 13854 and EN 349. */
public interface CrushingStandard extends Edition {

    /** The parts of the body it knows; the hand stands for hand, wrist and fist. */
    List<String> PARTS = List.of("body", "head", "leg", "foot", "toes", "arm", "hand", "finger");

    /**
     * The least gap in which a part of the body is not crushed.
     *
     * @param part one of {@link #PARTS}
     * @return in mm
     */
    Term leastGap(String part);
}
