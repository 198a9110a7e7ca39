package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.subject.mode.Mode;
import org.cellfile.subject.safeguard.Guarding;
import org.cellfile.subject.stopping.StopEvidence;

/**
 * A stop that was measured in a mode in which safeguards that rest on it are out of action. How long a stop takes depends on the
 * mode: a maker's manual of a robot controller lets the drives run on for 0.68 s at most at reduced speed and for 1.5 s in the
 * other modes.
 */
@AutoService(Check.class)
public final class BarStopOfAnotherMode implements Check {

    public static final FindingId ID = new FindingId("coverage.another-mode");

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        return cell.stops().stream()
                .flatMap(stop -> cell.modes().stream()
                        .filter(mode ->
                                mode.tag().value().equals(stop.test().mode().value()))
                        .findFirst()
                        .flatMap(mode -> finding(cell, stop, mode))
                        .stream())
                .toList();
    }

    private static Optional<Finding> finding(Cell cell, StopEvidence stop, Mode mode) {
        List<Guarding> out = cell.safeguards().stream()
                .filter(guarding -> guarding.safeguard().stopTests().stream()
                        .anyMatch(one -> one.characters().equals(stop.tag())))
                .filter(guarding -> isOut(mode.state(guarding.safeguard())))
                .toList();
        return out.isEmpty()
                ? Optional.empty()
                : Optional.of(Finding.barsRelease(
                        ID,
                        stop.tag(),
                        stop.test().mode().where(),
                        "`" + stop.tag() + "` was measured in the mode `"
                                + mode.tag().characters() + "`, and "
                                + out.stream()
                                        .map(guarding -> "`" + guarding.tag() + "`")
                                        .collect(Collectors.joining(", "))
                                + (out.size() == 1 ? ", which rests on it, does" : ", which rest on it, do")
                                + " not act in that mode",
                        "name with each safeguard a stop test that was measured in a mode in which it acts; how long a stop"
                                + " takes depends on the mode"));
    }

    private static boolean isOut(Mode.State state) {
        return state == Mode.State.SUSPENDED || state == Mode.State.NOT_APPLICABLE;
    }
}
