package org.cellfile.maven;

import java.io.File;
import java.util.Optional;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.cellfile.Passphrase;
import org.cellfile.SigningDesk;
import org.cellfile.SigningDesk.Outcome;
import org.jspecify.annotations.Nullable;

/** Adds a sign-off of the cell as it is, if that person may give it, and keeps the text of what was signed. */
@Mojo(name = "sign", threadSafe = true)
public final class SignMojo extends CellMojo {

    /** The tag of the person who signs. */
    @Parameter(property = "cellfile.sign.by", required = true)
    private @Nullable String by;

    /** {@code tested}, {@code checked}, {@code approved}, {@code released for use} or {@code taken note}. */
    @Parameter(property = "cellfile.sign.words", required = true)
    private @Nullable String words;

    /** One of the person's roles. */
    @Parameter(property = "cellfile.sign.role", required = true)
    private @Nullable String role;

    /** A chapter, if it is not the whole file that is signed. */
    @Parameter(property = "cellfile.sign.covers", defaultValue = "file")
    private @Nullable String covers;

    /** The day of signing; today unless stated. */
    @Parameter(property = "cellfile.sign.on")
    private @Nullable String on;

    /** The person's key in a PEM file; without it the name is typed, not proven. */
    @Parameter(property = "cellfile.sign.keyFile")
    private @Nullable File keyFile;

    /** The tag of that key; found among those of the person unless stated. */
    @Parameter(property = "cellfile.sign.key")
    private @Nullable String key;

    /** A file whose first line is the passphrase of the key. Without it and the variable it is asked for. */
    @Parameter(property = "cellfile.sign.passphraseFile")
    private @Nullable File passphraseFile;

    /** An environment variable that holds the passphrase of the key. */
    @Parameter(property = "cellfile.sign.passphraseVariable")
    private @Nullable String passphraseVariable;

    @Override
    public void execute() throws MojoExecutionException, MojoFailureException {
        Outcome outcome = new SigningDesk(
                        folder(),
                        world(),
                        new SigningDesk.Order(
                                given(by),
                                given(words),
                                given(role),
                                given(covers),
                                Optional.ofNullable(on),
                                Optional.ofNullable(keyFile).map(File::toPath),
                                Optional.ofNullable(key)),
                        new Passphrase(
                                Optional.ofNullable(passphraseFile).map(File::toPath),
                                Optional.ofNullable(passphraseVariable)))
                .sign();
        tell(outcome.verdict());
        if (!outcome.signed()) {
            throw new MojoFailureException(outcome.sentence());
        }
        getLog().info(outcome.sentence());
        outcome.written().forEach(file -> getLog().info("written: " + file));
    }

    private static String given(@Nullable String value) {
        return value == null ? "" : value;
    }
}
