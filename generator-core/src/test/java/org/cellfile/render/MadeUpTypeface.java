package org.cellfile.render;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;

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
        ByteBuffer cmap = ByteBuffer.allocate(12 + 16 + 12 * sorted.length);
        cmap.putShort((short) 0)
                .putShort((short) 1)
                .putShort((short) 3)
                .putShort((short) 10)
                .putInt(12);
        cmap.putShort((short) 12)
                .putShort((short) 0)
                .putInt(16 + 12 * sorted.length)
                .putInt(0)
                .putInt(sorted.length);
        for (int i = 0; i < sorted.length; i++) {
            cmap.putInt(sorted[i]).putInt(sorted[i]).putInt(100 + i);
        }
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
