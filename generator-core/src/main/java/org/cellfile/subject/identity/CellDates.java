package org.cellfile.subject.identity;

import java.time.LocalDate;
import org.cellfile.quantity.Interval;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;

/**
 * Dates of the cell as a whole.
 *
 * @param built the day from which it could be tested: nothing can have been tested or measured before
 * @param warnAhead how long before something falls due that is pointed out
 */
public record CellDates(Stated<LocalDate> built, Stated<Interval> warnAhead) {

    static CellDates read(Section section) {
        CellDates dates = new CellDates(section.date("built"), section.interval("warn-ahead"));
        section.close();
        return dates;
    }
}
