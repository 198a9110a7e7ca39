package org.cellfile.geometry;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.locationtech.jts.algorithm.LineIntersector;
import org.locationtech.jts.algorithm.MinimumAreaRectangle;
import org.locationtech.jts.algorithm.RobustLineIntersector;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.LinearComponentExtracter;
import org.locationtech.jts.linearref.LengthIndexedLine;
import org.locationtech.jts.noding.MCIndexNoder;
import org.locationtech.jts.noding.SegmentIntersector;
import org.locationtech.jts.noding.SegmentString;
import org.locationtech.jts.noding.SegmentStringUtil;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.distance.DistanceOp;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import org.locationtech.jts.operation.linemerge.LineMerger;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.valid.IsSimpleOp;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;

/** A spot, a line or an area of the plan, or several. Lengths are in mm, areas in mm². */
public final class Shape {

    static final GeometryFactory FACTORY = new GeometryFactory();

    /** Chords of a quarter of a circle, where a person is the measure. */
    private static final int ROUND_ENOUGH = 8;

    /** Of a quarter of a circle where a shape grows: at most so many, and no more than leave the arc by that, in mm. */
    private static final int CHORDS = 64;

    /** Half the width of the cut that a line makes, in mm. */
    private static final double CUT = 0.1;

    /** How near the largest circle that fits is found, in mm. */
    private static final double FITTING = 0.05;

    private static final double FINE_ENOUGH = 0.0005;

    private final Geometry geometry;

    Shape(Geometry geometry) {
        this.geometry = geometry;
    }

    /** No point at all. */
    public static Shape nothing() {
        return new Shape(FACTORY.createPolygon());
    }

    public static Shape spot(Point point) {
        return new Shape(FACTORY.createPoint(point.coordinate()));
    }

    /** From point to point; at least two. */
    public static Shape line(List<Point> points) {
        return new Shape(FACTORY.createLineString(coordinates(points)));
    }

    /** Everything within an outline; at least three corners, the last is joined to the first. */
    public static Shape area(List<Point> corners) {
        List<Point> closed = new ArrayList<>(corners);
        closed.add(corners.get(0));
        return new Shape(FACTORY.createPolygon(coordinates(closed)));
    }

    public static Shape circle(Point centre, BigDecimal radius, Arcs arcs) {
        return area(arcs.circle(centre, radius).stream(), Stream.empty());
    }

    /** What lies between two circles around one point. */
    public static Shape ring(Point centre, BigDecimal inner, BigDecimal outer, Arcs arcs) {
        Arcs within = arcs == Arcs.WITHIN ? Arcs.AROUND : Arcs.WITHIN;
        return circle(centre, outer, arcs).without(circle(centre, inner, within));
    }

    /**
     * A part of a circle with its two straight edges.
     *
     * @param from direction of the first edge in degrees, counter-clockwise from the direction of x
     * @param through angle of the arc in degrees, above 0 and at most 360
     */
    public static Shape sector(Point centre, BigDecimal radius, BigDecimal from, BigDecimal through, Arcs arcs) {
        if (through.compareTo(BigDecimal.valueOf(360)) >= 0) {
            return circle(centre, radius, arcs);
        }
        double first = StrictMath.toRadians(from.doubleValue());
        double angle = StrictMath.toRadians(through.doubleValue());
        return area(Stream.of(centre.coordinate()), arcs.corners(centre, radius, first, angle).stream());
    }

    /** What a straight line from a centre sweeps when it turns from one point to another, the shorter way round. */
    public static Shape swept(Point centre, Point from, Point to, Arcs arcs) {
        return swept(centre, from, turn(centre, from, to), arcs);
    }

    /** The same when it turns that way, be it the longer one. */
    public static Shape swept(Point centre, Point from, Point to, boolean clockwise, Arcs arcs) {
        double turn = turn(centre, from, to);
        double whole = clockwise ? -2 * Math.PI : 2 * Math.PI;
        return swept(centre, from, turn != 0 && turn < 0 != clockwise ? turn + whole : turn, arcs);
    }

