package org.cellfile.subject.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The built-in languages say the same things. */
class LanguageTest {

    private static final Language FIRST = Language.of(Language.FIRST, List.of()).orElseThrow();

    static List<String> tags() {
        return Language.KNOWN;
    }

    @Test
    void everyFileOfTheFolderIsKnown() throws IOException, URISyntaxException {
        URL english = Objects.requireNonNull(
                Language.class.getResource("/org/cellfile/templates/languages/" + Language.FIRST + ".properties"));
        try (Stream<Path> files =
                Files.list(Objects.requireNonNull(Path.of(english.toURI()).getParent()))) {
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
}
