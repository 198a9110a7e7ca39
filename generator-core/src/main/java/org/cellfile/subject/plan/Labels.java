package org.cellfile.subject.plan;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Finds a place for each text of a drawing, so that no text lies on another one, on a symbol or on the line that leads to another
 * text, and one sees what it belongs to: it stands in its thing, beside it, or not far from it at the end of a line that crosses as
 * little as can be. A text that finds no such place is put there as a number, and stands beside the drawing. Everything is in whole
 * tenths of a unit of the drawing, y downwards; the same wishes in the same order always find the same places.
 */
final class Labels {

    /** What a text keeps from everything else. */
    private static final int GAP = 14;

    /** From here on a line leads from the thing to its text. */
    private static final int LEADING = 70;

    /** How far from its thing a text is tried; farther off nobody sees what it belongs to. */
    private static final int[] DISTANCES = {50, 85, 140, 220, 320, 420};

    /** Where a number or figures find no place there either, it goes on. */
    private static final int[] FARTHER = {560, 750, 1000, 1400};

    /** Sixteen directions in thousandths, the level ones first, as a text is read best beside its thing. */
    private static final int[][] DIRECTIONS = {
        {1000, 0},
        {-1000, 0},
        {0, -1000},
        {0, 1000},
        {707, -707},
        {707, 707},
        {-707, -707},
        {-707, 707},
        {924, -383},
        {924, 383},
        {-924, -383},
        {-924, 383},
        {383, -924},
        {383, 924},
        {-383, -924},
        {-383, 924}
    };

    /** How many places are tried within an area, along and across. */
    private static final int[] WITHIN = {9, 17};

    /** What it costs, in length of a leader, when a text covers something drawn, or comes so close to it that it seems to be its name. */
    private static final int COVERS = 260;

    private static final int NEAR = 40;
    private static final int COMES_NEAR = 45;

    /** When it leaves an area or enters one, by a leader that crosses its outline. */
    private static final int CROSSES = 130;

    private static final int CROSSES_LEADER = 600;

    /** When it stands in another area, into which its thing does not reach. */
    private static final int IN_ANOTHER = 220;

    /** For more than this a text is rather put there as a number; one with figures stands for them, and may cost more. */
    private static final int DEAREST = 620;

    private static final int DEAREST_WITH_FIGURES = 1500;

    /** A rectangle. */
    record Box(int left, int top, int right, int bottom) {
        static Box around(int x, int y, int width, int height) {
            return new Box(x - width / 2, y - height / 2, x - width / 2 + width, y - height / 2 + height);
        }

        /** The smallest one around both. */
        Box with(Box other) {
            return new Box(
                    Math.min(left, other.left),
                    Math.min(top, other.top),
                    Math.max(right, other.right),
                    Math.max(bottom, other.bottom));
        }

        /** How far the other one is off, along the axis on which it is farther. */
        int gap(Box other) {
            int across = Math.max(left - other.right, other.left - right);
            int down = Math.max(top - other.bottom, other.top - bottom);
            return Math.max(0, Math.max(across, down));
        }

        Box grown(int by) {
            return new Box(left - by, top - by, right + by, bottom + by);
        }

        boolean meets(Box other) {
            return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
        }

        boolean within(Box other) {
            return left >= other.left && right <= other.right && top >= other.top && bottom <= other.bottom;
        }

        boolean holds(int x, int y) {
            return left <= x && x <= right && top <= y && y <= bottom;
        }

        /** True when it has a point of the line within it. */
        boolean meets(Stroke line) {
            if (line.right() < left || line.left() > right || line.bottom() < top || line.top() > bottom) {
                return false;
            }
            long one = line.side(left, top);
            long two = line.side(right, top);
            long three = line.side(left, bottom);
            long four = line.side(right, bottom);
            boolean allOnOneSide =
                    (one > 0 && two > 0 && three > 0 && four > 0) || (one < 0 && two < 0 && three < 0 && four < 0);
            return !allOnOneSide;
        }
    }

    /** A straight line. */
    record Stroke(int x1, int y1, int x2, int y2) {
        int left() {
            return Math.min(x1, x2);
        }

        int right() {
            return Math.max(x1, x2);
        }

        int top() {
            return Math.min(y1, y2);
        }

        int bottom() {
            return Math.max(y1, y2);
        }

