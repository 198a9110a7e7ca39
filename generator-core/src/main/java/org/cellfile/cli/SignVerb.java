package org.cellfile.cli;

import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.cellfile.Passphrase;
import org.cellfile.SigningDesk;
import org.cellfile.SigningDesk.Outcome;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code sign FOLDER}. */
@Command(
        name = "sign",
        description =
                "Adds a sign-off of the cell as it is, if that person may give it, and keeps the text of what was signed.",
        mixinStandardHelpOptions = true)
final class SignVerb implements Callable<Integer> {

    /** Where a passphrase comes from when nobody is asked for it. */
    static final class PassphraseArguments {

        @Option(
                names = "--passphrase-file",
                paramLabel = "FILE",
                description = "a file whose first line is the passphrase of the key")
        private @Nullable Path file;

        @Option(
                names = "--passphrase-variable",
                paramLabel = "NAME",
                description = "an environment variable that holds the passphrase of the key")
        private @Nullable String variable;
    }

    @Mixin
    private CellArguments cell = new CellArguments();

    @Option(names = "--by", required = true, paramLabel = "TAG", description = "the person who signs")
    private String by = "";

    @Option(
            names = "--words",
            required = true,
            paramLabel = "WORDS",
            description = "tested, checked, approved, \"released for use\" or \"taken note\"")
    private String words = "";

    @Option(names = "--role", required = true, paramLabel = "ROLE", description = "one of the person's roles")
    private String role = "";

    @Option(
            names = "--covers",
            paramLabel = "CHAPTER",
            defaultValue = "file",
            description = "a chapter, if it is not the whole file that is signed")
    private String covers = "file";

    @Option(names = "--on", paramLabel = "DATE", description = "the day of signing (today unless stated)")
    private @Nullable String on;

    @Option(
            names = "--key-file",
            paramLabel = "FILE",
            description = "the person's key in a PEM file; without it the name is typed, not proven")
    private @Nullable Path keyFile;

    @Option(
            names = "--key",
            paramLabel = "TAG",
            description = "the tag of that key; found among those of the person unless stated")
    private @Nullable String key;

    @ArgGroup(exclusive = true)
    private PassphraseArguments passphrase = new PassphraseArguments();

    @Spec
    private @Nullable CommandSpec spec;

    @Override
    public Integer call() {
        CommandLine command = Objects.requireNonNull(spec).commandLine();
        Outcome outcome = new SigningDesk(
                        cell.folder(),
                        cell.world(command),
                        new SigningDesk.Order(
                                by,
                                words,
                                role,
                                covers,
                                Optional.ofNullable(on),
                                Optional.ofNullable(keyFile),
                                Optional.ofNullable(key)),
                        new Passphrase(Optional.ofNullable(passphrase.file), Optional.ofNullable(passphrase.variable)))
                .sign();
        StringBuilder told = new StringBuilder(outcome.sentence());
        outcome.written().forEach(file -> told.append("\n  ").append(file));
        cell.tell(outcome.verdict(), told.toString(), command.getOut());
        return outcome.signed() ? Main.CLEAN : Main.REFUSED;
    }
}
