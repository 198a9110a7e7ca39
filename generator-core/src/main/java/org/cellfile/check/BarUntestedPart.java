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
import org.cellfile.source.Stated;
import org.cellfile.subject.function.PartLife;
import org.cellfile.subject.function.SubsystemLevel;

/** A part was replaced, or a bought subsystem, and what triggers the functions that go through it was tested before that day only. */
@AutoService(Check.class)
public final class BarUntestedPart implements Check {

    public static final FindingId ID = new FindingId("part.not-tested-since-installed");

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        List<Finding> findings = new ArrayList<>();
        for (PartLife part : cell.controlSystem().parts()) {
            untested(cell, part.tag(), part.part().installed()).ifPresent(findings::add);
        }
        for (SubsystemLevel subsystem : cell.controlSystem().subsystems()) {
            subsystem
                    .subsystem()
                    .maker()
                    .flatMap(maker -> untested(cell, subsystem.tag(), maker.installed()))
                    .ifPresent(findings::add);
        }
        return findings;
    }

    private static Optional<Finding> untested(Cell cell, String tag, Stated<LocalDate> installed) {
        // One that is still ahead was told as such.
        boolean ahead = installed
                .value()
                .flatMap(day -> cell.identity().facts().asOf().value().map(day::isAfter))
                .orElse(false);
        if (ahead) {
            return Optional.empty();
        }
        List<String> older = cell.controlSystem().described().triggers(tag).stream()
                .flatMap(trigger -> latestTest(cell, trigger)
                        .filter(day -> installed.value().filter(day::isBefore).isPresent())
                        .map(day -> "`" + trigger + "`, last " + day)
                        .stream())
                .toList();
        return older.isEmpty()
                ? Optional.empty()
                : Optional.of(Finding.barsRelease(
                                ID,
                                tag,
                                installed.where(),
                                "`" + tag + "` was installed on " + installed.characters()
                                        + ", and since then not everything was tested that acts through it",
                                "have the function tests of these done again and record what came out")
                        .because(older));
    }

    /** Empty for what was never tested, which is told elsewhere. */
    private static Optional<LocalDate> latestTest(Cell cell, String trigger) {
        return cell.verification().rounds().stream()
                .filter(round -> round.results().stream()
                        .filter(result -> result.passed())
                        .flatMap(result -> result.of().stream())
                        .anyMatch(of -> of.characters().equals(trigger)))
                .flatMap(round -> round.on().value().stream())
                .max(Comparator.naturalOrder());
    }
}
