package org.cellfile.subject.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.finding.Findings;
import org.cellfile.finding.Nearest;
import org.cellfile.read.WordsFile;
import org.cellfile.source.SourceFile;
import org.cellfile.source.Stated;

/** The fixed wording of posted sheets in one language: one properties file, of this program or of the plant. */
public final class Language {

    /** A file of the plant's lacks words, or has words nobody asks for. */
    static final FindingId KEY = new FindingId("language.key");

    /** Words of the plant's do not take the values that stand in them in the other languages. */
    static final FindingId PLACE = new FindingId("language.place");

    /** The language in which everything else of a description is written where it says nothing else. */
    public static final String FIRST = "en";

    /** The tags of those this program has. */
    public static final List<String> KNOWN = List.of("de", "en", "es", "pl");

    static final String NAME = "language.name";
    static final String REVIEWED_BY = "language.reviewed-by";

    private static final String VAGUE = "words.vague";

    /** By these the program looks at what the plant wrote; nobody reads them on a page. */
    private static final Pattern NOT_PRINTED = Pattern.compile("(words|own-steps)\\..*|" + Pattern.quote(REVIEWED_BY));

    private static final String TEMPLATES = "/org/cellfile/templates/";
    private static final Pattern PLACES = Pattern.compile("\\{(\\d+)}");

    private final String tag;
    private final SourceFile file;
    private final Map<String, Stated<String>> words;

    private Language(String tag, SourceFile file, Map<String, Stated<String>> words) {
        this.tag = tag;
        this.file = file;
        this.words = words;
    }

    /** The same of files whose faults do not matter here. */
    public static Optional<Language> of(String tag, List<SourceFile> sources) {
        return of(tag, sources, new Findings());
    }

    /**
     * A language by its tag. What a file of the plant's says takes the place of what this program says in that language.
     *
     * @param tag BCP 47
     * @param sources the cell's files
     * @param findings what keeps a file of the plant's from being used
     * @return empty when there is no wording in that language
     */
    static Optional<Language> of(String tag, List<SourceFile> sources, Findings findings) {
        Optional<Language> builtIn = builtIn(tag);
        return sources.stream()
                .filter(file -> file.path().equals(WordsFile.path(tag)))
                .findFirst()
                .map(file -> own(tag, file, builtIn, findings))
                .or(() -> builtIn);
    }

    private static Language own(String tag, SourceFile file, Optional<Language> builtIn, Findings findings) {
        Map<String, Stated<String>> own = WordsFile.read(file, findings);
        Map<String, Stated<String>> words = new LinkedHashMap<>();
        builtIn.ifPresent(language -> words.putAll(language.words));
        words.remove(REVIEWED_BY); // whoever reviewed the words of this program has not seen those of the plant
        words.putAll(own);
        Language language = new Language(tag, file, words);
        language.held(builtIn(FIRST).orElseThrow(), findings);
        return language;
    }

