package org.cellfile.subject.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What of the wording changed since somebody read it. The digests are constructed. */
class SeenWordingTest {

    @ParameterizedTest
    @CsvSource({
        "11111111, 22222222, 11111111-22222222, ''",
        "11111111, '', 11111111, ''",
        "11111111, 22222222, 00000000-22222222, the fixed wording",
        "11111111, 22222222, 11111111-00000000, the cell's own texts in that language",
        "11111111, 22222222, 11111111, 'the cell''s own texts, of which none was in that language then'",
        "11111111, '', 11111111-22222222, 'the cell''s own texts, of which none is in that language any more'",
        "11111111, '', 00000000, the fixed wording",
        "11111111, 22222222, 0-0, the fixed wording | the cell's own texts in that language",
    })
    void saysWhich(String fixed, String own, String read, String changed) {
        SeenWording now = new SeenWording(fixed, own);

        assertThat(String.join(" | ", now.changedSince(read))).isEqualTo(changed);
        assertThat(now.digest().equals(read)).isEqualTo(changed.isEmpty());
    }

    @ParameterizedTest
    @ValueSource(strings = {"words.vague", "own-steps.defeating", "language.reviewed-by"})
    void whatStandsOnNoPageIsNoPartOfIt(String key) {
        assertThat(Language.of("de", List.of()).orElseThrow().printed()).doesNotContainKey(key);
    }

    @Test
    void eachLanguageHasItsOwn() {
        assertThat(Language.KNOWN.stream()
                        .map(tag -> SeenWording.of(Language.of(tag, List.of()).orElseThrow(), List.of())
                                .digest()))
                .doesNotHaveDuplicates();
    }
}
