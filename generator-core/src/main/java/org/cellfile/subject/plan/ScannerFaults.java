package org.cellfile.subject.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.source.Span;
import org.cellfile.subject.safeguard.Guarding;

/** What stands on the plan with a safeguard of which it cannot be true, or is missing there. */
final class ScannerFaults {

    /** Nothing tells from where a level field is seen. */
    static final FindingId MISSING = new FindingId("plan.no-scanner");

    /** A scanner, a warning field or the swing of a door is drawn with something that has none. */
    static final FindingId FOREIGN = new FindingId("plan.not-of-this-kind");

    private ScannerFaults() {}

    static List<Finding> of(Layout layout) {
        List<Finding> faults = new ArrayList<>();
        for (Guarding guarding : layout.around().safeguards()) {
            List<DrawnSafeguard> pieces = layout.drawn(guarding.tag());
            boolean looks = guarding.safeguard().device().looksFromOnePlace();
            if (looks
                    && !pieces.isEmpty()
                    && pieces.stream().allMatch(piece -> piece.scanner().isEmpty())) {
                faults.add(missing(guarding, pieces.get(0).of().where()));
            }
            for (DrawnSafeguard piece : pieces) {
                if (!looks) {
                    foreign(guarding, piece, piece.scanner(), "scanner", "looks over the floor from one place", faults);
                    foreign(
                            guarding,
                            piece,
                            piece.warning(),
                            "warning-field",
                            "looks over the floor from one place",
                            faults);
                }
                if (!guarding.safeguard().kind().closedByHand()) {
                    foreign(guarding, piece, piece.swing(), "swing", "is a door", faults);
                }
            }
        }
        return faults;
    }

    private static Finding missing(Guarding guarding, Span where) {
        return Finding.refuses(
                MISSING,
                guarding.tag(),
                where,
                "the field of `" + guarding.tag() + "` is drawn, and nothing tells from where its scanner sees it",
                "state under `scanner` where it stands (`at`), the direction of the middle of its view (`facing`), the angle it"
                        + " `sees` and the `range` of its protective field");
    }

    private static void foreign(
            Guarding guarding,
            DrawnSafeguard piece,
            Optional<?> stated,
            String key,
            String asked,
            List<Finding> faults) {
        if (stated.isPresent()) {
            faults.add(Finding.refuses(
                    FOREIGN,
                    guarding.tag(),
                    piece.of().where(),
                    "`" + key + "` is stated for `" + guarding.tag() + "`, and only what " + asked + " has one",
                    "leave `" + key + "` out, or state it with the safeguard it belongs to"));
        }
    }
}
