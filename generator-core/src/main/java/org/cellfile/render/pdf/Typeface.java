package org.cellfile.render.pdf;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Optional;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.OS2WindowsMetricsTable;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** A typeface from a file of the plant's, of which pages can carry the characters they use. */
public final class Typeface {

    /**
     * Bits of {@code fsType}: embedding restricted by its licence (1), no part of it may be embedded by itself (8), only its bitmaps
     * may be (9). OpenType specification, table OS/2, "fsType".
     */
    private static final int FORBIDS = (1 << 1) | (1 << 8) | (1 << 9);

    private final TrueTypeFont font;
    private final CmapLookup characters;

    private Typeface(TrueTypeFont font) throws IOException {
        this.font = font;
        this.characters = font.getUnicodeCmapLookup();
    }

    /** Says why a file cannot be used, as the second half of a sentence. */
    public static final class Unusable extends Exception {
        private static final long serialVersionUID = 1;

        Unusable(String because) {
            super(because);
        }
    }

    /** Reads a file and looks at each of its glyphs, so that none of them stops a page later. */
    public static Typeface of(byte[] bytes) throws Unusable {
        Optional<String> other = kind(bytes);
        if (other.isPresent()) {
            throw new Unusable(other.get());
        }
        try {
            TypefaceTables.look(bytes);
            TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(bytes));
            font.setEnableGsub(false);
            for (int glyph = 0; glyph < font.getNumberOfGlyphs(); glyph++) {
                font.getGlyph().getGlyph(glyph);
                font.getAdvanceWidth(glyph);
            }
            OS2WindowsMetricsTable rights = font.getOS2Windows();
            if (rights == null) {
                throw new Unusable("does not say whether pages may carry it (table OS/2)");
            }
            if ((rights.getFsType() & FORBIDS) != 0) {
                throw new Unusable("forbids that pages carry it or parts of it (fsType of its table OS/2)");
            }
            embed(font);
            return new Typeface(font);
        } catch (IOException | RuntimeException broken) {
            throw new Unusable("is broken: its tables cannot be read");
        }
    }

    /** Writes all of it into a document nobody keeps, as a page would a part. */
    private static void embed(TrueTypeFont font) throws IOException {
        CmapLookup characters = font.getUnicodeCmapLookup();
        try (PDDocument nobodys = new PDDocument()) {
            PDType0Font embedded = PDType0Font.load(nobodys, font, true);
            for (int codePoint = 0; codePoint <= Character.MAX_CODE_POINT; codePoint++) {
                if (characters.getGlyphId(codePoint) != 0) {
                    embedded.addToSubset(codePoint);
                }
            }
            embedded.subset();
        }
    }

    private static Optional<String> kind(byte[] bytes) {
        if (bytes.length < 12) {
            return Optional.of("holds no typeface");
        }
        return switch (ByteBuffer.wrap(bytes).getInt()) {
            case 0x00010000, 0x74727565 -> Optional.empty();
            case 0x4f54544f ->
                Optional.of(
                        "holds outlines in the manner of PostScript, and pages carry parts of TrueType outlines only");
            case 0x74746366 -> Optional.of("holds several typefaces, and nothing tells which is meant");
            case 0x774f4646, 0x774f4632 -> Optional.of("is packed for web pages");
            default -> Optional.of("holds no typeface");
        };
    }

    boolean has(int codePoint) {
        return characters.getGlyphId(codePoint) != 0;
    }

    TrueTypeFont parsed() {
        return font;
    }
}
