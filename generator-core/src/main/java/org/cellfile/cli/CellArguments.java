package org.cellfile.cli;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.cellfile.FolderWorld;
import org.cellfile.finding.FindingReport;
import org.cellfile.finding.FindingText;
import org.cellfile.verdict.Refused;
import org.cellfile.verdict.Verdict;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;

/** Which cell, and how findings are told. */
final class CellArguments {

    /** How findings are told. */
    enum Form {
        text,
        json,
        junit
    }

    @Parameters(index = "0", paramLabel = "FOLDER", description = "the cell's folder, by custom src/main/cell")
    private @Nullable Path folder;

    @Option(
            names = "--findings",
            paramLabel = "FORM",
            defaultValue = "text",
            description = "how findings are told: ${COMPLETION-CANDIDATES} (text unless stated)")
    private Form form = Form.text;

    /** The cell's folder, looked at now. */
    FolderWorld world(CommandLine command) {
        if (!Files.isDirectory(folder())) {
            throw new ParameterException(command, "there is no folder " + folder());
        }
        return FolderWorld.of(folder());
    }

    /** The folder as given. */
    Path folder() {
        return Objects.requireNonNull(folder);
    }

    /** Tells the findings, and in the text form what came of them. */
    void tell(Verdict verdict, String outcome, PrintWriter out) {
        switch (form) {
            case json -> out.print(FindingReport.json(verdict.word(), verdict.findings()));
            case junit -> out.print(FindingReport.junit(verdict.findings()));
            case text -> {
                out.print(FindingText.of(verdict.findings()));
                boolean refusedOtherwise =
                        verdict instanceof Refused && verdict.findings().isEmpty(); // the outcome tells why
                out.println((refusedOtherwise ? "" : FindingText.count(verdict.findings()) + "; ") + outcome);
            }
        }
        out.flush();
    }
}
