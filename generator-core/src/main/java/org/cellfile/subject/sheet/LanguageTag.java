package org.cellfile.subject.sheet;

import java.util.IllformedLocaleException;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Whether a word is the tag of a language: built as RFC 5646 (BCP 47), section 2.1, has it, with codes of ISO 639-1 and ISO 3166-1 as
 * the Java platform lists them. A code of three letters is taken as it is where its language has none of two.
 */
final class LanguageTag {

    private static final Set<String> LANGUAGES = Set.of(Locale.getISOLanguages());
    private static final Set<String> COUNTRIES = Set.of(Locale.getISOCountries());
    private static final Set<String> LONGER = LANGUAGES.stream()
            .flatMap(code -> Stream.of(Locale.forLanguageTag(code).getISO3Language()))
            .collect(Collectors.toSet());

    private LanguageTag() {}

    /** Why it is the tag of no language; empty when it is one. */
    static Optional<String> fault(String tag) {
        Locale locale;
        try {
            locale = new Locale.Builder().setLanguageTag(tag).build();
        } catch (IllformedLocaleException malformed) {
            return Optional.of(
                    "a tag is a language, and behind hyphens a script or a country, as in de or pt-BR (RFC 5646)");
        }
        String language = locale.getLanguage();
        if (language.length() < 2
                || language.length() > 3
                || (language.length() == 2 && !LANGUAGES.contains(language))) {
            return Optional.of("no language has the code `" + tag.split("-", 2)[0] + "` (ISO 639-1)");
        }
        if (LONGER.contains(language)) {
            return Optional.of("its language has a code of two letters, which stands in its tag (RFC 5646)");
        }
        String country = locale.getCountry();
        if (country.length() == 2 && !COUNTRIES.contains(country)) {
            return Optional.of("no country has the code `" + country + "` (ISO 3166-1)");
        }
        String written = locale.toLanguageTag();
        return written.equals(tag) ? Optional.empty() : Optional.of("it is written `" + written + "` (RFC 5646)");
    }
}
