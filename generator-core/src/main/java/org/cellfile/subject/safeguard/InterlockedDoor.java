package org.cellfile.subject.safeguard;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.standard.PositioningStandard.InterlockedGuard;
import org.cellfile.standard.ReachStandard.Opening;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Given;
import org.cellfile.trace.Term;

/** A door with interlock and without guard locking: opening it stops the hazard. */
@AutoService(Kind.class)
public final class InterlockedDoor implements Kind {

    @Override
    public String id() {
        return "interlocked-door";
    }

    @Override
    public boolean stopsTheHazard() {
        return true;
    }

    @Override
    public boolean closedByHand() {
        return true;
    }

    @Override
    public Device read(Section section, String tag) {
        return new Door(section.positive("opening-at-trip", Dimension.LENGTH), section.text("interlock"));
    }

    /**
     * One door.
     *
     * @param opening the slot left free when the interlock reports the door open
     */
    private record Door(Stated<Quantity> opening, Stated<String> interlock) implements Device {

        @Override
        public List<Fact> facts() {
            return List.of(
                    new Fact("Interlock", interlock.characters()),
                    new Fact("Opening when it trips", opening.characters(), "slot between door and frame"));
        }

        @Override
        public Optional<Positioning> position(Surroundings around) {
            Term through = around.reach()
                    .through(new Opening(
                            "slot", new Given("e", "opening when the interlock trips", opening), Optional.empty()));
            Derived reach = new Derived(
                    around.tag(),
                    "reach-through",
                    "reach through the opening door",
                    "C",
                    around.reach().clause("table 4"),
                    through,
                    Rounding.up(Quantity.millimetres("1")).beside(opening.value()));
            return around.positioning()
                    .interlockedGuard(new InterlockedGuard(around.approach(), reach, Optional.empty()))
                    .map(position -> Positioning.with(
                            position,
                            List.of(reach),
                            List.of(),
                            Requirement.covered(
                                    around.tag(),
                                    opening,
                                    through,
                                    "set the interlock so that it trips at a smaller opening")));
        }

        @Override
        public Map<String, Object> drawing() {
            return Millimetres.of(Map.of("opening", opening));
        }
    }
}
