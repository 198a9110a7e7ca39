package org.cellfile.standard;

import java.util.List;
import java.util.Optional;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Term;

/**
 * Where a safeguard has to stand with respect to the approach of persons. An edition answers for the ways of approach it has a
 * rule for; for the others the answer is empty, and another edition has to stand beside it.
 */
public interface PositioningStandard extends Edition {

    /** A field approached at a right angle, for detecting fingers, arms or bodies. */
    default Optional<Position> perpendicular(PerpendicularField field) {
        return Optional.empty();
    }

    /** One or several separate beams that detect bodies. */
    default Optional<Position> beams(Beams beams) {
        return Optional.empty();
    }

    /** A field approached along its plane. */
    default Optional<Position> parallel(ParallelField field) {
        return Optional.empty();
    }

    /** A surface that detects who stands on it. */
    default Optional<Position> mat(Mat mat) {
        return Optional.empty();
    }

    /** A device that has to be held with both hands. */
    default Optional<Position> twoHandControl(TwoHandControl control) {
        return Optional.empty();
    }

    /** A movable guard with interlock. */
    default Optional<Position> interlockedGuard(InterlockedGuard guard) {
        return Optional.empty();
    }

    /** The least angle between the direction of approach and a field at which it counts as a right angle, in degrees. */
    default Optional<Fixed> leastRightAngle() {
        return Optional.empty();
    }

    /** The widest gap between a field and the machine in which nobody stands undetected, in mm. */
    default Optional<Fixed> widestGapBehind() {
        return Optional.empty();
    }

    /** The least depth of a mat that nobody steps over, in mm. */
    default Optional<Fixed> leastDepthToStepOver() {
        return Optional.empty();
    }

    /** How a stop is measured and evaluated, where the edition tells. */
    default Optional<StopMeasurement> stopMeasurement() {
        return Optional.empty();
    }

    /**
     * A field approached at a right angle. Heights are above the floor.
     *
     * @param resolution detection capability, with blanked beams the effective one, in mm
     * @param lowerEdge of the field, in mm
     * @param upperEdge of the field, in mm
     * @param supplements the device's maker asks for, in mm
     * @param startsCycle true when the machine starts as soon as the field is left
     */
    record PerpendicularField(
            Approach approach,
            Term resolution,
            Term lowerEdge,
            Term upperEdge,
            List<Term> supplements,
            boolean startsCycle) {}

    /**
     * Separate beams.
     *
     * @param heights of the beams above the floor, from the lowest to the highest, in mm
     */
    record Beams(Approach approach, List<Term> heights) {}

    /**
     * A field approached along its plane.
     *
     * @param resolution detection capability, in mm
     * @param height of the field above the floor; where it is inclined, of its side furthest from the hazard; in mm
     * @param supplements the device's maker asks for, in mm
     */
    record ParallelField(Approach approach, Term resolution, Term height, List<Term> supplements) {}

    /**
     * A mat.
     *
     * @param step its height above the floor one comes from, in mm
     */
    record Mat(Approach approach, Term step) {}

    /**
     * A two-hand control.
     *
     * @param shrouded true when hands cannot get past it towards the hazard while it is held
     * @param clutch of a machine that cannot be stopped within its turn
     */
    record TwoHandControl(Approach approach, boolean shrouded, Optional<Clutch> clutch) {}

    /**
     * A clutch that engages at certain points only and then goes through its turn.
     *
     * @param points at which it engages in one turn, a count
     * @param turn time of one turn, in s
     */
    record Clutch(Term points, Term turn) {}

    /**
     * A movable guard with interlock.
     *
     * @param reach how far one can reach through the opening left when the interlock reports, in mm
     * @param held how long a guard lock holds it after the stop was asked for, in s; empty without guard locking
     */
    record InterlockedGuard(Approach approach, Term reach, Optional<Term> held) {}
}
