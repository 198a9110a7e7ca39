package org.cellfile.subject.plan;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cellfile.geometry.Between;
import org.cellfile.geometry.Extent;
import org.cellfile.geometry.Point;
import org.cellfile.geometry.Shape;
import org.cellfile.quantity.Unit;
import org.cellfile.subject.plan.Labels.Box;
import org.cellfile.subject.plan.Labels.Line;
import org.cellfile.subject.plan.Labels.Placed;
import org.cellfile.subject.plan.Labels.Spot;
import org.cellfile.subject.plan.Labels.Stroke;
import org.cellfile.subject.plan.Labels.Wish;

/** A drawing of a plan while it is being made: shapes, symbols, distances and texts on paper, and the data its template is filled with. */
final class Picture {

    /** Of a symbol, from side to side. */
    static final int SYMBOL = 130;

    /** Of the dot or ring at the end of a distance. */
    private static final int END = 60;

    private static final int HATCHING = 110;
    private static final int ARROW = 80;
    private static final int BAR = 60;

    /** Between two distances side by side. */
    private static final int APART = 110;

    /** How much more a text keeps clear of a distance than of other lines. */
    private static final int OF_A_DISTANCE = 3;

    /** Of the corners of an area, or the stretches of a line, no more are tried for a text. */
    private static final int CORNERS = 8;

    private static final int[][] ASIDE = {{-1, 0}, {1, 0}, {0, -1}, {0, 1}, {-1, -1}, {1, -1}, {-1, 1}, {1, 1}};

    /** Ticks of the rulers are no closer than this. */
    private static final int TICKS_APART = 560;

    private static final int LEGEND_ROW = 134;
    private static final int LEGEND_SAMPLE = 330;
    private static final int SYMBOL_SAMPLE = 200;
    private static final int LEGEND_LEFT = 40;
    private static final int KEY_SAMPLE = 200;

    /** What is wider stands in two lines. */
    private static final int KEY_WIDEST = 1600;

    private final Paper paper;
    private final Format format;
    private final Labels labels;
    private final List<Mark> marks = new ArrayList<>();
    private final List<Map<String, Object>> symbols = new ArrayList<>();
    private final List<Box> symbolBoxes = new ArrayList<>();
    private final List<Map<String, Object>> distances = new ArrayList<>();
    private final List<Stroke> lengths = new ArrayList<>();
    private final List<Wish> wishes = new ArrayList<>();
    private boolean onlyWithin;
    private final Set<Drawn> kinds = new TreeSet<>();

    /**
     * What a drawing is laid out for, in tenths of a unit.
     *
     * @param frame whose height is the most it may have
     * @param width of the whole drawing
     * @param size of its type
     * @param column how far the things in its legend stand apart at least
     */
    record Format(Box frame, int width, int size, int column) {}

    private record Mark(Drawn kind, String path, boolean hatching) {}

    /**
     * @param things the rectangle around what is drawn
     */
    Picture(Extent things, Format format) {
        this.paper = Paper.fitting(things, format.frame());
        this.format = format;
        this.labels = new Labels(paper.frame().grown(-20), format.size());
    }

    /** True when a part of a shape lies in what is drawn. */
    boolean shows(Shape shape) {
        return !shape.empty() && shape.meets(paper.window().shape());
    }

    boolean shows(Point point) {
        return paper.window().holds(point);
    }

    void draw(Drawn kind, Shape shape) {
        if (shows(shape)) {
            Shape seen = paper.seen(shape);
            kinds.add(kind);
            marks.add(new Mark(kind, paper.path(seen), false));
            labels.drawn(paper.strokes(seen), !seen.areas().empty(), 1);
        }
    }

    /** The same with slanting lines in it, which rise to the right in a hazard zone and fall where somebody is detected. */
    void hatched(Drawn kind, Shape shape) {
        draw(kind, shape);
        if (shows(shape)) {
            boolean zone = kind == Drawn.ZONE;
            Shape lines = paper.seen(shape).hatching(paper.millimetres(zone ? HATCHING : HATCHING * 2 / 3), zone);
            marks.add(new Mark(kind, paper.path(lines), true));
        }
    }

    /** From now on what lies beyond the frame is left off, also ways out. */
    void onlyWithin() {
        onlyWithin = true;
    }

