package org.cellfile.standard;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Term;

/**
 * How far limbs reach through openings, over structures and around their ends: the subject of ISO 13857. Where an edition has no
 * rule at all the answer is empty; where its rule does not cover the figures, the term is withheld and says why.
 */
public interface ReachStandard extends Edition {

    /** The shapes of openings it knows. */
    Set<String> SHAPES = Set.of("slot", "square", "round");

    /** The joints up to which an arm can be held back. */
    List<String> SUPPORTS = List.of("shoulder", "elbow", "wrist", "knuckles");

    /**
     * A regular opening.
     *
     * @param shape one of {@link #SHAPES}
     * @param size the smallest side of a slot, the side of a square, the diameter of a round opening, in mm
     * @param length of a slot, where it is known, in mm
     */
    record Opening(String shape, Term size, Optional<Term> length) {}

    /** How far one reaches through an opening with fingers, hand or arm, persons from 14 years on, in mm. */
    default Optional<Term> through(Opening opening) {
        return Optional.empty();
    }

    /** How far one reaches through an opening with toes, foot or leg, in mm. */
    default Optional<Term> throughWithLegs(Opening opening) {
        return Optional.empty();
    }

    /** The widest opening of that shape through which no body passes, in mm. */
    default Optional<Fixed> widestWithoutBody(String shape) {
        return Optional.empty();
    }

    /**
     * How far from a protective structure the hazard must be so that it is not reached over the top.
     *
     * @param zoneLowest lowest point of the hazard zone above the floor, in mm
     * @param zoneHighest its highest point, in mm
     * @param height of the structure, in mm
     * @return in mm
     */
    default Optional<Term> over(Term zoneLowest, Term zoneHighest, Term height) {
        return Optional.empty();
    }

    /**
     * How far one reaches around the end of a structure.
     *
     * @param support up to where the arm is held back, one of {@link #SUPPORTS}
     * @return in mm
     */
    default Optional<Term> around(String support) {
        return Optional.empty();
    }
}
