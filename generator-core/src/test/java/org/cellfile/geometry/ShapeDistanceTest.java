package org.cellfile.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Area;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Distances between shapes against the Java platform's own geometry ({@code java.awt.geom}) and against closed forms of school
 * geometry. All figures are constructed.
 */
class ShapeDistanceTest {

    /** Both ends are read to 0.1 mm, so that each is off by no more than half of that along either axis. */
    private static final double READ = 0.15;

    static Stream<Long> seeds() {
        return IntStream.range(0, 300).mapToObj(Long::valueOf);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void convexAreasAreAsFarApartAsThePlatformSays(long seed) {
        Random random = new Random(seed);
        List<Point> one = convex(random, -3000, 0);
        List<Point> other = convex(random, 3000, 500);

        Between between = Shape.area(one).nearest(Shape.area(other)).orElseThrow();

        assertThat(length(between)).isCloseTo(apart(one, other), within(READ));
        assertThat(length(between))
                .isCloseTo(length(Shape.area(other).nearest(Shape.area(one)).orElseThrow()), within(READ));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void areasMeetWhereThePlatformSaysSo(long seed) {
        Random random = new Random(seed);
        List<Point> one = convex(random, 0, 0);
        List<Point> other = convex(random, random.nextInt(4000) - 2000, random.nextInt(4000) - 2000);
        Area common = new Area(path(one));
        common.intersect(new Area(path(other)));

        assertThat(Shape.area(one).meets(Shape.area(other))).isEqualTo(!common.isEmpty());
        assertThat(length(Shape.area(one).nearest(Shape.area(other)).orElseThrow()) == 0)
                .isEqualTo(!common.isEmpty());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void lineAndCircleAreApartByTheDistanceOfTheCentreLessTheRadius(long seed) {
        Random random = new Random(seed);
        Point from = point(random.nextInt(8000) - 4000, 4000 + random.nextInt(2000));
        Point to = point(random.nextInt(8000) - 4000, 6500 + random.nextInt(2000));
        int radius = 500 + random.nextInt(3000);

        double found = length(Shape.line(List.of(from, to))
                .nearest(Shape.circle(point(0, 0), BigDecimal.valueOf(radius), Arcs.AROUND))
                .orElseThrow());

        double centre = new Line2D.Double(x(from), y(from), x(to), y(to)).ptSegDist(0, 0);
        assertThat(found).isCloseTo(centre - radius, within(READ));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void twoCirclesAreApartByTheDistanceOfTheirCentresLessBothRadii(long seed) {
        Random random = new Random(seed);
        int first = 100 + random.nextInt(2000);
        int second = 100 + random.nextInt(2000);
        int x = 4500 + random.nextInt(3000);
        int y = random.nextInt(6000) - 3000;

        double found = length(Shape.circle(point(0, 0), BigDecimal.valueOf(first), Arcs.AROUND)
                .nearest(Shape.circle(point(x, y), BigDecimal.valueOf(second), Arcs.AROUND))
                .orElseThrow());

        assertThat(found).isCloseTo(Math.hypot(x, y) - first - second, within(READ + 0.05));
    }

    /** Along the axes everything is exact, so that a figure that was measured exactly comes out so. */
    @Test
    void exactFiguresComeOutExactly() {
        Shape zone = Shape.circle(point(0, 0), BigDecimal.valueOf(3900), Arcs.AROUND);

        assertThat(Shape.line(List.of(point(-750, 5160), point(750, 5160))).nearest(zone))
                .contains(new Between(point(0, 5160), point(0, 3900)));
        assertThat(Shape.line(List.of(point(-5500, -400), point(-5500, 400))).nearest(zone))
                .contains(new Between(point(-5500, 0), point(-3900, 0)));
    }

    @Test
    void whatMeetsIsNotApart() {
        Shape square = Shape.area(List.of(point(0, 0), point(100, 0), point(100, 100), point(0, 100)));

        Between touching = square.nearest(Shape.line(List.of(point(100, 50), point(300, 50))))
                .orElseThrow();
        Between inside = square.nearest(Shape.spot(point(50, 50))).orElseThrow();

        assertThat(touching).isEqualTo(new Between(point(100, 50), point(100, 50)));
        assertThat(inside.square()).isEqualByComparingTo("0");
        assertThat(square.nearest(Shape.nothing())).isEmpty();
    }

    /** A chord within an arc makes a field smaller, one around it makes a danger larger; neither by more than 0.02 mm. */
    @ParameterizedTest
    @MethodSource("seeds")
    void chordsLieOnTheSafeSideOfTheirArc(long seed) {
        Random random = new Random(seed);
        int radius = 50 + random.nextInt(9000);
        BigDecimal from = BigDecimal.valueOf(random.nextInt(360));
        BigDecimal through = BigDecimal.valueOf(1 + random.nextInt(359));
        Point centre = point(random.nextInt(2000) - 1000, random.nextInt(2000) - 1000);
        BigDecimal r = BigDecimal.valueOf(radius);
        double sector = Math.PI * radius * radius * through.doubleValue() / 360;
        double most = 0.02 * Math.toRadians(through.doubleValue()) * radius + 1;

        double within =
                Shape.sector(centre, r, from, through, Arcs.WITHIN).area().doubleValue();
        double around =
                Shape.sector(centre, r, from, through, Arcs.AROUND).area().doubleValue();

        assertThat(within).isBetween(sector - most, sector + 0.5);
        assertThat(around).isBetween(sector - 0.5, sector + most);
        assertThat(Shape.sector(centre, r, from, through, Arcs.AROUND)
                        .without(Shape.sector(centre, r, from, through, Arcs.WITHIN))
                        .area()
                        .doubleValue())
                .isLessThanOrEqualTo(2 * most);
    }

    @Test
    void aRingIsItsCircleWithoutTheInnerOne() {
        BigDecimal inner = BigDecimal.valueOf(800);
        BigDecimal outer = BigDecimal.valueOf(2000);
        double exact = Math.PI * (2000d * 2000 - 800d * 800);

        double around =
                Shape.ring(point(10, -20), inner, outer, Arcs.AROUND).area().doubleValue();
        double within =
                Shape.ring(point(10, -20), inner, outer, Arcs.WITHIN).area().doubleValue();

        assertThat(around).isBetween(exact, exact + 2 * Math.PI * 2800 * 0.02);
        assertThat(within).isBetween(exact - 2 * Math.PI * 2800 * 0.02, exact);
    }

    @Test
    void whereALineCrossesItselfIsTold() {
        assertThat(Shape.area(List.of(point(0, 0), point(100, 100), point(100, 0), point(0, 100)))
                        .crossing())
                .contains(point(50, 50));
        assertThat(Shape.line(List.of(point(0, 0), point(100, 0), point(100, 100), point(50, -50)))
                        .crossing())
                .isPresent();
        assertThat(Shape.area(List.of(point(0, 0), point(100, 0), point(100, 100)))
                        .crossing())
                .isEmpty();
    }

    /** Corners in order round an ellipse. */
    private static List<Point> convex(Random random, int x, int y) {
        int corners = 3 + random.nextInt(9);
        int wide = 300 + random.nextInt(1500);
        int high = 300 + random.nextInt(1500);
        return random.doubles(corners, 0, 2 * Math.PI)
                .sorted()
                .mapToObj(
                        angle -> point(x + Math.round(wide * Math.cos(angle)), y + Math.round(high * Math.sin(angle))))
                .distinct()
                .toList();
    }

    private static double apart(List<Point> one, List<Point> other) {
        return Math.min(cornersToEdges(one, other), cornersToEdges(other, one));
    }

    private static double cornersToEdges(List<Point> corners, List<Point> outline) {
        double least = Double.MAX_VALUE;
        for (int i = 0; i < outline.size(); i++) {
            Point from = outline.get(i);
            Point to = outline.get((i + 1) % outline.size());
            for (Point corner : corners) {
                least = Math.min(least, Line2D.ptSegDist(x(from), y(from), x(to), y(to), x(corner), y(corner)));
            }
        }
        return least;
    }

    private static Path2D path(List<Point> corners) {
        Path2D path = new Path2D.Double();
        path.moveTo(x(corners.get(0)), y(corners.get(0)));
        new ArrayList<>(corners).subList(1, corners.size()).forEach(corner -> path.lineTo(x(corner), y(corner)));
        path.closePath();
        return path;
    }

    private static double length(Between between) {
        return Math.sqrt(between.square().doubleValue());
    }

    private static Point point(long x, long y) {
        return new Point(BigDecimal.valueOf(x), BigDecimal.valueOf(y));
    }

    private static double x(Point point) {
        return point.x().doubleValue();
    }

    private static double y(Point point) {
        return point.y().doubleValue();
    }
}
