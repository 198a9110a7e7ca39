package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.subject.complement.EmergencyStop;
import org.cellfile.subject.complement.EnablingDevice;
import org.cellfile.subject.complement.ModeSelector;
import org.cellfile.subject.complement.Pendant;
import org.cellfile.subject.complement.Sort;

/**
 * A robot cell has a fixed emergency stop, a pendant, an enabling device and a mode selector; one of them is not listed. That a
 * pendant's emergency stop is not enough: common practice.
 */
@AutoService(Check.class)
public final class BarMissingComplement implements Check {

    public static final FindingId ID = new FindingId("complementary.missing");

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        List<String> missing = new ArrayList<>();
        lacks(cell, sort -> sort instanceof EmergencyStop stop && !stop.handHeld(), "fixed emergency stop", missing);
        lacks(cell, EnablingDevice.class::isInstance, "enabling device", missing);
        lacks(cell, ModeSelector.class::isInstance, "mode selector", missing);
        lacks(cell, Pendant.class::isInstance, "pendant", missing);
        if (cell.robots().isEmpty() || missing.isEmpty()) {
            return List.of();
        }
        return List.of(Finding.barsRelease(
                ID,
                "",
                cell.identity().where(),
                "the cell has a robot, and under `complementary` there is no " + String.join(", no ", missing),
                "describe each such device there as it is installed"));
    }

    private static void lacks(Cell cell, Predicate<Sort> sort, String words, List<String> missing) {
        if (cell.complementary().stream()
                .noneMatch(one -> sort.test(one.device().sort()))) {
            missing.add(words);
        }
    }
}
