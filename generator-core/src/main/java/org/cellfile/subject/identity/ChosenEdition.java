package org.cellfile.subject.identity;

import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.finding.Nearest;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.standard.Editions;

/** An edition the cell was built to, and what it was applied to. */
public record ChosenEdition(Stated<String> edition, Stated<String> appliedTo) {

    /** An edition this program does not know. */
    public static final FindingId UNKNOWN = new FindingId("standard.unknown-edition");

    static ChosenEdition read(Section section) {
        Stated<String> edition = section.text("edition");
        if (edition.value().isPresent() && Editions.of(edition.characters()).isEmpty()) {
            section.report(Finding.refuses(
                    UNKNOWN,
                    "",
                    edition.where(),
                    "`" + edition.characters() + "` is not an edition whose rules are known here",
                    "known: " + Nearest.listed(edition.characters(), Editions.ids())));
        }
        return new ChosenEdition(edition, section.text("applied-to"));
    }
}
