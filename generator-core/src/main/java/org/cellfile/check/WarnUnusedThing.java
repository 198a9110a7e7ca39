package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.source.Stated;
import org.cellfile.subject.function.ControlSystem;
import org.cellfile.subject.function.SafetyFunction;
import org.cellfile.subject.identity.Instrument;
import org.cellfile.subject.stopping.StopEvidence;

/** A stop test, an instrument, a part or a subsystem that nothing uses. */
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
        Set<String> needed = needed(cell.controlSystem());
        cell.controlSystem().parts().stream()
                .filter(part -> !needed.contains(part.tag()))
                .forEach(part -> findings.add(unused(
                        part.part().tag(),
                        "no subsystem is built of the part `" + part.tag() + "`, and it monitors nothing")));
        cell.controlSystem().subsystems().stream()
                .filter(subsystem -> !needed.contains(subsystem.tag()))
                .forEach(subsystem -> findings.add(unused(
                        subsystem.subsystem().tag(),
                        "no safety function goes through the subsystem `" + subsystem.tag()
                                + "`, and it monitors nothing")));
        for (StopEvidence stop : cell.stops()) {
            if (stop.test().tag().value().isPresent() && !used.contains(stop.tag())) {
                findings.add(unused(
                        stop.test().tag(), "no safeguard and no hazard zone uses the stop test `" + stop.tag() + "`"));
            }
        }
        for (Instrument instrument : cell.identity().instruments()) {
            if (instrument.tag().value().isPresent()
                    && !used.contains(instrument.tag().characters())) {
                findings.add(unused(
                        instrument.tag(),
                        "nothing was measured with the instrument `"
                                + instrument.tag().characters() + "`"));
            }
        }
        return findings;
    }

    /** Whatever stands in a chain, in a channel, in the equipment of a test, or finds the failures of a part. */
    private static Set<String> needed(ControlSystem control) {
        return Stream.of(
                        control.functions().stream()
                                .flatMap(function -> function.function().chain().stream())
                                .map(SafetyFunction.Element::subsystem),
                        control.subsystems().stream()
                                .flatMap(subsystem -> subsystem.subsystem().parts()),
                        control.parts().stream().flatMap(part -> part.part().monitoredBy().stream()))
                .flatMap(Function.identity())
                .map(Stated::characters)
                .collect(Collectors.toSet());
    }

    private static Finding unused(Stated<String> tag, String sentence) {
        return Finding.warns(ID, tag.characters(), tag.where(), sentence, "name it where it belongs, or take it out");
    }
}