    private static double turn(Point centre, Point from, Point to) {
        Coordinate middle = centre.coordinate();
        return StrictMath.IEEEremainder(
                new LineSegment(middle, to.coordinate()).angle() - new LineSegment(middle, from.coordinate()).angle(),
                2 * Math.PI);
    }

    private static Shape swept(Point centre, Point from, double turn, Arcs arcs) {
        Coordinate middle = centre.coordinate();
        double first = new LineSegment(middle, from.coordinate()).angle();
        BigDecimal radius = BigDecimal.valueOf(middle.distance(from.coordinate()));
        return turn == 0
                ? nothing()
                : area(
                        Stream.of(middle),
                        arcs.corners(centre, radius, Math.min(first, first + turn), Math.abs(turn)).stream());
    }

    private static Shape area(Stream<Coordinate> first, Stream<Coordinate> then) {
        List<Coordinate> corners = new ArrayList<>(Stream.concat(first, then).toList());
        Coordinate start = corners.get(0);
        if (corners.get(corners.size() - 1).distance(start) < 1e-6) {
            corners.remove(corners.size() - 1);
        }
        corners.add(start);
        return new Shape(FACTORY.createPolygon(corners.toArray(Coordinate[]::new)));
    }

    private static Coordinate[] coordinates(List<Point> points) {
        return points.stream().map(Point::coordinate).toArray(Coordinate[]::new);
    }

    /** All of them together. */
    public static Shape of(Collection<Shape> shapes) {
        List<Geometry> all = shapes.stream()
                .map(shape -> shape.geometry)
                .filter(one -> !one.isEmpty())
                .toList();
        return all.isEmpty() ? nothing() : new Shape(OverlayNGRobust.union(all));
    }

    Geometry geometry() {
        return geometry;
    }

    public boolean empty() {
        return geometry.isEmpty();
    }

    /** What lies in this one and not in the other. */
    public Shape without(Shape other) {
        return new Shape(OverlayNGRobust.overlay(geometry, other.geometry, OverlayNG.DIFFERENCE));
    }

    /** What lies in both. */
    public Shape common(Shape other) {
        return new Shape(OverlayNGRobust.overlay(geometry, other.geometry, OverlayNG.INTERSECTION));
    }

    /** This one and every point no further from it than that; less than zero takes off as much at the edge. */
    public Shape grown(BigDecimal by) {
        return new Shape(Margin.around(geometry, by.doubleValue(), chords(Math.abs(by.doubleValue()))));
    }

    private static int chords(double radius) {
        double half = StrictMath.acos(Math.max(0, 1 - FINE_ENOUGH / radius));
        return (int) Math.min(CHORDS, Math.ceil(Math.PI / 4 / half));
    }

    /** Those parts of it in which a circle of that diameter, in mm, has room. */
    public Shape roomFor(BigDecimal diameter) {
        BigDecimal half = diameter.divide(BigDecimal.valueOf(2));
        return grown(half.negate()).grown(half).common(this).areas();
    }

    /** The same where the circle stays that far, in mm, from something else. */
    public Shape roomFor(BigDecimal diameter, BigDecimal apart, Shape from) {
        BigDecimal half = diameter.divide(BigDecimal.valueOf(2));
        return grown(half.negate())
                .without(from.grown(half.add(apart)))
                .grown(half)
                .common(this)
                .areas();
    }

    /** What of it covers floor: without its spots and lines. */
    public Shape areas() {
        List<Geometry> areas = new ArrayList<>();
        for (int i = 0; i < geometry.getNumGeometries(); i++) {
            if (geometry.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
                areas.add(polygon);
            }
        }
        return areas.isEmpty() ? nothing() : new Shape(FACTORY.buildGeometry(areas));
    }

