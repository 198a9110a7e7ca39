package org.cellfile.geometry;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.geom.util.LinearComponentExtracter;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * The ring of bars round an area whose widest opening is the narrowest possible: nobody wider than that opening gets in, and somebody
 * no wider does.
 *
 * <p>The bars are taken apart into straight pieces, and these are joined by the straight ways between them, the shortest first, as in
 * a least spanning tree. Each joined set keeps, for each of its pieces, how often the way there crosses a ray from a point of the
 * area. The first way that closes a loop with crossings left over goes round the area: without it, and so without an opening that
 * wide, no ring is possible. Ways through the area close nothing.
 */
public final class Enclosure {

    /** What is drawn to touch may be this far apart, in mm. */
    static final double TOUCHING = 0.5;

    private static final double FIRST_REACH = 200;

    /**
     * A ring.
     *
     * @param bars names of what it consists of, in the order of going round
     * @param openings between them, in the same order
     */
    public record Ring(List<String> bars, List<Opening> openings) {
        public Ring {
            bars = List.copyOf(bars);
            openings = List.copyOf(openings);
        }
    }

    /**
     * A way between two bars of a ring.
     *
     * @param from name of the bar before it
     * @param to name of the bar after it
     */
    public record Opening(String from, String to, Between between) {}

    private record Piece(int number, String bar, LineSegment segment) {}

    /** A straight way between two pieces. */
    private record Way(Piece from, Piece to, Coordinate start, Coordinate end, double length) {
        static Way shortest(Piece from, Piece to) {
            Coordinate[] ends = from.segment().closestPoints(to.segment());
            return of(from, to, ends[0], ends[1]);
        }

        static Way of(Piece from, Piece to, Coordinate start, Coordinate end) {
            return new Way(from, to, start, end, start.distance(end));
        }
    }

    private static final Comparator<Way> SHORTEST_FIRST = Comparator.comparingDouble(Way::length)
            .thenComparingInt(way -> way.from().number())
            .thenComparingInt(way -> way.to().number());

    private final Coordinate within;
    private final Geometry area;
    private final PreparedGeometry inner;
    private final List<Piece> pieces = new ArrayList<>();
    private final STRtree index = new STRtree();
    private final int[] parent;
    private final int[] crossings;
    private final List<List<Way>> joined = new ArrayList<>();

    private Enclosure(Geometry area, List<Bar> bars) {
        this.within = area.getInteriorPoint().getCoordinate();
        this.area = area;
        // A way along the edge of the area does not lead through it.
        this.inner = PreparedGeometryFactory.prepare(area.buffer(-TOUCHING));
        for (Bar bar : bars) {
            add(bar, area);
        }
        parent = new int[pieces.size()];
        crossings = new int[pieces.size()];
        for (Piece piece : pieces) {
            parent[piece.number()] = piece.number();
            joined.add(new ArrayList<>());
            index.insert(envelope(piece), piece);
        }
    }

    /** Of an area its edge: who gets no further than to its edge does not get through. */
    private void add(Bar bar, Geometry area) {
        Geometry whole = bar.shape().geometry();
        Geometry left = whole.getEnvelopeInternal().intersects(area.getEnvelopeInternal())
                ? bar.shape().without(new Shape(area)).geometry()
                : whole;
        Geometry edges = left.getDimension() == 2 ? left.getBoundary() : left;
        for (Object line : LinearComponentExtracter.getLines(edges)) {
            Coordinate[] corners = ((LineString) line).getCoordinates();
            for (int i = 1; i < corners.length; i++) {
                pieces.add(new Piece(pieces.size(), bar.name(), new LineSegment(corners[i - 1], corners[i])));
            }
        }
    }

    private static Envelope envelope(Piece piece) {
        return new Envelope(piece.segment().p0, piece.segment().p1);
    }

    /**
     * The ring round an area in one part; empty where the bars cannot go round it however far they reach out.
     *
     * @param bars what of them lies in the area does not count
     */
    public static Optional<Ring> round(Shape area, List<Bar> bars) {
        return new Enclosure(area.geometry(), bars).narrowest();
    }

    private Optional<Ring> narrowest() {
        double farthest = farthest();
        double done = -1;
        for (double reach = TOUCHING; done < farthest; reach = Math.max(FIRST_REACH, 2 * reach)) {
            List<Way> ways = ways(done, reach);
            ways.sort(SHORTEST_FIRST);
            for (Way way : ways) {
                if (closes(way)) {
                    return Optional.of(ring(way));
                }
            }
            done = reach;
        }
        return Optional.empty();
    }

    /** A ring of straight ways lies within the hull of all bars; where that does not hold the area there is none. */
    private double farthest() {
        Geometry hull = Shape.FACTORY
                .createMultiPointFromCoords(pieces.stream()
                        .flatMap(piece -> Stream.of(piece.segment().p0, piece.segment().p1))
                        .toArray(Coordinate[]::new))
                .convexHull();
        return hull.buffer(TOUCHING).covers(area) ? hull.getEnvelopeInternal().getDiameter() : -1;
    }

