package org.cellfile.subject.safeguard;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.standard.Position;
import org.cellfile.standard.PositioningStandard.InterlockedGuard;
import org.cellfile.standard.ReachStandard.Opening;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Given;
import org.cellfile.trace.Term;

/** A door with interlock: opening it stops the hazard. A lock may keep it closed meanwhile. */
@AutoService(Kind.class)
public final class InterlockedDoor implements Kind {

    private static final Rounding DISTANCE = Rounding.up(Quantity.millimetres("1"));

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

    /** Coded or not: a code makes a second actuator hard to find, and a spare one is that second. */
    @Override
    public boolean hasActuator() {
        return true;
    }

    @Override
    public Device read(Section section, String tag) {
        return new Door(
                section.positive("opening-at-trip", Dimension.LENGTH),
                section.text("interlock"),
                Coding.read(section, tag),
                GuardLocking.read(section));
    }

    /**
     * One door.
     *
     * @param opening the slot left free when the interlock reports the door open, or as far as a lock lets it be pulled
     */
    private record Door(
            Stated<Quantity> opening, Stated<String> interlock, Optional<Coding> coding, Optional<GuardLocking> locking)
            implements Device {

        @Override
        public List<Fact> facts() {
            List<Fact> facts = new ArrayList<>(List.of(
                    new Fact("Interlock", interlock.characters()),
                    new Fact("Opening when it trips", opening.characters(), "slot between door and frame")));
            coding.ifPresent(known -> facts.add(known.fact()));
            locking.ifPresent(lock -> facts.add(lock.fact()));
            return facts;
        }

        @Override
        public Set<String> features() {
            return locking.isPresent() ? Set.of("guard-locking") : Set.of();
        }

        @Override
        public String whenTooClose(Derived distance) {
            return locking.isPresent()
                    ? "move the door away from the hazard zone, have the lock keep it closed until standstill, or shorten the"
                            + " stop and measure it again; until then a named person may state a deviation"
                    : "a person is there before the hazard has ended: move the door away from the hazard zone, fit a lock that"
                            + " keeps it closed (`guard-locking`), or shorten the stop and measure it again; until then a named"
                            + " person may state a deviation";
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
                    DISTANCE.beside(opening.value()));
            return position(around, reach)
                    .map(position -> Positioning.with(
                            position,
                            own(around.tag(), reach, position),
                            List.of(),
                            Requirement.covered(
                                    around.tag(),
                                    opening,
                                    through,
                                    "set the interlock so that it trips at a smaller opening")));
        }

        /** Where the lock waits for standstill nobody gets in earlier, and only reaching through the gap is left. */
        private Optional<Position> position(Surroundings around, Derived reach) {
            if (locking.isPresent() && locking.get().atStandstill()) {
                Derived distance = new Derived(
                        around.tag(),
                        "separation-distance",
                        "separation distance",
                        "S",
                        around.reach().clause("table 4"),
                        reach,
                        DISTANCE);
                return Optional.of(new Position(
                        distance, Optional.empty(), List.of(), List.of(), false, Optional.empty(), List.of()));
            }
            return around.positioning()
                    .interlockedGuard(
                            new InterlockedGuard(around.approach(), reach, locking.map(GuardLocking::heldTime)));
        }

        private List<Derived> own(String tag, Derived reach, Position position) {
            List<Derived> own = new ArrayList<>(List.of(reach));
            locking.ifPresent(
                    lock -> position.longestTime().ifPresent(longest -> own.addAll(lock.derived(tag, longest))));
            return own;
        }

        @Override
        public Map<String, Object> drawing() {
            return Millimetres.of(Map.of("opening", opening));
        }
    }
}
