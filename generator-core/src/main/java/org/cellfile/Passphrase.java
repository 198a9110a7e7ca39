package org.cellfile;

import java.io.Console;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.cellfile.subject.signoff.KeyFile.Unusable;

/**
 * Where the passphrase of a key comes from: a file, an environment variable, or the person at the console. Never an argument, which
 * everybody on the machine could read.
 */
public record Passphrase(Optional<Path> file, Optional<String> variable) {

    /**
     * Asks for it.
     *
     * @throws Unusable when there is none
     */
    @SuppressWarnings("SystemConsoleNull") // later platforms give a console where nobody sits; it then reads nothing
    char[] ask() throws Unusable {
        if (file.isPresent()) {
            return fromFile(file.get());
        }
        if (variable.isPresent()) {
            return Optional.ofNullable(System.getenv(variable.get()))
                    .orElseThrow(() ->
                            new Unusable("there is no environment variable " + variable.get() + " for the passphrase"))
                    .toCharArray();
        }
        Console console = System.console();
        char[] typed = console == null ? null : console.readPassword("passphrase of the key: ");
        if (typed == null) {
            throw new Unusable(
                    "the key file is encrypted, and there is nobody to ask for the passphrase; name a file or an"
                            + " environment variable that holds it");
        }
        return typed;
    }

    /** What is on its first line. */
    private static char[] fromFile(Path file) throws Unusable {
        try {
            return SigningDesk.text(file).lines().findFirst().orElse("").toCharArray();
        } catch (IOException failed) {
            throw new Unusable("the passphrase could not be read from " + file + ": "
                    + (Files.exists(file) ? failed.getMessage() : "there is no such file"));
        }
    }
}
