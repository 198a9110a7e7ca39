package org.cellfile.geometry;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/** On which side of a true arc its chords lie. They leave it by no more than {@value #DEVIATION} mm. */
public enum Arcs {
    /** the shape is no larger than the true one: for what a field sees */
    WITHIN,
    /** the shape is no smaller than the true one: for what is dangerous */
    AROUND;

    private static final double DEVIATION = 0.02;
    private static final int FEWEST_CHORDS_OF_A_CIRCLE = 16;

    /**
     * The corners of a whole circle. Some lie in the directions of the axes, so that what is nearest to a line along an axis is one
     * point and not anywhere on a chord.
     */
    List<Coordinate> circle(Point centre, BigDecimal radius) {
        double r = radius.doubleValue();
        int chords = 4 * (int) Math.ceil(chords(r, 2 * Math.PI) / 4d);
        double step = 2 * Math.PI / chords;
        double to = this == AROUND ? r / StrictMath.cos(step / 2) : r;
        List<Coordinate> corners = new ArrayList<>();
        for (int i = 0; i < chords; i++) {
            corners.add(at(centre, to, i * step));
        }
        return corners;
    }

    private static int chords(double radius, double through) {
        double half = StrictMath.acos(radius / (radius + DEVIATION));
        return (int) Math.max(
                Math.ceil(through / (2 * half)), Math.ceil(through * FEWEST_CHORDS_OF_A_CIRCLE / (2 * Math.PI)));
    }

    /**
     * The corners of an arc, counter-clockwise.
     *
     * @param from in radians, from the direction of x
     * @param through in radians, above zero
     */
    List<Coordinate> corners(Point centre, BigDecimal radius, double from, double through) {
        double r = radius.doubleValue();
        int chords = chords(r, through);
        double step = through / chords;
        List<Coordinate> corners = new ArrayList<>();
        corners.add(at(centre, r, from));
        if (this == AROUND) {
            // Corners where the tangents at the ends of the chords meet.
            for (int i = 0; i < chords; i++) {
                corners.add(at(centre, r / StrictMath.cos(step / 2), from + (i + 0.5) * step));
            }
        } else {
            for (int i = 1; i < chords; i++) {
                corners.add(at(centre, r, from + i * step));
            }
        }
        corners.add(at(centre, r, from + through));
        return corners;
    }

    private static Coordinate at(Point centre, double radius, double angle) {
        return new Coordinate(
                centre.x().doubleValue() + radius * StrictMath.cos(angle),
                centre.y().doubleValue() + radius * StrictMath.sin(angle));
    }
}
