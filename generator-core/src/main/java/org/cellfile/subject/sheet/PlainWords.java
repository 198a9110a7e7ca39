package org.cellfile.subject.sheet;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.finding.Findings;

/** What is posted is read while standing at a machine: words that leave open what is to be done have no place on it. */
final class PlainWords {

    /** A word that leaves open what is to be done. */
    static final FindingId VAGUE = new FindingId("sheet.vague-word");

    /** A sentence of more words than the plant allows. */
    static final FindingId LONG = new FindingId("sheet.long-sentence");

    private PlainWords() {}

    static void check(PostedText text, List<Pattern> vague, Optional<Integer> longest, Findings findings) {
        String characters = text.words().characters();
        for (Pattern word : vague) {
            Matcher found = word.matcher(characters);
            if (found.find()) {
                findings.add(Finding.refuses(
                        VAGUE,
                        "",
                        text.place(word),
                        "`" + found.group() + "` leaves open what is to be done, in a text posted in `"
                                + text.language() + "`",
                        "say who does what, when, with which thing and up to which value"));
            }
        }
        longest.ifPresent(most -> Stream.of(characters.split("(?<=[.!?])\\s+|(?<=[。！？])"))
                .filter(sentence -> words(sentence) > most)
                .findFirst()
                .ifPresent(sentence -> findings.add(Finding.warns(
                        LONG,
                        "",
                        text.words().where(),
                        "a sentence of this text has " + words(sentence) + " words, more than the " + most
                                + " that are to be the most",
                        "make two of it, one thought in each"))));
    }

    private static long words(String sentence) {
        return Stream.of(sentence.split("\\s+"))
                .filter(word -> word.codePoints().anyMatch(Character::isLetterOrDigit))
                .count();
    }
}
