package org.cellfile.subject.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Objects;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is reckoned of a text's width, against the typeface it is set in. */
class LetteringTest {

    private static final int SIZE = 100_000;

    @ParameterizedTest
    @CsvSource({"/liberation/LiberationSans-Regular.ttf, false", "/liberation/LiberationSans-Bold.ttf, true"})
    void noTextIsWiderThanReckoned(String file, boolean bold) throws IOException {
        try (InputStream stream = Objects.requireNonNull(LetteringTest.class.getResourceAsStream(file));
                TrueTypeFont face = new TTFParser().parse(new RandomAccessReadBuffer(stream))) {
            for (int letter = ' '; letter <= '~'; letter++) {
                int set = width(face, letter);
                int reckoned = Lettering.width(Character.toString(letter), SIZE, bold);
                assertThat(reckoned).as("%c", letter).isGreaterThanOrEqualTo(set - SIZE / 1000);
                if (!bold) {
                    assertThat(reckoned).as("%c", letter).isLessThanOrEqualTo(set + 60 * SIZE / 1000);
                }
            }
            for (int letter : "äöüßñáéíóúżółąęć°–…→".codePoints().toArray()) {
                assertThat(Lettering.width(Character.toString(letter), SIZE, bold))
                        .as(Character.toString(letter))
                        .isGreaterThanOrEqualTo(Math.min(width(face, letter), 780 * SIZE / 1000));
            }
        }
    }

    private static int width(TrueTypeFont face, int letter) throws IOException {
        int glyph = face.getUnicodeCmapLookup().getGlyphId(letter);
        return Math.toIntExact((long) face.getAdvanceWidth(glyph) * SIZE / face.getUnitsPerEm());
    }

    @Test
    void linesAreBrokenBetweenWords() {
        String text = "gate 3, south side of hall 2";
        List<String> lines = Lettering.wrapped(text, 105, 800);
        assertThat(String.join(" ", lines)).isEqualTo(text);
        assertThat(lines).hasSizeGreaterThan(1).allMatch(line -> Lettering.width(line, 105, false) <= 800);
        assertThat(Lettering.wrapped("Schutzeinrichtungen", 105, 100)).containsExactly("Schutzeinrichtungen");
    }
}
