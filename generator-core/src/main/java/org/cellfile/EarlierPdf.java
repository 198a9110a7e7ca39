package org.cellfile;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import org.cellfile.audit.ReceivedPdf;
import org.cellfile.audit.Refusal;
import org.cellfile.source.World;

/** The sources embedded in a safety file that was printed earlier. */
public final class EarlierPdf {

    private EarlierPdf() {}

    /** The cell's folder as far as the PDF holds it: files of evidence are not embedded. */
    public static World of(Path pdf) throws NoSuchState {
        if (!Files.isRegularFile(pdf)) {
            throw new NoSuchState("there is no file " + pdf);
        }
        try {
            byte[] bytes = ReceivedPdf.bytes(Audit.entry(pdf));
            try (ReceivedPdf opened = ReceivedPdf.open(pdf.toString(), bytes)) {
                List<World.Entry> entries = opened.files().stream()
                        .map(file -> World.Entry.held(file.name(), file.content()))
                        .sorted(Comparator.comparing(World.Entry::path))
                        .toList();
                if (entries.stream()
                        .noneMatch(entry ->
                                entry.path().endsWith(".yaml") || entry.path().endsWith(".yml"))) {
                    throw new NoSuchState(
                            pdf + " holds no sources of a cell; only a safety file does, not a sheet or a form");
                }
                return new Embedded(entries, FolderWorld.of(pdf).today());
            }
        } catch (Refusal refused) {
            throw new NoSuchState(
                    pdf + " cannot be compared: " + refused.finding().sentence());
        } catch (IOException failed) {
            throw new NoSuchState(pdf + " cannot be opened: " + failed.getMessage());
        }
    }

    private record Embedded(List<World.Entry> entries, LocalDate today) implements World {
        @Override
        public boolean whole() {
            return false;
        }
    }
}
