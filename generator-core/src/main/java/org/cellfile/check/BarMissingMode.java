package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.subject.mode.Mode;

/** A robot cell runs by itself, and somebody sets it up at reduced speed; one of these modes is not described. Common practice. */
@AutoService(Check.class)
public final class BarMissingMode implements Check {

    public static final FindingId ID = new FindingId("mode.missing");

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        List<String> missing = Stream.of(Mode.AUTOMATIC, Mode.MANUAL_REDUCED_SPEED)
                .filter(sort -> cell.modes().stream().noneMatch(mode -> mode.is(sort)))
                .toList();
        // A mode whose sort could not be read may be just the one.
        boolean unread =
                cell.modes().stream().anyMatch(mode -> mode.sort().value().isEmpty());
        if (cell.robots().isEmpty() || missing.isEmpty() || unread) {
            return List.of();
        }
        return List.of(Finding.barsRelease(
                ID,
                "",
                cell.identity().where(),
                "the cell has a robot, and under `modes` there is none of the sort `"
                        + String.join("`, none of the sort `", missing) + "`",
                "describe it there: its speed limit, who may be inside, and what becomes of each safeguard"));
    }
}
