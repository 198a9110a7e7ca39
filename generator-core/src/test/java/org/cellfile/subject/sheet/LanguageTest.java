package org.cellfile.subject.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.DecimalFormat;
import java.text.NumberFormat;
import java.text.ParseException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.cellfile.finding.Findings;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The built-in languages say the same things. The figures and texts are constructed. */
class LanguageTest {

    private static final Language FIRST = Language.of(Language.FIRST, List.of()).orElseThrow();

    static List<String> tags() {
        return Language.KNOWN;
    }

    @Test
    void everyFileOfTheFolderIsKnown() throws IOException {
        Path folder =
                Path.of("..", "templates", "src", "main", "resources", "org", "cellfile", "templates", "languages");
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files.map(file -> String.valueOf(file.getFileName())))
                    .containsExactlyInAnyOrderElementsOf(
                            tags().stream().map(tag -> tag + ".properties").toList());
        }
    }

    @ParameterizedTest
    @MethodSource("tags")
    void hasTheSameKeys(String tag) {
        assertThat(Language.of(tag, List.of()).orElseThrow().keys()).isEqualTo(FIRST.keys());
    }

    @ParameterizedTest
    @MethodSource("tags")
    void hasTheSamePlacesForValues(String tag) {
        Language language = Language.of(tag, List.of()).orElseThrow();
        for (String key : FIRST.keys()) {
            assertThat(language.places(key)).as(key).isEqualTo(FIRST.places(key));
        }
    }

    @ParameterizedTest
    @MethodSource("tags")
    void leavesNoPlaceUnfilled(String tag) {
        Language language = Language.of(tag, List.of()).orElseThrow();
        for (String key : FIRST.keys()) {
            List<String> values =
                    FIRST.places(key).stream().map(place -> "<" + place + ">").toList();
            String said = language.get(key, values.toArray());
            assertThat(values).as(key).allMatch(said::contains);
            assertThat(said).as(key).doesNotContain("{", "\'\'");
        }
    }

    @ParameterizedTest
    @MethodSource("tags")
    void saysEverything(String tag) {
        Language language = Language.of(tag, List.of()).orElseThrow();
        assertThat(language.keys())
                .allSatisfy(key -> assertThat(key.equals(Language.REVIEWED_BY) ? "nobody" : language.get(key))
                        .isNotBlank());
    }

    @ParameterizedTest
    @MethodSource("tags")
    void itsOwnWordsAreNotVague(String tag) {
        Language language = Language.of(tag, List.of()).orElseThrow();
        for (String key : language.keys()) {
            if (!key.startsWith("words.")) {
                assertThat(language.vague())
                        .as(key)
                        .noneMatch(word -> word.matcher(language.get(key)).find());
            }
        }
    }

    /** Every word of DGUV 114-016, annex 5, in a form in which it stands in sentences. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Regelmäßige Kontrolle",
                "in ausreichendem Abstand",
                "erforderlichenfalls melden",
                "eventuelle Störung",
                "angemessener Abstand",
                "gelegentlich prüfen",
                "weitgehend leer",
                "mit GEEIGNETEM Werkzeug",
                "im normalen Betrieb",
                "möglichst weit weg",
                "an der üblichen Stelle"
            })
    void theElevenWordsAreFound(String text) {
        assertThat(Language.of("de", List.of()).orElseThrow().vague())
                .anyMatch(word -> word.matcher(text).find());
    }

    @ParameterizedTest
    @ValueSource(strings = {"im anormalen Betrieb", "die Möglichkeit", "ungeeignet", "an der Tür"})
    void whatOnlyLooksLikeThemIsNot(String text) {
        assertThat(Language.of("de", List.of()).orElseThrow().vague())
                .noneMatch(word -> word.matcher(text).find());
    }

    @ParameterizedTest
    @MethodSource("tags")
    void numbersAreTheSameInEach(String tag) throws ParseException {
        for (String number : List.of("0.50", "250", "1350", "12345.678", "0.001")) {
            Quantity quantity = new Quantity(new BigDecimal(number), Unit.ONE);
            String written = wording(tag).quantity(quantity);
            DecimalFormat reader = (DecimalFormat) NumberFormat.getNumberInstance(Locale.forLanguageTag(tag));
            reader.setParseBigDecimal(true);
            assertThat(reader.parse(written)).as(written).isEqualTo(new BigDecimal(number));
        }
    }

    @ParameterizedTest
    @MethodSource("tags")
    void soAreDates(String tag) {
        for (String day : List.of("2026-01-02", "2026-02-01", "2027-11-30", "2000-02-29")) {
            LocalDate date = LocalDate.parse(day);
            String written = wording(tag).date(date);
            assertThat(LocalDate.parse(
                            written,
                            DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM)
                                    .withLocale(Locale.forLanguageTag(tag))))
                    .as(written)
                    .isEqualTo(date);
            assertThat(written).contains(day.substring(0, 4));
        }
    }

    private static Wording wording(String tag) {
        return new Wording(
                "automatic-operation",
                Language.of(tag, List.of()).orElseThrow(),
                new Translations(tag, List.of(), new Findings()));
    }
}
