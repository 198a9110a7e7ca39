package org.cellfile.read;

import java.io.IOException;
import java.io.InputStream;
import java.util.Locale;
import java.util.Optional;
import org.cellfile.dossier.Digest;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.source.Stated;
import org.cellfile.source.Stated.Missing;
import org.cellfile.source.World;

/**
 * A file that bears something out, told by its SHA-256. One that lies in the cell's folder must have it; one that is kept
 * elsewhere is only named.
 *
 * @param sha256 in lower-case hexadecimal digits
 * @param keptAt where it is kept if not in the folder
 */
public record Evidence(Stated<String> file, Stated<String> sha256, Stated<String> keptAt) {

    /** What is written is no SHA-256. */
    static final FindingId NO_DIGEST = new FindingId("evidence.no-digest");

    /** The file is not in the folder, and nobody says where it is kept. */
    public static final FindingId NOT_THERE = new FindingId("evidence.not-there");

    /** The file is another one than was meant. */
    static final FindingId DIFFERS = new FindingId("evidence.differs");

    /** Photographs and records of a measurement are far smaller (common practice). */
    static final long LARGEST = 64L << 20;

    static Evidence read(Section section, Reading reading) {
        Evidence evidence = new Evidence(
                section.text("file"), digest(section, section.text("sha256")), section.statementIfStated("kept-at"));
        if (evidence.file.value().isPresent()) {
            evidence.look(reading).ifPresent(section::report);
        }
        return evidence;
    }

    private static Stated<String> digest(Section section, Stated<String> written) {
        if (written.value().isEmpty() || written.characters().matches("[0-9a-fA-F]{64}")) {
            return written.map(digits -> digits.toLowerCase(Locale.ROOT));
        }
        section.report(Finding.refuses(
                NO_DIGEST,
                "",
                written.where(),
                "`" + written.characters() + "` is not a SHA-256",
                "write the 64 hexadecimal digits that `sha256sum` prints of the file"));
        return new Missing<>(written.where(), "sha256");
    }

    /** Holds the file against its digest. */
    private Optional<Finding> look(Reading reading) {
        Optional<World.Entry> entry = reading.entry(file);
        if (entry.isEmpty()) {
            return keptAt.value().isPresent() || reading.isCopy() || !reading.whole() // with which no evidence travels
                    ? Optional.empty()
                    : refuse(
                            NOT_THERE,
                            "there is no file `" + file.characters() + "` in the cell's folder",
                            "put it there and write its path from the folder, or state under `kept-at` where it is kept");
        }
        if (entry.get().size() == World.Entry.UNREADABLE) {
            return Optional.empty(); // reported as such with all files of the folder
        }
        if (!entry.get().inside()) {
            return refuse(
                    Reading.OUTSIDE,
                    "`" + file.characters() + "` is a link that leads out of the cell's folder, and it was not opened",
                    "put the file itself into the folder");
        }
        try (InputStream stream = entry.get().content().open()) {
            Optional<String> found = Digest.sha256(stream, LARGEST);
            if (found.isEmpty()) {
                return refuse(
                        Reading.TOO_LARGE,
                        "`" + file.characters() + "` holds more than the " + LARGEST + " bytes that are read",
                        "see whether another file was saved under this name; keep a large one elsewhere and state where"
                                + " under `kept-at`");
            }
            return sha256.value().isEmpty() || sha256.value().equals(found)
                    ? Optional.empty()
                    : refuse(
                            DIFFERS,
                            "`" + file.characters() + "` is not the file that was meant: its SHA-256 is " + found.get(),
                            "find the file as it was when its digest was written down; one that was changed since bears nothing"
                                    + " out");
        } catch (IOException failed) {
            return refuse(
                    Reading.UNREADABLE,
                    "`" + file.characters() + "` could not be read: " + failed.getMessage(),
                    "see whether it can be opened by the account this runs under");
        }
    }

    private Optional<Finding> refuse(FindingId id, String sentence, String help) {
        return Optional.of(Finding.refuses(id, "", (id.equals(DIFFERS) ? sha256 : file).where(), sentence, help));
    }

    /** Name and the beginning of the digest, for print. */
    public String brief() {
        return file.characters() + " ("
                + sha256.value().map(digits -> digits.substring(0, 12)).orElse("–") + "…"
                + keptAt.value().map(place -> ", kept at " + place).orElse("") + ")";
    }
}
