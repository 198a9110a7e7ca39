package org.cellfile.maven;

import java.util.List;
import java.util.Optional;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.cellfile.Generator;
import org.cellfile.Generator.Checked;
import org.cellfile.SideBySide;
import org.jspecify.annotations.Nullable;

/** Tells, safeguard by safeguard, what another edition would demand beside those in force. */
@Mojo(name = "editions", threadSafe = true)
public final class EditionsMojo extends CellMojo {

    /**
     * Editions, such as {@code ISO 13855:2024}. Without them those the cell names for comparison count, and when it names none,
     * every other edition.
     */
    @Parameter(property = "cellfile.beside")
    private @Nullable List<String> beside;

    @Override
    public void execute() throws MojoExecutionException, MojoFailureException {
        List<String> asked = beside == null ? List.of() : beside;
        Optional<String> unknown = SideBySide.unknown(asked);
        if (unknown.isPresent()) {
            throw new MojoExecutionException(unknown.get());
        }
        Checked checked = new Generator().check(world());
        if (checked.cell().isEmpty()) {
            tell(checked.verdict());
            throw new MojoFailureException(outcome(checked.verdict()));
        }
        getLog().info("\n" + SideBySide.of(checked, asked));
    }
}
