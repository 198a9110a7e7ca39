package org.cellfile.maven;

import java.util.Optional;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.cellfile.Explanation;
import org.cellfile.Generator;
import org.cellfile.cell.Cell;
import org.jspecify.annotations.Nullable;

/** Explains a finding by its id, or how a derived value of the cell was come by. */
@Mojo(name = "explain", threadSafe = true)
public final class ExplainMojo extends CellMojo {

    /** A finding's id, or a derived value's tag. */
    @Parameter(property = "id", required = true)
    private @Nullable String id;

    @Override
    public void execute() throws MojoExecutionException {
        String asked = id == null ? "" : id;
        Optional<String> page = Explanation.ofFinding(asked);
        if (page.isPresent()) {
            getLog().info("\n" + page.get());
            return;
        }
        Optional<Cell> cell = new Generator().check(world()).cell();
        getLog().info("\n"
                + cell.flatMap(one -> Explanation.ofValue(one, asked))
                        .orElseThrow(() -> new MojoExecutionException(Explanation.unknown(asked, cell))));
    }
}
