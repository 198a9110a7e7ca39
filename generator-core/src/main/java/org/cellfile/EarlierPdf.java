package org.cellfile;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.SortedMap;
import org.cellfile.audit.EmbeddedFiles;
import org.cellfile.audit.UnreadablePdf;
import org.cellfile.source.World;

/** The sources embedded in a safety file that was printed earlier. */
public final class EarlierPdf {

    private EarlierPdf() {}

    /** The cell's folder as far as the PDF holds it: files of evidence are not embedded. */
    public static World of(Path pdf) throws NoSuchState {
        try {
            if (!Files.isRegularFile(pdf)) {
                throw new NoSuchState("there is no file " + pdf);
            }
            if (Files.size(pdf) > EmbeddedFiles.LARGEST_PDF) {
                throw new NoSuchState(pdf + " holds " + Files.size(pdf) + " bytes, more than the "
                        + EmbeddedFiles.LARGEST_PDF + " that are read of a PDF");
            }
            SortedMap<String, byte[]> files = EmbeddedFiles.of(Files.readAllBytes(pdf));
            if (files.keySet().stream().noneMatch(name -> name.endsWith(".yaml") || name.endsWith(".yml"))) {
                throw new NoSuchState(
                        pdf + " holds no sources of a cell; only a safety file does, not a sheet or a form");
            }
            LocalDate today = FolderWorld.of(pdf).today();
            return new Embedded(
                    files.entrySet().stream()
                            .map(file -> new World.Entry(
                                    file.getKey(),
                                    true,
                                    file.getValue().length,
                                    () -> new ByteArrayInputStream(file.getValue())))
                            .toList(),
                    today);
        } catch (UnreadablePdf unreadable) {
            throw new NoSuchState(pdf + " cannot be compared: " + unreadable.getMessage());
        } catch (IOException failed) {
            throw new NoSuchState(pdf + " cannot be opened: " + failed.getMessage());
        }
    }

    private record Embedded(List<World.Entry> entries, LocalDate today) implements World {}
}
