package org.cellfile.render.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;
import org.cellfile.render.MadeUpTypeface;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a typeface of the plant's must be, and what it is good for. The figures and texts are constructed. */
class TypefaceTest {

    /** fsType: 0 allows everything, bit 2 to preview and print, bit 3 to edit (OpenType specification, OS/2). */
    @ParameterizedTest
    @ValueSource(ints = {0, 1 << 2, 1 << 3})
    void oneThatAllowsItIsEmbedded(int rights) {
        assertThatCode(() -> Typeface.of(MadeUpTypeface.withRights(rights))).doesNotThrowAnyException();
    }

    /** Bit 1: restricted; bit 8: not in part; bit 9: bitmaps alone (the same). */
    @ParameterizedTest
    @ValueSource(ints = {1 << 1, (1 << 2) | (1 << 8), (1 << 3) | (1 << 9)})
    void oneThatForbidsItIsNot(int rights) {
        assertThatThrownBy(() -> Typeface.of(MadeUpTypeface.withRights(rights)))
                .isInstanceOf(Typeface.Unusable.class)
                .hasMessageContaining("forbids");
    }

    @Test
    void oneThatDoesNotSayIsNot() {
        assertThatThrownBy(() -> Typeface.of(MadeUpTypeface.without("OS/2")))
                .isInstanceOf(Typeface.Unusable.class)
                .hasMessageContaining("does not say");
    }

    @ParameterizedTest
    @ValueSource(strings = {"cmap", "glyf", "head", "hhea", "hmtx", "loca", "maxp"})
    void oneThatLacksATableIsBroken(String table) {
        assertThatThrownBy(() -> Typeface.of(MadeUpTypeface.without(table)))
                .isInstanceOf(Typeface.Unusable.class)
                .hasMessageContaining("broken");
    }

    @ParameterizedTest
    @ValueSource(strings = {"cmap", "loca"})
    void soIsOneWithNoiseInIt(String table) {
        assertThatThrownBy(() -> Typeface.of(MadeUpTypeface.withNoiseIn(table)))
                .isInstanceOf(Typeface.Unusable.class)
                .hasMessageContaining("broken");
    }

    @ParameterizedTest
    @ValueSource(ints = {12, 100, 5000, 100_000})
    void soIsOneThatEndsEarly(int length) {
        assertThatThrownBy(() -> Typeface.of(Arrays.copyOf(MadeUpTypeface.withRights(0), length)))
                .isInstanceOf(Typeface.Unusable.class)
                .hasMessageContaining("broken");
    }

    /** The last table ends behind the file, or the file within its list of tables. */
    @ParameterizedTest
    @ValueSource(ints = {4, 1000, 100_000})
    void soIsOneOfWhichTheEndIsMissing(int bytes) {
        byte[] whole = MadeUpTypeface.withRights(0);
        assertThatThrownBy(() -> Typeface.of(Arrays.copyOf(whole, whole.length - bytes)))
                .isInstanceOf(Typeface.Unusable.class)
                .hasMessageContaining("broken");
    }

    /** The other typeface has 2593 glyphs or some more, far fewer than 40000. */
    @Test
    void soIsOneWhoseCharactersStandForNoGlyph() {
        assertThatThrownBy(() -> Typeface.of(MadeUpTypeface.withGlyph(0x4e00, 40_000)))
                .isInstanceOf(Typeface.Unusable.class)
                .hasMessageContaining("broken");
    }

    /** A hundred thousand times all characters there are: read one by one it would take hours. */
    @Test
    void soIsOneThatListsItsCharactersWithoutEnd() {
        byte[] endless = MadeUpTypeface.withMap(0, Character.MAX_CODE_POINT, 1, 100_000);
        assertThatThrownBy(() -> assertTimeoutPreemptively(Duration.ofSeconds(20), () -> Typeface.of(endless)))
                .isInstanceOf(Typeface.Unusable.class)
                .hasMessageContaining("broken");
    }

    @ParameterizedTest
    @ValueSource(strings = {"OTTO", "ttcf", "wOFF", "wOF2", "%PDF", "\u0089PNG"})
    void otherSortsOfFilesAreNone(String beginning) {
        byte[] file = MadeUpTypeface.withRights(0);
        ByteBuffer.wrap(file).put(beginning.getBytes(StandardCharsets.ISO_8859_1));
        assertThatThrownBy(() -> Typeface.of(file)).isInstanceOf(Typeface.Unusable.class);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 3, 11})
    void norIsOneWithHardlyAnythingInIt(int length) {
        assertThatThrownBy(() -> Typeface.of(new byte[length]))
                .isInstanceOf(Typeface.Unusable.class)
                .hasMessage("holds no typeface");
    }

    @Test
    void itMakesItsCharactersPrintableInItsLanguageAndNoOther() throws Typeface.Unusable {
        Typefaces own = own("zh", "\u6b62");

        assertThat(own.fault(0x6b62, List.of("zh"))).isEmpty();
        assertThat(own.fault(0x6b62, List.of("de", "zh"))).isEmpty();
        assertThat(own.fault(0x6b62, List.of("de"))).contains(MissingGlyphs.NO_TYPEFACE);
        assertThat(own.fault(0x6b63, List.of("zh"))).contains(MissingGlyphs.NO_TYPEFACE);
        assertThat(own.fault('A', List.of("zh"))).isEmpty();
    }

    /** Hebrew, Arabic; Devanagari, Thai. */
    @ParameterizedTest
    @ValueSource(strings = {"\u05e9", "\u0627", "\u0915", "\u0e01"})
    void noTypefaceHelpsWithWritingThePagesAreNotSetFor(String character) throws Typeface.Unusable {
        assertThat(own("xx", character).fault(character.codePointAt(0), List.of("xx")))
                .hasValueSatisfying(
                        because -> assertThat(because).containsAnyOf("right to left", "join or change places"));
    }

    private static Typefaces own(String language, String characters) throws Typeface.Unusable {
        TreeMap<String, Typeface> own = new TreeMap<>();
        own.put(language, Typeface.of(MadeUpTypeface.with(characters)));
        return new Typefaces(own);
    }
}
