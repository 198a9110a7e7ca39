package org.cellfile.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.cellfile.ChangeNote;
import org.cellfile.Comparison;
import org.cellfile.Comparison.Source;
import org.cellfile.Comparison.Told;
import org.cellfile.Comparison.Unread;
import org.cellfile.NoSuchState;
import org.cellfile.compare.Compared;
import org.cellfile.compare.ComparisonJson;
import org.cellfile.compare.ComparisonText;
import org.cellfile.finding.FindingText;
import org.cellfile.output.OutputFolder;
import org.cellfile.output.WholeFile;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code compare OLD NEW} or {@code compare FOLDER --since REVISION}. */
@Command(
        name = "compare",
        description =
                "Tells what differs between two states of a cell, what of its proof that voids, and what was done about it.",
        mixinStandardHelpOptions = true)
final class CompareVerb implements Callable<Integer> {

    @Parameters(
            index = "0",
            paramLabel = "OLD",
            description =
                    "the older state: a cell's folder, or a safety file as PDF; with --since the folder as it is now")
    private Path first = Path.of("");

    @Parameters(
            index = "1",
            paramLabel = "NEW",
            arity = "0..1",
            description = "the newer state: a cell's folder, or a safety file as PDF")
    private @Nullable Path second;

    @Option(
            names = "--since",
            paramLabel = "REVISION",
            description =
                    "take as the older state the folder as it was in this revision (tag, branch or commit) of its Git"
                            + " repository")
    private @Nullable String since;

    @Option(names = "--json", description = "tell it as JSON, for other programs")
    private boolean json;

    @Option(names = "--note", paramLabel = "FILE", description = "write a change note of one or two pages as PDF")
    private @Nullable Path note;

    @Spec
    private @Nullable CommandSpec spec;

    @Override
    public Integer call() {
        CommandLine command = Objects.requireNonNull(spec).commandLine();
        if ((second == null) == (since == null)) {
            throw new ParameterException(
                    command, "name two states, or one folder and with --since the revision to compare it with");
        }
        Path to = note;
        Optional<String> unfit = to == null ? Optional.empty() : ChangeNote.cannotTake(to);
        if (unfit.isPresent()) {
            throw new ParameterException(command, unfit.get());
        }
        try {
            Source older =
                    since == null ? Comparison.at(there(first, command)) : Comparison.since(folder(command), since);
            Source newer = Comparison.at(there(second == null ? first : second, command));
            return tell(Comparison.of(older, newer), command);
        } catch (NoSuchState none) {
            command.getErr().println(none.getMessage());
            return Main.REFUSED;
        }
    }

    private Path folder(CommandLine command) {
        if (!Files.isDirectory(first)) {
            throw new ParameterException(command, "there is no folder " + first);
        }
        return first;
    }

    private static Path there(Path path, CommandLine command) {
        if (!Files.exists(path)) {
            throw new ParameterException(command, "there is no folder and no PDF " + path);
        }
        return path;
    }

    private int tell(Comparison.Outcome outcome, CommandLine command) {
        PrintWriter out = command.getOut();
        if (outcome instanceof Unread unread) {
            command.getErr().print(FindingText.of(unread.findings()));
            command.getErr()
                    .println("the state in " + unread.source() + " leaves nothing to compare ("
                            + FindingText.count(unread.findings()) + ")");
            command.getErr().flush();
            return Main.REFUSED;
        }
        Compared compared = ((Told) outcome).compared();
        if (note != null) {
            try {
                WholeFile.replace(note, ChangeNote.pdf(compared));
            } catch (IOException failed) {
                command.getErr()
                        .println("the change note could not be written to " + note + " (" + OutputFolder.reason(failed)
                                + ")");
                return Main.WRONG_USE;
            }
        }
        out.print(json ? ComparisonJson.of(compared) : ComparisonText.of(compared));
        out.flush();
        return Main.CLEAN;
    }
}
