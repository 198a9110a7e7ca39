package org.cellfile.subject.sheet;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.finding.Findings;
import org.cellfile.read.Section;
import org.cellfile.source.Span;
import org.cellfile.source.Stated;
import org.cellfile.subject.complement.ComplementaryDevice;
import org.cellfile.subject.safeguard.Safeguard;

/**
 * Where people at the machine find a device, in the few words that a sheet has room for.
 *
 * @param device a safeguard or a complementary device
 * @param at in place of its position
 */
public record Found(Stated<String> device, Stated<String> at) {

    /** Two places are told of one device. */
    static final FindingId TWICE = new FindingId("sheet.found-twice");

    static Found read(Section section) {
        return new Found(
                section.reference("device", List.of(Safeguard.SORT, ComplementaryDevice.SORT)), section.text("at"));
    }

    static void reportTwice(List<Found> all, Findings findings) {
        Map<String, Span> before = new HashMap<>();
        for (Found found : all) {
            found.device().value().ifPresent(tag -> {
                Span first = before.putIfAbsent(tag, found.device().where());
                if (first != null) {
                    findings.add(Finding.refuses(
                                    TWICE,
                                    tag,
                                    found.device().where(),
                                    "where `" + tag + "` is found is told twice",
                                    "look where it is, and delete the other")
                            .because(List.of("it is told first at " + first.position())));
                }
            });
        }
    }
}
