package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Quantity;
import org.cellfile.source.Stated;
import org.cellfile.subject.identity.RobotLoad;
import org.cellfile.subject.mode.Mode;

/** A robot is stated to be used faster than any mode of that sort lets it go. */
@AutoService(Check.class)
public final class RefuseFasterRobot implements Check {

    public static final FindingId ID = new FindingId("mode.robot-faster");

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        List<Finding> findings = new ArrayList<>();
        for (RobotLoad load : cell.robots()) {
            faster(load, load.robot().automaticSpeed(), Mode.AUTOMATIC, "automatic", cell)
                    .ifPresent(findings::add);
            // One that is too fast for the edition is refused for that.
            boolean tooFast = load.findings().stream().anyMatch(one -> one.id().equals(RobotLoad.TOO_FAST));
            if (!tooFast) {
                faster(load, load.robot().manualReducedSpeed(), Mode.MANUAL_REDUCED_SPEED, "manual reduced speed", cell)
                        .ifPresent(findings::add);
            }
        }
        return findings;
    }

    private static Optional<Finding> faster(
            RobotLoad load, Stated<Quantity> speed, String sort, String words, Cell cell) {
        Optional<Stated<Quantity>> limit = cell.modes().stream()
                .filter(mode -> mode.is(sort))
                .map(Mode::speedLimit)
                .filter(one -> one.value().isPresent())
                .max(Comparator.comparing(one -> one.value().orElseThrow()));
        return limit.filter(highest -> speed.value()
                        .filter(written -> written.compareTo(highest.value().orElseThrow()) > 0)
                        .isPresent())
                .map(highest -> Finding.refuses(
                                ID,
                                load.tag(),
                                speed.where(),
                                "`" + load.tag() + "` is used at " + speed.characters() + " in " + words
                                        + ", faster than the " + highest.characters() + " its mode allows",
                                "see at the robot how fast it goes in this mode, and correct the entry that is wrong; a stop is"
                                        + " measured at the highest speed")
                        .because(List.of(
                                "the mode is limited at " + highest.where().position())));
    }
}
