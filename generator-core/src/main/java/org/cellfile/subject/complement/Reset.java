package org.cellfile.subject.complement;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.finding.FindingId;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.subject.hazard.Zone;

/**
 * A reset device.
 *
 * @param place whether it is outside the safeguarded space
 * @param sees the hazard zones that are in full view from it
 */
public record Reset(Stated<String> place, Stated<String> reachableFromInside, List<Stated<String>> sees)
        implements Sort {

    /** Somebody inside can reset. */
    public static final FindingId WITHIN_REACH = new FindingId("installed.reset-within-reach");

    static Reset read(Section section) {
        return new Reset(
                section.word("place", Set.of("outside", "inside")),
                section.word("reachable-from-inside", ComplementaryDevice.YES_OR_NO),
                section.references("sees", Zone.SORT));
    }

    @Override
    public String id() {
        return "reset";
    }

    @Override
    public String words() {
        return "Reset";
    }

    @Override
    public List<Fact> facts() {
        return List.of(
                new Fact("place", place.characters()),
                new Fact("reachable from inside", reachableFromInside.characters()),
                new Fact("sees", sees.stream().map(Stated::characters).collect(Collectors.joining(", "))));
    }

    @Override
    public Demands demands(String tag, Surroundings around) {
        Demands demands = new Demands(tag);
        String help = "move it outside, so far that nobody inside reaches it, to where the zones are in full view";
        demands.practice(
                place,
                Set.of("outside"),
                WITHIN_REACH,
                "is inside the safeguarded space",
                "a reset is outside the safeguarded space",
                help);
        demands.practice(
                reachableFromInside,
                Set.of("no"),
                WITHIN_REACH,
                "can be reached from inside",
                "a reset is out of reach from inside",
                help);
        return demands;
    }
}
