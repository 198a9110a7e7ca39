package org.cellfile.maven;

import java.io.IOException;
import java.nio.file.Path;
import java.util.SortedMap;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.LifecyclePhase;
import org.apache.maven.plugins.annotations.Mojo;
import org.cellfile.Generator;
import org.cellfile.Generator.Generated;
import org.cellfile.output.OutputFolder;

/** Recomputes the cell and, when nothing refuses, prints its safety file, its posted sheets and blank forms to fill in at the machine. */
@Mojo(name = "generate", defaultPhase = LifecyclePhase.PACKAGE, threadSafe = true)
public final class GenerateMojo extends CellMojo {

    @Override
    public void execute() throws MojoExecutionException, MojoFailureException {
        Generated generated = new Generator().generate(world());
        tell(generated.verdict());
        OutputFolder folder = new OutputFolder(output());
        try {
            if (generated.files().isEmpty()) {
                folder.notCurrent(
                        generated.cellId(),
                        "A later run on " + folder() + " was refused: " + outcome(generated.verdict()) + ".");
                throw new MojoFailureException(outcome(generated.verdict()));
            }
            SortedMap<String, byte[]> files = generated.files().get();
            Path set = folder.replace(generated.cellId(), files);
            getLog().info(outcome(generated.verdict()));
            files.keySet().forEach(file -> getLog().info("written: " + set.resolve(file)));
        } catch (IOException failed) {
            throw new MojoExecutionException(
                    "The pages could not be written to " + output() + ": " + OutputFolder.reason(failed)
                            + "; an earlier set there is as it was.",
                    failed);
        }
    }
}
