package org.cellfile.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.algorithm.Angle;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.algorithm.locate.PointOnGeometryLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.util.LinearComponentExtracter;
import org.locationtech.jts.geom.util.PointExtracter;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.linemerge.LineMerger;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * What lies no further from a shape than a distance. The offsets of many corners that lie nearer to each other than that cross each
 * other again and again; a shape that has so many grows run by run, and what overlaps is put together before it meets the rest.
 */
final class Margin {

    private static final int CORNERS_OF_A_RUN = 6;

    /** So many runs are few enough to grow as a whole, however crowded they are. */
    private static final int FEW = 24;

    /** How many times over the margin of what is crowded covers the floor. */
    private static final int CROWDED = 2;

    /** In radians; from one chord of an arc to the next it is less. */
    private static final double SHARP = 0.2;

    private Margin() {}

    /**
     * A shape with what lies near to it.
     *
     * @param by in mm; below nought what lies near to the edge of an area is taken off it
     * @param chords of a quarter of a circle
     */
    static Geometry around(Geometry shape, double by, int chords) {
        return around(shape, by, new BufferParameters(chords));
    }

    /** The same with ends and corners of that kind. */
    static Geometry around(Geometry shape, double by, BufferParameters ends) {
        List<Geometry> runs = runs(shape);
        if (!isCrowded(runs, shape, Math.abs(by))) {
            return BufferOp.bufferOp(shape, by, ends);
        }
        List<Geometry> near = new ArrayList<>();
        for (Geometry run : runs) {
            near.add(BufferOp.bufferOp(run, Math.abs(by), ends));
        }
        Geometry alongEdges = OverlayNGRobust.union(near);
        List<Geometry> within = within(new Shape(shape).areas().geometry(), alongEdges);
        if (by < 0) {
            return Shape.FACTORY.buildGeometry(within);
        }
        within.add(alongEdges);
        return OverlayNGRobust.union(within);
    }

    /** What of areas is left by what lies along their edges. */
    private static List<Geometry> within(Geometry areas, Geometry alongEdges) {
        PointOnGeometryLocator locator = new IndexedPointInAreaLocator(areas);
        Geometry left = OverlayNGRobust.overlay(
                Shape.FACTORY.toGeometry(areas.getEnvelopeInternal()), alongEdges, OverlayNG.DIFFERENCE);
        List<Geometry> within = new ArrayList<>();
        for (Shape part : new Shape(left).areas().parts()) {
            if (!part.empty()
                    && locator.locate(part.geometry().getInteriorPoint().getCoordinate()) == Location.INTERIOR) {
                within.add(part.geometry());
            }
        }
        return within;
    }

    private static boolean isCrowded(List<Geometry> runs, Geometry shape, double by) {
        return runs.size() > FEW
                && (isCrowded(shape, by)
                        || runs.stream().filter(run -> isCrowded(run, by)).count() > FEW);
    }

    /** True when margins of the lines, laid out, would be much larger than the margin of their hull with all that is in it. */
    private static boolean isCrowded(Geometry lines, double by) {
        Geometry hull = lines.convexHull();
        double most = hull.getArea() + by * hull.getLength() + Math.PI * by * by;
        return 2 * by * lines.getLength() > CROWDED * most;
    }

    /** Its spots, its lines and the edges of its areas in pieces with few corners. Each begins a straight line early, so that every corner is within one. */
    private static List<Geometry> runs(Geometry shape) {
        List<Geometry> runs = new ArrayList<>();
        for (Object spot : PointExtracter.getPoints(shape)) {
            runs.add((Geometry) spot);
        }
        // Overlays leave lines in many pieces.
        LineMerger merger = new LineMerger();
        merger.add(LinearComponentExtracter.getLines(shape));
        for (Object line : merger.getMergedLineStrings()) {
            Coordinate[] corners = ((LineString) line).getCoordinates();
            int first = 0;
            int sharp = 0;
            for (int i = 1; i < corners.length; i++) {
                boolean last = i == corners.length - 1;
                if (!last && isSharp(corners[i - 1], corners[i], corners[i + 1])) {
                    sharp++;
                }
                if (last || sharp == CORNERS_OF_A_RUN) {
                    runs.add(
                            Shape.FACTORY.createLineString(Arrays.copyOfRange(corners, Math.max(0, first - 1), i + 1)));
                    first = i;
                    sharp = 0;
                }
            }
        }
        return runs;
    }

    private static boolean isSharp(Coordinate before, Coordinate corner, Coordinate after) {
        return Math.PI - Angle.angleBetween(before, corner, after) > SHARP;
    }
}
