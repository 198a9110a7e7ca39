package org.cellfile.maven;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
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
import org.jspecify.annotations.Nullable;

/**
 * Tells what differs between an earlier state of the cell and the present one, what of its proof that voids, and what was done about
 * it; leaves the same as a change note and as JSON in the output folder.
 */
@Mojo(name = "compare", threadSafe = true)
public final class CompareMojo extends CellMojo {

    /** The revision (tag, branch or commit) of the Git repository the cell lies in with which it is compared. */
    @Parameter(property = "cellfile.since")
    private @Nullable String since;

    /** The earlier state: a cell's folder, or a safety file as PDF. */
    @Parameter(property = "cellfile.earlier")
    private @Nullable File earlier;

    @Override
    public void execute() throws MojoExecutionException, MojoFailureException {
        String revision = since;
        File state = earlier;
        if ((revision == null) == (state == null)) {
            throw new MojoExecutionException(
                    "Name the earlier state: a revision with -Dcellfile.since, or a folder or PDF with -Dcellfile.earlier.");
        }
        try {
            Source older = revision != null ? Comparison.since(folder(), revision) : at(state);
            tell(Comparison.of(older, Comparison.at(folder())));
        } catch (NoSuchState none) {
            throw new MojoExecutionException(none.getMessage());
        }
    }

    private static Source at(@Nullable File state) throws NoSuchState {
        return Comparison.at(state == null ? Path.of("") : state.toPath());
    }

    private void tell(Comparison.Outcome outcome) throws MojoExecutionException, MojoFailureException {
        if (outcome instanceof Unread unread) {
            getLog().error("\n" + FindingText.of(unread.findings()));
            throw new MojoFailureException("The state in " + unread.source() + " leaves nothing to compare ("
                    + FindingText.count(unread.findings()) + ").");
        }
        Compared compared = ((Told) outcome).compared();
        getLog().info("\n" + ComparisonText.of(compared));
        try {
            Files.createDirectories(output());
            Path note = output().resolve("change-note.pdf");
            Files.write(note, ChangeNote.pdf(compared));
            Files.writeString(output().resolve("comparison.json"), ComparisonJson.of(compared));
            getLog().info("written: " + note);
        } catch (IOException failed) {
            throw new MojoExecutionException(
                    "The change note could not be written to " + output() + ": " + OutputFolder.reason(failed) + ".",
                    failed);
        }
    }
}
