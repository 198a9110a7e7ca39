package org.cellfile.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.cellfile.Audit;
import org.cellfile.audit.AuditReport;
import org.cellfile.audit.Examination.Examined;
import org.cellfile.audit.Refusal;
import org.cellfile.audit.TrustedKeys;
import org.cellfile.finding.FindingText;
import org.cellfile.output.NewFolder;
import org.cellfile.output.OutputFolder;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code audit FILE}. */
@Command(
        name = "audit",
        description =
                "Recomputes the sources embedded in a safety file that somebody handed over, holds its pages and its"
                        + " dossier against them, and tells what agrees, what does not and what cannot be said.",
        mixinStandardHelpOptions = true)
final class AuditVerb implements Callable<Integer> {

    @Parameters(index = "0", paramLabel = "FILE", description = "the safety file, a PDF")
    private Path file = Path.of("");

    @Option(
            names = "--trust",
            paramLabel = "KEYS",
            description =
                    "public keys (PEM) that came on another way than the PDF, each below a line with its owner's name;"
                            + " without them no origin is proven")
    private @Nullable Path trust;

    @Option(
            names = "--sources-to",
            paramLabel = "FOLDER",
            description = "a new or empty folder to which the embedded sources are written")
    private @Nullable Path sourcesTo;

    @Option(names = "--redraw", description = "lay every page out anew and compare byte for byte")
    private boolean redraw;

    @Option(names = "--json", description = "tell it in JSON")
    private boolean json;

    @Spec
    private @Nullable CommandSpec spec;

    @Override
    public Integer call() {
        CommandLine command = Objects.requireNonNull(spec).commandLine();
        PrintWriter out = command.getOut();
        if (!Files.isRegularFile(file)) {
            throw new ParameterException(
                    command, Files.isDirectory(file) ? file + " is a folder, not a PDF" : "there is no file " + file);
        }
        Path to = sourcesTo;
        Optional<String> occupied = to == null ? Optional.empty() : NewFolder.occupied(to);
        if (occupied.isPresent()) {
            throw new ParameterException(command, occupied.get());
        }
        AuditReport report;
        try {
            Examined examined = new Audit().of(Audit.entry(file), keys(command), redraw);
            report = examined.report();
            if (to != null && !examined.sources().isEmpty()) {
                NewFolder.write(to, examined.sources());
            }
        } catch (Refusal unreadableKeys) {
            command.getErr().print(FindingText.of(List.of(unreadableKeys.finding())));
            command.getErr().println("without these keys " + file + " was not audited");
            command.getErr().flush();
            return Main.WRONG_USE;
        } catch (IOException failed) {
            command.getErr()
                    .println("the sources could not be written to " + to + " (" + OutputFolder.reason(failed) + ")");
            return Main.WRONG_USE;
        }
        out.print(json ? report.json() : report.text());
        out.flush();
        return report.holds() ? Main.CLEAN : Main.REFUSED;
    }

    private TrustedKeys keys(CommandLine command) throws Refusal, IOException {
        Path named = trust;
        if (named == null) {
            return TrustedKeys.none();
        }
        if (!Files.isRegularFile(named)) {
            throw new ParameterException(command, "there is no file " + named);
        }
        return Audit.keys(named);
    }
}