    /** The ways of that length which may join something or close a ring. */
    private List<Way> ways(double longerThan, double reach) {
        List<Way> ways = new ArrayList<>();
        for (Piece piece : pieces) {
            Envelope near = envelope(piece);
            near.expandBy(reach);
            for (Object found : index.query(near)) {
                Piece other = (Piece) found;
                if (other.number() > piece.number() && !(isJoined(piece, other) && clearOfTheRay(piece, other))) {
                    between(piece, other).stream()
                            .filter(way -> way.length() > longerThan && way.length() <= reach)
                            .forEach(ways::add);
                }
            }
        }
        return ways;
    }

    /** The shortest; where the area may lie between the pieces, which has ways on both of its sides, those from their ends too. */
    private List<Way> between(Piece piece, Piece other) {
        Way shortest = Way.shortest(piece, other);
        if (!both(piece, other).intersects(area.getEnvelopeInternal())) {
            return List.of(shortest);
        }
        LineSegment one = piece.segment();
        LineSegment two = other.segment();
        return List.of(
                shortest,
                Way.of(piece, other, one.p0, two.closestPoint(one.p0)),
                Way.of(piece, other, one.p1, two.closestPoint(one.p1)),
                Way.of(piece, other, one.closestPoint(two.p0), two.p0),
                Way.of(piece, other, one.closestPoint(two.p1), two.p1));
    }

    private static Envelope both(Piece piece, Piece other) {
        Envelope both = envelope(piece);
        both.expandToInclude(envelope(other));
        return both;
    }

    /** True when pieces are joined by a way that crosses the ray as often upwards as downwards. */
    private boolean isJoined(Piece piece, Piece other) {
        return root(piece.number()) == root(other.number()) && crossings[piece.number()] == crossings[other.number()];
    }

    /** True when no way between the pieces crosses the ray, so that distances need not be looked at. */
    private boolean clearOfTheRay(Piece piece, Piece other) {
        Envelope both = both(piece, other);
        return both.getMaxY() < within.y || both.getMinY() > within.y || both.getMaxX() <= within.x;
    }

    /** Joins what the way leads between; true when that closes a ring round the area. */
    private boolean closes(Way way) {
        int from = root(way.from().number());
        int to = root(way.to().number());
        int along = crossed(way.from().segment().p0, way.start())
                + crossed(way.start(), way.end())
                + crossed(way.end(), way.to().segment().p0);
        int loop = crossings[way.from().number()] + along - crossings[way.to().number()];
        if ((from == to && loop == 0) || throughTheArea(way)) {
            return false;
        }
        if (from != to) {
            parent[to] = from;
            crossings[to] = loop;
            joined.get(way.from().number()).add(way);
            joined.get(way.to().number()).add(way);
        }
        return from == to;
    }

    private boolean throughTheArea(Way way) {
        return way.length() > TOUCHING
                && inner.intersects(Shape.FACTORY.createLineString(new Coordinate[] {way.start(), way.end()}));
    }

    /** The first of the pieces joined with that one; on the way every piece gets to know its crossings from there. */
    private int root(int piece) {
        Deque<Integer> way = new ArrayDeque<>();
        int top = piece;
        while (parent[top] != top) {
            way.push(top);
            top = parent[top];
        }
        while (!way.isEmpty()) {
            int next = way.pop();
            int above = parent[next];
            crossings[next] += above == top ? 0 : crossings[above];
            parent[next] = top;
        }
        return top;
    }

    /** How a straight way crosses the ray from the point within in the direction of x: 1 upwards, -1 downwards, else 0. */
    private int crossed(Coordinate from, Coordinate to) {
        boolean below = from.y < within.y;
        if (below == to.y < within.y) {
            return 0;
        }
        double x = from.x + (within.y - from.y) / (to.y - from.y) * (to.x - from.x);
        return x <= within.x ? 0 : below ? 1 : -1;
    }

    private Ring ring(Way closing) {
        List<Way> ways = path(closing.to(), closing.from());
        ways.add(0, closing);
        List<String> bars = new ArrayList<>();
        List<Opening> openings = new ArrayList<>();
        Piece at = closing.from();
        for (Way way : ways) {
            boolean forward = way.from().equals(at);
            Piece next = forward ? way.to() : way.from();
            if (way.length() > TOUCHING) {
                Between between = new Between(Point.read(way.start()), Point.read(way.end()));
                openings.add(new Opening(at.bar(), next.bar(), forward ? between : between.reversed()));
            }
            if (bars.isEmpty() || !bars.get(bars.size() - 1).equals(next.bar())) {
                bars.add(next.bar());
            }
            at = next;
        }
        if (bars.size() > 1 && bars.get(0).equals(bars.get(bars.size() - 1))) {
            bars.remove(bars.size() - 1);
        }
        return new Ring(bars, openings);
    }

    /** The ways by which two pieces are joined. */
    private List<Way> path(Piece from, Piece to) {
        @Nullable Way[] reachedBy = new Way[pieces.size()];
        Deque<Piece> open = new ArrayDeque<>(List.of(to));
        while (!open.isEmpty()) {
            Piece at = open.remove();
            for (Way way : joined.get(at.number())) {
                Piece next = way.from().equals(at) ? way.to() : way.from();
                if (reachedBy[next.number()] == null && next.number() != to.number()) {
                    reachedBy[next.number()] = way;
                    open.add(next);
                }
            }
        }
        List<Way> path = new ArrayList<>();
        for (Way way = reachedBy[from.number()]; way != null; ) {
            path.add(way);
            from = way.from().equals(from) ? way.to() : way.from();
            way = reachedBy[from.number()];
        }
        return path;
    }
}
