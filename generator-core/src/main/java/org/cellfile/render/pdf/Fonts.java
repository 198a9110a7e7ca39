package org.cellfile.render.pdf;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The typefaces of the pages: parsed once in the life of the program, embedded in each document as far as it uses them.
 *
 * <p>Glyph substitution is switched off. The faces need none for the scripts they hold, and PDFBox otherwise runs it on
 * every string, which takes most of the time and lets ligatures lose letters in the text layer.
 */
final class Fonts {

    private enum Face {
        SANS("Liberation Sans", 400, FontStyle.NORMAL, "LiberationSans-Regular"),
        SANS_BOLD("Liberation Sans", 700, FontStyle.NORMAL, "LiberationSans-Bold"),
        SERIF("Liberation Serif", 400, FontStyle.NORMAL, "LiberationSerif-Regular"),
        SERIF_ITALIC("Liberation Serif", 400, FontStyle.ITALIC, "LiberationSerif-Italic"),
        MONO("Liberation Mono", 400, FontStyle.NORMAL, "LiberationMono-Regular");

        private final String family;
        private final int weight;
        private final FontStyle style;
        private final String file;

        Face(String family, int weight, FontStyle style, String file) {
            this.family = family;
            this.weight = weight;
            this.style = style;
            this.file = file;
        }
    }

    private static final Map<Face, TrueTypeFont> PARSED = parseAll();

    private static final List<CmapLookup> COVERAGE =
            PARSED.values().stream().map(Fonts::coverage).toList();

    private Fonts() {}

    /** True when every face has a glyph for the character, so that it can be printed wherever a text may stand. */
    static boolean cover(int codePoint) {
        return COVERAGE.stream().allMatch(face -> face.getGlyphId(codePoint) != 0);
    }

    /** Makes the faces known to a layout of the document; a face is embedded when it is first used. */
    static void offer(PdfRendererBuilder builder, PDDocument document, Typefaces own) {
        PARSED.forEach((face, parsed) ->
                builder.useFont(new OnDemand(document, parsed), face.family, face.weight, face.style, true));
        own.families(List.copyOf(own.byLanguage().keySet())).forEach((tag, family) -> {
            TrueTypeFont parsed =
                    Objects.requireNonNull(own.byLanguage().get(tag)).parsed();
            // one file stands for every weight
            builder.useFont(new OnDemand(document, parsed), family, 400, FontStyle.NORMAL, true);
            builder.useFont(new OnDemand(document, parsed), family, 700, FontStyle.NORMAL, true);
        });
    }

    private static final class OnDemand extends PDFontSupplier {
        private final PDDocument document;
        private final TrueTypeFont parsed;

        OnDemand(PDDocument document, TrueTypeFont parsed) {
            super(null);
            this.document = document;
            this.parsed = parsed;
        }

        @Override
        public PDFont supply() {
            try {
                return PDType0Font.load(document, parsed, true);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    private static Map<Face, TrueTypeFont> parseAll() {
        Map<Face, TrueTypeFont> parsed = new EnumMap<>(Face.class);
        for (Face face : Face.values()) {
            parsed.put(face, parse("/liberation/" + face.file + ".ttf"));
        }
        return parsed;
    }

    private static TrueTypeFont parse(String path) {
        try (InputStream stream = Fonts.class.getResourceAsStream(path)) {
            if (stream == null) {
                throw new IllegalStateException("the typeface " + path + " is not on the class path");
            }
            TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(stream.readAllBytes()));
            font.setEnableGsub(false);
            return font;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static CmapLookup coverage(TrueTypeFont font) {
        try {
            return font.getUnicodeCmapLookup();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