        /** Above nought on one side of it, below on the other. */
        long side(int x, int y) {
            return (long) (x2 - x1) * (y - y1) - (long) (y2 - y1) * (x - x1);
        }

        boolean crosses(Stroke other) {
            return Long.signum(side(other.x1, other.y1)) * Long.signum(side(other.x2, other.y2)) < 0
                    && Long.signum(other.side(x1, y1)) * Long.signum(other.side(x2, y2)) < 0;
        }

        int length() {
            long x = (long) x2 - x1;
            long y = (long) y2 - y1;
            return BigInteger.valueOf(x * x + y * y).sqrt().intValueExact();
        }

        /** The length to a fifteenth, which is found quickly. */
        int about() {
            int x = Math.abs(x2 - x1);
            int y = Math.abs(y2 - y1);
            return Math.max(x, y) + Math.min(x, y) * 3 / 8;
        }
    }

    /** One line of a text. */
    record Line(String text, boolean bold) {}

    /**
     * A text looking for its place.
     *
     * @param at points of the thing it belongs to, to which a line may lead, the middle first
     * @param own what the thing covers itself: a symbol its box, other things nothing around their middle
     * @param outline of the thing as it was drawn
     * @param inside true when it may stand within that outline
     */
    record Wish(List<Spot> at, Box own, List<Stroke> outline, boolean inside, List<Line> lines) {

        private boolean hasFigures() {
            return lines.size() > 1;
        }

        /** At a symbol. */
        static Wish beside(Box symbol, List<Line> lines) {
            Spot middle = new Spot((symbol.left() + symbol.right()) / 2, (symbol.top() + symbol.bottom()) / 2);
            return new Wish(List.of(middle), symbol, List.of(), false, lines);
        }

        /** At a thing with an outline. */
        static Wish at(List<Spot> at, List<Stroke> outline, boolean inside, List<Line> lines) {
            return new Wish(at, Box.around(at.get(0).x(), at.get(0).y(), 0, 0), outline, inside, lines);
        }

        Spot middle() {
            return at.get(0);
        }

        private boolean symbol() {
            return outline.isEmpty();
        }

        private String text() {
            return String.join(", ", lines.stream().map(Line::text).toList());
        }
    }

    /**
     * A text in its place.
     *
     * @param number true when it stands for a text beside the drawing
     * @param leader from the thing to the text; empty where the text stands at its thing
     */
    record Placed(Box box, List<Line> lines, boolean number, Optional<Stroke> leader) {}

    /** A point of a thing. */
    record Spot(int x, int y) {}

    /** Something drawn, and how much it matters that texts keep clear of it. */
    private record Thing(List<Stroke> strokes, boolean area, Box around, int weight) {

        boolean holds(int x, int y) {
            return area && around.holds(x, y) && isWithin(strokes, x, y);
        }

        boolean meets(Box box) {
            return around.meets(box) && strokes.stream().anyMatch(box::meets);
        }

        boolean crosses(Stroke leader) {
            return strokes.stream().anyMatch(leader::crosses);
        }
    }

    private record Text(int width, int height, List<Line> lines, boolean number) {}

    private final Box frame;
    private final int size;
    private final Set<Spot> middles = new LinkedHashSet<>();
    private final List<Box> kept = new ArrayList<>();
    private final List<Thing> things = new ArrayList<>();
    private final List<Box> taken = new ArrayList<>();
    private final List<Stroke> leaders = new ArrayList<>();
    private final List<Placed> placed = new ArrayList<>();
    private final List<String> numbered = new ArrayList<>();

    /**
     * @param frame which no text leaves
     * @param size of the type
     */
    Labels(Box frame, int size) {
        this.frame = frame;
        this.size = size;
    }

    /** No text may lie there. */
    void keepFree(Box box) {
        kept.add(box);
    }

    /**
     * The lines of a thing, of which texts rather keep clear.
     *
     * @param area true when they go round one
     * @param weight one for most things
     */
    void drawn(List<Stroke> strokes, boolean area, int weight) {
        strokes.stream()
                .map(line -> new Box(line.left(), line.top(), line.right() + 1, line.bottom() + 1))
                .reduce(Box::with)
                .ifPresent(around -> things.add(new Thing(strokes, area, around, weight)));
    }

