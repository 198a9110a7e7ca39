package org.cellfile.audit;

import java.util.List;
import java.util.Optional;
import org.cellfile.dossier.Canonical;
import org.cellfile.dossier.Dossier;
import org.cellfile.dossier.MadeBy;
import org.cellfile.finding.Finding;

/** Tells how the embedded dossier compares with the recomputed one. */
final class DossierAudit {

    private static final int IN_FULL = 10;
    private static final String HELP = "ask whoever handed the file over for the file as it was made";

    private final String file;
    private final Tally tally;

    DossierAudit(String file, Tally tally) {
        this.file = file;
        this.tally = tally;
    }

    /** Compares; true when something differs and another version says that it made the embedded one. */
    boolean run(String embedded, Dossier due) {
        if (embedded.equals(Canonical.json(due))) {
            valuesAgree(due);
            tally.agrees("embedded dossier: " + due.chapters().size() + " chapters, "
                    + due.digests().size() + " digests, sheets, forms and dates are those the sources give");
            return false;
        }
        Optional<DossierComparison> comparison = DossierComparison.of(file, embedded, due);
        if (comparison.isEmpty()) {
            differs("the embedded dossier is not the form in which this program writes one");
            return false;
        }
        List<Finding> values = comparison.get().values();
        List<String> parts = comparison.get().parts();
        Optional<String> version = comparison.get().otherVersion();
        if (values.isEmpty()) {
            valuesAgree(due);
        }
        tally.differ(values, "derived values differ");
        if (version.isPresent()) {
            tally.cannotSay("version: made by " + version.get() + ", this is " + MadeBy.version()
                    + "; whether what differs is due to that");
            comparison.get().rules().forEach(rule -> tally.cannotSay("rules of another version: " + rule));
            if (!parts.isEmpty()) {
                tally.differs(otherVersion(file, "parts of the dossier", parts));
            }
        } else if (values.isEmpty() && parts.isEmpty()) {
            differs(
                    "the embedded dossier says what the sources give, but not in the form in which this program writes it");
        } else {
            tally.differ(
                    parts.stream()
                            .map(part -> Refusal.finding(
                                    DossierComparison.DOSSIER,
                                    file,
                                    "the embedded dossier is not the one the embedded sources give; " + part,
                                    HELP))
                            .toList(),
                    "parts of the dossier differ");
        }
        return version.isPresent();
    }

    private void valuesAgree(Dossier due) {
        tally.agrees("derived values: " + due.values().size() + ", the same in the embedded dossier");
    }

    private void differs(String sentence) {
        tally.differs(Refusal.finding(DossierComparison.DOSSIER, file, sentence, HELP));
    }

    /** A file of another version differs, and this one cannot know whether that is why. It is not let through for that. */
    static Finding otherVersion(String file, String what, List<String> lines) {
        return Refusal.finding(
                        DossierComparison.OTHER_VERSION,
                        file,
                        "the file says that another version made it than this one, " + MadeBy.version() + ", and "
                                + lines.size() + " " + what + " differ",
                        "have it audited by the version that it names, which must find no difference")
                .because(lines.subList(0, Math.min(IN_FULL, lines.size())));
    }
}