    /** The smallest area without notches that holds them all. */
    public static Shape hull(Collection<Shape> shapes) {
        return new Shape(FACTORY.createGeometryCollection(
                        shapes.stream().map(shape -> shape.geometry).toArray(Geometry[]::new))
                .convexHull());
    }

    /** Without those parts that do not reach into the rectangle around another shape. */
    public Shape about(Shape other) {
        Envelope around = other.geometry.getEnvelopeInternal();
        List<Geometry> about = parts().stream()
                .map(part -> part.geometry)
                .filter(part -> part.getEnvelopeInternal().intersects(around))
                .toList();
        return about.isEmpty() ? nothing() : new Shape(FACTORY.buildGeometry(about));
    }

    /** Without those parts that hold the point inside. */
    public Shape notAround(Point point) {
        Geometry spot = FACTORY.createPoint(point.coordinate());
        List<Geometry> others = new ArrayList<>();
        for (int i = 0; i < geometry.getNumGeometries(); i++) {
            if (!geometry.getGeometryN(i).contains(spot)
                    || geometry.getGeometryN(i).getDimension() < 2) {
                others.add(geometry.getGeometryN(i));
            }
        }
        return others.isEmpty() ? nothing() : new Shape(FACTORY.buildGeometry(others));
    }

    /**
     * The floor onto which a circle of that diameter gets from far away without touching this.
     *
     * @param diameter in mm
     * @param about what the floor is asked for; it ends a little beyond
     */
    public Shape reachedFromOutside(BigDecimal diameter, Shape about) {
        double half = diameter.doubleValue() / 2;
        Envelope frame = new Envelope(geometry.getEnvelopeInternal());
        frame.expandToInclude(about.geometry.getEnvelopeInternal());
        frame.expandBy(10 * half);
        Geometry floor = FACTORY.toGeometry(frame);
        Geometry free =
                OverlayNGRobust.overlay(floor, Margin.around(geometry, half, ROUND_ENOUGH), OverlayNG.DIFFERENCE);
        List<Shape> outside = new Shape(free)
                .areas().parts().stream()
                        .filter(part -> part.geometry.intersects(floor.getBoundary()))
                        .toList();
        return new Shape(Margin.around(of(outside).geometry, half, ROUND_ENOUGH)).areas();
    }

    /** What lies no further from it than that and is not cut off from it by another shape; past an end of that shape it reaches. */
    public Shape reaching(BigDecimal by, Shape past) {
        Shape cut = new Shape(past.geometry.buffer(CUT, ROUND_ENOUGH));
        return of(grown(by).without(cut).areas().parts().stream()
                .filter(this::meets)
                .toList());
    }

    /** Diameter of the largest circle that fits into an area, in mm; 0 for what is none. */
    public BigDecimal widestCircle() {
        return areas().parts().stream()
                .filter(part -> !part.empty())
                .map(part -> MaximumInscribedCircle.getRadiusLine(part.geometry, FITTING)
                        .getLength())
                .map(radius -> BigDecimal.valueOf(2 * radius))
                .max(BigDecimal::compareTo)
                .orElse(BigDecimal.ZERO);
    }

    /** The two sides of the smallest rectangle around it, in mm; none for what has no area. */
    public List<BigDecimal> sides() {
        return MinimumAreaRectangle.getMinimumRectangle(geometry) instanceof Polygon rectangle
                ? Stream.of(1, 2)
                        .map(corner -> rectangle.getCoordinates()[corner].distance(
                                rectangle.getCoordinates()[corner - 1]))
                        .map(BigDecimal::valueOf)
                        .toList()
                : List.of();
    }

    /** True when they have a point in common. */
    public boolean meets(Shape other) {
        return geometry.intersects(other.geometry);
    }

    /** True when no point of the other lies outside of this one. */
    public boolean covers(Shape other) {
        return geometry.covers(other.geometry);
    }

    /** In mm², to the nearest whole one. */
    public BigDecimal area() {
        return BigDecimal.valueOf(geometry.getArea()).setScale(0, RoundingMode.HALF_EVEN);
    }

