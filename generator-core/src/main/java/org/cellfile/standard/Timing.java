package org.cellfile.standard;

import java.util.List;
import java.util.Optional;
import org.cellfile.trace.Term;
import org.cellfile.trace.Withheld;

/**
 * The time from the moment a part of the body is detected until the hazard has ended, whole and by its parts.
 *
 * @param overall response time, in s; the sum of the others without the brake monitor
 * @param device the links that are the protective device's own, in s
 * @param machine every other link and the stopping time itself, in s
 * @param brakeMonitor the time at which a monitor of the brake reports, if there is one, in s
 */
public record Timing(Term overall, List<Term> device, List<Term> machine, Optional<Term> brakeMonitor) {

    /** For what stands in the way by itself and stops nothing. */
    public static final Timing NONE =
            new Timing(new Withheld("T", "it stops nothing"), List.of(), List.of(), Optional.empty());

    public Timing {
        device = List.copyOf(device);
        machine = List.copyOf(machine);
    }
}
