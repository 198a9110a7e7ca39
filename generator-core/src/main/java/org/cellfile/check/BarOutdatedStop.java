package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.source.Stated;
import org.cellfile.subject.register.Change;
import org.cellfile.subject.stopping.StopEvidence;

/** A stop that was measured before the last change of the stop, of what it stops or of the robot that it stops. */
@AutoService(Check.class)
public final class BarOutdatedStop implements Check {

    public static final FindingId ID = new FindingId("stopping.older-than-change");

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        return cell.stops().stream()
                .flatMap(stop -> outdated(cell, stop).stream())
                .toList();
    }

    private static Optional<Finding> outdated(Cell cell, StopEvidence stop) {
        List<String> concerned = Stream.concat(
                        Stream.of(stop.tag()),
                        cell.zones().stream()
                                .map(one -> one.zone())
                                .filter(zone -> zone.endedBy(stop.tag()))
                                .flatMap(zone ->
                                        Stream.of(zone.tag(), zone.robot()).flatMap(tag -> tag.value().stream())))
                .distinct()
                .toList();
        Stated<LocalDate> on = stop.test().on();
        return cell.registers().changes().stream()
                .filter(change -> concerned.stream().anyMatch(change::touches))
                .filter(change -> isAfter(change, on))
                .max(Comparator.comparing(change -> change.on().value().orElseThrow()))
                .map(change -> Finding.barsRelease(
                        ID,
                        stop.tag(),
                        on.where(),
                        "`" + stop.tag() + "` was measured on " + on.characters() + ", before the change `"
                                + change.tag().characters() + "` of "
                                + change.on().characters() + " to "
                                + touched(change, concerned) + " ("
                                + change.on().where().position() + ")",
                        "measure the stop again as the machine is now; what was measured before can be listed under"
                                + " `history`"));
    }

    private static boolean isAfter(Change change, Stated<LocalDate> measured) {
        return change.on()
                .value()
                .flatMap(day -> measured.value().map(day::isAfter))
                .orElse(false);
    }

    private static String touched(Change change, List<String> concerned) {
        return "`"
                + String.join("`, `", concerned.stream().filter(change::touches).toList()) + "`";
    }
}
