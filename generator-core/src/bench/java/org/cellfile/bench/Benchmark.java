package org.cellfile.bench;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.IntFunction;
import java.util.function.ToLongFunction;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.cellfile.Comparison;
import org.cellfile.FolderWorld;
import org.cellfile.Generator;
import org.cellfile.Generator.Checked;
import org.cellfile.Generator.Generated;
import org.cellfile.SideBySide;
import org.cellfile.cell.Cell;
import org.cellfile.compare.ComparisonText;
import org.cellfile.source.World;
import org.cellfile.standard.Edition;
import org.cellfile.standard.Editions;
import org.cellfile.subject.plan.Layout;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Drawing;
import org.cellfile.verdict.Refused;

/**
 * Times in one process: a plan of fifty safeguards and two thousand corners measured, and plans whose corners crowd; the demo,
 * checked and generated; two states of a cell of thirty safeguards compared; a hundred cells of thirty safeguards one after another,
 * each recomputed under two editions with every working drawn; and a hundred small cells of ten safety functions built from parts,
 * with every working drawn.
 */
public final class Benchmark {

    private static final int CELLS = 100;
    private static final int SAFEGUARDS = 30;
    private static final int FUNCTIONS = 10;
    private static final int SAFEGUARDS_ON_PLAN = 50;
    private static final int STRUCTURES = 20;
    private static final int CORNERS = 100;