    /** A symbol at a point, with its text. What lies beyond the frame is left off; a way out there stands at the frame and points to it. */
    void symbol(Drawn kind, Point at, String... lines) {
        if (!shows(at) && (onlyWithin || kind != Drawn.WAY_OUT)) {
            return;
        }
        Point shown = paper.window().nearest(at);
        Box frame = paper.frame().grown(-SYMBOL * 2 / 3);
        int x = Math.max(frame.left(), Math.min(paper.x(shown), frame.right()));
        int y = Math.max(frame.top(), Math.min(paper.y(shown), frame.bottom()));
        kinds.add(kind);
        // The tip of the pin is where the reader stands, and everything else gives way to it.
        Box place = kind == Drawn.READER ? Box.around(x, y - SYMBOL / 2, SYMBOL, SYMBOL) : beside(x, y, frame);
        symbolBoxes.add(place);
        labels.keepFree(place.grown(10));
        Map<String, Object> data = new LinkedHashMap<>();
        data.put("kind", kind.id());
        if (kind == Drawn.WAY_OUT) {
            data.put("turn", outwards(paper.x(at), paper.y(at)));
        }
        data.put("x", Paper.units(place.left() + SYMBOL / 2));
        data.put("y", Paper.units(place.top() + SYMBOL / 2));
        if (kind != Drawn.READER && !place.holds(x, y)) {
            data.put("leader", Paper.path(new Stroke(x, y, place.left() + SYMBOL / 2, place.top() + SYMBOL / 2)));
        }
        symbols.add(data);
        if (lines.length > 0) {
            wishes.add(Wish.beside(place, lines(lines)));
        }
    }

    /** The direction from the middle of the frame, in steps of 45 degrees, clockwise from the right. */
    private int outwards(int x, int y) {
        int right = x - (paper.frame().left() + paper.frame().right()) / 2;
        int down = y - (paper.frame().top() + paper.frame().bottom()) / 2;
        // 5 to 12 is the slope of half a step.
        boolean level = Math.abs(down) * 12L < Math.abs(right) * 5L;
        boolean upright = Math.abs(right) * 12L < Math.abs(down) * 5L;
        if (level) {
            return right < 0 ? 180 : 0;
        }
        if (upright) {
            return down < 0 ? 270 : 90;
        }
        return right < 0 ? (down < 0 ? 225 : 135) : (down < 0 ? 315 : 45);
    }

    /** Where a symbol lies on no other: at its point, else a little aside; where all around is full it stays at its point. */
    private Box beside(int x, int y, Box frame) {
        Box there = Box.around(x, y, SYMBOL, SYMBOL);
        for (int away : new int[] {0, SYMBOL + 10, 2 * SYMBOL, 3 * SYMBOL}) {
            for (int[] way : ASIDE) {
                Box box = Box.around(x + away * way[0], y + away * way[1], SYMBOL, SYMBOL);
                if (box.meets(frame) && symbolBoxes.stream().noneMatch(box::meets)) {
                    return box;
                }
            }
        }
        return there;
    }

    /** Text in an area, or at a line. */
    void text(Shape shape, boolean area, String... lines) {
        if (!shows(shape)) {
            return;
        }
        Shape seen = paper.seen(shape);
        List<Stroke> outline = paper.strokes(seen);
        List<Spot> at = area ? within(seen) : along(outline);
        if (!at.isEmpty()) {
            wishes.add(Wish.at(at, outline, area, lines(lines)));
        }
    }

    /** Places in an area to which a line may lead: the middle of each part, and halfway from there to the corners. */
    private List<Spot> within(Shape area) {
        List<Spot> spots = new ArrayList<>();
        for (Shape part : area.parts()) {
            Point middle = part.within();
            spots.add(spot(middle));
            part.outlines().stream()
                    .flatMap(outline -> {
                        int step = Math.max(1, outline.size() / CORNERS);
                        return IntStream.range(0, outline.size() - 1)
                                .filter(i -> i % step == 0)
                                .mapToObj(outline::get);
                    })
                    .map(corner -> between(middle, corner))
                    .filter(point -> part.covers(Shape.spot(point)))
                    .map(this::spot)
                    .forEach(spots::add);
        }
        return spots;
    }

    private static Point between(Point middle, Point corner) {
        BigDecimal two = BigDecimal.valueOf(2);
        return new Point(
                middle.x().add(corner.x()).divide(two, MathContext.DECIMAL64),
                middle.y().add(corner.y()).divide(two, MathContext.DECIMAL64));
    }

    private Spot spot(Point point) {
        return new Spot(paper.x(point), paper.y(point));
    }

