package org.cellfile;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cellfile.Generator.Checked;
import org.cellfile.audit.Examination;
import org.cellfile.audit.Examination.Examined;
import org.cellfile.audit.Recomputation;
import org.cellfile.audit.Refusal;
import org.cellfile.audit.TrustedKeys;
import org.cellfile.cell.Cell;
import org.cellfile.render.Attachment;
import org.cellfile.source.SourceFile;
import org.cellfile.source.World;
import org.cellfile.verdict.Printable;

/** Audits a safety file by recomputing its embedded sources with the generator that would print them. */
public final class Audit {

    /** Some thousand keys. */
    private static final int LARGEST_KEYS = 1 << 20;

    private final Generator generator = new Generator();

    /** A file on disk, not yet read. */
    public static World.Entry entry(Path file) throws IOException {
        return new World.Entry(file.toString(), true, Files.size(file), () -> Files.newInputStream(file));
    }

    /** Reads a file of trusted keys. */
    public static TrustedKeys keys(Path file) throws IOException, Refusal {
        byte[] bytes;
        try (InputStream stream = Files.newInputStream(file)) {
            bytes = stream.readNBytes(LARGEST_KEYS);
        }
        return TrustedKeys.read(new SourceFile(file.toString(), new String(bytes, StandardCharsets.UTF_8)));
    }

    /**
     * Examines a file.
     *
     * @param trusted keys that came on another way than the file
     * @param redraw true when every page is to be laid out anew and compared byte for byte
     */
    public Examined of(World.Entry file, TrustedKeys trusted, boolean redraw) {
        return Examination.of(file, trusted, redraw, new Recomputation() {
            @Override
            public Outcome recompute(World sources) {
                Checked checked = generator.undated(sources);
                return new Outcome(checked.cell(), checked.verdict());
            }

            @Override
            public List<Attachment> attachments(Cell cell, Printable printable) {
                return Generator.attachments(cell, printable);
            }

            @Override
            public Optional<byte[]> draw(Cell cell, Printable printable) {
                return generator.print(new Checked(Optional.of(cell), printable)).files().stream()
                        .flatMap(files -> files.entrySet().stream())
                        .filter(file -> file.getKey().equals(Generator.safetyFile(cell)))
                        .map(Map.Entry::getValue)
                        .findFirst();
            }
        });
    }
}
