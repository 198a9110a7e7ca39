package org.cellfile.subject.sheet;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormatSymbols;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Unit;

/**
 * The speeds a text speaks of: a number in digits with a length and a time, by their symbols or in the words of its language. The inch
 * is 25.4 mm and the foot 304.8 mm exactly (international yard and pound agreement of 1959).
 */
final class SpokenSpeeds {

    private static final String NUMBER = "(?iu)(?<![\\p{L}\\d.,])(\\d(?:[\\d.,'\u2019\u00a0\u202f]*\\d)?)";
    private static final String SPACE = "[\\s\u00a0\u202f]*";
    private static final String END = "(?![\\p{L}\\d\u00b2])";

    /** So many digits behind the point of a speed in mm/s are far more than anybody writes. */
    private static final int DIGITS = 9;

    /** A length or a time with its size in millimetres or seconds. */
    private record Measure(String key, String symbol, String size) {

        /** Its symbol and its words in a language. */
        String pattern(Language language) {
            return "(?:" + Pattern.quote(symbol) + "|" + alternatives(language, key) + ")";
        }
    }

    private static final List<Measure> LENGTHS = List.of(
            new Measure("millimetre", "mm", "1"),
            new Measure("centimetre", "cm", "10"),
            new Measure("metre", "m", "1000"),
            new Measure("kilometre", "km", "1000000"),
            new Measure("inch", "in", "25.4"),
            new Measure("foot", "ft", "304.8"));

    private static final List<Measure> TIMES = List.of(
            new Measure("second", "s", "1"), new Measure("minute", "min", "60"), new Measure("hour", "h", "3600"));

    /**
     * One of them.
     *
     * @param words as they stand in the text
     * @param speed in mm/s
     */
    record Spoken(String words, Quantity speed) {}

    private SpokenSpeeds() {}

    /** All of them, in no order. */
    static List<Spoken> in(String text, Language language) {
        List<Spoken> spoken = new ArrayList<>();
        if (text.chars().noneMatch(Character::isDigit)) {
            return spoken;
        }
        String per = SPACE + "(?:/|" + alternatives(language, "per") + ")" + SPACE;
        for (Measure length : LENGTHS) {
            for (Measure time : TIMES) {
                Matcher matcher = Pattern.compile(
                                NUMBER + SPACE + length.pattern(language) + per + time.pattern(language) + END)
                        .matcher(text);
                while (matcher.find()) {
                    BigDecimal speed = number(matcher.group(1), language)
                            .multiply(new BigDecimal(length.size()))
                            .divide(new BigDecimal(time.size()), DIGITS, RoundingMode.HALF_EVEN);
                    spoken.add(new Spoken(matcher.group(), new Quantity(speed, Unit.MILLIMETRE_PER_SECOND)));
                }
            }
        }
        return spoken;
    }

    private static String alternatives(Language language, String key) {
        return Stream.of(language.get("own-steps." + key).split(",", -1))
                .map(String::strip)
                .map(word -> Stream.of(word.split("\\s+", -1))
                        .map(one -> one.endsWith("*")
                                ? Pattern.quote(one.substring(0, one.length() - 1)) + "\\p{L}*"
                                : Pattern.quote(one))
                        .collect(Collectors.joining("\\s+")))
                .collect(Collectors.joining("|"));
    }

    /** A number as the language writes it; a foreign decimal mark is taken as one where it cannot divide thousands. */
    private static BigDecimal number(String written, Language language) {
        char mark = DecimalFormatSymbols.getInstance(language.locale()).getDecimalSeparator();
        char other = mark == ',' ? '.' : ',';
        boolean foreign = written.indexOf(mark) < 0 && written.matches("\\d+\\Q" + other + "\\E(\\d{1,2}|\\d{4,})");
        String[] parts = written.split(Pattern.quote(String.valueOf(foreign ? other : mark)), 2);
        String whole = parts[0].replaceAll("\\D", "");
        return new BigDecimal(parts.length == 1 ? whole : whole + "." + parts[1].replaceAll("\\D", ""));
    }
}
