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
import org.cellfile.subject.safeguard.Device.LeftOpen;
import org.cellfile.subject.safeguard.Guarding;

/** An opening in a fixed guard is said to be covered by a safeguard that does not stop all that lies behind it. */
@AutoService(Check.class)
public final class RefuseUncoveredOpening implements Check {

    public static final FindingId ID = new FindingId("safeguard.opening-not-covered");

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        List<Finding> findings = new ArrayList<>();
        for (Guarding fence : cell.safeguards()) {
            for (LeftOpen opening : fence.safeguard().device().leftOpen()) {
                cell.safeguards().stream()
                        .filter(other -> opening.guardedBy().value().equals(Optional.of(other.tag())))
                        .forEach(other -> because(other, opening, fence)
                                .ifPresent(because -> findings.add(Finding.refuses(
                                        ID,
                                        fence.tag(),
                                        opening.guardedBy().where(),
                                        "`" + other.tag() + "` does not cover the opening `"
                                                + opening.name().characters() + "` in `" + fence.tag() + "`: "
                                                + because,
                                        "name the safeguard that stops the hazard when somebody comes through the opening;"
                                                + " where it leads to some of the hazard zones only, state these as"
                                                + " `leads-to`"))));
            }
        }
        return findings;
    }

    /** Why the other safeguard does not cover an opening; empty when it does. */
    private static Optional<String> because(Guarding other, LeftOpen opening, Guarding fence) {
        if (!other.safeguard().kind().stopsTheHazard()) {
            return Optional.of("it stops nothing when somebody comes through");
        }
        if (other.safeguard().kind().protectsOnlyItsUser()) {
            return Optional.of("it protects only the person who works it, not one who comes through");
        }
        boolean stated = !opening.leadsTo().isEmpty();
        List<String> stopped = tags(other.safeguard().protects());
        String left = tags(stated ? opening.leadsTo() : fence.safeguard().protects()).stream()
                .filter(zone -> !stopped.contains(zone))
                .map(zone -> "`" + zone + "`")
                .collect(Collectors.joining(" and "));
        return left.isEmpty()
                ? Optional.empty()
                : Optional.of("it does not protect " + left
                        + (stated ? ", to which the opening leads" : ", which the fence protects"));
    }

    private static List<String> tags(List<Stated<String>> stated) {
        return stated.stream()
                .map(Stated::value)
                .flatMap(Optional::stream)
                .distinct()
                .toList();
    }
}
