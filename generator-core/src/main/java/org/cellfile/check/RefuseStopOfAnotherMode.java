package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.source.Stated;
import org.cellfile.subject.hazard.Zone;
import org.cellfile.subject.mode.Mode;
import org.cellfile.subject.mode.Mode.State;
import org.cellfile.subject.safeguard.Guarding;
import org.cellfile.subject.safeguard.Safeguard;
import org.cellfile.subject.stopping.StopTest;

/**
 * A safeguard acts in a mode in which none of its stops was measured, or names a stop measured in a mode in which it does not act. How
 * long a stop takes depends on the mode: in a control whose manual is public the drives lose their power after at most 680 ms in
 * reduced speed and after 1.5 s in the others. A safeguard that acts in several modes waits for the slowest stop of them all.
 */
@AutoService(Check.class)
public final class RefuseStopOfAnotherMode implements Check {

    public static final FindingId NOT_MEASURED = new FindingId("safeguard.mode-not-measured");
    public static final FindingId FOREIGN = new FindingId("safeguard.stop-of-another-mode");

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        List<Finding> findings = new ArrayList<>();
        for (Guarding guarding : cell.safeguards()) {
            List<Finding> notMeasured = notMeasured(guarding, cell);
            findings.addAll(notMeasured.isEmpty() ? foreign(guarding.safeguard(), cell) : notMeasured);
        }
        return findings;
    }

    private static List<Finding> notMeasured(Guarding guarding, Cell cell) {
        Safeguard safeguard = guarding.safeguard();
        List<Finding> findings = new ArrayList<>();
        for (Mode mode : cell.modes()) {
            if (mode.state(safeguard) == State.ACTIVE) {
                List<Zone> without = guarding.zones().stream()
                        .filter(zone -> !measured(stops(safeguard, zone, cell), mode))
                        .toList();
                if (!without.isEmpty()) {
                    findings.add(notMeasured(safeguard, mode, without, cell));
                }
            }
        }
        return findings;
    }

    private static Finding notMeasured(Safeguard safeguard, Mode mode, List<Zone> without, Cell cell) {
        String tag = safeguard.tag().characters();
        return Finding.refuses(
                        NOT_MEASURED,
                        tag,
                        safeguard.stopTests().get(0).where(),
                        "`" + tag + "` acts in `" + mode.tag().characters()
                                + "`, and no stop it triggers in `"
                                + without.stream()
                                        .map(zone -> zone.tag().characters())
                                        .collect(Collectors.joining("`, `"))
                                + "` was measured in that mode",
                        "measure the stop in that mode, describe it under `stop-tests`, and name it here beside the others: the"
                                + " slowest counts")
                .because(safeguard.stopTests().stream()
                        .flatMap(stop -> test(stop, cell).stream())
                        .map(test -> "`" + test.tag().characters() + "` was measured in `"
                                + test.mode().characters() + "`, "
                                + test.mode().where().position())
                        .toList());
    }

    /** Those of its stops that end the movement in a zone; without any, that is found elsewhere. */
    private static List<StopTest> stops(Safeguard safeguard, Zone zone, Cell cell) {
        return safeguard.stopTests().stream()
                .filter(stop -> zone.stoppedBy().stream()
                        .anyMatch(other -> other.value().equals(stop.value())))
                .flatMap(stop -> test(stop, cell).stream())
                .toList();
    }

    private static boolean measured(List<StopTest> stops, Mode mode) {
        return stops.isEmpty()
                || stops.stream()
                        .anyMatch(test -> test.mode().value().isEmpty()
                                || test.mode().value().equals(mode.tag().value()));
    }

    private static List<Finding> foreign(Safeguard safeguard, Cell cell) {
        String tag = safeguard.tag().characters();
        List<Finding> findings = new ArrayList<>();
        for (Stated<String> stop : safeguard.stopTests()) {
            test(stop, cell)
                    .flatMap(test -> mode(test.mode(), cell))
                    .filter(mode -> doesNotAct(safeguard, mode))
                    .ifPresent(
                            mode -> findings.add(
                                    Finding.refuses(
                                            FOREIGN,
                                            tag,
                                            stop.where(),
                                            "`" + stop.characters() + "` was measured in `"
                                                    + mode.tag().characters() + "`, in which `" + tag + "` is "
                                                    + mode.state(safeguard).words(),
                                            "name only stops measured in modes in which it acts; where it does act, say so in the mode")));
        }
        return findings;
    }

    /** That one is suspended in automatic is refused as such. */
    private static boolean doesNotAct(Safeguard safeguard, Mode mode) {
        return mode.state(safeguard) == State.NOT_APPLICABLE
                || (mode.state(safeguard) == State.SUSPENDED && !mode.is(Mode.AUTOMATIC));
    }

    private static Optional<StopTest> test(Stated<String> tag, Cell cell) {
        return cell.stops().stream()
                .map(stop -> stop.test())
                .filter(test ->
                        test.tag().value().isPresent() && test.tag().value().equals(tag.value()))
                .findFirst();
    }

    private static Optional<Mode> mode(Stated<String> tag, Cell cell) {
        return cell.modes().stream()
                .filter(mode ->
                        mode.tag().value().isPresent() && mode.tag().value().equals(tag.value()))
                .findFirst();
    }
}
