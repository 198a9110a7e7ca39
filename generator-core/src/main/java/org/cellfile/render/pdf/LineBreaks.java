package org.cellfile.render.pdf;

import com.openhtmltopdf.extend.FSTextBreaker;
import com.openhtmltopdf.layout.UrlAwareLineBreakIterator;
import java.text.BreakIterator;
import java.util.BitSet;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Where a line may end: after a space or a hyphen, but never within a date. */
final class LineBreaks implements FSTextBreaker {

    private static final Pattern DATE = Pattern.compile("\\b\\d{4}-\\d{2}-\\d{2}\\b");

    private final FSTextBreaker words = new UrlAwareLineBreakIterator(BreakIterator.getLineInstance(Locale.ROOT));
    private final BitSet within = new BitSet();

    @Override
    public void setText(String text) {
        words.setText(text);
        within.clear();
        for (Matcher date = DATE.matcher(text); date.find(); ) {
            within.set(date.start() + 1, date.end());
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