    /** On which the small cell has nothing overdue. */
    private static final Clock DAY = Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC);

    /** The editions of the second column, beside those in force. */
    private static final List<Edition> SECOND = List.of(
            Editions.of("ISO 13855:2024").orElseThrow(),
            Editions.of("ISO 13857:2019").orElseThrow());

    private Benchmark() {}

    /**
     * Runs the benchmark.
     *
     * @param args the folders of the demo and of the small cell that the refusals are laid over
     */
    public static void main(String[] args) throws IOException {
        World functions = grown(held(new FolderWorld(Path.of(args[1]), DAY)), "functions.yaml", FUNCTIONS);
        // First, so that it counts what a start costs.
        timed(
                "100 cells of 10 safety functions, cold, all",
                functions,
                cell -> cell.controlSystem().functions().size());
        World small = held(new FolderWorld(Path.of(args[1]), DAY));
        measured("a plan of 50 safeguards, 2000 corners more", planned(small), SAFEGUARDS_ON_PLAN - 1);
        measured("a zigzag fence of 1000 corners", drawn(small, plan("", inAFenceThat(toothed(1000, 3500, 4000)))), 2);
        String star = thing("star", starAt(-7500, 2000, 300, 2000));
        measured("a star of 2000 corners", drawn(small, plan(star, inAFenceThat(toothed(20, 4000, 4000)))), 2);
        World demo = held(FolderWorld.of(Path.of(args[0])));
        Generator generator = new Generator();
        print("check the demo, median of 40 warm runs", median(40, () -> generator.check(demo)));
        print("generate the demo, median of 15 warm runs", median(15, () -> {
            Generated generated = generator.generate(demo);
            if (generated.files().isEmpty()) {
                throw new IllegalStateException("the demo is refused");
            }
        }));
        World safeguards = grown(withoutFunctions(demo), "safeguards.yaml", SAFEGUARDS);
        World changed = changed(safeguards, "safeguards.yaml", "resolution: 14 mm", "resolution: 20 mm");
        print(
                "compare two states of 30 safeguards, median of 20 warm runs",
                median(20, () -> compare(safeguards, changed)));
        timed(
                "100 cells of 30 safeguards, two editions, all",
                safeguards,
                cell -> SideBySide.text(cell, SECOND).length());
        timed(
                "100 cells of 10 safety functions, warm, all",
                functions,
                cell -> cell.controlSystem().functions().size());
    }

    /** The cell checked, and its plan alone measured: distances, rings, floor behind fields, views, gaps, and all that is found. */
    private static void measured(String what, World cell, int distances) {
        long before = System.nanoTime();
        Layout layout = new Generator().check(cell).cell().flatMap(Cell::layout).orElseThrow();
        print("check " + what + ", first time", System.nanoTime() - before);
        print("  measure it, median of 15 warm runs", median(15, () -> measure(layout, distances)));
    }

    private static void measure(Layout drawn, int distances) {
        Layout layout = new Layout(drawn.plan(), drawn.around());
        // The tape of the small cell does not agree with these plans, which is found.
        long found = layout.findings().size()
                + layout.recomputed().stream()
                        .mapToLong(one -> one.findings().size())
                        .sum();
        if (layout.distances().size() < distances || layout.perimeters().isEmpty() || found == 0) {
            throw new IllegalStateException("not everything is measured");
        }
    }

    /** The small cell with curtains all round and things with many corners outside of them. */
    private static World planned(World small) throws IOException {
        World curtains = edited(small, "safeguards.yaml", Benchmark::curtains);
        StringBuilder things = new StringBuilder();
        for (int i = 0; i < STRUCTURES; i++) {
            int which = i;
            things.append(thing(
                    "thing-" + i, corners(CORNERS, corner -> around(6500, which, STRUCTURES, 500, corner, CORNERS))));
        }
        StringBuilder safeguards = new StringBuilder();
        int sides = SAFEGUARDS_ON_PLAN - 2;
        for (int i = 0; i < sides; i++) {
            String tag = i == 0 ? "curtain" : i == 1 ? "door" : "curtain-" + (i + 2);
            safeguards.append(line(tag, around(0, 0, 1, 4000, i, sides) + ", " + around(0, 0, 1, 4000, i + 1, sides)));
        }
        safeguards.append(line("fence", "[4000, 0], [5200, 0]"));
        return drawn(curtains, plan(things.toString(), safeguards.toString()));
    }

    private static World drawn(World cell, String plan) {
        List<World.Entry> entries = new ArrayList<>(cell.entries());
        entries.add(World.Entry.held("plan.yaml", plan.getBytes(StandardCharsets.UTF_8)));
        return new Held(entries, cell.today());
    }

    private static String curtains(String safeguards) {
        int first = safeguards.indexOf("  - tag: curtain");
        String curtain = safeguards.substring(first, safeguards.indexOf("  - tag: scanner"));
        StringBuilder all = new StringBuilder(safeguards.stripTrailing()).append('\n');
        for (int i = 4; i < SAFEGUARDS_ON_PLAN; i++) {
            all.append(curtain.replace("tag: curtain", "tag: curtain-" + i));
        }
        return all.toString();
    }

    private static String plan(String structures, String safeguards) {
        return String.join(
                        "\n",
                        "cellfile: 1",
                        "",
                        "plan:",
                        "  drawing: benchmark",
                        "  axes: the usual ones",
                        "  unit: mm",
                        "  by: ilse",
                        "  on: 2026-10-06",
                        "  tolerance: 10 mm",
                        "  uncertainty: 5 mm",
                        "  zones:",
                        "    - {of: zone, circle: {at: [0, 0], radius: 2700 mm}}",
                        "  robots:",
                        "    - {of: robot, base: [0, 0], controller: [-8000, 0]}",
                        "  devices:",
                        "    - {of: stop-panel, at: [-5200, 0]}",
                        "    - {of: reset-west, at: [-5200, 900]}",
                        "")
                + (structures.isEmpty() ? "" : "  structures:\n" + structures)
                + "  safeguards:\n"
                + safeguards
                + "    - of: scanner\n"
                + "      sector: {at: [-4300, 0], radius: 1200 mm, from: 100 °, through: 160 °}\n"
                + "      scanner: {at: [-4300, 0], facing: 180 °, sees: 270 °, range: 5500 mm}\n";
    }

    private static String thing(String tag, String corners) {
        return "    - {tag: " + tag + ", name: a thing, passable: no, hides: yes, outline: [" + corners + "]}\n";
    }

    private static String line(String tag, String corners) {
        return "    - {of: " + tag + ", line: [" + corners + "]}\n";
    }

    private static String corners(int corners, IntFunction<String> corner) {
        return IntStream.range(0, corners).mapToObj(corner).collect(Collectors.joining(", "));
    }

    /** All round but for a curtain and a door. */
    private static String inAFenceThat(String corners) {
        return line("fence", corners)
                + line("curtain", around(0, 0, 1, 4000, 360, 360) + ", " + around(0, 0, 1, 4000, 350, 360))
                + line("door", around(0, 0, 1, 4000, 0, 360) + ", " + around(0, 0, 1, 4000, 10, 360));
    }

    /** A line to and fro from 10° to 350° round the origin; its ends lie on the outer circle. */
    private static String toothed(int corners, int inner, int outer) {
        return corners(corners + 1, corner -> {
            double turned = Math.toRadians(10 + 340.0 * corner / corners);
            return at(0, corner % 2 == 0 ? outer : inner, turned);
        });
    }

    private static String starAt(int y, int outer, int inner, int corners) {
        return corners(corners, corner -> at(y, corner % 2 == 0 ? outer : inner, 2 * Math.PI * corner / corners));
    }

    private static String at(int y, int radius, double turned) {
        return String.format(Locale.ROOT, "[%.1f, %.1f]", radius * Math.cos(turned), y + radius * Math.sin(turned));
    }

    /** A corner of a figure of many corners, one of several such figures round the origin. */
    private static String around(int distance, int which, int of, int radius, int corner, int corners) {
        double there = 2 * Math.PI * which / of;
        double turned = 2 * Math.PI * corner / corners;
        return String.format(
                Locale.ROOT,
                "[%.1f, %.1f]",
                distance * Math.cos(there) + radius * Math.cos(turned),
                distance * Math.sin(there) + radius * Math.sin(turned));
    }

    private static void compare(World older, World newer) {
        Comparison.Outcome outcome = Comparison.of(
                new Comparison.Source("older", "older", older, true),
                new Comparison.Source("newer", "newer", newer, true));
        if (!(outcome instanceof Comparison.Told told) || told.compared().same()) {
            throw new IllegalStateException("nothing differs");
        }
        ComparisonText.of(told.compared());
    }

    /** The cell with another text in one of its files. */
    private static World changed(World cell, String file, String from, String to) throws IOException {
        return edited(cell, file, text -> text.replace(from, to));
    }

    private static World edited(World cell, String file, UnaryOperator<String> edit) throws IOException {
        List<World.Entry> entries = new ArrayList<>();
        for (World.Entry entry : cell.entries()) {
            try (InputStream stream = entry.content().open()) {
                byte[] bytes = stream.readAllBytes();
                entries.add(World.Entry.held(
                        entry.path(),
                        entry.path().equals(file)
                                ? edit.apply(new String(bytes, StandardCharsets.UTF_8))
                                        .getBytes(StandardCharsets.UTF_8)
                                : bytes));
            }
        }
        return new Held(entries, cell.today());
    }

    /** A hundred such cells, each checked and every working of it drawn. */
    private static void timed(String what, World world, ToLongFunction<Cell> besides) {
        Generator generator = new Generator();
        long[] each = new long[CELLS];
        long drawn = 0;
        for (int i = 0; i < CELLS; i++) {
            long before = System.nanoTime();
            Checked checked = generator.check(world);
            if (checked.verdict() instanceof Refused refused) {
                throw new IllegalStateException("the grown cell is refused: "
                        + refused.refusing().get(0).sentence());
            }
            Cell cell = checked.cell().orElseThrow();
            drawn += besides.applyAsLong(cell);
            for (Derived derived : cell.derived().values()) {
                drawn += Drawing.of(derived).lines().size();
            }
            each[i] = System.nanoTime() - before;
        }
        if (drawn == 0) {
            throw new IllegalStateException("nothing was drawn");
        }
        print(what, Arrays.stream(each).sum());
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
                entries.add(World.Entry.held(entry.path(), stream.readAllBytes()));
            }
        }
        return new Held(entries, world.today());
    }

    private record Held(List<World.Entry> entries, LocalDate today) implements World {}

    /**
     * The cell without its hazards and functions, which a safeguard written a second time would not serve, without its plan, on which
     * none has two places, without its sheets in a second language and briefings by them, and without its ledger.
     */
    private static World withoutFunctions(World cell) throws IOException {
        List<World.Entry> entries = new ArrayList<>();
        for (World.Entry entry : cell.entries()) {
            if (!List.of(
                            "hazards.yaml",
                            "functions.yaml",
                            "derived.yaml",
                            "plan.yaml",
                            "translations.yaml",
                            "briefings.yaml")
                    .contains(entry.path())) {
                try (InputStream stream = entry.content().open()) {
                    String text = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
                    String kept = text.replaceAll("  - \\{value: (iso-13849-1-|[a-z0-9-]+\\.function-).*\n", "")
                            .replaceAll(", place: [a-z-]+\\}", "}")
                            .replaceAll(" +- \\{.*languages?: \\[?de\\b.*\n", "");
                    entries.add(World.Entry.held(entry.path(), kept.getBytes(StandardCharsets.UTF_8)));
                }
            }
        }
        return new Held(entries, cell.today());
    }

    /** The cell with some of the things in the last list of a file written a second time under other tags, until there are so many. */
    private static World grown(World cell, String file, int things) throws IOException {
        return edited(cell, file, text -> grown(text, things));
    }

    private static String grown(String text, int things) {
        String mark = "\n  - tag: ";
        int list = text.lastIndexOf(":\n  - tag: ");
        List<String> each = Arrays.asList(text.substring(list).split(mark, -1));
        StringBuilder grown = new StringBuilder(text.stripTrailing());
        int count = each.size() - 1;
        for (int i = 1; count < things; i++, count++) {
            String thing = each.get(i).stripTrailing();
            int end = thing.indexOf('\n');
            grown.append(mark).append(thing, 0, end).append("-again").append(thing.substring(end));
        }
        return grown.append('\n').toString();
    }
}
