package org.cellfile.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.concurrent.Callable;
import org.cellfile.Generator;
import org.cellfile.Generator.Generated;
import org.cellfile.finding.FindingText;
import org.cellfile.output.OutputFolder;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code generate FOLDER}. */
@Command(
        name = "generate",
        description = "Recomputes a cell and, when nothing refuses, prints its safety file, its posted sheets and"
                + " blank forms to fill in at the machine, as a draft unless a release is asked for.",
        mixinStandardHelpOptions = true)
final class GenerateVerb implements Callable<Integer> {

    @Mixin
    private CellArguments cell = new CellArguments();

    @Option(
            names = "--to",
            paramLabel = "FOLDER",
            defaultValue = "cellfile-output",
            description = "folder in which the cell's set of pages gets a folder of its own (${DEFAULT-VALUE})")
    private Path to = Path.of("cellfile-output");

    @Option(
            names = "--release",
            description = "prints a release; whatever bars one is then refused, also what has fallen due")
    private boolean release;

    @Mixin
    private DayOption judged = new DayOption();

    @Spec
    private @Nullable CommandSpec spec;

    @Override
    public Integer call() {
        CommandLine command = Objects.requireNonNull(spec).commandLine();
        PrintWriter out = command.getOut();
        Generated generated = generated(command);
        OutputFolder output = new OutputFolder(to);
        try {
            if (generated.files().isEmpty()) {
                output.notCurrent(generated.cellId(), refusal(generated));
                cell.tell(generated.verdict(), generated.outcome(), out);
                return Main.REFUSED;
            }
            SortedMap<String, byte[]> files = generated.files().get();
            Path set = output.replace(generated.cellId(), files);
            StringBuilder outcome = new StringBuilder(generated.outcome());
            files.keySet().forEach(file -> outcome.append("\n  ").append(set.resolve(file)));
            cell.tell(generated.verdict(), outcome.toString(), out);
            return Main.CLEAN;
        } catch (IOException failed) {
            command.getErr()
                    .println("the pages could not be written to " + to + " (" + OutputFolder.reason(failed)
                            + "); an earlier set there is as it was");
            return Main.WRONG_USE;
        }
    }

    private Generated generated(CommandLine command) {
        Optional<LocalDate> day = judged.day(command);
        if (day.isPresent() && !release) {
            throw new ParameterException(
                    command, "a draft is not judged by a day: leave --day out, or ask for a release with --release");
        }
        Generator generator = new Generator();
        return release ? generator.release(cell.world(command), day) : generator.generate(cell.world(command));
    }

    private String refusal(Generated generated) {
        return "A later run on " + cell.folder() + " was refused: "
                + FindingText.count(generated.verdict().findings()) + ".";
    }
}
