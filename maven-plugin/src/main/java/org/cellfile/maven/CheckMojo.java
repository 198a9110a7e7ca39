package org.cellfile.maven;

import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.LifecyclePhase;
import org.apache.maven.plugins.annotations.Mojo;
import org.cellfile.Generator;
import org.cellfile.verdict.Refused;
import org.cellfile.verdict.Verdict;

/** Recomputes the cell and tells everything that does not hold, also what has fallen due. */
@Mojo(name = "check", defaultPhase = LifecyclePhase.VALIDATE, threadSafe = true)
public final class CheckMojo extends CellMojo {

    @Override
    public void execute() throws MojoExecutionException, MojoFailureException {
        Verdict verdict = new Generator().check(world(), day()).verdict();
        tell(verdict);
        if (verdict instanceof Refused) {
            throw new MojoFailureException(outcome(verdict));
        }
        getLog().info(outcome(verdict));
    }
}
