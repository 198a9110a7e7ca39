package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cellfile.cell.Cell;
import org.cellfile.dossier.Text;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.source.Stated;
import org.cellfile.subject.hazard.Hazard;
import org.cellfile.subject.hazard.Risk;
import org.cellfile.subject.safeguard.Guarding;

/** A safeguard that is named against a hazard and protects none of the zones in which it is met. */
@AutoService(Check.class)
public final class RefuseSafeguardElsewhere implements Check {

    public static final FindingId ID = new FindingId("hazard.safeguard-elsewhere");

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        List<Finding> findings = new ArrayList<>();
        for (Risk risk : cell.risks()) {
            Hazard hazard = risk.hazard();
            for (Guarding guarding : cell.safeguards()) {
                // One finding, however many measures name it.
                hazard.safeguarding()
                        .flatMap(measure -> measure.by().stream())
                        .filter(tag ->
                                tag.value().equals(guarding.safeguard().tag().value()))
                        .findFirst()
                        .filter(tag -> elsewhere(cell, hazard, guarding))
                        .ifPresent(tag -> findings.add(finding(hazard, guarding, tag)));
            }
        }
        return findings;
    }

    /** Nothing is said where a zone that is meant is described nowhere. */
    private static boolean elsewhere(Cell cell, Hazard hazard, Guarding guarding) {
        boolean known = Zones.known(cell, hazard.zones())
                && Zones.known(cell, guarding.safeguard().protects());
        return known
                && guarding.zones().stream()
                        .noneMatch(zone -> hazard.in(zone.tag().characters()));
    }

    private static Finding finding(Hazard hazard, Guarding guarding, Stated<String> tag) {
        return Finding.refuses(
                ID,
                hazard.tag().characters(),
                tag.where(),
                "`" + guarding.tag() + "` is named against `" + hazard.tag().characters() + "`, which is met in "
                        + zones(hazard.zones()) + ", and it protects "
                        + zones(guarding.safeguard().protects()) + " only",
                "name the safeguards that keep people from where the hazard is; see at the machine which zones this one"
                        + " protects");
    }

    private static String zones(List<Stated<String>> zones) {
        return Text.tagged(zones.stream().map(Stated::characters).collect(Collectors.toList()));
    }
}
