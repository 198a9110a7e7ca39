package org.cellfile.subject.sheet;

import java.text.DecimalFormatSymbols;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import java.util.regex.Pattern;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.finding.Findings;
import org.cellfile.finding.Nearest;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.source.Stated.Written;

/**
 * The cell's own texts in other languages. A translation belongs to the very words it translates: whoever changes the text has
 * to have it translated again.
 */
public final class Translations {

    /** A posted text is not there in a language in which it is posted. */
    public static final FindingId MISSING = new FindingId("translation.missing");

    /** A translation of words that are posted nowhere. */
    static final FindingId UNUSED = new FindingId("translation.unused");

    /** A translation holds other numbers than its text. */
    static final FindingId OTHER_NUMBERS = new FindingId("translation.other-numbers");

    /** One text is put into a language in two ways. */
    static final FindingId CONTRADICTED = new FindingId("translation.contradicted");

    private final String own;
    private final List<Translated> translated;

    private static final Pattern NUMBER = Pattern.compile("\\d+([.,]\\d+)*");

    /** A number with its unit, as in {@code 2.5 bar}: it is the same in every language but for its decimal mark. */
    private static final Pattern AMOUNT = Pattern.compile("\\d+(\\.\\d+)? ?(\\p{L}{1,3}|%|°C|°F)");

    private final Set<String> told = new HashSet<>();
    private final Findings findings;
    private final Map<String, PostedText> posted = new LinkedHashMap<>();
    private final Set<String> originals = new TreeSet<>();

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
     */
    public record Translated(Stated<String> text, List<InLanguage> languages) {

        /** The text in one of them. */
        record InLanguage(Stated<String> tag, Stated<String> words) {}

        static Translated read(Section section) {
            Stated<String> text = section.text("text");
            List<InLanguage> languages = new ArrayList<>();
            for (String tag : section.keys()) {
                if (!tag.equals("text")) {
                    languages.add(new InLanguage(new Written<>(tag, section.where(tag), tag), section.text(tag)));
                }
            }
            return new Translated(text, languages);
        }

        private boolean of(Stated<String> stated) {
            return text.characters().equals(stated.characters());
        }
    }

    /** The text in that language; as it is written where it is not there. */
    Stated<String> stated(Stated<String> stated, Language language) {
        if (stated.value().isEmpty()) {
            return stated;
        }
        if (AMOUNT.matcher(stated.characters()).matches()) {
            String amount = stated.characters().replace('.', decimalMark(language));
            return new Stated.Written<>(amount, stated.where(), amount);
        }
        originals.add(stated.characters());
        Stated<String> told = language.tag().equals(own) ? stated : translation(stated, language.tag());
        posted.putIfAbsent(language.tag() + " " + told.where().position(), new PostedText(told, language.tag()));
        return told;
    }

    private static char decimalMark(Language language) {
        return DecimalFormatSymbols.getInstance(language.locale()).getDecimalSeparator();
    }

    private Stated<String> translation(Stated<String> stated, String tag) {
        Optional<Stated<String>> found = translated.stream()
                .filter(one -> one.of(stated))
                .flatMap(one -> one.languages().stream())
                .filter(one -> one.tag().characters().equals(tag))
                .map(Translated.InLanguage::words)
                .filter(words -> words.value().isPresent())
                .findFirst();
        if (found.isEmpty() && told.add(tag + " " + stated.characters())) {
            findings.add(Finding.refuses(
                    MISSING,
                    "",
                    stated.where(),
                    "this text is posted in `" + tag + "`, and nobody put it into that language: `"
                            + stated.characters() + "`",
                    "give it under `translations` in the very words that stand here, with `" + tag
                            + ":` below it, in the words of somebody whose language it is"));
        }
        found.ifPresent(words -> sameNumbers(stated, words, tag));
        return found.orElse(stated);
    }

