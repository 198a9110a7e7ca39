package org.cellfile.finding;

import java.time.LocalDate;
import org.cellfile.source.Span;

/**
 * A stated departure from a refusing finding of the installed cell. It turns that finding into one that bars release; it never
 * covers arithmetic or reading.
 *
 * @param finding id of the finding
 * @param of tag of the thing that falls short; of a way in that is open, the zone and the things between which it opens
 * @param responsible name of the person who answers for it
 * @param until the last day on which it holds
 */
public record Deviation(
        String tag,
        String finding,
        String of,
        String reason,
        String interimMeasure,
        String responsible,
        LocalDate until,
        Span where) {

    /** What the ids of findings about the installed cell begin with. */
    public static final String INSTALLED = "installed.";

    /** True when it is about that finding. */
    public boolean covers(Finding found) {
        return found.id().words().equals(finding) && found.about().equals(of);
    }
}
