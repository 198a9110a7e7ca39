package org.cellfile.compare;

import java.util.Map;

/**
 * A sort of change, and what of the proof of a cell it voids. Each row of the matrix is a class of its own, found through the service
 * index.
 *
 * <p>The matrix was put together from published instructions: makers' manuals of robot controllers (when a stop is measured again,
 * what is tested after a change of safety parameters, what follows an exchange of drives), a maker's manual of scanners (thorough
 * check after a change of configuration, mounting or wiring), and one of safety controllers (impact analysis and signature after an
 * edit of the program). No single source has all of it; the cells are constructed from these, and whoever answers for the cell judges
 * what applies.
 */
public interface KindOfChange {

    /** A stable word. */
    String id();

    /** In words. */
    String title();

    /** What it asks of each proof, as in the matrix; nothing where the matrix has nothing. */
    Map<Proof, String> asks();

    /** True when a statement that differs is of this sort. */
    boolean covers(Stating stating);

    /** Which function tests it voids, where it voids any. */
    default Tests tests() {
        return Tests.NONE;
    }

    /** False for what is not a change of the machine: records about it, and names. */
    default boolean ofTheMachine() {
        return true;
    }

    /** Whose function tests. */
    enum Tests {
        NONE,
        /** of the thing that was changed */
        OF_THE_THING,
        /** of everything that triggers a stop it has part in, and of itself */
        OF_ITS_STOPS,
        /** of everything */
        ALL
    }
}
