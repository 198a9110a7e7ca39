package org.cellfile.audit;

import java.util.Map;
import java.util.TreeMap;
import org.cellfile.dossier.Label;
import org.cellfile.finding.FindingId;
import org.cellfile.render.layout.Markup;

/** Holds what a file says of itself in a reader program's window against what its sources give. */
final class MetadataAudit {

    static final FindingId METADATA = new FindingId("audit.metadata");

    private MetadataAudit() {}

    static void run(ReceivedPdf pdf, Markup markup, Label label, Tally tally) {
        String title = markup.safetyFileTitle();
        String day = "D:" + label.asOf().replace("-", "") + "000000Z";
        Map<String, String> due = new TreeMap<>(Map.of(
                "Title",
                title,
                "Author",
                label.integrator(),
                "Producer",
                "Cellfile",
                "CreationDate",
                day,
                "ModDate",
                day));
        Map<String, String> stated = new TreeMap<>(pdf.information());
        stated.replaceAll((key, text) -> key.endsWith("Date") ? text.replaceFirst("\\+00'00'?$", "Z") : text);
        boolean alike = true;
        for (String key : union(due, stated)) {
            String is = stated.getOrDefault(key, "");
            String wanted = due.getOrDefault(key, "");
            if (!is.equals(wanted)) {
                alike = false;
                tally.differs(Refusal.finding(
                        METADATA,
                        pdf.name(),
                        "the file states under `" + key + "` `" + is + "`, due is `" + wanted + "`",
                        "go by the pages and not by the window of the reader program"));
            }
        }
        if (!pdf.metadata().equals(markup.metadata(title))) {
            alike = false;
            tally.differs(Refusal.finding(
                    METADATA,
                    pdf.name(),
                    "the metadata (XMP) differ from what the sources give, first in `"
                            + difference(pdf.metadata(), markup.metadata(title)) + "`",
                    "go by the pages and not by what search programs show of the file"));
        }
        if (alike) {
            tally.agrees("metadata: title, author and dates");
        }
    }

    private static Iterable<String> union(Map<String, String> one, Map<String, String> other) {
        Map<String, String> all = new TreeMap<>(one);
        all.putAll(other);
        return all.keySet();
    }

    /** The line in which the first letter differs, as it stands in the file. */
    private static String difference(String is, String due) {
        int at = 0;
        while (at < Math.min(is.length(), due.length()) && is.charAt(at) == due.charAt(at)) {
            at++;
        }
        int from = is.lastIndexOf('\n', Math.max(0, at - 1)) + 1;
        int to = is.indexOf('\n', at);
        return is.substring(from, to < 0 ? is.length() : Math.max(from, to)).strip();
    }
}
