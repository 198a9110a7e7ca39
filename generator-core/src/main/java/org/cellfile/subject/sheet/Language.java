package org.cellfile.subject.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.cellfile.source.SourceFile;
import org.jspecify.annotations.Nullable;

/** The fixed wording of posted sheets in one language: one properties file, of this program or of the plant. */
public final class Language {

    /** The folder of a cell with languages of the plant's own. */
    public static final String FOLDER = "languages/";

    /** The language in which everything else of a description is written where it says nothing else. */
    public static final String FIRST = "en";

    /** The tags of those this program has. */
    public static final List<String> KNOWN = List.of("de", "en", "es", "pl");

    static final String REVIEWED_BY = "language.reviewed-by";

    private static final String BUILT_IN = "/org/cellfile/templates/languages/";

    private static final Pattern PLACE = Pattern.compile("\\{(\\d+)}");

    private final String tag;
    private final Properties words;

    private Language(String tag, Properties words) {
        this.tag = tag;
        this.words = words;
    }

    /**
     * A language by its tag. A file of the plant's takes the place of the one this program has.
     *
     * @param tag BCP 47
     * @param sources the cell's files
     * @return empty when there is no wording in that language
     */
    public static Optional<Language> of(String tag, List<SourceFile> sources) {
        String name = tag + ".properties";
        return sources.stream()
                .filter(file -> file.path().equals(FOLDER + name))
                .findFirst()
                .map(file -> read(tag, new StringReader(file.text())))
                .or(() -> builtIn(tag, Language.class.getResourceAsStream(BUILT_IN + name)));
    }

    private static Optional<Language> builtIn(String tag, @Nullable InputStream resource) {
        return Optional.ofNullable(resource)
                .map(stream -> read(tag, new InputStreamReader(stream, StandardCharsets.UTF_8)));
    }

    private static Language read(String tag, Reader reader) {
        Properties words = new Properties();
        try (reader) {
            words.load(reader);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        return new Language(tag, words);
    }

    public String tag() {
        return tag;
    }

    public Locale locale() {
        return Locale.forLanguageTag(tag);
    }

    /** Every key it has wording for. */
    public Set<String> keys() {
        return new TreeSet<>(words.stringPropertyNames());
    }

    /** The places for values in the wording under a key, as in {@code 0} for {@code {0}}. */
    Set<String> places(String key) {
        return PLACE.matcher(words.getProperty(key, ""))
                .results()
                .map(place -> place.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** The wording under a key, with {@code {0}}, {@code {1}} … replaced by the values. */
    public String get(String key, Object... values) {
        String pattern = Objects.requireNonNull(words.getProperty(key), tag + ": " + key);
        return new MessageFormat(pattern, Locale.ROOT).format(values);
    }
}
