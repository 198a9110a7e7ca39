package org.cellfile.read;

import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;
import org.cellfile.finding.FindingId;
import org.cellfile.source.Stated;
import org.cellfile.source.World;

/**
 * A file of the folder that is needed byte for byte, such as a typeface. It travels with the description.
 *
 * @param path as it was named
 * @param bytes empty when it could not be read, which was reported
 */
public record NamedFile(Stated<String> path, Optional<byte[]> bytes) {

    /** What an audit reads of one embedded file, so that whatever is printed can be audited. */
    static final int LARGEST = 8 << 20;

    static NamedFile read(Section section, Stated<String> path, Reading reading) {
        return new NamedFile(
                path,
                path.value().isEmpty() ? Optional.empty() : new Opening(section, path).bytes(reading.entry(path)));
    }

    private record Opening(Section section, Stated<String> path) {

        Optional<byte[]> bytes(Optional<World.Entry> entry) {
            if (entry.isEmpty()) {
                return none(
                        Reading.NO_SUCH_FILE,
                        "there is no file `" + path.characters() + "` in the cell's folder",
                        "put it there and write its path from the cell's folder");
            }
            if (!entry.get().inside()) {
                return none(
                        Reading.OUTSIDE,
                        "`" + path.characters()
                                + "` is a link that leads out of the cell's folder, and it was not opened",
                        "put the file itself into the folder");
            }
            if (entry.get().size() > LARGEST) {
                return none(
                        Reading.TOO_LARGE,
                        "`" + path.characters() + "` holds " + entry.get().size() + " bytes, more than the " + LARGEST
                                + " that are read",
                        "take a smaller file, as one with the characters of that language alone");
            }
            try (InputStream stream = entry.get().content().open()) {
                return Optional.of(stream.readNBytes(LARGEST));
            } catch (IOException failed) {
                return none(
                        Reading.UNREADABLE,
                        "`" + path.characters() + "` could not be read: " + failed.getMessage(),
                        "see whether it can be opened by the account this runs under");
            }
        }

        private Optional<byte[]> none(FindingId id, String sentence, String help) {
            section.refuse(id, path.where(), sentence, help);
            return Optional.empty();
        }
    }
}
