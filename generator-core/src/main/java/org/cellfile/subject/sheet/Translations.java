package org.cellfile.subject.sheet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.finding.Findings;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;

/**
 * The cell's own texts in other languages. A translation belongs to the very words it translates: whoever changes the text has
 * to have it translated again.
 */
public final class Translations {

    /** A posted text is not there in a language in which it is posted. */
    public static final FindingId MISSING = new FindingId("translation.missing");

    private final String own;
    private final List<Translated> translated;
    private final Findings findings;

    /**
     * @param own the language in which the description is written
     * @param findings where texts that nobody translated go
     */
    Translations(String own, List<Translated> translated, Findings findings) {
        this.own = own;
        this.translated = translated;
        this.findings = findings;
    }

    /**
     * One text in other languages.
     *
     * @param text as it stands in the description
     * @param languages by tag
     */
    public record Translated(Stated<String> text, Map<String, Stated<String>> languages) {

        static Translated read(Section section) {
            Stated<String> text = section.text("text");
            Map<String, Stated<String>> languages = new LinkedHashMap<>();
            for (String tag : section.keys()) {
                if (!tag.equals("text")) {
                    languages.put(tag, section.text(tag));
                }
            }
            return new Translated(text, languages);
        }
    }

    /** The text in that language; as it is written where it is not there. */
    Stated<String> stated(Stated<String> stated, Language language) {
        if (stated.value().isEmpty() || language.tag().equals(own)) {
            return stated;
        }
        Optional<Stated<String>> found = translated.stream()
                .filter(one -> one.text().characters().equals(stated.characters()))
                .flatMap(one -> Optional.ofNullable(one.languages().get(language.tag())).stream())
                .findFirst();
        if (found.isEmpty()) {
            findings.add(Finding.refuses(
                    MISSING,
                    "",
                    stated.where(),
                    "this text is posted in `" + language.tag() + "`, and nobody put it into that language: `"
                            + stated.characters() + "`",
                    "give it under `translations` in the very words that stand here, with `" + language.tag()
                            + ":` below it, in the words of somebody whose language it is"));
        }
        return found.orElse(stated);
    }
}
