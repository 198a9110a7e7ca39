package org.cellfile;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import org.cellfile.Generator.Checked;
import org.cellfile.cell.Cell;
import org.cellfile.output.WholeFile;
import org.cellfile.source.World;
import org.cellfile.subject.ledger.Ledger;
import org.cellfile.trace.Derived;
import org.cellfile.verdict.Refused;
import org.cellfile.verdict.Verdict;

/** The ledger of derived values in a cell's folder, written anew. */
public final class LedgerFile {

    private LedgerFile() {}

    /**
     * What came of it.
     *
     * @param verdict on everything but what the ledger held before
     * @param outcome what came of it, in lines
     */
    public record Written(Verdict verdict, String outcome) {

        /** True when something refuses; the ledger is then as it was. */
        public boolean refused() {
            return verdict instanceof Refused;
        }
    }

    /**
     * Recomputes a cell and writes its derived values down, unless anything but the present ledger refuses.
     *
     * @param folder the cell's, where the file is written
     * @param world the same folder as it is read
     * @throws IOException when the disk refuses; the ledger is then as it was
     */
    public static Written derive(Path folder, World world) throws IOException {
        Checked checked = new Generator().withoutLedger(world);
        if (checked.verdict() instanceof Refused || checked.cell().isEmpty()) {
            return new Written(checked.verdict(), "the ledger was not written");
        }
        Cell cell = checked.cell().get();
        Map<String, Derived> derived = cell.derived();
        byte[] bytes = Ledger.text(derived.values()).getBytes(StandardCharsets.UTF_8);
        Path file = folder.resolve(Ledger.FILE);
        if (Files.exists(file) && Arrays.equals(Files.readAllBytes(file), bytes)) {
            return new Written(checked.verdict(), "the ledger holds every derived value already: " + file);
        }
        WholeFile.replace(file, bytes);
        return new Written(
                checked.verdict(),
                "the ledger was written: " + file + "\n  "
                        + String.join(
                                "\n  ", Ledger.change(cell.ledger(), derived).lines()));
    }
}
