package org.cellfile.subject.sheet;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.read.NamedFile;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.source.Stated.Missing;
import org.cellfile.subject.identity.Person;

/**
 * What is stated about languages: who reviewed their wording, which typefaces the plant has for them, and how long a sentence may be.
 *
 * @param longestSentence in words; missing where nobody asks for a limit
 */
public record InLanguages(List<Review> reviews, List<Typeface> typefaces, Stated<Integer> longestSentence) {

    /** How long a sentence may be cannot be read. */
    static final FindingId NO_LENGTH = new FindingId("sheet.no-length");

    private static final String LONGEST = "longest-sentence";

    /**
     * Somebody whose language it is found the wording right.
     *
     * @param wording the short digest of what was read, as in {@link SeenWording#digest}
     */
    public record Review(Stated<String> language, Stated<String> by, Stated<LocalDate> on, Stated<String> wording) {
        static Review read(Section section) {
            return new Review(
                    section.text("language"),
                    section.reference("by", Person.SORT),
                    section.date("on"),
                    section.textIfStated("wording"));
        }

        /** True when it can be read who that was and on which day. */
        boolean readable() {
            return by.value().isPresent() && on.value().isPresent();
        }
    }

    /** A typeface of the plant's own for a language. */
    public record Typeface(Stated<String> language, NamedFile file) {
        static Typeface read(Section section) {
            return new Typeface(section.text("language"), section.typeface("file"));
        }
    }

    static InLanguages read(Section section) {
        return new InLanguages(
                Section.each(section.listIfStated("reviewed"), Review::read),
                Section.each(section.listIfStated("typefaces"), Typeface::read),
                words(section));
    }

    private static Stated<Integer> words(Section section) {
        Stated<String> written = section.textIfStated(LONGEST);
        if (written.value().isEmpty()) {
            return new Missing<>(written.where(), LONGEST);
        }
        if (!written.characters().matches("[1-9]\\d{0,2} words")) {
            section.report(Finding.refuses(
                    NO_LENGTH,
                    "",
                    written.where(),
                    "`" + LONGEST + "` is `" + written.characters() + "`, which is no number of words",
                    "write a whole number and the word behind it, as in 20 words"));
            return new Missing<>(written.where(), LONGEST);
        }
        return written.map(text -> Integer.valueOf(text.substring(0, text.indexOf(' '))));
    }

    /** The reviews of one language, in the order written. */
    List<Review> reviews(String tag) {
        return reviews.stream()
                .filter(review -> review.language().characters().equals(tag))
                .toList();
    }

    /** The files of the plant's typefaces by their paths. */
    public Map<String, byte[]> files() {
        Map<String, byte[]> files = new TreeMap<>();
        typefaces.forEach(face -> face.file()
                .bytes()
                .ifPresent(bytes -> files.put(face.file().path().characters(), bytes)));
        return files;
    }
}
