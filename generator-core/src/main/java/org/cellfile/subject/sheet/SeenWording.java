package org.cellfile.subject.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.cellfile.dossier.Canonical;
import org.cellfile.dossier.Digest;

/**
 * What somebody reads who reviews a language, as a digest short enough to be typed: as with sign-offs, a review counts for the very
 * words it saw. The texts of the description itself are no part of it; who signs the description answers for them.
 *
 * @param fixed the first digits of the SHA-256 of the fixed wording, in hexadecimal digits
 * @param own the same of the cell's texts as they were put into the language, each with the text it translates; empty where there
 *     are none
 */
public record SeenWording(String fixed, String own) {

    /** So many digits tell one wording from another; whoever wants to deceive types the digest of words nobody read anyway. */
    private static final int DIGITS = 8;

    private static final String BETWEEN = "-";

    static SeenWording of(Language language, List<Translations.Translated> translations) {
        SortedMap<String, String> own = new TreeMap<>();
        translations.forEach(one -> one.languages().stream()
                .filter(in -> in.tag().characters().equals(language.tag()))
                .forEach(in -> own.put(one.text().characters(), in.words().characters())));
        return new SeenWording(digest(language.printed()), own.isEmpty() ? "" : digest(own));
    }

    private static String digest(SortedMap<String, String> words) {
        return Digest.sha256(Canonical.write(words)).substring(0, DIGITS);
    }

    /** As it is written into a review. */
    String digest() {
        return own.isEmpty() ? fixed : fixed + BETWEEN + own;
    }

    /** Which of the two is another than when somebody wrote that digest, in words. */
    List<String> changedSince(String digest) {
        List<String> parts = new ArrayList<>(List.of(digest.split(BETWEEN, 2)));
        parts.add("");
        List<String> changed = new ArrayList<>();
        if (!parts.get(0).equals(fixed)) {
            changed.add("the fixed wording");
        }
        if (!parts.get(1).equals(own)) {
            changed.add(
                    own.isEmpty()
                            ? "the cell's own texts, of which none is in that language any more"
                            : parts.get(1).isEmpty()
                                    ? "the cell's own texts, of which none was in that language then"
                                    : "the cell's own texts in that language");
        }
        return changed;
    }
}
