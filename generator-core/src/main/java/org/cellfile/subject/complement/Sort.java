package org.cellfile.subject.complement;

import java.util.List;
import org.cellfile.dossier.Block.Fact;

/** What only one sort of complementary device has. The sorts are closed: none is added without another look at the trade. */
public sealed interface Sort permits EmergencyStop, EnablingDevice, ModeSelector, Pendant, Reset {

    /** As written under {@code sort}; also the name of its folder among the templates. */
    String id();

    /** In words. */
    String words();

    /** What was stated of it, for print. */
    List<Fact> facts();

    /** What the editions in force and the trade ask of it. */
    Demands demands(String tag, Surroundings around);
}
