package org.cellfile.maven;

import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import javax.inject.Inject;
import org.apache.maven.artifact.Artifact;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.LifecyclePhase;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.apache.maven.project.MavenProject;
import org.apache.maven.project.MavenProjectHelper;
import org.cellfile.Generator;
import org.cellfile.Generator.Generated;
import org.cellfile.output.OutputFolder;
import org.jspecify.annotations.Nullable;

/**
 * Recomputes the cell and, when nothing refuses, prints its safety file, its posted sheets and blank forms to fill in at the
 * machine: as a draft, unless a release is asked for. The safety file of a release is attached to the project.
 */
@Mojo(name = "generate", defaultPhase = LifecyclePhase.PACKAGE, threadSafe = true)
public final class GenerateMojo extends CellMojo {

    private static final String TYPE = "pdf";

    /** Prints a release; whatever bars one is then refused, also what has fallen due. */
    @Parameter(property = "cellfile.release", defaultValue = "false")
    private boolean release;

    /**
     * The classifier under which the safety file of a release is attached to the project, so that it is installed and deployed
     * with it. A project with several cells needs one for each.
     */
    @Parameter(property = "cellfile.classifier", defaultValue = "safety-file")
    private String classifier = "safety-file";

    @Parameter(defaultValue = "${project}", readonly = true, required = true)
    private @Nullable MavenProject project;

    private final MavenProjectHelper attaching;

    @Inject
    public GenerateMojo(MavenProjectHelper attaching) {
        this.attaching = attaching;
    }

    @Override
    public void execute() throws MojoExecutionException, MojoFailureException {
        Generated generated = release ? new Generator().release(world(), day()) : new Generator().generate(world());
        String outcome = outcome(generated.verdict(), generated.outcome());
        tell(generated.verdict());
        OutputFolder folder = new OutputFolder(output());
        try {
            if (generated.files().isEmpty()) {
                folder.notCurrent(generated.cellId(), "A later run on " + folder() + " was refused: " + outcome + ".");
                throw new MojoFailureException(outcome);
            }
            File safetyFile = output().resolve(generated.cellId())
                    .resolve(generated.cellId() + "-safety-file.pdf")
                    .toFile();
            if (release) {
                refuseClassifierOfAnother(safetyFile);
            }
            SortedMap<String, byte[]> files = generated.files().get();
            Path set = folder.replace(generated.cellId(), files);
            getLog().info(outcome);
            files.keySet().forEach(file -> getLog().info("written: " + set.resolve(file)));
            if (release && attached().isEmpty()) {
                attaching.attachArtifact(Objects.requireNonNull(project), TYPE, classifier, safetyFile);
            }
        } catch (IOException failed) {
            throw new MojoExecutionException(
                    "The pages could not be written to " + output() + ": " + OutputFolder.reason(failed)
                            + "; an earlier set there is as it was.",
                    failed);
        }
    }

    private void refuseClassifierOfAnother(File safetyFile) throws MojoExecutionException {
        Optional<File> other = attached().map(Artifact::getFile).filter(file -> !file.equals(safetyFile));
        if (other.isPresent()) {
            throw new MojoExecutionException("The classifier " + classifier + " is that of " + other.get()
                    + " already, and nothing was written. Name another one for this cell with <classifier>.");
        }
    }

    /** What is attached to the project under the classifier; a build may run this goal twice. */
    private Optional<Artifact> attached() {
        return Objects.requireNonNull(project).getAttachedArtifacts().stream()
                .filter(artifact -> classifier.equals(artifact.getClassifier()) && TYPE.equals(artifact.getType()))
                .findFirst();
    }
}
