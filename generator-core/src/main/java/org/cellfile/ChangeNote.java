package org.cellfile;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.cellfile.audit.ReceivedPdf;
import org.cellfile.audit.Refusal;
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

    /** Why no change note is written there, in words; empty when nothing lies there that is anything else. */
    public static Optional<String> cannotTake(Path file) {
        if (!file.toString().toLowerCase(Locale.ROOT).endsWith(".pdf")) {
            return Optional.of("a change note is a PDF, and " + file + " does not end in .pdf; name another file");
        }
        return Files.exists(file) && !lies(file)
                ? Optional.of(file + " is no change note, and it is not written over; name another file")
                : Optional.empty();
    }

    /** True when an earlier change note lies there. */
    private static boolean lies(Path file) {
        if (!Files.isRegularFile(file)) {
            return false;
        }
        try (ReceivedPdf pdf = ReceivedPdf.open(file.toString(), ReceivedPdf.bytes(Audit.entry(file)))) {
            return pdf.information().getOrDefault("Title", "").startsWith(ChangeNoteBlocks.TITLE + ", ");
        } catch (IOException | Refusal somethingElse) {
            return false;
        }
    }

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
