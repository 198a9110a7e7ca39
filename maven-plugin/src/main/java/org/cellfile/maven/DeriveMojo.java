package org.cellfile.maven;

import java.io.IOException;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Mojo;
import org.cellfile.LedgerFile;
import org.cellfile.LedgerFile.Written;
import org.cellfile.output.OutputFolder;

/**
 * Recomputes the cell and writes every derived value into derived.yaml in its folder, the ledger that each later run is held
 * against. Tells which values it changes.
 */
@Mojo(name = "derive", threadSafe = true)
public final class DeriveMojo extends CellMojo {

    @Override
    public void execute() throws MojoExecutionException, MojoFailureException {
        try {
            Written written = LedgerFile.derive(folder(), world());
            tell(written.verdict());
            if (written.refused()) {
                throw new MojoFailureException(outcome(written.verdict(), written.outcome()));
            }
            getLog().info(outcome(written.verdict(), written.outcome()));
        } catch (IOException failed) {
            throw new MojoExecutionException(
                    "The ledger could not be written to " + folder() + ": " + OutputFolder.reason(failed)
                            + "; an earlier one there is as it was.",
                    failed);
        }
    }
}
