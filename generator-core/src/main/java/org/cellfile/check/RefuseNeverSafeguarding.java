package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;
import org.cellfile.source.Stated;
import org.cellfile.subject.complement.ComplementaryDevice;
import org.cellfile.subject.complement.EnablingDevice;
import org.cellfile.subject.hazard.Hazard;
import org.cellfile.subject.hazard.Hazard.Measure;
import org.cellfile.subject.hazard.Risk;

/**
 * A safeguarding measure that names only devices which complement safeguards. Of these an enabling device alone safeguards, in a
 * manual mode and together with the reduced speed.
 */
@AutoService(Check.class)
public final class RefuseNeverSafeguarding implements Check {

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        List<Finding> findings = new ArrayList<>();
        for (Risk risk : cell.risks()) {
            risk.hazard()
                    .safeguarding()
                    .filter(measure -> !measure.by().isEmpty())
                    .filter(measure -> measure.by().stream().allMatch(tag -> neverSafeguards(cell, tag)))
                    .forEach(measure -> findings.add(finding(risk, measure)));
        }
        return findings;
    }

    /** What is described nowhere, or is of an unknown sort, was reported there. */
    private static boolean neverSafeguards(Cell cell, Stated<String> tag) {
        return cell.complementary().stream()
                .map(one -> one.device())
                .filter(device -> device.tag().value().equals(tag.value()))
                .map(ComplementaryDevice::sort)
                .anyMatch(sort -> !(sort instanceof EnablingDevice));
    }

    private static Finding finding(Risk risk, Measure measure) {
        String named = measure.by().stream().map(Stated::characters).collect(Collectors.joining("`, `"));
        boolean one = measure.by().size() == 1;
        return Finding.refuses(
                        Hazard.NAMES_NO_SAFEGUARD,
                        risk.tag(),
                        measure.by().get(0).where(),
                        "a safeguarding measure against `" + risk.tag() + "` names only `" + named
                                + "`, and that is no safeguard",
                        "name the safeguards that keep people from the hazard; "
                                + (one ? "this device" : "these devices") + " may stand beside them")
                .because(
                        List.of(
                                "emergency stops, resets, pendants and mode selectors complement safeguards and keep nobody"
                                        + " from a hazard; of such devices only an enabling device safeguards, with the reduced speed"));
    }
}