    /** Places on lines to which a line may lead: the middle of the longest first, then the quarters, then the others. */
    private static List<Spot> along(List<Stroke> outline) {
        return outline.stream()
                .sorted(Comparator.comparing(Stroke::length).reversed())
                .limit(CORNERS)
                .flatMap(line -> Stream.of(2, 1, 3)
                        .map(quarters -> new Spot(
                                line.x1() + (line.x2() - line.x1()) * quarters / 4,
                                line.y1() + (line.y2() - line.y1()) * quarters / 4)))
                .toList();
    }

    /** The first line stands out. */
    private static List<Line> lines(String... lines) {
        return IntStream.range(0, lines.length)
                .mapToObj(i -> new Line(lines[i], i == 0))
                .toList();
    }

    /**
     * A distance with an arrow at each end, a ring at the safeguard and a dot at the point of the hazard zone.
     *
     * @param required how far from the zone a bar stands across it; empty when that is not known
     * @param governs true when it is drawn stronger
     */
    void distance(Between between, Optional<BigDecimal> required, boolean governs, String... lines) {
        Stroke way = paper.stroke(between.from(), between.to());
        Stroke line = apart(way);
        int length = line.length();
        Map<String, Object> data = new LinkedHashMap<>();
        kinds.add(governs ? Drawn.GOVERNS : Drawn.DISTANCE);
        data.put("governs", governs);
        data.put("x1", Paper.units(way.x1()));
        data.put("y1", Paper.units(way.y1()));
        data.put("x2", Paper.units(way.x2()));
        data.put("y2", Paper.units(way.y2()));
        labels.keepFree(Box.around(way.x1(), way.y1(), END, END));
        labels.keepFree(Box.around(way.x2(), way.y2(), END, END));
        if (!line.equals(way)) {
            data.put(
                    "aside",
                    Paper.path(new Stroke(way.x1(), way.y1(), line.x1(), line.y1())) + " "
                            + Paper.path(new Stroke(way.x2(), way.y2(), line.x2(), line.y2())));
        }
        if (length > 0) {
            boolean inward = length < 4 * ARROW;
            data.put("line", Paper.path(line));
            data.put("heads", head(line, length, inward) + " " + head(reversed(line), length, inward));
            required.map(paper::length).ifPresent(away -> data.put("bar", bar(reversed(line), length, away)));
            labels.drawn(List.of(line), false, OF_A_DISTANCE);
            lengths.add(line);
        }
        distances.add(data);
        wishes.add(Wish.at(along(List.of(line)), List.of(line), false, lines(lines)));
    }

    /** The same way, so far to the side that it lies on no other distance. */
    private Stroke apart(Stroke way) {
        int length = way.length();
        if (length == 0) {
            return way;
        }
        for (int aside = 0; ; aside = aside > 0 ? -aside : APART - aside) {
            int dx = -(way.y2() - way.y1()) * aside / length;
            int dy = (way.x2() - way.x1()) * aside / length;
            Stroke moved = new Stroke(way.x1() + dx, way.y1() + dy, way.x2() + dx, way.y2() + dy);
            if (lengths.stream().noneMatch(other -> lieOnEachOther(other, moved))) {
                return moved;
            }
        }
    }

    /** True when one lies along the other for a part of its length, closer than a reader can tell. */
    private static boolean lieOnEachOther(Stroke one, Stroke other) {
        long length = one.length();
        long close = length * APART / 2;
        long from = along(one, other.x1(), other.y1());
        long to = along(one, other.x2(), other.y2());
        return Math.abs(one.side(other.x1(), other.y1())) < close
                && Math.abs(one.side(other.x2(), other.y2())) < close
                && Math.max(from, to) > 0
                && Math.min(from, to) < length * length;
    }

    /** How far along a line a point lies, times the length of the line. */
    private static long along(Stroke line, int x, int y) {
        return (long) (line.x2() - line.x1()) * (x - line.x1()) + (long) (line.y2() - line.y1()) * (y - line.y1());
    }

    private static Stroke reversed(Stroke line) {
        return new Stroke(line.x2(), line.y2(), line.x1(), line.y1());
    }

    /** At the end of a line; from outside where the line is too short for two. */
    private static String head(Stroke line, int length, boolean inward) {
        int back = inward ? -ARROW : ARROW;
        int dx = line.x2() - line.x1();
        int dy = line.y2() - line.y1();
        int x = line.x2() - dx * back / length;
        int y = line.y2() - dy * back / length;
        int aside = ARROW / 3;
        return "M" + at(line.x2(), line.y2()) + " L" + at(x - dy * aside / length, y + dx * aside / length) + " L"
                + at(x + dy * aside / length, y - dx * aside / length) + " Z";
    }

