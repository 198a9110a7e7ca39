package org.cellfile.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.cellfile.Comparison;
import org.cellfile.Comparison.Source;
import org.cellfile.FolderWorld;
import org.cellfile.NoSuchState;
import org.cellfile.PostedSheets;
import org.cellfile.PostedSheets.Told;
import org.cellfile.PostedSheets.Unsaid;
import org.cellfile.finding.FindingText;
import org.cellfile.output.OutputFolder;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code posted FOLDER READ...}. */
@Command(
        name = "posted",
        description =
                "Takes what was read off sheets at the machine, and says of each whether it is current, outdated, a draft or"
                        + " unknown, and what changed.",
        mixinStandardHelpOptions = true,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:every sheet that was read is current",
            "1:one of them is not, or nothing can be printed from the description",
            "2:used in a way it does not understand",
            "3:a defect in the generator"
        })
final class PostedVerb implements Callable<Integer> {

    @Parameters(index = "0", paramLabel = "FOLDER", description = "the cell's folder, by custom src/main/cell")
    private Path folder = Path.of("");

    @Parameters(
            index = "1..*",
            paramLabel = "READ",
            description = "the text of the code of a sheet, or the short digest below it, between quotation marks")
    private List<String> read = new ArrayList<>();

    @Option(names = "--read-from", paramLabel = "FILE", description = "a text file with one of these on each line")
    private @Nullable Path readFrom;

    @Option(
            names = "--since",
            paramLabel = "REVISION",
            description =
                    "tell line by line what changed since this revision (tag, branch or commit) of the folder's Git repository")
    private @Nullable String since;

    @Option(
            names = "--earlier",
            paramLabel = "STATE",
            description = "the same since an earlier safety file as PDF, or a folder with an earlier description")
    private @Nullable Path earlier;

    @Mixin
    private DayOption judged = new DayOption();

    @Spec
    private @Nullable CommandSpec spec;

    @Override
    public Integer call() {
        CommandLine command = Objects.requireNonNull(spec).commandLine();
        if (!Files.isDirectory(folder)) {
            throw new ParameterException(command, "there is no folder " + folder);
        }
        if (since != null && earlier != null) {
            throw new ParameterException(command, "name one earlier state: with --since or with --earlier");
        }
        List<String> all = all(command);
        try {
            return tell(PostedSheets.of(FolderWorld.of(folder), all, earlierState(), judged.day(command)), command);
        } catch (NoSuchState none) {
            command.getErr().println(none.getMessage());
            return Main.REFUSED;
        }
    }

    private Optional<Source> earlierState() throws NoSuchState {
        String revision = since;
        if (revision != null) {
            return Optional.of(Comparison.since(folder, revision));
        }
        Path state = earlier;
        return state == null ? Optional.empty() : Optional.of(Comparison.at(state));
    }

    private List<String> all(CommandLine command) {
        List<String> all = new ArrayList<>(read);
        all.removeIf(String::isBlank);
        Path file = readFrom;
        if (file != null) {
            try {
                Files.readAllLines(file).stream()
                        .filter(line -> !line.isBlank())
                        .forEach(all::add);
            } catch (IOException failed) {
                throw new ParameterException(
                        command, file + " cannot be read (" + OutputFolder.reason(failed) + ")", failed);
            }
        }
        if (all.isEmpty()) {
            throw new ParameterException(
                    command, "say what was read off a sheet: the text of its code, or the short digest below it");
        }
        return all;
    }

    private static int tell(PostedSheets.Outcome outcome, CommandLine command) {
        if (outcome instanceof Unsaid unsaid) {
            command.getErr().print(FindingText.of(unsaid.findings()));
            command.getErr().println(unsaid.why());
            command.getErr().flush();
            return Main.REFUSED;
        }
        Told told = (Told) outcome;
        command.getOut().print(told.text());
        command.getOut().flush();
        return told.allCurrent() ? Main.CLEAN : Main.REFUSED;
    }
}
