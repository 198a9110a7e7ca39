package org.cellfile.render.pdf;

import com.openhtmltopdf.extend.FSTextBreaker;
import com.openhtmltopdf.layout.UrlAwareLineBreakIterator;
import java.text.BreakIterator;
import java.util.BitSet;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Where a line may end: after a space or a hyphen, but never within a date, nor before the mark that closes a quotation in German. */
final class LineBreaks implements FSTextBreaker {

    private static final Pattern DATE = Pattern.compile("\\b\\d{4}-\\d{2}-\\d{2}\\b");
    // opens a quotation in English, where it stands behind a space or a bracket
    private static final Pattern CLOSING = Pattern.compile("[^\\s(]\u201c");

    private final FSTextBreaker words = new UrlAwareLineBreakIterator(BreakIterator.getLineInstance(Locale.ROOT));
    private final BitSet within = new BitSet();

    @Override
    public void setText(String text) {
        words.setText(text);
        within.clear();
        for (Matcher date = DATE.matcher(text); date.find(); ) {
            within.set(date.start() + 1, date.end());
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
