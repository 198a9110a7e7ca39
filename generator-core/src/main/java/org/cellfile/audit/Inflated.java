package org.cellfile.audit;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.cellfile.finding.FindingId;

/** Compressed contents, read only as far as a limit, so that a few bytes cannot become more than the machine holds. */
final class Inflated {

    /** Something in the file is larger than anything this program writes, or there are more of a sort. */
    static final FindingId TOO_MUCH = new FindingId("audit.too-much-inside");

    private static final byte[] STREAM = {'s', 't', 'r', 'e', 'a', 'm'};
    private static final byte[] END = {'e', 'n', 'd'};

    private final String file;
    private final String what;
    private final int most;
    private final long mostOfAll;
    private long all;

    /**
     * Limits for one sort of contents.
     *
     * @param what in the plural, for the message
     * @param most bytes of one
     * @param mostOfAll bytes of all together
     */
    Inflated(String file, String what, int most, long mostOfAll) {
        this.file = file;
        this.what = what;
        this.most = most;
        this.mostOfAll = mostOfAll;
    }

    /**
     * Inflates everything in a file that begins as a stream does, wherever it stands, before anything that trusts the file sees it.
     *
     * @param sink is given the contents in the order of the file; one that is not compressed gives nothing
     */
    static void survey(String file, byte[] bytes, Sink sink) throws Refusal {
        Inflated limits = new Inflated(file, "streams", 32 << 20, 256L << 20);
        for (int at = 0; at + STREAM.length + 2 < bytes.length; at++) {
            if (bytes[at] == 's'
                    && Arrays.equals(STREAM, 0, STREAM.length, bytes, at, at + STREAM.length)
                    && !(at >= 3 && Arrays.equals(END, 0, 3, bytes, at - 3, at))) {
                int from = at + STREAM.length;
                while (from < bytes.length && (bytes[from] == '\r' || bytes[from] == '\n')) {
                    from++;
                }
                limits.inflate(bytes, from, sink);
            }
        }
    }

    /** Takes one stream's contents piece by piece; an empty piece ends it. */
    interface Sink {
        void take(byte[] piece, int length);
    }

    private void inflate(byte[] bytes, int from, Sink sink) throws Refusal {
        Inflater inflater = new Inflater();
        try {
            inflater.setInput(bytes, from, bytes.length - from);
            byte[] piece = new byte[1 << 16];
            long one = 0;
            for (int read = inflater.inflate(piece); read > 0; read = inflater.inflate(piece)) {
                one += read;
                count(one, read);
                sink.take(piece, read);
            }
        } catch (DataFormatException notCompressed) {
            // whatever it is, it does not become larger
        } finally {
            sink.take(new byte[0], 0);
            inflater.end();
        }
    }

    /** The contents of a stream. Only the one compression this program uses is undone. */
    byte[] of(COSStream stream) throws IOException, Refusal {
        COSBase filter = stream.getFilters();
        if ((filter != null && !COSName.FLATE_DECODE.equals(filter)) || stream.containsKey(COSName.DECODE_PARMS)) {
            throw new IOException("it is compressed in another way than this program does");
        }
        ByteArrayOutputStream raw = new ByteArrayOutputStream();
        try (InputStream in = stream.createRawInputStream()) {
            in.transferTo(raw);
        }
        if (filter == null) {
            count(raw.size(), raw.size());
            return raw.toByteArray();
        }
        ByteArrayOutputStream inflated = new ByteArrayOutputStream();
        inflate(raw.toByteArray(), 0, (piece, length) -> inflated.write(piece, 0, length));
        return inflated.toByteArray();
    }

    private void count(long one, int more) throws Refusal {
        all += more;
        if (one > most || all > mostOfAll) {
            throw Refusal.of(
                    TOO_MUCH,
                    file,
                    "the " + what + " in the file hold more than the "
                            + (one > most ? (most >> 20) + " MB each" : (mostOfAll >> 20) + " MB together")
                            + " that are read",
                    "a safety file holds far less; see who made this one before anything else is done with it");
        }
    }
}
