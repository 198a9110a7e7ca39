package org.cellfile.subject.sheet;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cellfile.source.Span;
import org.cellfile.source.Stated;

/**
 * A text of the cell as it is posted in one language: as it stands in the description, or its translation.
 *
 * @param language its tag
 */
public record PostedText(Stated<String> words, String language) {

    /** Where the first match stands in the file; the text as a whole where it is written otherwise than it reads. */
    public Span place(Pattern pattern) {
        Span whole = words.where();
        List<String> lines = whole.file().lines();
        for (int i = whole.line() - 1; i < lines.size(); i++) {
            String line = lines.get(i);
            boolean first = i == whole.line() - 1;
            if (!first && !words.characters().contains(line.strip())) {
                break;
            }
            int from = first
                    ? line.offsetByCodePoints(0, Math.min(whole.column() - 1, line.codePointCount(0, line.length())))
                    : 0;
            Matcher found = pattern.matcher(line);
            if (found.find(from)) {
                return new Span(
                        whole.file(),
                        i + 1,
                        line.codePointCount(0, found.start()) + 1,
                        line.codePointCount(found.start(), found.end()));
            }
        }
        return whole;
    }
}
