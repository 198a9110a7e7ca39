package org.cellfile.render.pdf;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Set;

/**
 * What of a typeface's tables is looked at before anything reads them: that each lies within the file, and that its map of characters
 * is no larger than there are characters, since one that says the same a thousand times over keeps its reader busy for hours. Places
 * of the values are those of the OpenType specification (table directory; cmap).
 */
final class TypefaceTables {

    private static final int CMAP = 0x636d6170;

    /** Formats that list ranges of characters from the first to the last, in twelve bytes each. */
    private static final Set<Integer> RANGES = Set.of(8, 12, 13);

    /** How many characters all maps of a typeface may list together; constructed: each character in four of them. */
    private static final long MOST = 4L * (Character.MAX_CODE_POINT + 1);

    private final ByteBuffer file;
    private long characters;

    private TypefaceTables(ByteBuffer file) {
        this.file = file;
    }

    /**
     * Looks at the tables of a file.
     *
     * @throws IndexOutOfBoundsException where the file ends within its tables
     */
    static void look(byte[] bytes) throws IOException {
        TypefaceTables tables = new TypefaceTables(ByteBuffer.wrap(bytes));
        int count = tables.shortAt(4);
        for (int i = 0; i < count; i++) {
            int entry = 12 + 16 * i;
            long begins = tables.intAt(entry + 8);
            if (begins + tables.intAt(entry + 12) > bytes.length) {
                throw new IOException("the file ends before its tables do");
            }
            if (tables.file.getInt(entry) == CMAP) {
                tables.maps((int) begins);
            }
        }
    }

    private void maps(int cmap) throws IOException {
        int count = shortAt(cmap + 2);
        for (int i = 0; i < count; i++) {
            int map = Math.toIntExact(cmap + intAt(cmap + 4 + 8 * i + 4));
            int format = shortAt(map);
            if (format == 4) {
                segments(map);
            } else if (RANGES.contains(format)) {
                ranges(map + (format == 8 ? 8 + (1 << 13) : 8));
            } else {
                count(1 << Character.SIZE); // no other holds more
            }
        }
    }

    private void segments(int map) throws IOException {
        int bytes = shortAt(map + 6);
        for (int at = 0; at < bytes; at += 2) {
            count(shortAt(map + 16 + bytes + at), shortAt(map + 14 + at));
        }
    }

    private void ranges(int before) throws IOException {
        long ranges = intAt(before + 4);
        for (int i = 0; i < ranges; i++) {
            count(intAt(before + 8 + 12 * i), intAt(before + 12 + 12 * i));
        }
    }

    private void count(long first, long last) throws IOException {
        count(Math.max(0, last - first) + 1);
    }

    private void count(long more) throws IOException {
        characters += more;
        if (characters > MOST) {
            throw new IOException("its map of characters lists more than there are");
        }
    }

    private int shortAt(int place) {
        return Short.toUnsignedInt(file.getShort(place));
    }

    private long intAt(int place) {
        return Integer.toUnsignedLong(file.getInt(place));
    }
}