    /**
     * Puts each text to its place, or its number where it finds none. Numbers take little room and go first, so that they stand at
     * their things; as long as a text finds no place beside them it becomes one of them.
     */
    void place(List<Wish> wishes) {
        wishes.forEach(wish -> middles.add(wish.middle()));
        Set<Wish> left = new HashSet<>();
        int before;
        do {
            before = left.size();
            begin(left);
            for (Wish wish : wishes) {
                if (left.contains(wish)) {
                    number(wish);
                }
            }
            for (Wish wish : wishes) {
                if (!left.contains(wish) && !name(wish)) {
                    left.add(wish);
                }
            }
        } while (left.size() > before);
    }

    private void begin(Set<Wish> left) {
        placed.clear();
        leaders.clear();
        taken.clear();
        taken.addAll(kept);
        numbered.clear();
        numbered.addAll(new TreeSet<>(left.stream().map(Wish::text).toList()));
    }

    private boolean name(Wish wish) {
        Text name = text(wish.lines(), false);
        return put(wish, name, DISTANCES, DEAREST)
                || (wish.hasFigures()
                        && (put(wish, name, DISTANCES, DEAREST_WITH_FIGURES)
                                || put(wish, name, FARTHER, DEAREST_WITH_FIGURES)));
    }

    private void number(Wish wish) {
        Text number = text(List.of(new Line(String.valueOf(numbered.indexOf(wish.text()) + 1), true)), true);
        if (!put(wish, number, DISTANCES, Integer.MAX_VALUE) && !put(wish, number, FARTHER, Integer.MAX_VALUE)) {
            anywhere(wish, number);
        }
    }

    /** Every text in its place, and numbers instead of those that found none. */
    List<Placed> placed() {
        return List.copyOf(placed);
    }

    /** What the numbers stand for, from 1 on, in the order of their letters. */
    List<String> numbered() {
        return List.copyOf(numbered);
    }

    static int lineHeight(int size) {
        return size * 6 / 5;
    }

    private Text text(List<Line> lines, boolean number) {
        int width = lines.stream()
                        .mapToInt(line -> Lettering.width(line.text(), size, line.bold()))
                        .max()
                        .orElse(0)
                + GAP;
        int height = lines.size() * lineHeight(size) + GAP / 2;
        return new Text(number ? Math.max(width, height) : width, height, lines, number);
    }

    private boolean put(Wish wish, Text text, int[] distances, int dearest) {
        Search search = new Search(wish, text, dearest);
        if (wish.inside()) {
            search.within();
        }
        for (int distance : distances) {
            // No leader is much shorter than the distance, and none costs less than its length.
            if (distance * 2 / 3 < search.least) {
                search.around(distance);
            }
        }
        search.best.ifPresent(this::settle);
        return search.best.isPresent();
    }

    private void settle(Placed one) {
        placed.add(one);
        taken.add(one.box());
        one.leader().ifPresent(leaders::add);
    }

    /** The nearest place that is free, whatever a line to it goes over. */
    private void anywhere(Wish wish, Text number) {
        Search search = new Search(wish, number, Integer.MAX_VALUE);
        int across = number.width() + GAP;
        int down = number.height() + GAP;
        for (int x = frame.left() + across / 2; x < frame.right(); x += across) {
            for (int y = frame.top() + down / 2; y < frame.bottom(); y += down) {
                search.anywhere(search.box(x, y));
            }
        }
        search.best.ifPresent(this::settle);
    }

    /** For the cheapest place of a text. */
    private final class Search {

        private final Wish wish;
        private final Text text;
        private final List<Thing> own;
        private final List<Thing> others;
        private Optional<Placed> best = Optional.empty();
        private int least;

        Search(Wish wish, Text text, int dearest) {
            this.wish = wish;
            this.text = text;
            this.least = dearest;
            this.others = new ArrayList<>(things);
            this.own = things.stream()
                    .filter(thing -> thing.strokes().equals(wish.outline()))
                    .toList();
            others.removeAll(own);
        }

        /** All over the thing; the nearer to its middle the better. */
        void within() {
            Box around = wish.outline().stream()
                    .map(line -> new Box(line.left(), line.top(), line.right(), line.bottom()))
                    .reduce(Box::with)
                    .orElse(wish.own());
            int wide = around.right() - around.left();
            int high = around.bottom() - around.top();
            at(box(wish.middle().x(), wish.middle().y()), 0);
            for (int i = 1; i < WITHIN[0]; i++) {
                for (int j = 1; j < WITHIN[1]; j++) {
                    int x = around.left() + wide * i / WITHIN[0];
                    int y = around.top() + high * j / WITHIN[1];
                    int away = new Stroke(wish.middle().x(), wish.middle().y(), x, y).about();
                    at(box(x, y), away / 8);
                }
            }
        }

