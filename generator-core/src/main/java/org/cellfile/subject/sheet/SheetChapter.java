package org.cellfile.subject.sheet;

import java.util.ArrayList;
import java.util.List;
import org.cellfile.dossier.Block.Column;
import org.cellfile.dossier.Block.Paragraph;
import org.cellfile.dossier.Block.Table;
import org.cellfile.dossier.Chapter;
import org.cellfile.dossier.Label;
import org.cellfile.dossier.Sheet;
import org.cellfile.dossier.SheetCode;
import org.cellfile.subject.identity.Identity;
import org.cellfile.subject.identity.IdentityChapter;

/** Which copies of the sheets hang where. */
public final class SheetChapter {

    private SheetChapter() {}

    public static Chapter chapter(SheetSet posted, Identity identity) {
        Label label = IdentityChapter.label(identity.facts());
        List<List<String>> rows = new ArrayList<>();
        for (Sheet sheet : posted.sheets()) {
            for (String place : sheet.places().isEmpty()
                    ? List.of("nowhere")
                    : sheet.places().stream()
                            .map(place -> String.join(" / ", place))
                            .toList()) {
                rows.add(List.of(
                        place,
                        String.join(" / ", sheet.title()) + " (" + sheet.name() + ")",
                        String.join(", ", sheet.languages()),
                        sheet.paper(),
                        sheet.validUntil(),
                        SheetCode.grouped(SheetCode.digest(sheet, label)).replace(' ', '\u00a0')));
            }
        }
        return new Chapter(
                "sheets",
                "Posted sheets",
                List.of(
                        new Paragraph(
                                "Each copy that hangs at the cell. In the foot of a sheet stands its short digest, and the same in a code"
                                        + " for a camera: a copy with another digest than the one listed here says something else"
                                        + " than this file and has to be exchanged. Days and the mark of a draft are not part of the digest; after the day"
                                        + " until which it is valid a copy has to be exchanged as well."),
                        new Table(
                                "Copies",
                                List.of(
                                        Column.text("Where it hangs", 6),
                                        Column.text("Sheet", 6),
                                        Column.text("Languages", 3),
                                        Column.text("Paper", 2),
                                        Column.text("Valid until", 3),
                                        Column.text("Short digest", 4)),
                                rows),
                        new Paragraph(
                                "The wording of each language was read by somebody whose language it is, or is marked on its sheets. A review"
                                        + " counts for the wording it saw and no other: the digest is of the fixed wording and, behind the"
                                        + " hyphen, of the cell's own texts in that language."),
                        new Table(
                                "Wording",
                                List.of(
                                        Column.text("Language", 4),
                                        Column.text("Digest of its wording", 4),
                                        Column.text("Reviewed by", 4),
                                        Column.text("On", 3),
                                        Column.text("Wording reviewed", 6)),
                                posted.reviews().stream()
                                        .map(review -> reviewed(review, identity))
                                        .toList()),
                        new Paragraph(
                                "The record of a briefing is printed in each of these languages, because the shift signs it. The fixed wording"
                                        + " of the other forms and of this file is English, for those who answer for the cell.")));
    }

    private static List<String> reviewed(WordingReview review, Identity identity) {
        String language = review.language().name() + " (" + review.language().tag() + ")";
        String now = review.now().digest();
        if (review.byProgram()) {
            return List.of(language, now, review.language().reviewedBy(), "–", "the same, for this program");
        }
        return review.counting()
                .or(review::latest)
                .map(one -> List.of(
                        language,
                        now,
                        identity.nameOf(one.by()),
                        one.on().characters(),
                        review.counts()
                                ? "the same"
                                : one.wording()
                                        .value()
                                        .map(digest -> digest + ": no longer counts")
                                        .orElse("not stated: does not count")))
                .orElse(List.of(language, now, "nobody yet", "–", "–"));
    }
}