    private static Optional<Language> builtIn(String tag) {
        if (!KNOWN.contains(tag)) {
            return Optional.empty();
        }
        String path = WordsFile.path(tag);
        try (InputStream stream = Objects.requireNonNull(Language.class.getResourceAsStream(TEMPLATES + path), path)) {
            SourceFile file = new SourceFile(path, new String(stream.readAllBytes(), StandardCharsets.UTF_8));
            Map<String, Stated<String>> words = WordsFile.read(file, new Findings());
            return Optional.of(new Language(tag, file, words));
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** Holds it against a language that says everything. */
    private void held(Language first, Findings findings) {
        List<String> missing = first.words.keySet().stream()
                .filter(key -> !key.equals(REVIEWED_BY))
                .filter(key -> written(key).isBlank())
                .toList();
        if (!missing.isEmpty()) {
            findings.add(Finding.refuses(
                            KEY,
                            "",
                            file.whole(),
                            (missing.size() == 1 ? "1 wording is" : missing.size() + " wordings are") + " missing in `"
                                    + tag + "`, and a sheet without them would say less than in another language",
                            "write each as somebody says it whose language it is")
                    .because(missing.stream()
                            .map(key -> key + " = " + first.written(key))
                            .toList()));
        }
        if (!written(REVIEWED_BY).isBlank()) {
            findings.add(Finding.refuses(
                    KEY,
                    "",
                    Objects.requireNonNull(words.get(REVIEWED_BY)).where(),
                    "a review named in this file does not say which wording it saw, and cannot count",
                    "state it under `sheets`, `reviewed`, with the day and with `wording`, and leave this line empty"));
        }
        words.forEach((key, stated) -> {
            if (!first.words.containsKey(key)) {
                findings.add(Finding.refuses(
                        KEY,
                        "",
                        stated.where(),
                        "nothing on a sheet is said under `" + key + "`",
                        Nearest.to(key, first.keys())
                                .map(near -> "`" + near + "` is the nearest key")
                                .orElse("delete the line")));
            } else if (!missing.contains(key)
                    && (!places(key).equals(first.places(key))
                            || !PLACES.matcher(stated.characters())
                                    .replaceAll("")
                                    .matches("[^{}]*"))) {
                findings.add(Finding.refuses(
                                PLACE,
                                "",
                                stated.where(),
                                "`" + key + "` does not take the values that belong into it",
                                first.places(key).isEmpty()
                                        ? "write it without braces: no value belongs into it"
                                        : "put each of " + shown(first.places(key))
                                                + " where its value belongs in this language, and no other brace")
                        .because(List.of("in English: " + first.written(key))));
            }
        });
    }

    private static String shown(Set<String> places) {
        return places.stream().map(place -> "`{" + place + "}`").collect(Collectors.joining(", "));
    }

    public String tag() {
        return tag;
    }

    public Locale locale() {
        return Locale.forLanguageTag(tag);
    }

    /** As people who speak it call it. */
    String name() {
        return get(NAME);
    }

    /** The native practitioner who reviewed the wording of this program; empty when nobody did, or when the plant has words of its own. */
    String reviewedBy() {
        return written(REVIEWED_BY);
    }

    /** Its wording as far as somebody reads it on a page, by key, with the places for values. */
    SortedMap<String, String> printed() {
        SortedMap<String, String> printed = new TreeMap<>();
        words.forEach((key, stated) -> {
            if (!NOT_PRINTED.matcher(key).matches()) {
                printed.put(key, stated.characters());
            }
        });
        return printed;
    }

    /** Every key it has wording for. */
    public Set<String> keys() {
        return new TreeSet<>(words.keySet());
    }

    /** Everything it says, where it stands. */
    public List<Stated<String>> said() {
        return List.copyOf(words.values());
    }

    /** Words that say too little, each as a pattern: any letters may stand where an asterisk is. */
    List<Pattern> vague() {
        return Stream.of(written(VAGUE).split(","))
                .map(String::strip)
                .filter(word -> !word.isEmpty())
                .map(Language::pattern)
                .toList();
    }

    private static Pattern pattern(String word) {
        String letters = Stream.of(word.replace("*", "").split("\\s+"))
                .map(Pattern::quote)
                .collect(Collectors.joining("\\s+"));
        return Pattern.compile(
                (word.startsWith("*") ? "" : "(?<![\\p{L}\\p{N}])")
                        + letters
                        + (word.endsWith("*") ? "\\p{L}*" : "(?![\\p{L}\\p{N}])"),
                Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    /** The places for values in the wording under a key, as in {@code 0} for {@code {0}}. */
    Set<String> places(String key) {
        return PLACES.matcher(written(key))
                .results()
                .map(place -> place.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private String written(String key) {
        Stated<String> stated = words.get(key);
        return stated == null ? "" : stated.characters();
    }

    /** The wording under a key, with {@code {0}}, {@code {1}} … replaced by the values; a place without a value stays. */
    public String get(String key, Object... values) {
        String pattern =
                Objects.requireNonNull(words.get(key), tag + ": " + key).characters();
        return PLACES.matcher(pattern).replaceAll(place -> {
            int value = Integer.parseInt(place.group(1));
            return Matcher.quoteReplacement(value < values.length ? String.valueOf(values[value]) : place.group());
        });
    }
}
