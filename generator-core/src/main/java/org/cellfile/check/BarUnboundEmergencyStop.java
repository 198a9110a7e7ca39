package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.finding.Nearest;
import org.cellfile.standard.Editions;
import org.cellfile.standard.EmergencyStopStandard;
import org.cellfile.subject.complement.EmergencyStop;

/** Emergency stops are listed, and the cell names no edition to hold them against. None is guessed. */
@AutoService(Check.class)
public final class BarUnboundEmergencyStop implements Check {

    public static final FindingId ID = new FindingId("complementary.no-edition");

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        if (!cell.identity().standards().inForce(EmergencyStopStandard.class).isEmpty()) {
            return List.of();
        }
        return cell.complementary().stream()
                .map(one -> one.device())
                .filter(device -> device.sort() instanceof EmergencyStop)
                .limit(1)
                .map(device -> Finding.barsRelease(
                        ID,
                        device.tag().characters(),
                        device.tag().where(),
                        "emergency stops are listed, and the cell names no edition their heights, categories, latching and"
                                + " colours could be held against",
                        "state under `standards` the edition they were built to; known: "
                                + Nearest.listed("", Editions.ids(EmergencyStopStandard.class))))
                .toList();
    }
}
