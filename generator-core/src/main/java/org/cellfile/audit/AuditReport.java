package org.cellfile.audit;

import java.util.List;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingReport;
import org.cellfile.finding.FindingText;

/**
 * What can be said about a PDF that somebody handed over.
 *
 * @param file as it was named
 * @param agrees a line for each check that came out well
 * @param differs a finding for each thing that does not agree
 * @param unsaid a line for each thing nobody can tell from the file, or from what was given beside it
 * @param provenBy who proved by a signature, under a key from outside, that the whole state is theirs
 * @param notReached chapters that no signature reaches, as their digests were taken over into a copy and not recomputed
 */
public record AuditReport(
        String file,
        List<String> agrees,
        List<Finding> differs,
        List<String> unsaid,
        List<String> provenBy,
        List<String> notReached) {

    public AuditReport {
        agrees = List.copyOf(agrees);
        differs = List.copyOf(differs);
        unsaid = List.copyOf(unsaid);
        provenBy = List.copyOf(provenBy);
        notReached = List.copyOf(notReached);
    }

    /** True when nothing was found that does not agree. */
    public boolean holds() {
        return differs.isEmpty();
    }

    /** What came of it, on one line. */
    public String verdict() {
        if (!holds()) {
            return "does not agree";
        }
        if (provenBy.isEmpty()) {
            return "consistent in itself, origin unproven";
        }
        return "everything that can be said agrees; origin proven by " + String.join(", ", provenBy)
                + (notReached.isEmpty()
                        ? ""
                        : ", but not of what stands in the chapters `" + String.join("`, `", notReached) + "`");
    }

    /** For people. */
    public String text() {
        StringBuilder text = new StringBuilder(file).append('\n');
        lines("agrees", agrees, text);
        if (!differs.isEmpty()) {
            text.append("\ndoes not agree\n\n").append(FindingText.of(differs));
        }
        lines("cannot be said", unsaid, text);
        return text.append(differs.isEmpty() || !unsaid.isEmpty() ? "\n" : "")
                .append(verdict())
                .append('\n')
                .toString();
    }

    private static void lines(String title, List<String> lines, StringBuilder text) {
        if (!lines.isEmpty()) {
            text.append(text.toString().endsWith("\n\n") ? "" : "\n")
                    .append(title)
                    .append('\n');
            lines.forEach(line -> text.append("  ").append(line).append('\n'));
        }
    }

    /** For other programs, by the schema {@code org/cellfile/audit.schema.json}. */
    public String json() {
        return FindingReport.audit(file, verdict(), agrees, differs, unsaid);
    }
}
