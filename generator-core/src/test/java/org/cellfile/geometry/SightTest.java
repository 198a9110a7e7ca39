package org.cellfile.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Line2D;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/** What is hidden, held against closed forms and, point by point, against java.awt.geom. All figures are constructed. */
class SightTest {

    private static final Shape HALL = rectangle(-5000, -5000, 5000, 5000);
    private static final double EDGE = 0.05;

    private static Point point(double x, double y) {
        return new Point(BigDecimal.valueOf(x), BigDecimal.valueOf(y));
    }

    private static Shape rectangle(double left, double low, double right, double high) {
        return Shape.area(List.of(point(left, low), point(right, low), point(right, high), point(left, high)));
    }

    private static Shape wall(double fromX, double fromY, double toX, double toY) {
        return Shape.line(List.of(point(fromX, fromY), point(toX, toY)));
    }

    private static BigDecimal mm(int length) {
        return BigDecimal.valueOf(length);
    }

    private static Geometry at(double x, double y) {
        return Shape.FACTORY.createPoint(new Coordinate(x, y));
    }

    @Test
    void aWallHidesTheTrapezoidBehindIt() {
        Shape hidden = Sight.hidden(point(0, 0), rectangle(0, -1000, 2000, 1000), wall(1000, -100, 1000, 100));

        // 200 mm wide at the wall and 400 mm at twice the distance
        assertThat(hidden.area()).isEqualByComparingTo("300000");
    }

    @Test
    void aWallAllRoundHidesEverythingOutside() {
        Shape hidden = Sight.hidden(
                point(3, 7), HALL, rectangle(-1000, -1000, 1000, 1000).edge());

        assertThat(hidden.area()).isEqualByComparingTo(BigDecimal.valueOf(10_000L * 10_000 - 2000 * 2000));
    }

    @Test
    void whatSomethingIsMountedOnHidesOnlyWhatIsBehind() {
        Shape column = rectangle(-200, -400, 0, 400);
        Shape hidden = Sight.hidden(point(0, 0), HALL, column);

        // the half plane in front is seen, all behind the column's face is not
        assertThat(hidden.geometry().intersects(at(4000, 4999))).isFalse();
        assertThat(hidden.geometry().contains(at(-4000, 10))).isTrue();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void hiddenIsWhatALineMeetsAnObstacleOnTheWayTo(long seed) {
        Random random = new Random(seed);
        List<Shape> obstacles = new ArrayList<>();
        List<Line2D> edges = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            double x = random.nextDouble() * 8000 - 4000;
            double y = random.nextDouble() * 8000 - 4000;
            List<Point> corners = new ArrayList<>();
            for (int k = 0; k < 3; k++) {
                corners.add(point(x + random.nextDouble() * 1500, y + random.nextDouble() * 1500));
            }
            obstacles.add(Shape.area(corners));
            for (int k = 0; k < 3; k++) {
                edges.add(line(corners.get(k), corners.get((k + 1) % 3)));
            }
        }
        Point eye = point(-4900, random.nextDouble() * 9000 - 4500);
        Shape all = Shape.of(obstacles);
        Geometry hidden = Sight.hidden(eye, HALL, all).geometry();
        int counted = 0;
        for (int i = 0; i < 3000; i++) {
            double x = random.nextDouble() * 9800 - 4900;
            double y = random.nextDouble() * 9800 - 4900;
            Geometry spot = at(x, y);
            if (all.geometry().distance(spot) > 0 && hidden.getBoundary().distance(spot) > EDGE) {
                Line2D way = new Line2D.Double(eye.x().doubleValue(), eye.y().doubleValue(), x, y);
                assertThat(hidden.contains(spot))
                        .as("seed %s at %s", seed, spot)
                        .isEqualTo(edges.stream().anyMatch(way::intersectsLine));
                counted++;
            }
        }
        assertThat(counted).isGreaterThan(2000);
    }

    private static Line2D line(Point from, Point to) {
        return new Line2D.Double(
                from.x().doubleValue(),
                from.y().doubleValue(),
                to.x().doubleValue(),
                to.y().doubleValue());
    }

