package org.cellfile.maven;

import java.io.File;
import java.io.IOException;
import java.util.Optional;
import org.apache.maven.plugin.AbstractMojo;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.cellfile.Audit;
import org.cellfile.audit.Examination.Examined;
import org.cellfile.audit.Refusal;
import org.cellfile.audit.TrustedKeys;
import org.cellfile.finding.FindingText;
import org.cellfile.output.NewFolder;
import org.jspecify.annotations.Nullable;

/** Recomputes the sources embedded in a safety file that somebody handed over, and tells what agrees, what does not and what cannot be said. */
@Mojo(name = "audit", requiresProject = false, threadSafe = true)
public final class AuditMojo extends AbstractMojo {

    /** The safety file, a PDF. */
    @Parameter(property = "cellfile.file", required = true)
    private @Nullable File file;

    /** Public keys (PEM) that came on another way than the PDF, each below a line with its owner's name. */
    @Parameter(property = "cellfile.trust")
    private @Nullable File trust;

    /** A new or empty folder to which the embedded sources are written. */
    @Parameter(property = "cellfile.sourcesTo")
    private @Nullable File sourcesTo;

    /** Whether every page is laid out anew and compared byte for byte. */
    @Parameter(property = "cellfile.redraw", defaultValue = "false")
    private boolean redraw;

    @Override
    public void execute() throws MojoExecutionException, MojoFailureException {
        File named = file;
        if (named == null || !named.isFile()) {
            throw new MojoExecutionException(
                    "There is no file " + named + ". Name a safety file with -Dcellfile.file.");
        }
        File to = sourcesTo;
        Optional<String> occupied = to == null ? Optional.empty() : NewFolder.occupied(to.toPath());
        if (occupied.isPresent()) {
            throw new MojoExecutionException(occupied.get());
        }
        try {
            TrustedKeys keys = trust == null ? TrustedKeys.none() : Audit.keys(trust.toPath());
            Examined examined = new Audit().of(Audit.entry(named.toPath()), keys, redraw);
            if (to != null && !examined.sources().isEmpty()) {
                NewFolder.write(to.toPath(), examined.sources());
            }
            getLog().info("\n" + examined.report().text());
            if (!examined.report().holds()) {
                throw new MojoFailureException(named + ": " + examined.report().verdict());
            }
        } catch (Refusal unreadableKeys) {
            throw new MojoExecutionException(String.join("\n", FindingText.lines(unreadableKeys.finding())));
        } catch (IOException failed) {
            throw new MojoExecutionException("A file could not be read or written: " + failed.getMessage(), failed);
        }
    }
}
