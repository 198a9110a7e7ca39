package org.cellfile.subject.sheet;

import java.util.List;
import org.cellfile.dossier.Sheet.Kind;
import org.cellfile.dossier.Sign;
import org.cellfile.subject.identity.CellFacts;
import org.cellfile.subject.safeguard.Guarding;
import org.cellfile.subject.safeguard.Safeguard;

/** Parts that stand on every sheet, in the same words. */
final class EverySheet {

    private EverySheet() {}

    /** Which safeguards must never be defeated, and how one that was is reported. */
    static Part never(PostedCell cell, Wording wording) {
        List<Safeguard> all =
                cell.safeguards().stream().map(Guarding::safeguard).toList();
        return new Part("never", Kind.PROHIBITION, wording.shared("every-sheet.never"), false, List.of())
                .line("defeat", wording.shared("step.never", Steps.counted(all, wording)))
                .line("report", wording.shared("every-sheet.never.report", cell.responsible()));
    }

    /** What to do first when somebody is hurt or in danger. */
    static Part emergency(PostedCell cell, Wording wording) {
        return new Part("emergency", Kind.EMERGENCY, wording.shared("every-sheet.emergency"), true, List.of())
                .line("stop", wording.shared("every-sheet.emergency.stop"))
                .line("call", call(cell, wording));
    }

    /** The same where no energy is left that an emergency stop could cut off. */
    static Part emergencyWithoutEnergy(PostedCell cell, Wording wording) {
        return new Part("emergency", Sign.FIRST_AID, wording.shared("every-sheet.emergency"), false, List.of())
                .line("call", call(cell, wording));
    }

    /** Whom to call and what to say. */
    static String call(PostedCell cell, Wording wording) {
        CellFacts facts = cell.identity().facts();
        return wording.shared(
                "every-sheet.emergency.call",
                facts.emergencyPhone().characters(),
                wording.text(facts.name()),
                wording.text(facts.site()));
    }
}