    /** The nearest point of a rectangle is known in closed form. */
    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14, 15, 16})
    void floorReachesARectangleByTheShortestWayPastWalls(long seed) {
        Random random = new Random(seed);
        Shape goal = rectangle(-1000, -600, 1000, 600);
        List<Shape> walls = new ArrayList<>();
        List<Line2D> lines = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            Point from = point(random.nextDouble() * 8000 - 4000, random.nextDouble() * 8000 - 4000);
            Point to = point(random.nextDouble() * 8000 - 4000, random.nextDouble() * 8000 - 4000);
            walls.add(Shape.line(List.of(from, to)));
            lines.add(line(from, to));
        }
        Geometry reaching = Sight.reaching(goal, mm(2500), HALL.without(goal), Shape.of(walls))
                .geometry();
        for (int i = 0; i < 3000; i++) {
            double x = random.nextDouble() * 8000 - 4000;
            double y = random.nextDouble() * 8000 - 4000;
            Geometry spot = at(x, y);
            double nearX = Math.max(-1000, Math.min(1000, x));
            double nearY = Math.max(-600, Math.min(600, y));
            double distance = Math.hypot(x - nearX, y - nearY);
            boolean clear = reaching.getBoundary().distance(spot) > 1 && Math.abs(distance - 2500) > 1 && distance > 1;
            if (clear) {
                // What stands within the touching distance of the goal is no obstacle.
                Line2D way = new Line2D.Double(
                        x, y, nearX + (x - nearX) / distance * 0.5, nearY + (y - nearY) / distance * 0.5);
                assertThat(reaching.contains(spot))
                        .as("seed %s at %s", seed, spot)
                        .isEqualTo(distance < 2500 && lines.stream().noneMatch(way::intersectsLine));
            }
        }
    }

    @Test
    void theNotchOfAGoalIsClosedByAWall() {
        Shape goal = Shape.area(List.of(
                point(0, 0), point(3000, 0), point(3000, 1000), point(1000, 1000), point(1000, 3000), point(0, 3000)));
        Shape floor = rectangle(1000, 1000, 5000, 5000);

        Shape open = Sight.reaching(goal, mm(500), floor, Shape.nothing());
        Shape closed = Sight.reaching(
                goal, mm(500), floor, Shape.line(List.of(point(1200, 2900), point(1200, 1200), point(2900, 1200))));

        assertThat(open.geometry().contains(at(1300, 1300))).isTrue();
        assertThat(closed.geometry().contains(at(1300, 1300))).isFalse();
        assertThat(closed.geometry().contains(at(1100, 1100))).isTrue();
        assertThat(closed.geometry().contains(at(1100, 2000))).isTrue();
    }

    @Test
    void nothingOnTheWayIsFree() {
        Shape console = rectangle(900, -100, 1100, 100);
        assertThat(Sight.free(point(0, 0), point(1000, 0), console))
                .as("inside the console")
                .isTrue();
        assertThat(Sight.free(point(0, 0), point(900, 0), console))
                .as("on its face")
                .isTrue();
        assertThat(Sight.free(point(0, 0), point(2000, 0), console))
                .as("behind it")
                .isFalse();
        assertThat(Sight.free(point(0, 0), point(2000, 500), console))
                .as("past it")
                .isTrue();
    }

    @Test
    void aLeafSweepsTheShorterWayRound() {
        Shape swept = Shape.swept(point(100, 100), point(1100, 100), point(100, -900), Arcs.AROUND);

        assertThat(swept.area().doubleValue()).isCloseTo(Math.PI / 4 * 1000 * 1000, within(100.0));
        assertThat(swept.geometry().contains(at(500, -300))).isTrue();
        assertThat(swept.geometry().intersects(at(500, 300))).isFalse();
    }

    /** A quarter the shorter way round, three quarters the other way, and half a circle on the side that is meant. */
    @Test
    void aLeafSweepsTheWayThatIsStated() {
        Shape quarter = Shape.swept(point(0, 0), point(1000, 0), point(0, -1000), true, Arcs.AROUND);
        Shape rest = Shape.swept(point(0, 0), point(1000, 0), point(0, -1000), false, Arcs.AROUND);
        Shape left = Shape.swept(point(0, 0), point(0, -1000), point(0, 1000), true, Arcs.AROUND);
        Shape right = Shape.swept(point(0, 0), point(0, -1000), point(0, 1000), false, Arcs.AROUND);

        assertThat(quarter.area().doubleValue()).isCloseTo(Math.PI / 4 * 1000 * 1000, within(100.0));
        assertThat(rest.area().doubleValue()).isCloseTo(Math.PI * 3 / 4 * 1000 * 1000, within(200.0));
        assertThat(left.geometry().contains(at(-500, 0))).isTrue();
        assertThat(left.geometry().intersects(at(500, 0))).isFalse();
        assertThat(right.geometry().contains(at(500, 0))).isTrue();
        assertThat(right.geometry().intersects(at(-500, 0))).isFalse();
    }

    @ParameterizedTest
    @ValueSource(ints = {170, 179, 181, 400})
    void aCircleGetsThroughAnOpeningThatIsWider(int opening) {
        Shape walls = Shape.line(List.of(
                point(opening, 0),
                point(3000, 0),
                point(3000, 3000),
                point(-3000, 3000),
                point(-3000, 0),
                point(0, 0)));

        Shape outside = walls.reachedFromOutside(mm(180), walls);

        assertThat(outside.geometry().contains(at(0, 1500))).isEqualTo(opening > 180);
        assertThat(outside.geometry().contains(at(0, -500))).isTrue();
    }
}
