package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.source.Stated;
import org.cellfile.subject.hazard.Hazard;
import org.cellfile.subject.hazard.Hazard.Measure;
import org.cellfile.subject.hazard.Risk;
import org.cellfile.subject.safeguard.Guarding;

/** A safeguard that is named against no hazard, in a cell whose hazards are described. */
@AutoService(Check.class)
public final class RefuseIdleSafeguard implements Check {

    public static final FindingId ID = new FindingId("safeguard.serves-no-hazard");

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        List<Hazard> hazards = cell.risks().stream().map(Risk::hazard).toList();
        if (hazards.isEmpty()) {
            return List.of();
        }
        return cell.safeguards().stream()
                .filter(guarding -> guarding.safeguard().tag().value().isPresent())
                .filter(guarding -> hazards.stream()
                        .noneMatch(hazard -> hazard.servedBy(guarding.tag()) || mayMean(cell, hazard, guarding)))
                .map(
                        guarding -> Finding.refuses(
                                ID,
                                guarding.tag(),
                                guarding.safeguard().tag().where(),
                                "`" + guarding.tag() + "` is named against no hazard",
                                "name it under `by` of the measure it carries out, or describe the hazard it was installed for"))
                .toList();
    }

    /** A hazard in a zone it protects, against which nothing that is known here is named; that was reported there. */
    private static boolean mayMean(Cell cell, Hazard hazard, Guarding guarding) {
        boolean near = hazard.zones().isEmpty()
                || guarding.zones().stream()
                        .anyMatch(zone -> hazard.in(zone.tag().characters()));
        return near
                && (hazard.measures().isEmpty()
                        || hazard.safeguarding()
                                .anyMatch(measure -> measure.by().isEmpty())
                        || hazard.measures().stream()
                                .map(Measure::by)
                                .flatMap(List::stream)
                                .anyMatch(tag -> !known(cell, tag)));
    }

    private static boolean known(Cell cell, Stated<String> tag) {
        return Stream.concat(
                        cell.safeguards().stream().map(Guarding::tag),
                        cell.complementary().stream()
                                .map(one -> one.device().tag().characters()))
                .anyMatch(tag.characters()::equals);
    }
}
