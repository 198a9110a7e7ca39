package org.cellfile.subject.plan;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Finds a place for each text of a drawing, so that no text lies on another one, on a symbol or on the line that leads to another
 * text. A text that finds none is put there as a number, and stands beside the drawing. Everything is in whole tenths of a unit of the
 * drawing, y downwards; the same wishes in the same order always find the same places.
 */
final class Labels {

    /** What a text keeps from everything else. */
    private static final int GAP = 14;

    /** From here on a line leads from the thing to its text. */
    private static final int LEADING = 70;

    /** How far from its thing a text is tried, one after the other. */
    private static final int[] DISTANCES = {50, 85, 140, 220, 320, 450, 600, 800, 1050, 1400, 1900};

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

    /** What it costs when a text covers a line of the drawing, or its leader crosses one. */
    private static final int COVERS = 240;

    /** An arc is drawn as many short lines. */
    private static final int MOST_COVERED = 20;

    private static final int CROSSES = 8;
    private static final int CROSSES_LEADER = 400;

    /** A rectangle. */
    record Box(int left, int top, int right, int bottom) {
        static Box around(int x, int y, int width, int height) {
            return new Box(x - width / 2, y - height / 2, x - width / 2 + width, y - height / 2 + height);
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
    }

    /** One line of a text. */
    record Line(String text, boolean bold) {}

    /**
     * A text looking for its place.
     *
     * @param x of the thing it belongs to
     * @param inside true when it may stand in the middle of its thing
     */
    record Wish(int x, int y, boolean inside, List<Line> lines) {}

    /**
     * A text in its place.
     *
     * @param leader from the thing to the text; empty where the text stands at its thing
     */
    record Placed(Box box, List<Line> lines, Optional<Stroke> leader) {}

    /** Where a thing with a text is. */
    private record Thing(int x, int y) {}

    private final Box frame;
    private final int size;
    private final Set<Thing> things = new LinkedHashSet<>();
    private final List<Box> taken = new ArrayList<>();
    private final List<Stroke> strokes = new ArrayList<>();
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
        taken.add(box);
    }

    /** A line of the drawing, which texts rather keep clear of. */
    void drawn(Stroke stroke) {
        strokes.add(stroke);
    }

    /** Puts each text to its place, or its number where it finds none. No text covers the thing of another one. */
    void place(List<Wish> wishes) {
        wishes.forEach(wish -> things.add(new Thing(wish.x(), wish.y())));
        wishes.forEach(this::place);
    }

    private void place(Wish wish) {
        if (put(wish)) {
            return;
        }
        numbered.add(String.join(", ", wish.lines().stream().map(Line::text).toList()));
        put(new Wish(wish.x(), wish.y(), wish.inside(), List.of(new Line(String.valueOf(numbered.size()), true))));
    }

    /** Every text in its place, and numbers instead of those that found none. */
    List<Placed> placed() {
        return List.copyOf(placed);
    }

    /** What the numbers stand for, from 1 on. */
    List<String> numbered() {
        return List.copyOf(numbered);
    }

    static int lineHeight(int size) {
        return size * 6 / 5;
    }

    private boolean put(Wish wish) {
        int width = wish.lines().stream()
                        .mapToInt(line -> Lettering.width(line.text(), size, line.bold()))
                        .max()
                        .orElse(0)
                + GAP;
        int height = wish.lines().size() * lineHeight(size) + GAP / 2;
        Optional<Placed> best = Optional.empty();
        int least = Integer.MAX_VALUE;
        for (Placed one : candidates(wish, width, height)) {
            int away = leader(wish, one.box()).length() / 3;
            if (away < least && free(wish, one)) {
                int cost = away + cost(one);
                if (cost < least) {
                    least = cost;
                    best = Optional.of(one);
                }
            }
        }
        best.ifPresent(one -> {
            placed.add(one);
            taken.add(one.box());
            one.leader().ifPresent(leaders::add);
        });
        return best.isPresent();
    }

    private List<Placed> candidates(Wish wish, int width, int height) {
        List<Placed> candidates = new ArrayList<>();
        if (wish.inside()) {
            candidates.add(new Placed(Box.around(wish.x(), wish.y(), width, height), wish.lines(), Optional.empty()));
        }
        for (int distance : DISTANCES) {
            for (int[] direction : DIRECTIONS) {
                Box box = Box.around(
                        wish.x() + direction[0] * (distance + width / 2) / 1000,
                        wish.y() + direction[1] * (distance + height / 2) / 1000,
                        width,
                        height);
                candidates.add(new Placed(
                        box, wish.lines(), Optional.of(leader(wish, box)).filter(line -> line.length() > LEADING)));
            }
        }
        return candidates;
    }

    private static Stroke leader(Wish wish, Box box) {
        return new Stroke(
                wish.x(),
                wish.y(),
                Math.max(box.left(), Math.min(wish.x(), box.right())),
                Math.max(box.top(), Math.min(wish.y(), box.bottom())));
    }

    private boolean free(Wish wish, Placed one) {
        Box kept = one.box().grown(GAP / 2);
        return one.box().within(frame)
                && taken.stream().noneMatch(kept::meets)
                && leaders.stream().noneMatch(kept::meets)
                && things.stream()
                        .filter(thing -> thing.x() != wish.x() || thing.y() != wish.y())
                        .noneMatch(thing -> kept.holds(thing.x(), thing.y()))
                && one.leader()
                        .map(leader -> taken.stream()
                                .filter(box -> !box.holds(wish.x(), wish.y()))
                                .noneMatch(box -> box.meets(leader)))
                        .orElse(true);
    }

    private int cost(Placed one) {
        long covered = strokes.stream().filter(one.box()::meets).count();
        long crossed = one.leader()
                .map(leader -> strokes.stream().filter(leader::crosses).count() * CROSSES
                        + leaders.stream().filter(leader::crosses).count() * CROSSES_LEADER)
                .orElse(0L);
        return Math.toIntExact(Math.min(covered, MOST_COVERED) * COVERS + crossed);
    }
}
