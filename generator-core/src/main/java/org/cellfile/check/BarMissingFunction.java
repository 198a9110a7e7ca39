package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.source.Stated;
import org.cellfile.subject.complement.EmergencyStop;
import org.cellfile.subject.complement.EnablingDevice;
import org.cellfile.subject.function.ControlSystem;

/** What stops the machine does so through a safety function, and for one such device none is described. */
@AutoService(Check.class)
public final class BarMissingFunction implements Check {

    /** No safety function is described at all. */
    public static final FindingId NONE = new FindingId("function.missing");

    /** A safeguard or a device triggers none of those that are. */
    public static final FindingId NOT_TRIGGERED = new FindingId("function.not-triggered");

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        ControlSystem.Described described = cell.controlSystem().described();
        List<Stated<String>> devices = devices(cell);
        if (devices.isEmpty()) {
            return List.of();
        }
        if (described.functions().isEmpty()) {
            return described.functionsStated() ? List.of() : List.of(none(cell));
        }
        // One without triggers was reported, and may be the one that is missed.
        if (described.functions().stream().anyMatch(one -> one.triggeredBy().isEmpty())) {
            return List.of();
        }
        List<Stated<String>> without = devices.stream()
                .filter(tag -> described.functions().stream().noneMatch(one -> one.triggeredBy(tag.characters())))
                .toList();
        return without.isEmpty() ? List.of() : List.of(notTriggered(without));
    }

    private static List<Stated<String>> devices(Cell cell) {
        return Stream.concat(
                        cell.safeguards().stream()
                                .map(guarding -> guarding.safeguard())
                                .filter(safeguard -> safeguard.kind().stopsTheHazard())
                                .map(safeguard -> safeguard.tag()),
                        cell.complementary().stream()
                                .map(complement -> complement.device())
                                .filter(device -> device.sort() instanceof EmergencyStop
                                        || device.sort() instanceof EnablingDevice)
                                .map(device -> device.tag()))
                .filter(tag -> tag.value().isPresent())
                .toList();
    }

    private static Finding none(Cell cell) {
        return Finding.barsRelease(
                NONE,
                "",
                cell.identity().where(),
                "no safety function of this cell is described, and nothing says which performance level it needs and reaches",
                "describe each under `functions`, with what it is built of under `subsystems` and `parts`");
    }

    private static Finding notTriggered(List<Stated<String>> without) {
        String tags = without.stream().map(Stated::characters).collect(Collectors.joining("`, `", "`", "`"));
        return Finding.barsRelease(
                NOT_TRIGGERED,
                without.get(0).characters(),
                without.get(0).where(),
                "no safety function is triggered by " + tags,
                "describe the function under `functions`, or name the device under `triggered-by` of the one it sets off");
    }
}
