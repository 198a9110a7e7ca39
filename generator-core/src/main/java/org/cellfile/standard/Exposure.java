package org.cellfile.standard;

import java.util.Optional;
import java.util.stream.Stream;
import org.cellfile.source.Stated;

/**
 * What the risk graph of ISO 13849-1, Annex A, asks about a hazard (the meaning of the letters is published: makers' manuals and a
 * public note quote it).
 *
 * @param severity {@code S1} slight, as a rule reversible; {@code S2} serious, as a rule irreversible, or death
 * @param frequency {@code F1} seldom or short; {@code F2} frequent or long
 * @param avoidance {@code P1} possible under certain conditions; {@code P2} scarcely possible
 */
public record Exposure(Stated<String> severity, Stated<String> frequency, Stated<String> avoidance) {

    /** As the graph is followed, for example {@code S2-F1-P2}; empty when one of the three was not stated. */
    public Optional<String> path() {
        return severity.value()
                .flatMap(s -> frequency.value().flatMap(f -> avoidance.value().map(p -> s + "-" + f + "-" + p)));
    }

    /** The three as they are stated, in that order. */
    public Stream<Stated<String>> parameters() {
        return Stream.of(severity, frequency, avoidance);
    }
}
