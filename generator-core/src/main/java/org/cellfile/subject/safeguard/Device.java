package org.cellfile.subject.safeguard;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cellfile.claim.Claim;
import org.cellfile.dossier.Block.Fact;

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

    /** Figures for the drawing of its kind, in mm, by name. */
    Map<String, Object> drawing();
}
