package org.cellfile.render;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * A typeface made from one of the pages' own: its letters stand for other characters, and it says other things about its rights. The
 * places in the tables are those of the OpenType specification (table directory; cmap, format 12; OS/2, fsType at 8).
 */
public final class MadeUpTypeface {

    private static final String FROM = "/liberation/LiberationSans-Regular.ttf";

    private MadeUpTypeface() {}

    /** One in which glyphs of the other typeface, from the hundredth, stand for these characters. */
    public static byte[] with(String characters) {
        SortedMap<String, byte[]> tables = tables();
        tables.put("cmap", cmap(characters));
        return file(tables);
    }

    /** One that says as often that these characters stand for glyphs from this one on. */
    public static byte[] withMap(int first, int last, int glyph, int times) {
        SortedMap<String, byte[]> tables = tables();
        tables.put("cmap", cmap(Collections.nCopies(times, new int[] {first, last, glyph})));
        return file(tables);
    }

    /** One in which a character stands for a glyph of that number, in a map of format 4. */
    public static byte[] withGlyph(int character, int glyph) {
        SortedMap<String, byte[]> tables = tables();
        ByteBuffer cmap = ByteBuffer.allocate(12 + 32);
        for (int number : new int[] {
            0,
            1,
            3,
            1,
            0,
            12, // one map, twelve bytes from here
            4,
            32,
            0,
            4,
            4,
            1,
            0, // two segments
            character,
            0xffff,
            0,
            character,
            0xffff,
            glyph - character,
            1,
            0,
            0
        }) {
            cmap.putShort((short) number);
        }
        tables.put("cmap", cmap.array());
        return file(tables);
    }

    /** One with these rights. */
    public static byte[] withRights(int fsType) {
        SortedMap<String, byte[]> tables = tables();
        ByteBuffer.wrap(Objects.requireNonNull(tables.get("OS/2"))).putShort(8, (short) fsType);
        return file(tables);
    }

    /** One that lacks a table. */
    public static byte[] without(String table) {
        SortedMap<String, byte[]> tables = tables();
        tables.remove(table);
        return file(tables);
    }

    /** One with noise in place of a table. */
    public static byte[] withNoiseIn(String table) {
        SortedMap<String, byte[]> tables = tables();
        byte[] noise = Objects.requireNonNull(tables.get(table));
        for (int i = 0; i < noise.length; i++) {
            noise[i] = (byte) (i * 37 + 11);
        }
        return file(tables);
    }

    private static byte[] original() {
        try (InputStream stream = Objects.requireNonNull(MadeUpTypeface.class.getResourceAsStream(FROM))) {
            return stream.readAllBytes();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private static SortedMap<String, byte[]> tables() {
        ByteBuffer file = ByteBuffer.wrap(original());
        SortedMap<String, byte[]> tables = new TreeMap<>();
        int count = file.getShort(4);
        for (int i = 0; i < count; i++) {
            int entry = 12 + 16 * i;
            byte[] name = new byte[4];
            file.get(entry, name);
            byte[] table = new byte[file.getInt(entry + 12)];
            file.get(file.getInt(entry + 8), table);
            tables.put(new String(name, StandardCharsets.US_ASCII), table);
        }
        return tables;
    }

    private static byte[] cmap(String characters) {
        int[] sorted = characters.codePoints().distinct().sorted().toArray();
        return cmap(IntStream.range(0, sorted.length)
                .mapToObj(i -> new int[] {sorted[i], sorted[i], 100 + i})
                .toList());
    }

    /** In format 12: ranges of characters, each with its first and last and the glyph of the first. */
    private static byte[] cmap(List<int[]> ranges) {
        ByteBuffer cmap = ByteBuffer.allocate(12 + 16 + 12 * ranges.size());
        cmap.putShort((short) 0)
                .putShort((short) 1)
                .putShort((short) 3)
                .putShort((short) 10)
                .putInt(12);
        cmap.putShort((short) 12)
                .putShort((short) 0)
                .putInt(16 + 12 * ranges.size())
                .putInt(0)
                .putInt(ranges.size());
        ranges.forEach(range -> cmap.putInt(range[0]).putInt(range[1]).putInt(range[2]));
        return cmap.array();
    }

    private static byte[] file(Map<String, byte[]> tables) {
        ByteBuffer directory = ByteBuffer.allocate(12 + 16 * tables.size());
        directory
                .putInt(0x00010000)
                .putShort((short) tables.size())
                .putShort((short) 0)
                .putInt(0);
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        tables.forEach((name, table) -> {
            directory
                    .put(name.getBytes(StandardCharsets.US_ASCII))
                    .putInt(0)
                    .putInt(directory.capacity() + body.size())
                    .putInt(table.length);
            body.writeBytes(table);
            body.writeBytes(new byte[(4 - table.length % 4) % 4]);
        });
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        file.writeBytes(directory.array());
        file.writeBytes(body.toByteArray());
        return file.toByteArray();
    }
}