    /** The edge of an area, the ends of a line. */
    public Shape edge() {
        return new Shape(geometry.getBoundary());
    }

    /** Of lines the pieces that hang together, however they were cut. */
    public List<Shape> stretches() {
        LineMerger merger = new LineMerger();
        merger.add(geometry);
        List<Shape> stretches = new ArrayList<>();
        for (Object line : merger.getMergedLineStrings()) {
            stretches.add(new Shape((Geometry) line));
        }
        return stretches;
    }

    /** Of a line the part from one of its ends to the point of it that is nearest to a spot. */
    public Shape upTo(Shape end, Shape spot) {
        LengthIndexedLine line = new LengthIndexedLine(geometry);
        return new Shape(line.extractLine(
                line.project(end.geometry.getCoordinate()), line.project(spot.geometry.getCoordinate())));
    }

    /** What lies no further from a line than that, on both of its sides, but not beyond its ends. */
    public Shape alongside(BigDecimal distance) {
        return new Shape(Margin.around(
                geometry,
                distance.doubleValue(),
                new BufferParameters(CHORDS, BufferParameters.CAP_FLAT, BufferParameters.JOIN_ROUND, 5)));
    }

    /** The same on that side alone of each straight piece on which the nearest point of another shape lies. */
    public Shape alongside(BigDecimal distance, Shape towards) {
        List<Geometry> strips = new ArrayList<>();
        for (Object line : LinearComponentExtracter.getLines(geometry)) {
            Coordinate[] corners = ((LineString) line).getCoordinates();
            for (int i = 1; i < corners.length; i++) {
                strips.add(strip(new LineSegment(corners[i - 1], corners[i]), distance.doubleValue(), towards));
            }
        }
        return strips.isEmpty() ? nothing() : new Shape(OverlayNGRobust.union(strips));
    }

    private static Geometry strip(LineSegment piece, double distance, Shape towards) {
        Coordinate nearest = DistanceOp.nearestPoints(piece.toGeometry(FACTORY), towards.geometry)[1];
        int side = piece.orientationIndex(nearest);
        Coordinate[] corners = {
            piece.pointAlongOffset(0, side == 0 ? distance : 0),
            piece.pointAlongOffset(1, side == 0 ? distance : 0),
            piece.pointAlongOffset(1, side == 0 ? -distance : side * distance),
            piece.pointAlongOffset(0, side == 0 ? -distance : side * distance),
            piece.pointAlongOffset(0, side == 0 ? distance : 0)
        };
        return FACTORY.createPolygon(corners);
    }

    /** A point inside of it, for naming it. */
    public Point within() {
        return Point.read(geometry.getInteriorPoint().getCoordinate());
    }

    /** The parts that do not hang together. */
    public List<Shape> parts() {
        List<Shape> parts = new ArrayList<>();
        for (int i = 0; i < geometry.getNumGeometries(); i++) {
            parts.add(new Shape(geometry.getGeometryN(i)));
        }
        return parts;
    }

    /**
     * The shortest straight way to another shape, from this one to that one; of no length where they meet, empty where one of them
     * is nothing.
     */
    public Optional<Between> nearest(Shape other) {
        if (empty() || other.empty()) {
            return Optional.empty();
        }
        if (meets(other)) {
            Point common = Point.read(common(other).geometry.getCoordinate());
            return Optional.of(new Between(common, common));
        }
        Coordinate[] ends = IndexedFacetDistance.nearestPoints(geometry, other.geometry);
        return Optional.of(new Between(Point.read(ends[0]), Point.read(ends[1])));
    }

    /** Where a line or an outline crosses or touches itself; empty when it does not. */
    public Optional<Point> crossing() {
        Geometry lines = geometry instanceof Polygon polygon ? polygon.getExteriorRing() : geometry;
        IsSimpleOp simple = new IsSimpleOp(lines);
        return simple.isSimple() ? Optional.empty() : Optional.of(Point.read(simple.getNonSimpleLocation()));
    }

