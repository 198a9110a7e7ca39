package org.cellfile.subject.complement;

import java.util.List;
import java.util.Set;
import org.cellfile.dossier.Block.Fact;

/** What only one sort of complementary device has. The sorts are closed: none is added without another look at the trade. */
public sealed interface Sort permits EmergencyStop, EnablingDevice, ModeSelector, Pendant, Reset {

    /** As written under {@code sort}; also the name of its folder among the templates. */
    String id();

    /** In words. */
    String words();

    /** What was stated of it, for print. */
    List<Fact> facts();

    /** What it has beyond others of its sort and for which the sort's protocol knows a test, as the protocol names it. */
    default Set<String> features() {
        return Set.of();
    }

    /** What the editions in force and the trade ask of it. */
    Demands demands(String tag, Surroundings around);
}
