package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.subject.identity.Instrument;
import org.cellfile.subject.stopping.StopEvidence;

/** A stop test or an instrument that nothing uses. */
@AutoService(Check.class)
public final class WarnUnusedThing implements Check {

    public static final FindingId ID = new FindingId("tag.not-used");

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        Set<String> used = new HashSet<>();
        cell.zones().forEach(zone -> used.add(zone.zone().overrun().characters()));
        cell.safeguards()
                .forEach(guarding -> guarding.safeguard().stopTests().forEach(test -> used.add(test.characters())));
        cell.instrumentsUsed().forEach(instrument -> used.add(instrument.characters()));
        List<Finding> findings = new ArrayList<>();
        for (StopEvidence stop : cell.stops()) {
            if (stop.test().tag().value().isPresent() && !used.contains(stop.tag())) {
                findings.add(Finding.warns(
                        ID,
                        stop.tag(),
                        stop.test().tag().where(),
                        "no safeguard and no hazard zone uses the stop test `" + stop.tag() + "`",
                        "name it where it belongs, or take it out"));
            }
        }
        for (Instrument instrument : cell.identity().instruments()) {
            if (instrument.tag().value().isPresent()
                    && !used.contains(instrument.tag().characters())) {
                findings.add(Finding.warns(
                        ID,
                        instrument.tag().characters(),
                        instrument.tag().where(),
                        "nothing was measured with the instrument `"
                                + instrument.tag().characters() + "`",
                        "name it where it belongs, or take it out"));
            }
        }
        return findings;
    }
}
