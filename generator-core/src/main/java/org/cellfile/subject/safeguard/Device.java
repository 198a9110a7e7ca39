package org.cellfile.subject.safeguard;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cellfile.claim.Claim;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.quantity.Quantity;
import org.cellfile.source.Stated;
import org.cellfile.trace.Derived;

/** What only one kind of safeguard has, and how its position is derived. */
public interface Device {

    /** Its own figures, for print. */
    List<Fact> facts();

    /** What an edition asks of its position; empty when the edition has no rule for such a safeguard. */
    Optional<Positioning> position(Surroundings surroundings);

    /**
     * What must hold of the device itself, whatever edition it is positioned under.
     *
     * @param about tag under which the values stand
     */
    default List<Claim> requirements(String about) {
        return List.of();
    }

    /** Diameter of the test piece it has to detect; empty for what detects nobody. */
    default Optional<Quantity> testPiece() {
        return Optional.empty();
    }

    /** What it has beyond others of its kind and for which the kind's protocol knows a test, as the protocol names it. */
    default Set<String> features() {
        return Set.of();
    }

    /** What it is when seen from above. */
    enum Footprint {
        /** a line that is crossed */
        LINE,
        /** floor that is stood on */
        AREA,
        /** a place at which somebody works it */
        SPOT
    }

    /** What it is on a plan. */
    default Footprint footprint() {
        return Footprint.LINE;
    }

    /** How deep it is in the direction of approach, of what is laid on the floor; empty for everything else. */
    default Optional<Stated<Quantity>> depth() {
        return Optional.empty();
    }

    /** True when it looks over that floor from one place, so that what stands in between hides some of it. */
    default boolean looksFromOnePlace() {
        return false;
    }

    /** The space behind it, of what people pass through; empty for everything else. */
    default Optional<Behind> behind() {
        return Optional.empty();
    }

    /** Its places that have a distance of their own. */
    default List<Place> places() {
        return List.of();
    }

    /** What it leaves open. */
    default List<LeftOpen> leftOpen() {
        return List.of();
    }

    /**
     * A way through it that was left on purpose.
     *
     * @param guardedBy tag of another safeguard that covers it, where one does
     * @param leadsTo tags of the hazard zones behind it; empty for all that the safeguard protects
     */
    record LeftOpen(Stated<String> name, Stated<String> guardedBy, List<Stated<String>> leadsTo) {}

    /**
     * What to do when it stands too close.
     *
     * @param distance it must keep
     */
    default String whenTooClose(Derived distance) {
        return "move the safeguard away from the hazard zone, or shorten the stop and measure it again; until then a named"
                + " person may state a deviation";
    }

    /** Figures for the drawing of its kind, in mm, by name. */
    Map<String, Object> drawing();
}
