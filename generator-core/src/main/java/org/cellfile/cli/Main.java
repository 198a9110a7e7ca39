package org.cellfile.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The entry of the runnable jar. */
@Command(
        name = "cellfile",
        description =
                "Recomputes what a robot cell's safety file states, refuses what does not agree, and prints the rest.",
        subcommands = {
            CheckVerb.class,
            DeriveVerb.class,
            SignVerb.class,
            GenerateVerb.class,
            CompareVerb.class,
            PostedVerb.class,
            AuditVerb.class,
            EditionsVerb.class,
            ExplainVerb.class
        },
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:nothing refuses",
            "1:refused; nothing was written",
            "2:used in a way it does not understand",
            "3:a defect in the generator"
        })
public final class Main implements Runnable {

    static final int CLEAN = 0;
    static final int REFUSED = 1;
    static final int WRONG_USE = 2;
    static final int OUR_DEFECT = 3;

    @Spec
    private @Nullable CommandSpec spec;

    /** Runs and exits. */
    public static void main(String[] args) {
        System.setProperty("java.awt.headless", "true");
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        System.exit(run(out, err, args));
    }

    /** Runs and gives the exit code. */
    static int run(PrintWriter out, PrintWriter err, String... args) {
        CommandLine line = new CommandLine(new Main())
                .setOut(out)
                .setErr(err)
                .setExitCodeExceptionMapper(failure -> failure instanceof ParameterException ? WRONG_USE : OUR_DEFECT)
                .setExecutionExceptionHandler((failure, command, parsed) -> {
                    err.println("this is a defect in the generator: " + failure);
                    for (StackTraceElement frame : failure.getStackTrace()) {
                        err.println("    at " + frame);
                    }
                    return OUR_DEFECT;
                });
        try {
            return line.execute(args);
        } catch (StackOverflowError | OutOfMemoryError exhausted) {
            err.println("this is a defect in the generator: " + exhausted);
            return OUR_DEFECT;
        }
    }

    @Override
    public void run() {
        if (spec != null) {
            throw new ParameterException(
                    spec.commandLine(),
                    "say what to do: check, derive, sign, generate, compare, posted, audit, editions or explain");
        }
    }

    /** The version in the jar's manifest. */
    static final class Version implements CommandLine.IVersionProvider {
        @Override
        public String[] getVersion() {
            String version = Main.class.getPackage().getImplementationVersion();
            return new String[] {"cellfile " + (version == null ? "(not packaged)" : version)};
        }
    }
}