    /** In another language the words change, and never a number: post 4 is not post 5. */
    private void sameNumbers(Stated<String> stated, Stated<String> words, String tag) {
        List<String> meant = numbers(stated);
        List<String> named = numbers(words);
        if (!meant.equals(named) && told.add(tag + " " + words.characters() + " " + stated.characters())) {
            findings.add(Finding.refuses(
                    OTHER_NUMBERS,
                    "",
                    words.where(),
                    "this translation holds " + listed(named) + ", and the text it translates " + listed(meant) + " ("
                            + stated.where().position() + ")",
                    "write the same numbers in digits in every language; their order may differ"));
        }
    }

    /** Sorted, with a point as decimal mark, so that only their amounts count. */
    private static List<String> numbers(Stated<String> text) {
        return NUMBER.matcher(text.characters())
                .results()
                .map(number -> number.group().replace(',', '.'))
                .sorted()
                .toList();
    }

    private static String listed(List<String> numbers) {
        return numbers.isEmpty() ? "no number" : "the numbers " + String.join("; ", numbers);
    }

    /** Every text that was posted, with its language. */
    List<PostedText> posted() {
        return List.copyOf(posted.values());
    }

    /** Reports texts that are put into a language in two ways; nobody could say which of them is posted. */
    void reportContradicted() {
        eachTwice((first, again) -> {
            if (!first.words().characters().equals(again.words().characters())) {
                findings.add(Finding.refuses(
                        CONTRADICTED,
                        "",
                        again.words().where(),
                        "the same text is put into `" + again.tag().characters() + "` otherwise at "
                                + first.words().where().position() + ": `"
                                + first.words().characters() + "`",
                        "keep the one that somebody finds right whose language it is"));
            }
        });
    }

    /** Reports translations that stand on no sheet; to be called when every sheet was told. */
    void reportUnused(Set<String> printed) {
        eachTwice((first, again) -> {
            if (first.words().characters().equals(again.words().characters())) {
                unused(
                        again,
                        "these words are translated at " + first.tag().where().position() + " already",
                        "keep one of the two");
            }
        });
        Set<String> before = new HashSet<>();
        for (Translated one : translated) {
            for (Translated.InLanguage in : one.languages()) {
                String tag = in.tag().characters();
                if (!before.add(key(one, in))) {
                    continue;
                }
                if (tag.equals(own)) {
                    unused(
                            in,
                            "the description itself is written in `" + tag + "`, and its words are not replaced",
                            "write the text itself as it is to be posted, and translate that");
                } else if (printed.contains(tag)
                        && !originals.contains(one.text().characters())) {
                    unused(
                            in,
                            "no text that is posted reads `" + one.text().characters() + "`",
                            Nearest.to(one.text().characters(), originals)
                                    .map(near -> "`" + near
                                            + "` is nearest: see whether its words were changed since and have"
                                            + " them translated anew")
                                    .orElse("delete it, or write above it the very words that are posted"));
                }
            }
        }
    }

    /** Tells of each text and language the first translation with every further one. */
    private void eachTwice(BiConsumer<Translated.InLanguage, Translated.InLanguage> told) {
        Map<String, Translated.InLanguage> before = new HashMap<>();
        for (Translated one : translated) {
            for (Translated.InLanguage in : one.languages()) {
                Translated.InLanguage first = before.putIfAbsent(key(one, in), in);
                if (first != null && in.words().value().isPresent()) {
                    told.accept(first, in);
                }
            }
        }
    }

    private static String key(Translated one, Translated.InLanguage in) {
        return in.tag().characters() + " " + one.text().characters();
    }

    private void unused(Translated.InLanguage in, String sentence, String help) {
        findings.add(Finding.warns(UNUSED, "", in.tag().where(), sentence, help));
    }

    /** Every language into which something is translated, where each is named. */
    List<Stated<String>> languages() {
        return translated.stream()
                .flatMap(one -> one.languages().stream())
                .map(Translated.InLanguage::tag)
                .toList();
    }
}
