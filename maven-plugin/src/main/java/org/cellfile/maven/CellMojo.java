package org.cellfile.maven;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.apache.maven.plugin.AbstractMojo;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugins.annotations.Parameter;
import org.cellfile.FolderWorld;
import org.cellfile.JudgingDay;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingReport;
import org.cellfile.finding.FindingText;
import org.cellfile.finding.Severity;
import org.cellfile.verdict.Verdict;
import org.jspecify.annotations.Nullable;

/** What the goals share: which cell, where its pages go, and how findings are told in a build. */
abstract class CellMojo extends AbstractMojo {

    /** The cell's folder. */
    @Parameter(property = "cellfile.cell", defaultValue = "${project.basedir}/src/main/cell")
    private @Nullable File cell;

    /** The folder in which the cell's set of pages gets a folder of its own. */
    @Parameter(property = "cellfile.output", defaultValue = "${project.build.directory}/cellfile")
    private @Nullable File output;

    /**
     * The day by which a check, a release or what was read off a sheet is judged, as in {@code 2026-03-31}, from the one the cell's files speak of to today.
     * Today unless stated; by it an earlier release is built again. A draft is not judged by a day.
     */
    @Parameter(property = "cellfile.day")
    private @Nullable String day;

    final Optional<LocalDate> day() throws MojoExecutionException {
        try {
            return Optional.ofNullable(day).map(JudgingDay::of);
        } catch (IllegalArgumentException notADay) {
            throw new MojoExecutionException("<day> or -Dcellfile.day: " + notADay.getMessage(), notADay);
        }
    }

    final FolderWorld world() throws MojoExecutionException {
        return FolderWorld.of(folder());
    }

    final Path folder() throws MojoExecutionException {
        if (cell == null || !cell.isDirectory()) {
            throw new MojoExecutionException(
                    "There is no folder " + cell
                            + ". Put the cell's files into src/main/cell, or name their folder with <cell> or -Dcellfile.cell.");
        }
        return cell.toPath();
    }

    final Path output() throws MojoExecutionException {
        if (output == null) {
            throw new MojoExecutionException("No output folder is configured. Name one with <output>.");
        }
        return output.toPath();
    }

    /** Prints each finding, and leaves them as JSON and as a report of test cases in the output folder. */
    final void tell(Verdict verdict) throws MojoExecutionException {
        for (Finding finding : verdict.findings()) {
            String text = String.join("\n", FindingText.lines(finding));
            if (finding.severity() == Severity.REFUSES) {
                getLog().error(text);
            } else {
                getLog().warn(text);
            }
        }
        try {
            Files.createDirectories(output());
            Files.writeString(
                    output().resolve("findings.json"), FindingReport.json(verdict.word(), verdict.findings()));
            Files.writeString(output().resolve("findings-junit.xml"), FindingReport.junit(verdict.findings()));
        } catch (IOException failed) {
            throw new MojoExecutionException("The findings could not be written to " + output, failed);
        }
    }

    /** How many findings, and what came of them. */
    static String outcome(Verdict verdict) {
        return outcome(verdict, verdict.outcome());
    }

    /** The same with other words for what came of them. */
    static String outcome(Verdict verdict, String came) {
        return FindingText.count(verdict.findings()) + "; " + came;
    }
}
