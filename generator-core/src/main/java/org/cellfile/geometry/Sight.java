package org.cellfile.geometry;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.geom.util.LinearComponentExtracter;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.simplify.TopologyPreservingSimplifier;
import org.locationtech.jts.triangulate.polygon.PolygonTriangulator;

/**
 * What lies behind something. The shadow of each edge of an obstacle is cut out exactly; all of them together are what is hidden.
 *
 * <p>What something is mounted on does not hide from it what it faces: an edge no further than {@value #TOUCHING} mm away throws no
 * shadow. The other edges of the same obstacle do.
 */
public final class Sight {

    private static final double TOUCHING = 0.5;
    private static final double WIDEST_SHADOW = Math.PI / 4;
    private static final double NO_AREA = 1e-3;
    private static final double FINEST_CORNER = 0.2;

    private Sight() {}

    /** What of the floor is hidden from a point. What lies within an obstacle is no floor. */
    public static Shape hidden(Point from, Shape floor, Shape obstacles) {
        Coordinate eye = from.coordinate();
        Geometry spot = Shape.FACTORY.createPoint(eye);
        List<LineSegment> edges = edges(obstacles.geometry());
        edges.removeIf(edge -> edge.distance(eye) <= TOUCHING);
        return behind(edges, any -> eye, spot, floor).without(obstacles.areas());
    }

    /** True when nothing stands in the straight way between two points; what holds one of them inside does not count. */
    public static boolean free(Point from, Point to, Shape obstacles) {
        Coordinate start = from.coordinate();
        Coordinate end = to.coordinate();
        LineSegment way = new LineSegment(start, end);
        return edges(obstacles.notAround(from).notAround(to).geometry()).stream()
                .filter(edge -> edge.distance(start) > TOUCHING && edge.distance(end) > TOUCHING)
                .noneMatch(edge -> edge.distance(way) == 0);
    }

    /**
     * The floor from which the straight way to the nearest point of a goal is no longer than that and leads through no obstacle.
     *
     * @param within in mm
     */
    public static Shape reaching(Shape goal, BigDecimal within, Shape floor, Shape obstacles) {
        STRtree edges = new STRtree();
        edges(obstacles.geometry()).forEach(edge -> edges.insert(new Envelope(edge.p0, edge.p1), edge));
        Shape left = floor;
        for (Shape piece : withoutNotches(goal)) {
            Shape near = left.common(piece.grown(within)).areas();
            if (!near.empty()) {
                left = left.without(near.without(beyond(piece, near, edges)).areas())
                        .areas();
            }
        }
        return floor.without(left).areas();
    }

    /** What lies behind obstacles as seen from the nearest point of a goal that has no notches. */
    private static Shape beyond(Shape goal, Shape floor, STRtree obstacles) {
        List<LineString> between = new ArrayList<>();
        Envelope around = Shape.hull(List.of(goal, floor)).geometry().getEnvelopeInternal();
        for (Object edge : obstacles.query(around)) {
            between.add(((LineSegment) edge).toGeometry(Shape.FACTORY));
        }
        Geometry lines = new Shape(Shape.FACTORY.createMultiLineString(between.toArray(LineString[]::new)))
                .without(new Shape(goal.geometry().buffer(TOUCHING)))
                .geometry();
        IndexedFacetDistance distance = new IndexedFacetDistance(goal.geometry());
        return behind(
                edges(lines),
                corner -> distance.nearestPoints(Shape.FACTORY.createPoint(corner))[0],
                goal.geometry(),
                floor);
    }

    private static Shape behind(
            List<LineSegment> edges, UnaryOperator<Coordinate> eyes, Geometry seenFrom, Shape floor) {
        if (floor.empty()) {
            return floor;
        }
        Geometry between = Shape.FACTORY
                .createGeometryCollection(new Geometry[] {seenFrom, floor.geometry()})
                .convexHull();
        PreparedGeometry prepared = PreparedGeometryFactory.prepare(between);
        double far = 4 * between.getEnvelopeInternal().getDiameter();
        List<Geometry> shadows = new ArrayList<>();
        for (LineSegment edge : edges) {
            if (prepared.intersects(edge.toGeometry(Shape.FACTORY))) {
                shadow(edge, eyes, far, shadows);
            }
        }
        return shadows.isEmpty()
                ? Shape.nothing()
                : floor.common(new Shape(OverlayNGRobust.union(shadows))).areas();
    }

    /** Wide shadows in pieces, so that none ends within the floor. */
    private static void shadow(LineSegment edge, UnaryOperator<Coordinate> eyes, double far, List<Geometry> shadows) {
        LineSegment first = new LineSegment(eyes.apply(edge.p0), edge.p0);
        LineSegment last = new LineSegment(eyes.apply(edge.p1), edge.p1);
        double opens = Math.abs(StrictMath.IEEEremainder(first.angle() - last.angle(), 2 * Math.PI));
        if (opens > WIDEST_SHADOW && edge.getLength() > NO_AREA) {
            Coordinate middle = edge.midPoint();
            shadow(new LineSegment(edge.p0, middle), eyes, far, shadows);
            shadow(new LineSegment(middle, edge.p1), eyes, far, shadows);
            return;
        }
        Polygon shadow = Shape.FACTORY.createPolygon(
                new Coordinate[] {edge.p0, edge.p1, onward(last, far), onward(first, far), edge.p0});
        if (shadow.getArea() > NO_AREA) {
            shadows.add(shadow);
        }
    }

    private static Coordinate onward(LineSegment way, double far) {
        return way.pointAlong(1 + far / way.getLength());
    }

    private static List<LineString> lines(Geometry geometry) {
        List<LineString> lines = new ArrayList<>();
        geometry.apply(new LinearComponentExtracter(lines));
        return lines;
    }

    private static List<LineSegment> edges(Geometry geometry) {
        List<LineSegment> edges = new ArrayList<>();
        for (LineString line : lines(geometry)) {
            Coordinate[] corners = line.getCoordinates();
            for (int i = 1; i < corners.length; i++) {
                edges.add(new LineSegment(corners[i - 1], corners[i]));
            }
        }
        return edges;
    }

    /** An area as pieces from each of which every place has one nearest point; nobody comes from within its holes. */
    private static List<Shape> withoutNotches(Shape goal) {
        List<Shape> pieces = new ArrayList<>();
        for (Shape part : goal.areas().parts()) {
            if (part.geometry() instanceof Polygon polygon && !polygon.isEmpty()) {
                Geometry whole = Shape.FACTORY.createPolygon(polygon.getExteriorRing());
                if (whole.convexHull().getArea() - whole.getArea() <= NO_AREA * whole.getLength()) {
                    pieces.add(new Shape(whole.convexHull()));
                } else {
                    Geometry plainer = TopologyPreservingSimplifier.simplify(whole, FINEST_CORNER);
                    pieces.addAll(new Shape(new PolygonTriangulator(plainer).getResult()).parts());
                }
            }
        }
        return pieces;
    }
}
