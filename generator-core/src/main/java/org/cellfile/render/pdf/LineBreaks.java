package org.cellfile.render.pdf;

import com.openhtmltopdf.extend.FSTextBreaker;
import com.openhtmltopdf.layout.UrlAwareLineBreakIterator;
import java.text.BreakIterator;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where a line may end: after a space or a hyphen, but never within a date, between a number and its unit or within the number of a
 * standard or a rule, nor before the mark that closes a quotation in German.
 */
final class LineBreaks implements FSTextBreaker {

    private static final Pattern DATE = Pattern.compile("\\b\\d{4}-\\d{2}-\\d{2}\\b");
    /** A number stays with its unit, so that nobody reads it with another. */
    private static final Pattern AMOUNT = Pattern.compile("\\d (?:"
            + "[kKM]?(?:Pa|N|V|W|A|Hz|g|m)|[mµ]?s|[cmµ]m|mm|min|h|bar|l|J|%|°C|°F|°|in|ft|lb|psi|Nm|mA|mV|VAC|VDC"
            + ")(?:²|³|/[a-z]+²?)?(?![\\p{L}\\d])");

    /** As in 29 CFR 1910.147, ISO 10218-2:2025, cl. 5.1, PL d. */
    private static final Pattern NUMBERED = Pattern.compile(
            "\\b(?:\\d+ CFR [\\d.]+(?:\\([A-Za-z\\d]{1,4}\\)){0,5}|(?:ISO|IEC|EN|ANSI|ASTM|RFC|NFPA|UL|CSA|DIN)(?:[/ ](?:ISO|IEC|EN|TS|TR|PAS|RIA|B|R))*"
                    + " [A-Z]?\\d[\\d.:-]*\\d|PL [a-e]\\b|SIL \\d|(?:cl|no|nos|p|pp)\\. \\d)");

    // opens a quotation in English, where it stands behind a space or a bracket
    private static final Pattern CLOSING = Pattern.compile("[^\\s(]\u201c");

    private final FSTextBreaker words = new UrlAwareLineBreakIterator(BreakIterator.getLineInstance(Locale.ROOT));
    private final BitSet within = new BitSet();

    @Override
    public void setText(String text) {
        words.setText(text);
        within.clear();
        for (Pattern whole : List.of(DATE, AMOUNT, NUMBERED)) {
            for (Matcher found = whole.matcher(text); found.find(); ) {
                within.set(found.start() + 1, found.end());
            }
        }
        for (Matcher closing = CLOSING.matcher(text); closing.find(); ) {
            within.set(closing.end() - 1);
        }
    }

    @Override
    public int next() {
        int place = words.next();
        while (place >= 0 && within.get(place)) {
            place = words.next();
        }
        return place;
    }
}
