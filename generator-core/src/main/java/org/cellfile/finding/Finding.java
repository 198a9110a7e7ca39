package org.cellfile.finding;

import java.util.Comparator;
import java.util.List;
import org.cellfile.source.Span;

/**
 * One thing that does not hold, or is missing, expired or orphaned.
 *
 * @param about the tag of the thing it is about; empty when it is about a file or the cell as a whole
 * @param where the characters it points at
 * @param sentence what is wrong, in one sentence without a full stop
 * @param because why, as lines that are printed as they are
 * @param help what to do; empty when the sentence leaves no question
 */
public record Finding(
        FindingId id, Severity severity, String about, Span where, String sentence, List<String> because, String help)
        implements Comparable<Finding> {

    private static final int LONGEST = 600;

    private static final Comparator<Finding> ORDER = Comparator.comparing(Finding::where)
            .thenComparing(Finding::severity)
            .thenComparing(Finding::id);

    public Finding {
        sentence = plain(sentence);
        help = plain(help);
        because = because.stream().map(Finding::plain).toList();
    }

    /** Quoted input may hold line ends and control characters, and may be as long as a file. */
    private static String plain(String text) {
        String plain = text.replaceAll("[\\p{Cc}\\p{Cf}]", "·");
        return plain.length() <= LONGEST ? plain : plain.substring(0, LONGEST) + "…";
    }

    /** A finding that stops the run. */
    public static Finding refuses(FindingId id, String about, Span where, String sentence, String help) {
        return new Finding(id, Severity.REFUSES, about, where, sentence, List.of(), help);
    }

    /** A finding that lets a draft through. */
    public static Finding barsRelease(FindingId id, String about, Span where, String sentence, String help) {
        return new Finding(id, Severity.BARS_RELEASE, about, where, sentence, List.of(), help);
    }

    /** A finding that is only told. */
    public static Finding warns(FindingId id, String about, Span where, String sentence, String help) {
        return new Finding(id, Severity.WARNS, about, where, sentence, List.of(), help);
    }

    /** The same with another severity. */
    public Finding with(Severity another) {
        return new Finding(id, another, about, where, sentence, because, help);
    }

    /** The same with its reasons. */
    public Finding because(List<String> lines) {
        return new Finding(id, severity, about, where, sentence, lines, help);
    }

    /** The same at another place. */
    public Finding at(Span place) {
        return new Finding(id, severity, about, place, sentence, because, help);
    }

    /** The same about the thing with that tag, of which it concerns a part. */
    public Finding about(String tag) {
        return new Finding(id, severity, tag, where, sentence, because, help);
    }

    /** The same with one tag for another in its sentence. */
    public Finding say(String tag, String instead) {
        String said = sentence.replace("`" + tag + "`", "`" + instead + "`");
        return new Finding(id, severity, about, where, said, because, help);
    }

    /** By file, line and column. */
    @Override
    public int compareTo(Finding other) {
        return ORDER.compare(this, other);
    }
}
