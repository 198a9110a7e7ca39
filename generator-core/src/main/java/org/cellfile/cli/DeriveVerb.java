package org.cellfile.cli;

import java.io.IOException;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.cellfile.LedgerFile;
import org.cellfile.LedgerFile.Written;
import org.cellfile.output.OutputFolder;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code derive FOLDER}. */
@Command(
        name = "derive",
        description =
                "Recomputes a cell and writes every derived value into derived.yaml in its folder, the ledger that each"
                        + " later run is held against. Tells which values it changes.",
        mixinStandardHelpOptions = true)
final class DeriveVerb implements Callable<Integer> {

    @Mixin
    private CellArguments cell = new CellArguments();

    @Spec
    private @Nullable CommandSpec spec;

    @Override
    public Integer call() {
        CommandLine command = Objects.requireNonNull(spec).commandLine();
        try {
            Written written = LedgerFile.derive(cell.folder(), cell.world(command));
            cell.tell(written.verdict(), written.outcome(), command.getOut());
            return written.refused() ? Main.REFUSED : Main.CLEAN;
        } catch (IOException failed) {
            command.getErr()
                    .println("the ledger could not be written to " + cell.folder() + " (" + OutputFolder.reason(failed)
                            + "); an earlier one there is as it was");
            return Main.WRONG_USE;
        }
    }
}
