package org.cellfile.audit;

import java.util.List;
import org.cellfile.finding.FindingId;

/** Tells how the text of the pages compares with the text that the sources give. */
final class PagesAudit {

    /** A page says something else than the sources give. */
    static final FindingId PAGE = new FindingId("audit.page-text");

    private final String file;
    private final Tally tally;

    PagesAudit(String file, Tally tally) {
        this.file = file;
        this.tally = tally;
    }

    void run(List<PageText> texts, DueText due, boolean otherVersion) {
        List<String> differences =
                TextComparison.of(due, texts).stream().map(PagesAudit::told).toList();
        if (differences.isEmpty()) {
            tally.agrees("pages: " + texts.size() + ", holding every word that the sources give and no other");
        } else if (otherVersion) {
            tally.differs(DossierAudit.otherVersion(file, "places on the pages", differences));
        } else {
            tally.differ(
                    differences.stream()
                            .map(
                                    told -> Refusal.finding(
                                            PAGE,
                                            file,
                                            told,
                                            "go by the embedded sources, and ask whoever handed the file over who changed the page"))
                            .toList(),
                    "places on the pages differ");
        }
    }

    private static String told(TextComparison.Difference one) {
        String says = one.says().strip();
        String due = one.due().strip();
        String page = "page " + one.page();
        return says.isEmpty()
                ? page + " lacks `" + due + "`"
                : due.isEmpty()
                        ? page + " says `" + says + "`, which is due nowhere there"
                        : page + " says `" + says + "`, due is `" + due + "`";
    }
}
