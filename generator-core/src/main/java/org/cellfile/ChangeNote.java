package org.cellfile;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cellfile.compare.ChangeNoteBlocks;
import org.cellfile.compare.Compared;
import org.cellfile.dossier.Form;
import org.cellfile.render.Renderer;

/** The change note of a comparison as PDF. */
public final class ChangeNote {

    private static final int MOST_PAGES = 2;

    /** How many lines of each list are tried, so that the note keeps to its pages. */
    private static final List<Integer> LINES = List.of(14, 10, 7, 5, 3, 2);

    private ChangeNote() {}

    /** Its bytes: A4 or Letter, as the pages of the cell. */
    public static byte[] pdf(Compared compared) {
        LocalDate day =
                compared.newer().cell().identity().facts().asOf().value().orElse(LocalDate.EPOCH);
        for (int lines : LINES) {
            Form note = ChangeNoteBlocks.of(compared, lines);
            Optional<byte[]> pdf = new Renderer().note(note, compared.newer().label(), day, MOST_PAGES);
            if (pdf.isPresent()) {
                return pdf.get();
            }
        }
        throw new IllegalStateException("the change note does not keep to " + MOST_PAGES + " pages");
    }
}
