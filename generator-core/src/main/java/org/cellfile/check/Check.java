package org.cellfile.check;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;

/** One refusal, or one bar to release, that spans the cell. Each is a class of its own, found through the service index. */
public interface Check {

    /**
     * What it finds.
     *
     * @param today the day of the run; absent when the result must not depend on it
     */
    List<Finding> check(Cell cell, Optional<LocalDate> today);
}