    /** At how many places edges of shapes cross each other; counting ends soon after the most that are asked for. */
    public static int crossings(Collection<Shape> shapes, int most) {
        LineIntersector pair = new RobustLineIntersector();
        AtomicInteger found = new AtomicInteger();
        SegmentIntersector counter = new SegmentIntersector() {
            @Override
            public void processIntersections(SegmentString one, int first, SegmentString other, int second) {
                pair.computeIntersection(
                        one.getCoordinate(first),
                        one.getCoordinate(first + 1),
                        other.getCoordinate(second),
                        other.getCoordinate(second + 1));
                if (pair.isProper()) {
                    found.incrementAndGet();
                }
            }

            @Override
            public boolean isDone() {
                return found.get() > most;
            }
        };
        List<SegmentString> edges = new ArrayList<>();
        for (Shape shape : shapes) {
            for (Object edge : SegmentStringUtil.extractNodedSegmentStrings(shape.geometry)) {
                edges.add((SegmentString) edge);
            }
        }
        new MCIndexNoder(counter).computeNodes(edges);
        return found.get();
    }

    /** Every line and every outline as its corners, for drawing; of an area also those of its holes. */
    public List<List<Point>> outlines() {
        List<List<Point>> outlines = new ArrayList<>();
        for (Shape part : parts()) {
            if (part.geometry instanceof Polygon polygon && !polygon.isEmpty()) {
                outlines.add(points(polygon.getExteriorRing()));
                for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
                    outlines.add(points(polygon.getInteriorRingN(i)));
                }
            } else if (part.geometry instanceof LineString line) {
                outlines.add(points(line));
            } else if (!part.geometry.isEmpty()) {
                outlines.add(List.of(Point.read(part.geometry.getCoordinate())));
            }
        }
        return Collections.unmodifiableList(outlines);
    }

    /** The rectangle around it; empty for nothing. */
    public Optional<Extent> extent() {
        Envelope around = geometry.getEnvelopeInternal();
        return around.isNull()
                ? Optional.empty()
                : Extent.of(List.of(
                        Point.read(new Coordinate(around.getMinX(), around.getMinY())),
                        Point.read(new Coordinate(around.getMaxX(), around.getMaxY()))));
    }

    /** With fewer corners, none of them further from where it was than that; for drawing alone. */
    public Shape simplified(BigDecimal by) {
        return new Shape(DouglasPeuckerSimplifier.simplify(geometry, by.doubleValue()));
    }

    /**
     * Slanting lines in an area, for drawing.
     *
     * @param step from one to the next along x, in mm
     * @param rising true for lines that rise to the right
     */
    public Shape hatching(BigDecimal step, boolean rising) {
        Envelope around = geometry.getEnvelopeInternal();
        if (around.isNull()) {
            return nothing();
        }
        double high = around.getHeight();
        double apart = step.doubleValue();
        double first = rising ? around.getMinX() - around.getMinY() - high : around.getMinX() + around.getMinY();
        double last = rising ? around.getMaxX() - around.getMinY() : around.getMaxX() + around.getMaxY();
        List<LineString> lines = new ArrayList<>();
        for (double at = Math.ceil(first / apart) * apart; at < last; at += apart) {
            lines.add(FACTORY.createLineString(
                    new Coordinate[] {slanting(at, around.getMinY(), rising), slanting(at, around.getMaxY(), rising)}));
        }
        return new Shape(FACTORY.createMultiLineString(lines.toArray(LineString[]::new))).common(this);
    }

    private static Coordinate slanting(double at, double y, boolean rising) {
        return new Coordinate(rising ? at + y : at - y, y);
    }

    private static List<Point> points(LineString line) {
        return Stream.of(line.getCoordinates()).map(Point::read).toList();
    }

    @Override
    public String toString() {
        return geometry.toString();
    }
}
