package org.cellfile.standard;

import java.util.Optional;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Reference;

/**
 * How a stop is measured and evaluated.
 *
 * @param leastRuns how many runs are due under each condition, a count
 * @param deviations how many standard deviations are added to the mean of the runs, a count
 * @param coldAndWarm the rule that the stop is measured with the machine cold and warm, where an edition has it
 */
public record StopMeasurement(Fixed leastRuns, Fixed deviations, Optional<Reference> coldAndWarm) {

    /** Of an edition that says nothing about cold and warm. */
    StopMeasurement(Fixed leastRuns, Fixed deviations) {
        this(leastRuns, deviations, Optional.empty());
    }

    /** The stricter of both in each respect. */
    StopMeasurement and(StopMeasurement other) {
        return new StopMeasurement(
                stricter(leastRuns, other.leastRuns),
                stricter(deviations, other.deviations),
                coldAndWarm.or(() -> other.coldAndWarm));
    }

    private static Fixed stricter(Fixed one, Fixed other) {
        return one.quantity().compareTo(other.quantity()) >= 0 ? one : other;
    }
}
