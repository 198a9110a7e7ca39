package org.cellfile.standard;

import org.cellfile.trace.Fixed;

/**
 * How a stop is measured and evaluated.
 *
 * @param leastRuns how many runs are due under each condition, a count
 * @param deviations how many standard deviations are added to the mean of the runs, a count
 */
public record StopMeasurement(Fixed leastRuns, Fixed deviations) {

    /** The stricter of both in each respect. */
    StopMeasurement and(StopMeasurement other) {
        return new StopMeasurement(stricter(leastRuns, other.leastRuns), stricter(deviations, other.deviations));
    }

    private static Fixed stricter(Fixed one, Fixed other) {
        return one.quantity().compareTo(other.quantity()) >= 0 ? one : other;
    }
}
