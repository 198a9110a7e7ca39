package org.cellfile.bench;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.cellfile.FolderWorld;
import org.cellfile.Generator;
import org.cellfile.Generator.Checked;
import org.cellfile.Generator.Generated;
import org.cellfile.SideBySide;
import org.cellfile.cell.Cell;
import org.cellfile.source.World;
import org.cellfile.standard.Edition;
import org.cellfile.standard.Editions;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Drawing;
import org.cellfile.verdict.Refused;

/** Times the demo in one process: checking, generating, and a hundred cells of thirty safeguards one after
 * another, each recomputed under two editions with every working drawn. */
public final class Benchmark {

    private static final int CELLS = 100;
    private static final int SAFEGUARDS = 30;

    /** The editions of the second column, beside those in force. */
    private static final List<Edition> SECOND = List.of(
            Editions.of("ISO 13855:2024").orElseThrow(),
            Editions.of("ISO 13857:2019").orElseThrow());

    private Benchmark() {}

    /**
     * Runs the benchmark.
     *
     * @param args the demo cell's folder
     */
    public static void main(String[] args) throws IOException {
        World demo = held(FolderWorld.of(Path.of(args[0])));
        Generator generator = new Generator();
        print("check the demo, median of 40 warm runs", median(40, () -> generator.check(demo)));
        print("generate the demo, median of 15 warm runs", median(15, () -> {
            Generated generated = generator.generate(demo);
            if (generated.files().isEmpty()) {
                throw new IllegalStateException("the demo is refused");
            }
        }));
        List<World> cells = new ArrayList<>();
        for (int i = 0; i < CELLS; i++) {
            cells.add(grown(demo));
        }
        long[] each = new long[CELLS];
        long characters = 0;
        for (int i = 0; i < CELLS; i++) {
            long before = System.nanoTime();
            Checked checked = generator.check(cells.get(i));
            if (checked.verdict() instanceof Refused refused) {
                throw new IllegalStateException("the grown cell is refused: "
                        + refused.findings().get(0).sentence());
            }
            Cell cell = checked.cell().orElseThrow();
            characters += SideBySide.text(cell, SECOND).length();
            for (Derived derived : cell.derived().values()) {
                characters += Drawing.of(derived).lines().size();
            }
            each[i] = System.nanoTime() - before;
        }
        if (characters == 0) {
            throw new IllegalStateException("nothing was drawn");
        }
        print(
                "100 cells of 30 safeguards, two editions, all",
                Arrays.stream(each).sum());
        for (int from = 0; from < CELLS; from += 25) {
            long[] part = Arrays.copyOfRange(each, from, from + 25);
            Arrays.sort(part);
            print("  median of cells " + (from + 1) + " to " + (from + 25), part[12]);
        }
    }

    private static long median(int runs, Runnable work) {
        for (int i = 0; i < runs / 2; i++) {
            work.run();
        }
        long[] times = new long[runs];
        for (int i = 0; i < runs; i++) {
            long before = System.nanoTime();
            work.run();
            times[i] = System.nanoTime() - before;
        }
        Arrays.sort(times);
        return times[runs / 2];
    }

    @SuppressWarnings("SystemOut")
    private static void print(String what, long nanoseconds) {
        System.out.printf(Locale.ROOT, "%-45s %9.1f ms%n", what, nanoseconds / 1e6);
    }

    /** The same cell with its files in memory, so that the disk is not timed. */
    private static World held(World world) throws IOException {
        List<World.Entry> entries = new ArrayList<>();
        for (World.Entry entry : world.entries()) {
            try (InputStream stream = entry.content().open()) {
                entries.add(entry(entry.path(), stream.readAllBytes()));
            }
        }
        return new Held(entries, world.today());
    }

    private record Held(List<World.Entry> entries, LocalDate today) implements World {}

    private static World.Entry entry(String path, byte[] bytes) {
        return new World.Entry(path, true, bytes.length, () -> new ByteArrayInputStream(bytes));
    }

    /** The demo with some of its safeguards written a second time under other tags, until there are thirty. */
    private static World grown(World demo) throws IOException {
        List<World.Entry> entries = new ArrayList<>();
        for (World.Entry entry : demo.entries()) {
            try (InputStream stream = entry.content().open()) {
                String text = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
                boolean grows = entry.path().equals("safeguards.yaml");
                entries.add(entry(entry.path(), (grows ? grown(text) : text).getBytes(StandardCharsets.UTF_8)));
            }
        }
        return new Held(entries, demo.today());
    }

    private static String grown(String text) {
        String mark = "\n  - tag: ";
        List<String> safeguards = Arrays.asList(text.split(mark, -1));
        StringBuilder grown = new StringBuilder(text.stripTrailing());
        int count = safeguards.size() - 1;
        for (int i = 1; count < SAFEGUARDS; i++, count++) {
            String safeguard = safeguards.get(i).stripTrailing();
            int end = safeguard.indexOf('\n');
            grown.append(mark).append(safeguard, 0, end).append("-again").append(safeguard.substring(end));
        }
        return grown.append('\n').toString();
    }
}
