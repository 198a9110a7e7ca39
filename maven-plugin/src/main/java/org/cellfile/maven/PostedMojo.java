package org.cellfile.maven;

import java.io.File;
import java.util.List;
import java.util.Optional;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.cellfile.Comparison;
import org.cellfile.Comparison.Source;
import org.cellfile.NoSuchState;
import org.cellfile.PostedSheets;
import org.cellfile.PostedSheets.Told;
import org.cellfile.PostedSheets.Unsaid;
import org.cellfile.finding.FindingText;
import org.jspecify.annotations.Nullable;

/**
 * Takes what was read off sheets at the machine, and says of each whether it is current, outdated, a draft or unknown, and what changed.
 * The build fails when one of them is not current.
 */
@Mojo(name = "posted", threadSafe = true)
public final class PostedMojo extends CellMojo {

    /** The text of the code of a sheet, or the short digest below it; several stand on lines of their own. */
    @Parameter(property = "cellfile.read")
    private @Nullable String read;

    /** The revision (tag, branch or commit) of the cell's Git repository since which it is told line by line what changed. */
    @Parameter(property = "cellfile.since")
    private @Nullable String since;

    /** The same since an earlier safety file as PDF, or a folder with an earlier description. */
    @Parameter(property = "cellfile.earlier")
    private @Nullable File earlier;

    @Override
    public void execute() throws MojoExecutionException, MojoFailureException {
        List<String> all = read == null
                ? List.of()
                : read.lines().filter(line -> !line.isBlank()).toList();
        if (all.isEmpty()) {
            throw new MojoExecutionException(
                    "Say with -Dcellfile.read what was read off a sheet: the text of its code, or the short digest below it.");
        }
        if (since != null && earlier != null) {
            throw new MojoExecutionException(
                    "Name one earlier state: with -Dcellfile.since or with -Dcellfile.earlier.");
        }
        try {
            tell(PostedSheets.of(world(), all, earlierState(), day()));
        } catch (NoSuchState none) {
            throw new MojoExecutionException(none.getMessage());
        }
    }

    private Optional<Source> earlierState() throws NoSuchState, MojoExecutionException {
        String revision = since;
        if (revision != null) {
            return Optional.of(Comparison.since(folder(), revision));
        }
        File state = earlier;
        return state == null ? Optional.empty() : Optional.of(Comparison.at(state.toPath()));
    }

    private void tell(PostedSheets.Outcome outcome) throws MojoFailureException {
        if (outcome instanceof Unsaid unsaid) {
            getLog().error("\n" + FindingText.of(unsaid.findings()));
            throw new MojoFailureException("It cannot be said which sheets are current: " + unsaid.why() + ".");
        }
        Told told = (Told) outcome;
        getLog().info("\n" + told.text());
        if (!told.allCurrent()) {
            throw new MojoFailureException("Not every sheet that was read is current.");
        }
    }
}
