package org.cellfile.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.cellfile.FolderWorld;
import org.cellfile.Generator;
import org.cellfile.Generator.Checked;
import org.cellfile.SideBySide;
import org.cellfile.verdict.Refused;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code editions FOLDER}. */
@Command(
        name = "editions",
        description = "Tells, safeguard by safeguard, what another edition would demand beside those in force.",
        mixinStandardHelpOptions = true)
final class EditionsVerb implements Callable<Integer> {

    @Parameters(index = "0", paramLabel = "FOLDER", description = "the cell's folder")
    private Path folder = Path.of("");

    @Option(
            names = "--beside",
            paramLabel = "EDITION",
            description =
                    "an edition, such as \"ISO 13855:2024\"; may be given several times. Without it those the cell names for"
                            + " comparison count, and when it names none, every other edition")
    private List<String> beside = new ArrayList<>();

    @Spec
    private @Nullable CommandSpec spec;

    @Override
    public Integer call() {
        CommandLine command = Objects.requireNonNull(spec).commandLine();
        if (!Files.isDirectory(folder)) {
            throw new ParameterException(command, "there is no folder " + folder);
        }
        Optional<String> unknown = SideBySide.unknown(beside);
        if (unknown.isPresent()) {
            throw new ParameterException(command, unknown.get());
        }
        Checked checked = new Generator().check(FolderWorld.of(folder));
        command.getOut().print(SideBySide.of(checked, beside));
        command.getOut().flush();
        return checked.verdict() instanceof Refused ? Main.REFUSED : Main.CLEAN;
    }
}
