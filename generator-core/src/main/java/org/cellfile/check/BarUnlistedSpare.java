package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.subject.register.Registers;
import org.cellfile.subject.safeguard.Guarding;

/**
 * A door has an interlock, and nobody says where its spare actuators are. Actuators come in pairs and in spare part boxes; a loose
 * one held to the switch is a common way to defeat a door (publications of the accident insurers on defeating). Common practice.
 */
@AutoService(Check.class)
public final class BarUnlistedSpare implements Check {

    public static final FindingId ID = new FindingId("spare-actuator.not-stated");

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        Registers registers = cell.registers();
        List<Guarding> without = registers.noSpares().value().isPresent() ? List.of() : unlisted(cell);
        if (without.isEmpty()) {
            return List.of();
        }
        return List.of(Finding.barsRelease(
                ID,
                without.get(0).tag(),
                without.get(0).safeguard().tag().where(),
                "nothing says where the spare actuators are that fit `"
                        + without.stream().map(Guarding::tag).collect(Collectors.joining("`, `")) + "`",
                "list them under `spare-actuators`, locked away and with somebody who answers for them; if there are none,"
                        + " say under `no-spares` where they went and who saw it"));
    }

    /** The doors for which no spare actuator is listed. */
    static List<Guarding> unlisted(Cell cell) {
        return cell.safeguards().stream()
                .filter(guarding -> guarding.safeguard().kind().hasActuator())
                .filter(guarding -> cell.registers().spareActuators().stream()
                        .flatMap(spare -> spare.fits().stream())
                        .noneMatch(door -> door.characters().equals(guarding.tag())))
                .toList();
    }
}
