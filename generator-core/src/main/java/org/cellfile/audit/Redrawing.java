package org.cellfile.audit;

import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.cellfile.dossier.Digest;
import org.cellfile.finding.FindingId;

/**
 * Holds a file against one laid out anew from its sources. Both must be the same byte for byte; where the Java that made the file
 * compresses otherwise than this one, the same when everything in them is inflated.
 */
final class Redrawing {

    static final FindingId DRAWN = new FindingId("audit.drawn-otherwise");

    private Redrawing() {}

    static void run(ReceivedPdf received, byte[] again, Tally tally) throws Refusal {
        if (Arrays.equals(received.bytes(), again)) {
            tally.agrees("drawn anew: byte for byte what this version makes of the embedded sources");
            return;
        }
        List<String> ours = contents(received.name(), again);
        List<String> theirs = contents(received.name(), received.bytes());
        if (ours.equals(theirs)) {
            tally.agrees("drawn anew: the same contents, compressed otherwise (by another Java)");
            return;
        }
        tally.differs(Refusal.finding(
                DRAWN,
                received.name(),
                "laid out anew from the embedded sources, " + where(received, again),
                "compare the pages with those that `generate` prints from the sources (`--sources-to`)"));
    }

    private static String where(ReceivedPdf received, byte[] again) throws Refusal {
        try (ReceivedPdf due = ReceivedPdf.open(received.name(), again)) {
            List<byte[]> theirs = received.drawn();
            List<byte[]> ours = due.drawn();
            for (int page = 0; page < Math.min(theirs.size(), ours.size()); page++) {
                if (!Arrays.equals(theirs.get(page), ours.get(page))) {
                    return "page " + (page + 1) + " is the first that is drawn otherwise";
                }
            }
            return theirs.size() == ours.size()
                    ? "every page is drawn alike, but something else in the file differs: typefaces, drawings, links, or what is"
                            + " read aloud"
                    : "the file has " + theirs.size() + " pages and not " + ours.size();
        }
    }

    /** The digest of each compressed part in order; the last is the table of places, which depends on the compression. */
    private static List<String> contents(String name, byte[] bytes) throws Refusal {
        List<String> digests = new ArrayList<>();
        ByteArrayOutputStream part = new ByteArrayOutputStream();
        Inflated.survey(name, bytes, (piece, length) -> {
            if (length == 0) {
                digests.add(Digest.sha256(part.toByteArray()));
                part.reset();
            } else {
                part.write(piece, 0, length);
            }
        });
        return digests.isEmpty() ? digests : digests.subList(0, digests.size() - 1);
    }
}
