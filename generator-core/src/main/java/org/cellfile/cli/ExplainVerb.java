package org.cellfile.cli;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.cellfile.Explanation;
import org.cellfile.FolderWorld;
import org.cellfile.Generator;
import org.cellfile.cell.Cell;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code explain ID [FOLDER]}. */
@Command(
        name = "explain",
        description = "Explains a finding by its id, or how a derived value of a cell was come by.",
        mixinStandardHelpOptions = true)
final class ExplainVerb implements Callable<Integer> {

    @Parameters(
            index = "0",
            paramLabel = "ID",
            description =
                    "a finding's id, such as claim.not-equal, or a value's tag, such as curtain-north.separation-distance")
    private String id = "";

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "FOLDER",
            description = "the cell's folder, for a value's tag")
    private @Nullable Path folder;

    @Spec
    private @Nullable CommandSpec spec;

    @Override
    public Integer call() {
        CommandLine command = Objects.requireNonNull(spec).commandLine();
        PrintWriter out = command.getOut();
        Optional<Cell> cell = Optional.ofNullable(folder).flatMap(path -> cell(path, command));
        Optional<String> text =
                cell.flatMap(one -> Explanation.ofValue(one, id)).or(() -> Explanation.ofFinding(id));
        if (text.isEmpty()) {
            throw new ParameterException(command, Explanation.unknown(id, cell));
        }
        out.print(text.get());
        out.flush();
        return Main.CLEAN;
    }

    private static Optional<Cell> cell(Path folder, CommandLine command) {
        if (!Files.isDirectory(folder)) {
            throw new ParameterException(command, "there is no folder " + folder);
        }
        return new Generator().check(FolderWorld.of(folder)).cell();
    }
}
