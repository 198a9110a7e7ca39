package org.cellfile.standard;

import java.util.Set;
import org.cellfile.trace.Term;

/** How far upper limbs reach through openings and over structures: the subject of ISO 13857. */
public interface ReachStandard extends Edition {

    /** The shapes of openings it knows. */
    Set<String> SHAPES = Set.of("slot", "square", "round");

    /**
     * How far one reaches through a regular opening, persons from 14 years on.
     *
     * @param shape one of {@link #SHAPES}
     * @param opening the smallest side of a slot, the side of a square, the diameter of a round opening, in mm
     * @return in mm; withheld when the table has no row for the opening
     */
    Term through(String shape, Term opening);

    /**
     * How far from a protective structure the hazard must be so that it is not reached over the top.
     *
     * @param zoneLowest lowest point of the hazard zone above the floor, in mm
     * @param zoneHighest its highest point, in mm
     * @param height of the structure, in mm
     * @return in mm; withheld when the table does not cover the height
     */
    Term over(Term zoneLowest, Term zoneHighest, Term height);
}