    private static String bar(Stroke line, int length, int away) {
        int dx = line.x2() - line.x1();
        int dy = line.y2() - line.y1();
        int x = line.x1() + Math.toIntExact((long) dx * away / length);
        int y = line.y1() + Math.toIntExact((long) dy * away / length);
        return "M" + at(x - dy * BAR / length, y + dx * BAR / length) + " L"
                + at(x + dy * BAR / length, y - dx * BAR / length);
    }

    private static String at(int x, int y) {
        return Paper.units(x) + " " + Paper.units(y);
    }

    /**
     * What the template is filled with.
     *
     * @param id of the drawing, also the name of its file
     * @param title at its head there
     * @param unit of the coordinates; empty for a drawing without rulers
     * @param words of each sort of thing, one line each, for the legend; none for what it leaves out
     */
    Map<String, Object> data(String id, String title, Optional<Unit> unit, Function<Drawn, List<String>> words) {
        labels.place(wishes);
        Map<String, Object> data = new LinkedHashMap<>();
        data.put("id", id);
        data.put("title", title);
        data.put("size", Paper.units(format.size()));
        data.put("lineHeight", Paper.units(Labels.lineHeight(format.size())));
        Box frame = paper.frame();
        data.put("left", Paper.units(frame.left()));
        data.put("top", Paper.units(frame.top()));
        data.put("right", Paper.units(frame.right()));
        data.put("bottom", Paper.units(frame.bottom()));
        data.put("marks", marks());
        data.put("symbols", symbols);
        data.put("distances", distances);
        data.put("labels", labels.placed().stream().map(this::label).toList());
        int below = frame.bottom() + 95;
        if (unit.isPresent()) {
            rulers(unit.get(), data);
            below += 405;
        }
        int end = legend(below, words, data);
        end = key(Math.max(end, below) + (labels.numbered().isEmpty() ? 0 : 50), data);
        data.put("width", Paper.units(format.width()));
        data.put("height", Paper.units(end));
        return data;
    }

    private List<Map<String, Object>> marks() {
        return marks.stream()
                .sorted(Comparator.comparing(Mark::kind))
                .map(mark -> Map.<String, Object>of(
                        "kind", mark.kind().id(), "path", mark.path(), "hatching", mark.hatching()))
                .toList();
    }

    private Map<String, Object> label(Placed placed) {
        Box box = placed.box();
        Map<String, Object> data = new LinkedHashMap<>();
        data.put("left", Paper.units(box.left()));
        data.put("top", Paper.units(box.top()));
        data.put("wide", Paper.units(box.right() - box.left()));
        data.put("high", Paper.units(box.bottom() - box.top()));
        data.put("number", placed.number());
        placed.leader().ifPresent(leader -> {
            data.put("leader", Paper.path(leader));
            data.put("x", Paper.units(leader.x1()));
            data.put("y", Paper.units(leader.y1()));
        });
        data.put(
                "lines",
                placed.lines().stream()
                        .map(line -> Map.<String, Object>of("text", line.text(), "bold", line.bold()))
                        .toList());
        return data;
    }

    /** Coordinates along two sides, and a scale. */
    private void rulers(Unit unit, Map<String, Object> data) {
        BigDecimal one = unit.equals(Unit.INCH) ? new BigDecimal("25.4") : BigDecimal.ONE;
        BigDecimal step = step(one);
        Box frame = paper.frame();
        List<Map<String, Object>> along = new ArrayList<>();
        for (BigDecimal at :
                ticks(paper.window().least().x(), paper.window().most().x(), step.multiply(one))) {
            int x = paper.x(new Point(at, BigDecimal.ZERO));
            if (x < frame.right() - 420) {
                along.add(Map.of("at", Paper.units(x), "text", figure(at, one)));
            }
        }
        List<Map<String, Object>> up = new ArrayList<>();
        for (BigDecimal at :
                ticks(paper.window().least().y(), paper.window().most().y(), step.multiply(one))) {
            int y = paper.y(new Point(BigDecimal.ZERO, at));
            if (y > frame.top() + 220) {
                up.add(Map.of("at", Paper.units(y), "text", figure(at, one)));
            }
        }
        data.put("along", along);
        data.put("up", up);
        data.put("unit", unit.symbol());
        data.put("scale", Paper.units(paper.length(step.multiply(one))));
        data.put("scaleWords", step.toPlainString() + " " + unit.symbol());
    }