        private void at(Box box, int cost) {
            if (cost < least && free(box) && holds(wish.outline(), box)) {
                take(new Placed(box, text.lines(), text.number(), Optional.empty()), cost);
            }
        }

        void around(int distance) {
            for (Spot at : wish.at()) {
                for (int[] direction : DIRECTIONS) {
                    Box box = box(
                            at.x() + direction[0] * (distance + text.width() / 2) / 1000,
                            at.y() + direction[1] * (distance + text.height() / 2) / 1000);
                    Stroke leader = leader(at, box);
                    int away = leader.about();
                    boolean near = (wish.symbol() ? box.gap(wish.own()) : away) <= LEADING;
                    if (away < least && free(box) && (near || free(leader))) {
                        take(
                                new Placed(
                                        box,
                                        text.lines(),
                                        text.number(),
                                        near ? Optional.empty() : Optional.of(leader)),
                                away);
                    }
                }
            }
        }

        void anywhere(Box box) {
            Stroke leader = leader(wish.middle(), box);
            if (leader.about() < least && free(box)) {
                least = leader.about();
                best = Optional.of(new Placed(box, text.lines(), text.number(), Optional.of(leader)));
            }
        }

        private Stroke leader(Spot at, Box box) {
            return new Stroke(
                    at.x(),
                    at.y(),
                    Math.max(box.left(), Math.min(at.x(), box.right())),
                    Math.max(box.top(), Math.min(at.y(), box.bottom())));
        }

        private Box box(int x, int y) {
            return Box.around(x, y, text.width(), text.height());
        }

        private void take(Placed one, int away) {
            int cost = away + cost(one);
            if (cost < least) {
                least = cost;
                best = Optional.of(one);
            }
        }

        private boolean free(Box box) {
            Box around = box.grown(GAP / 2);
            return box.within(frame)
                    && taken.stream().noneMatch(around::meets)
                    && leaders.stream().noneMatch(around::meets)
                    && middles.stream()
                            .filter(middle -> !middle.equals(wish.middle()))
                            .noneMatch(middle -> around.holds(middle.x(), middle.y()));
        }

        private boolean free(Stroke leader) {
            return taken.stream()
                    .filter(box -> !box.grown(-1).within(wish.own().grown(20)))
                    .noneMatch(box -> box.meets(leader));
        }

        private int cost(Placed one) {
            Box near = one.box().grown(NEAR);
            int x = (one.box().left() + one.box().right()) / 2;
            int y = (one.box().top() + one.box().bottom()) / 2;
            Spot from = one.leader()
                    .map(leader -> new Spot(leader.x1(), leader.y1()))
                    .orElse(wish.middle());
            int cost = 0;
            for (Thing thing : others) {
                if (thing.meets(one.box())) {
                    cost += COVERS * thing.weight();
                } else if (thing.meets(near)) {
                    cost += COMES_NEAR;
                }
                if (one.leader().filter(thing::crosses).isPresent()) {
                    cost += CROSSES;
                }
                if (thing.holds(x, y) && !thing.holds(from.x(), from.y())) {
                    cost += IN_ANOTHER;
                }
                if (cost >= least) {
                    return cost;
                }
            }
            return cost
                    + own.stream()
                            .filter(thing -> thing.meets(one.box()))
                            .mapToInt(thing -> COVERS * thing.weight())
                            .sum()
                    + CROSSES_LEADER
                            * Math.toIntExact(one.leader().stream()
                                    .flatMap(leader -> leaders.stream().filter(leader::crosses))
                                    .count());
        }
    }

    /** True when a box lies wholly within what lines enclose. */
    private static boolean holds(List<Stroke> outline, Box box) {
        return outline.stream().noneMatch(box::meets)
                && isWithin(outline, (box.left() + box.right()) / 2, (box.top() + box.bottom()) / 2);
    }

    /** True when a line to the right from there crosses what encloses it an odd number of times. */
    private static boolean isWithin(List<Stroke> outline, int x, int y) {
        return outline.stream()
                                .filter(line -> line.y1() > y != line.y2() > y)
                                .filter(line -> line.side(x, y) > 0 == line.y2() > line.y1())
                                .count()
                        % 2
                == 1;
    }
}
