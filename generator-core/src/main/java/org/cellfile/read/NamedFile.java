package org.cellfile.read;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.finding.Nearest;
import org.cellfile.source.Stated;
import org.cellfile.source.World;

/**
 * A file of the folder that is needed byte for byte, such as a typeface. It travels with the description.
 *
 * @param path as it was named
 * @param bytes empty when it could not be read, which was reported
 */
public record NamedFile(Stated<String> path, Optional<byte[]> bytes) {

    /** What such a file is for, and how many of its bytes are read. */
    enum Use {
        /** A mark of 34 by 7 mm needs no more; constructed. */
        LOGO(256 << 10, "save it smaller: it is printed 7 mm high at most", "pictures", "svg|png|jpe?g"),

        /** What an audit reads of one embedded file, so that whatever is printed can be audited. */
        TYPEFACE(
                8 << 20,
                "take a smaller file, as one with the characters of that language alone",
                "typefaces",
                "ttf|otf|ttc|woff2?");

        private final int largest;
        private final String smaller;
        private final String others;
        private final String endings;

        Use(int largest, String smaller, String others, String endings) {
            this.largest = largest;
            this.smaller = smaller;
            this.others = others;
            this.endings = endings;
        }
    }

    static NamedFile read(Stated<String> path, Use use, Reading reading) {
        NamedFile file = new NamedFile(
                path,
                path.value().isEmpty() ? Optional.empty() : new Opening(path, use, reading).bytes(reading.entry(path)));
        file.bytes().ifPresent(bytes -> reading.needed(path, bytes));
        return file;
    }

    private record Opening(Stated<String> path, Use use, Reading reading) {

        Optional<byte[]> bytes(Optional<World.Entry> entry) {
            if (entry.isEmpty()) {
                List<String> others = reading.paths("(?i).*\\.(" + use.endings + ")");
                return none(
                        Reading.NO_SUCH_FILE,
                        "there is no file `" + path.characters() + "` in the cell's folder",
                        "put it there and write its path from the cell's folder"
                                + (others.isEmpty()
                                        ? ""
                                        : "; " + use.others + " that are there: "
                                                + Nearest.listed(path.characters(), others)));
            }
            if (!entry.get().inside()) {
                return none(
                        Reading.OUTSIDE,
                        "`" + path.characters()
                                + "` is a link that leads out of the cell's folder, and it was not opened",
                        "put the file itself into the folder");
            }
            try (InputStream stream = entry.get().content().open()) {
                byte[] bytes = stream.readNBytes(use.largest + 1);
                return bytes.length <= use.largest
                        ? Optional.of(bytes)
                        : none(
                                Reading.TOO_LARGE,
                                "`" + path.characters() + "` holds more than the " + use.largest
                                        + " bytes that are read",
                                use.smaller);
            } catch (IOException failed) {
                return none(
                        Reading.UNREADABLE,
                        "`" + path.characters() + "` could not be read: " + failed.getMessage(),
                        "see whether it can be opened by the account this runs under");
            }
        }

        private Optional<byte[]> none(FindingId id, String sentence, String help) {
            reading.findings().add(Finding.refuses(id, "", path.where(), sentence, help));
            return Optional.empty();
        }
    }
}
