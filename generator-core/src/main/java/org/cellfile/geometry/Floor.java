package org.cellfile.geometry;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * The floor that things leave free, as far as somebody of a width fits in: its places are those from one of which to another nobody
 * so wide gets.
 */
public final class Floor {

    /** Chords of a quarter of a circle; at the radius of a body they leave the arc by a tenth of a millimetre. */
    private static final int CHORDS = 16;

    private final double half;
    private final List<Place> places;

    /** Where the middle of somebody can be without leaving the place. */
    public final class Place {

        private final Geometry middles;
        private final boolean outside;

        private Place(Geometry middles, boolean outside) {
            this.middles = middles;
            this.outside = outside;
        }

        /** True for the floor round everything. */
        public boolean isOutside() {
            return outside;
        }

        /** Where some part of somebody can be who stays in the place. */
        public Shape floor() {
            return new Shape(Margin.around(middles, half, CHORDS));
        }

        /** True when somebody in the place can be over a part of a shape, and not only touch it. */
        public boolean reachesInto(Shape shape) {
            return isWithin(half - ALONGSIDE, shape);
        }

        /** True when somebody in the place can touch a shape, be it over nothing but its end. */
        public boolean touches(Shape shape) {
            return isWithin(half + ALONGSIDE, shape);
        }

        /** Where somebody touches things who stands in the place as near to a shape as he can; empty when he touches none. */
        public Optional<Point> heldBy(Shape things, Shape near) {
            Coordinate middle = IndexedFacetDistance.nearestPoints(middles, near.geometry())[0];
            Coordinate[] way = IndexedFacetDistance.nearestPoints(things.geometry(), Shape.FACTORY.createPoint(middle));
            return way[0].distance(middle) <= half + ALONGSIDE ? Optional.of(Point.read(way[0])) : Optional.empty();
        }

        private boolean isWithin(double distance, Shape shape) {
            return middles.intersects(shape.geometry())
                    || IndexedFacetDistance.isWithinDistance(middles, shape.geometry(), distance);
        }

        /**
         * Where the middle of somebody is who has just come across a line: beside it and not beside its ends; nothing when nobody
         * comes across it into the place.
         *
         * @param beside the floor beside the line, see {@link Shape#beside}
         */
        public Shape entered(Shape beside) {
            return new Shape(OverlayNGRobust.overlay(middles, beside.geometry(), OverlayNG.INTERSECTION));
        }
    }

    /** Beside a line is what lies within this of touching it, in mm. */
    private static final double ALONGSIDE = 0.2;

    private Floor(double half, List<Place> places) {
        this.half = half;
        this.places = places;
    }

    /**
     * What things leave free.
     *
     * @param taken by what somebody does not get into or across
     * @param width of the widest who does not fit in, in mm
     */
    public static Floor around(Shape taken, BigDecimal width) {
        // Who fits in is wider than that by the least that is read on a plan.
        double half = width.doubleValue() / 2 + 0.05;
        Envelope bounds = taken.geometry().getEnvelopeInternal().copy();
        bounds.expandBy(10 * half);
        Geometry middles = OverlayNGRobust.overlay(
                Shape.FACTORY.toGeometry(bounds), Margin.around(taken.geometry(), half, CHORDS), OverlayNG.DIFFERENCE);
        List<Place> places = new ArrayList<>();
        Floor floor = new Floor(half, places);
        Geometry rim = Shape.FACTORY.toGeometry(bounds).getBoundary();
        for (Shape part : new Shape(middles).parts()) {
            places.add(floor.new Place(part.geometry(), part.geometry().intersects(rim)));
        }
        return floor;
    }

    public List<Place> places() {
        return List.copyOf(places);
    }

    /** How far from a line the middle of somebody is who has just come across it, and a little more; in mm. */
    public BigDecimal besideALine() {
        return BigDecimal.valueOf(half + ALONGSIDE);
    }
}
