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

/** Which copies of the sheets hang where. */
public final class SheetChapter {

    private SheetChapter() {}

    public static Chapter chapter(List<Sheet> sheets, Label label) {
        List<List<String>> rows = new ArrayList<>();
        for (Sheet sheet : sheets) {
            for (String place : sheet.places().isEmpty()
                    ? List.of("nowhere")
                    : sheet.places().stream()
                            .map(place -> String.join(" / ", place))
                            .toList()) {
                rows.add(List.of(
                        place,
                        String.join(" / ", sheet.title()) + " (" + sheet.id() + ")",
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
                                rows)));
    }
}
