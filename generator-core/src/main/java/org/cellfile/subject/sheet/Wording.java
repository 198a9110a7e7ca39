package org.cellfile.subject.sheet;

import java.text.NumberFormat;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.cellfile.dossier.Sheet.Kind;
import org.cellfile.quantity.Quantity;
import org.cellfile.source.Stated;

/**
 * What one sheet is told with in one language: the fixed wording, the cell's own texts, and dates and numbers as the language
 * writes them.
 */
public final class Wording {

    private final String sheet;
    private final Language language;
    private final Translations translations;

    Wording(String sheet, Language language, Translations translations) {
        this.sheet = sheet;
        this.language = language;
        this.translations = translations;
    }

    Language language() {
        return language;
    }

    /** The wording of this sheet under a key. */
    public String say(String key, String... values) {
        return language.get(sheet + "." + key, (Object[]) values);
    }

    /** The wording under a key that sheets share. */
    public String shared(String key, String... values) {
        return language.get(key, (Object[]) values);
    }

    /** A text of the cell. One that nobody put into the language is reported, and stands there as it is written. */
    public String text(Stated<String> stated) {
        return stated(stated).characters();
    }

    /** The same with the place where it stands: that of its translation, where it is translated. */
    Stated<String> stated(Stated<String> stated) {
        return translations.stated(stated, language);
    }

    /** A day with its month in the manner of the language. */
    public String date(LocalDate day) {
        return DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM)
                .withLocale(language.locale())
                .format(day);
    }

    /** An amount with every digit it has, and with the decimal mark of the language. */
    public String quantity(Quantity quantity) {
        NumberFormat format = NumberFormat.getNumberInstance(language.locale());
        format.setGroupingUsed(false);
        format.setMinimumFractionDigits(Math.max(quantity.number().scale(), 0));
        format.setMaximumFractionDigits(Math.max(quantity.number().scale(), 0));
        String written = quantity.toString();
        String plain = quantity.number().toPlainString();
        return written.startsWith(plain)
                ? format.format(quantity.number()) + "\u00a0"
                        + written.substring(plain.length()).strip()
                : written;
    }

    /** The same in several languages; what does not differ stands there once. */
    static String inEach(List<Wording> wordings, Function<Wording, String> words) {
        return wordings.stream().map(words).distinct().collect(Collectors.joining(" / "));
    }

    /** A part of this sheet, with its title and no lines yet. */
    public Part part(String id, Kind kind, boolean numbered) {
        return new Part(id, kind, say(id), numbered, List.of());
    }

    /** The same part with another line of fixed wording, whose key follows that of the part. */
    public Part tell(Part part, String line, String... values) {
        return part.line(line, say(part.id() + "." + line, values));
    }
}
