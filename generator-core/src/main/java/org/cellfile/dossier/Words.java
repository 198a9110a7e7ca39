package org.cellfile.dossier;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.MessageFormat;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Properties;
import java.util.concurrent.ConcurrentHashMap;

/** Fixed wording from the templates, by key. */
public final class Words {

    private static final String ROOT = "/org/cellfile/templates/";

    /** Each is read once, as resources do not change while the program runs. */
    private static final Map<String, Words> READ = new ConcurrentHashMap<>();

    private final String resource;
    private final Properties words;

    private Words(String resource, Properties words) {
        this.resource = resource;
        this.words = words;
    }

    /**
     * The English wording in a folder of the templates.
     *
     * @param folder for example {@code kinds/light-curtain}
     */
    public static Words of(String folder) {
        return READ.computeIfAbsent(ROOT + folder + "/words_en.properties", Words::read);
    }

    /**
     * What a folder of the templates holds beside its wording, the same in every language.
     *
     * @param name of the file, without its ending
     */
    public static Words structure(String folder, String name) {
        return READ.computeIfAbsent(ROOT + folder + "/" + name + ".properties", Words::read);
    }

    private static Words read(String resource) {
        Properties words = new Properties();
        try (Reader reader = new InputStreamReader(
                Objects.requireNonNull(Words.class.getResourceAsStream(resource), resource), StandardCharsets.UTF_8)) {
            words.load(reader);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        return new Words(resource, words);
    }

    /** The wording under a key, with {@code {0}}, {@code {1}} … replaced by the values. */
    public String get(String key, Object... values) {
        String pattern = Objects.requireNonNull(words.getProperty(key), resource + ": " + key);
        return values.length == 0 ? pattern : new MessageFormat(pattern, Locale.ROOT).format(values);
    }
}
