package org.cellfile.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.cellfile.render.Attachment;
import org.cellfile.render.pdf.Embedded;

/** Each embedded file is one that would be embedded, and none is missing. */
final class AttachmentsAudit {

    private final ReceivedPdf pdf;
    private final Tally tally;

    AttachmentsAudit(ReceivedPdf pdf, Tally tally) {
        this.pdf = pdf;
        this.tally = tally;
    }

    /**
     * Compares.
     *
     * @param due what is embedded in a file printed from these sources
     */
    void run(List<Attachment> due, boolean otherVersion) {
        SortedMap<String, Attachment> byName = new TreeMap<>();
        due.forEach(one -> byName.put(one.name(), one));
        List<String> wrong = new ArrayList<>();
        for (Embedded file : pdf.files()) {
            Attachment wanted = byName.remove(file.name());
            if (wanted == null) {
                wrong.add("`" + file.name() + "` is no source of this cell");
            } else if (!described(file, wanted)) {
                wrong.add("`" + file.name() + "` is described otherwise than this program does");
            } else if (!otherVersion
                    && !file.name().equals(Examination.DOSSIER) // looked at by itself
                    && !Arrays.equals(file.content(), wanted.content())) {
                wrong.add("`" + file.name() + "` is not as this program writes it");
            }
        }
        byName.keySet().forEach(name -> wrong.add("`" + name + "` is missing"));
        if (wrong.isEmpty()) {
            tally.agrees("embedded files: " + pdf.files().size() + ", each where it belongs");
        }
        tally.differ(
                wrong.stream()
                        .map(one -> Refusal.finding(
                                AttachedFiles.ATTACHMENT,
                                pdf.name(),
                                "the embedded files are not those of a safety file: " + one,
                                "open none of them before you know who made the file"))
                        .toList(),
                "embedded files");
    }

    private static boolean described(Embedded file, Attachment wanted) {
        return file.mediaType().equals(wanted.mediaType())
                && file.description().equals(wanted.description())
                && file.relationship().equals(wanted.relationship().word());
    }
}
