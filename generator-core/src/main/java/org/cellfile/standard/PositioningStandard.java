package org.cellfile.standard;

import java.util.List;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Term;

/** Where a safeguard has to stand: the subject of ISO 13855. */
public interface PositioningStandard extends Edition {

    /**
     * A field approached at a right angle, for detecting arms or finer, or bodies.
     *
     * @param field what is known of it
     */
    Position perpendicular(PerpendicularField field);

    /** A field approached along its plane. */
    Position parallel(ParallelField field);

    /** A movable guard with interlock and without guard locking. */
    Position interlockedGuard(InterlockedGuard guard);

    /** How many runs are due under each condition. */
    Fixed leastRuns();

    /** How many standard deviations are added to the mean of the runs. */
    Fixed deviations();

    /**
     * A field approached at a right angle.
     *
     * @param tag of the safeguard
     * @param responseTime overall, in s
     * @param resolution detection capability, in mm
     * @param upperEdge of the field above the floor, in mm
     * @param zoneLowest lowest point of the hazard zone above the floor, in mm
     * @param zoneHighest its highest point, in mm
     * @param installed distance, in mm
     */
    record PerpendicularField(
            String tag,
            Term responseTime,
            Term resolution,
            Term upperEdge,
            Term zoneLowest,
            Term zoneHighest,
            Term installed) {}

    /**
     * A field approached along its plane.
     *
     * @param tag of the safeguard
     * @param responseTime overall, in s
     * @param resolution detection capability, in mm
     * @param height of the field above the floor, in mm
     * @param supplements the device's maker asks for, in mm
     * @param installed distance, in mm
     */
    record ParallelField(
            String tag, Term responseTime, Term resolution, Term height, List<Term> supplements, Term installed) {}

    /**
     * A movable guard with interlock and without guard locking.
     *
     * @param tag of the safeguard
     * @param responseTime overall, in s
     * @param reach how far one can reach through the opening left when the interlock reports, in mm
     * @param installed distance, in mm
     */
    record InterlockedGuard(String tag, Term responseTime, Term reach, Term installed) {}

    /**
     * What the edition asks of a position.
     *
     * @param distance the separation distance, in mm
     * @param longestTime the longest overall response time the installed distance allows, in s
     * @param parts what these rest on, in the order to be read
     * @param limits bounds on figures of the device, by name; only those that apply to it
     */
    record Position(Derived distance, Derived longestTime, List<Derived> parts, List<Derived> limits) {
        /** The part of that name. */
        public Derived part(String name) {
            return parts.stream()
                    .filter(part -> part.name().equals(name))
                    .findFirst()
                    .orElseThrow();
        }

        /** The limit of that name. */
        public Derived limit(String name) {
            return limits.stream()
                    .filter(limit -> limit.name().equals(name))
                    .findFirst()
                    .orElseThrow();
        }
    }
}
