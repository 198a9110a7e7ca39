package org.cellfile.render.template;

import freemarker.core.TemplateClassResolver;
import freemarker.core.XMLOutputFormat;
import freemarker.template.Configuration;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.TimeZone;
import java.util.TreeMap;

/**
 * Fills in the templates.
 *
 * <p>Values are escaped where they are printed and never read as template text, so mark-up and template syntax in a free
 * text come out as they were written. A template sees plain data and records only: no class, no method, no other file.
 */
public final class Templates {

    private static final String ROOT = "/org/cellfile/templates";

    private static final Configuration CONFIGURATION = configuration();

    private Templates() {}

    /**
     * Fills in one template.
     *
     * @param path below the template root
     * @param data strings, numbers, booleans, records, enums, and lists and maps of these
     */
    public static String fill(String path, Map<String, ?> data) {
        StringWriter filled = new StringWriter(1 << 16);
        try {
            CONFIGURATION.getTemplate(path).process(data, filled);
        } catch (TemplateException | IOException e) {
            throw new IllegalStateException("the template " + path + " does not fit its data", e);
        }
        return filled.toString();
    }

    /**
     * Reads templates before they are filled in, for a run that has to wait for something else meanwhile.
     *
     * @param path of one
     * @param folder below the template root that holds one for each sort of thing
     * @param sorts the sealed interface of these things
     */
    public static void prepare(String path, String folder, Class<?> sorts) {
        try {
            CONFIGURATION.getTemplate(path);
            for (Class<?> sort : sorts.getPermittedSubclasses()) {
                CONFIGURATION.getTemplate(folder + RecordModel.sort(sort) + ".ftl");
            }
        } catch (IOException e) {
            throw new IllegalStateException("a template is missing or broken", e);
        }
    }

    /**
     * The fixed words of the page frames.
     *
     * @param language as in the file's name, for example {@code en}
     */
    public static Map<String, String> words(String language) {
        String path = ROOT + "/words_" + language + ".properties";
        Properties words = new Properties();
        try (InputStream stream = Templates.class.getResourceAsStream(path)) {
            if (stream == null) {
                throw new IllegalStateException("there are no words for the language " + language);
            }
            Reader reader = new InputStreamReader(stream, StandardCharsets.UTF_8);
            words.load(reader);
        } catch (IOException e) {
            throw new IllegalStateException(path + " cannot be read", e);
        }
        Map<String, String> sorted = new TreeMap<>();
        for (String key : words.stringPropertyNames()) {
            sorted.put(key, words.getProperty(key));
        }
        return sorted;
    }

    private static Configuration configuration() {
        Configuration configuration = new Configuration(Configuration.VERSION_2_3_34);
        configuration.setClassForTemplateLoading(Templates.class, ROOT);
        configuration.setDefaultEncoding(StandardCharsets.UTF_8.name());
        configuration.setLocale(Locale.ROOT);
        configuration.setLocalizedLookup(false);
        configuration.setTimeZone(TimeZone.getTimeZone(ZoneOffset.UTC));
        configuration.setNumberFormat("computer");
        configuration.setOutputFormat(XMLOutputFormat.INSTANCE);
        configuration.setObjectWrapper(new PlainDataWrapper(configuration.getIncompatibleImprovements()));
        configuration.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
        configuration.setAPIBuiltinEnabled(false);
        configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        configuration.setLogTemplateExceptions(false);
        configuration.setWrapUncheckedExceptions(true);
        configuration.setTemplateUpdateDelayMilliseconds(Long.MAX_VALUE);
        return configuration;
    }
}
