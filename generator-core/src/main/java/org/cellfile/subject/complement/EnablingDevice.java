package org.cellfile.subject.complement;

import java.util.List;
import java.util.Set;
import org.cellfile.claim.Relation;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.trace.Derived;

/**
 * An enabling device.
 *
 * @param positions how many its actuator has; the trade knows two and three
 * @param heldBy who holds it
 * @param holdToRun whether motion also needs a control that is held
 */
public record EnablingDevice(Stated<Quantity> positions, Stated<String> heldBy, Stated<String> holdToRun)
        implements Sort {

    /** It has fewer positions than the edition asks for. */
    public static final FindingId POSITIONS = new FindingId("installed.enabling-device-positions");

    static EnablingDevice read(Section section) {
        return new EnablingDevice(
                section.word("positions", Set.of("2", "3")).map(count -> Quantity.count(Integer.parseInt(count))),
                section.text("held-by"),
                section.word("hold-to-run", ComplementaryDevice.YES_OR_NO));
    }

    @Override
    public String id() {
        return "enabling-device";
    }

    @Override
    public String words() {
        return "Enabling device";
    }

    @Override
    public List<Fact> facts() {
        return List.of(
                new Fact("positions", positions.characters()),
                new Fact("held by", heldBy.characters()),
                new Fact("hold-to-run", holdToRun.characters()));
    }

    @Override
    public Set<String> features() {
        return positions.characters().equals("3") ? Set.of("third-position") : Set.of();
    }

    @Override
    public Demands demands(String tag, Surroundings around) {
        Demands demands = new Demands(tag);
        around.robots()
                .ifPresent(standard -> demands.bound(
                        "number of positions",
                        positions,
                        Relation.AT_LEAST,
                        new Derived(
                                tag,
                                "enabling-positions",
                                "required number of positions",
                                "n",
                                standard.enablingPositions()
                                        .reference()
                                        .clause()
                                        .toString(),
                                standard.enablingPositions(),
                                Rounding.up(Quantity.count(1))),
                        POSITIONS,
                        "fit a device that permits motion in its middle position only, and stops when it is let go or pressed"
                                + " through"));
        return demands;
    }
}