    /** A one, two or five with noughts, so that the ticks stand apart. */
    private BigDecimal step(BigDecimal one) {
        BigDecimal least = paper.millimetres(TICKS_APART).divide(one, 6, RoundingMode.HALF_EVEN);
        BigDecimal step = BigDecimal.ONE;
        int[] next = {2, 5, 10};
        for (int i = 0; step.compareTo(least) < 0; i++) {
            step = BigDecimal.valueOf(next[i % 3]).scaleByPowerOfTen(i / 3);
        }
        return step.setScale(0, RoundingMode.UNNECESSARY);
    }

    private static List<BigDecimal> ticks(BigDecimal least, BigDecimal most, BigDecimal step) {
        List<BigDecimal> ticks = new ArrayList<>();
        BigDecimal at = least.divide(step, 0, RoundingMode.CEILING).multiply(step);
        while (at.compareTo(most) <= 0) {
            ticks.add(at);
            at = at.add(step);
        }
        return ticks;
    }

    private static String figure(BigDecimal at, BigDecimal one) {
        return at.divide(one, 0, RoundingMode.HALF_EVEN).toPlainString();
    }

    /** Below the frame, one after the other in as many rows as that takes. Returns where it ends. */
    private int legend(int top, Function<Drawn, List<String>> words, Map<String, Object> data) {
        List<Map<String, Object>> legend = new ArrayList<>();
        int most = format.width() - LEGEND_LEFT;
        int x = LEGEND_LEFT;
        int y = top;
        int high = 0;
        for (Drawn kind : kinds) {
            int sample = kind.isSymbol() ? SYMBOL_SAMPLE : LEGEND_SAMPLE;
            List<String> lines = wrapped(words.apply(kind), most - LEGEND_SAMPLE);
            if (!lines.isEmpty()) {
                int wide = Math.max(format.column(), sample + widest(lines) + 60);
                if (x > LEGEND_LEFT && x + wide > most + LEGEND_LEFT) {
                    x = LEGEND_LEFT;
                    y += high;
                    high = 0;
                }
                high = Math.max(high, Math.max(LEGEND_ROW, lines.size() * Labels.lineHeight(format.size()) + 30));
                legend.add(Map.of(
                        "kind", kind.id(),
                        "lines", lines,
                        "x", Paper.units(x),
                        "y", Paper.units(y),
                        "across", Paper.units(sample - 60),
                        "sample", Paper.units(sample),
                        "fit", Paper.units(wide - sample)));
                x += wide;
            }
        }
        data.put("legend", legend);
        return y + high;
    }

    private int widest(List<String> texts) {
        return texts.stream()
                .mapToInt(text -> Lettering.width(text, format.size(), false))
                .max()
                .orElse(0);
    }

    private List<String> wrapped(List<String> texts, int width) {
        return texts.stream()
                .flatMap(text -> Lettering.wrapped(text, format.size(), width).stream())
                .toList();
    }

    /** What was put there as numbers, in as many columns as there is room for. Returns where it ends. */
    private int key(int top, Map<String, Object> data) {
        List<Map<String, Object>> key = new ArrayList<>();
        List<String> texts = labels.numbered();
        int columns =
                Math.max(1, (format.width() - LEGEND_LEFT) / (Math.min(widest(texts), KEY_WIDEST) + KEY_SAMPLE + 40));
        int column = (format.width() - LEGEND_LEFT) / columns;
        int fit = column - KEY_SAMPLE - 40;
        int rows = (texts.size() + columns - 1) / columns;
        int end = top;
        int y = top;
        for (int i = 0; i < texts.size(); i++) {
            y = i % rows == 0 ? top : y;
            List<String> lines = wrapped(List.of(texts.get(i)), fit);
            key.add(Map.of(
                    "number", String.valueOf(i + 1),
                    "lines", lines,
                    "x", Paper.units(LEGEND_LEFT + i / rows * column),
                    "y", Paper.units(y),
                    "wide",
                            Paper.units(
                                    Math.max(SYMBOL, Lettering.width(String.valueOf(i + 1), format.size(), true) + 14)),
                    "sample", Paper.units(KEY_SAMPLE),
                    "fit", Paper.units(fit)));
            y += lines.size() * Labels.lineHeight(format.size()) + 20;
            end = Math.max(end, y);
        }
        data.put("key", key);
        return end;
    }
}
