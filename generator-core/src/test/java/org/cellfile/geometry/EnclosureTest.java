package org.cellfile.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Line2D;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.cellfile.geometry.Enclosure.Opening;
import org.cellfile.geometry.Enclosure.Ring;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The narrowest ring round an area. All figures are constructed. */
class EnclosureTest {

    private static final Shape ZONE = circle(1000);

    @Test
    void fourFencesThatMeetAtTheirEndsLeaveNothingOpen() {
        Ring ring = Enclosure.round(ZONE, List.of(north(), east(2000, -2000), south(), west()))
                .orElseThrow();

        assertThat(ring.bars()).containsExactlyInAnyOrder("north", "east", "south", "west");
        assertThat(ring.openings()).isEmpty();
    }

    @Test
    void aRingIsNamedInTheOrderOfGoingRound() {
        List<String> bars = Enclosure.round(ZONE, List.of(north(), south(), east(2000, -2000), west()))
                .orElseThrow()
                .bars();

        int north = bars.indexOf("north");
        assertThat(bars.get((north + 2) % 4)).isEqualTo("south");
    }

    @Test
    void everyGapOfTheRingIsToldWithItsEnds() {
        Ring ring = Enclosure.round(
                        ZONE, List.of(north(), east(1600, -2000), south(), bar("west", -2000, -1700, -2000, 2000)))
                .orElseThrow();

        assertThat(ring.openings())
                .extracting(Opening::between)
                .map(between -> between.square().toPlainString())
                .containsExactlyInAnyOrder("160000", "90000");
        assertThat(ring.openings())
                .anySatisfy(opening -> assertThat(List.of(
                                opening.between().from(), opening.between().to()))
                        .containsExactlyInAnyOrder(point(2000, 2000), point(2000, 1600)));
    }

    @Test
    void aGapBetweenTheEndsOfOneFenceIsToldToo() {
        Bar fence = new Bar(
                "fence",
                Shape.line(List.of(
                        point(2000, 300),
                        point(2000, 2000),
                        point(-2000, 2000),
                        point(-2000, -2000),
                        point(2000, -2000),
                        point(2000, 0))));

        Ring ring = Enclosure.round(ZONE, List.of(fence)).orElseThrow();

        assertThat(ring.bars()).containsExactly("fence");
        assertThat(ring.openings())
                .singleElement()
                .satisfies(opening -> assertThat(opening.between().square()).isEqualByComparingTo("90000"));
    }

    @Test
    void theOtherWayRoundIsTakenWhereItIsNarrower() {
        // In front of the wide gap in the east stands a screen that leaves 100 mm at each of its ends.
        Ring ring = Enclosure.round(
                        ZONE,
                        List.of(
                                north(),
                                bar("east-1", 2000, 2000, 2000, 500),
                                bar("east-2", 2000, -500, 2000, -2000),
                                bar("screen", 2100, 500, 2100, -500),
                                south(),
                                west()))
                .orElseThrow();

        assertThat(ring.bars()).contains("screen");
        assertThat(ring.openings())
                .extracting(opening -> opening.between().square().toPlainString())
                .containsExactly("10000", "10000");
    }

    @Test
    void whatLiesInTheAreaKeepsNobodyFromIt() {
        Bar pillar = new Bar("pillar", Shape.circle(point(900, 0), new BigDecimal(50), Arcs.WITHIN));

        Ring ring = Enclosure.round(ZONE, List.of(pillar, north(), east(300, -2000), south(), west()))
                .orElseThrow();

        assertThat(ring.bars()).doesNotContain("pillar");
        assertThat(ring.openings()).hasSize(1);
    }

    @Test
    void aFieldThatCoversTheAreaGoesRoundIt() {
        Ring ring =
                Enclosure.round(ZONE, List.of(new Bar("field", circle(1800)))).orElseThrow();

        assertThat(ring.bars()).containsExactly("field");
        assertThat(ring.openings()).isEmpty();
    }

    @Test
    void twoFieldsThatOverlapGoRoundTogether() {
        Bar left = new Bar("left", Shape.area(corners(-1500, -1500, 200, 1500)));
        Bar right = new Bar("right", Shape.area(corners(100, -1500, 1500, 1500)));

        assertThat(Enclosure.round(ZONE, List.of(left, right)).orElseThrow().openings())
                .isEmpty();
    }

    @Test
    void anAreaBetweenTwoWallsIsClosedOnBothSides() {
        Shape ram = Shape.area(corners(-100, -30, 100, 30));

        Ring ring = Enclosure.round(ram, List.of(bar("front", -900, -75, 900, -75), bar("rear", 900, 75, -900, 75)))
                .orElseThrow();

        assertThat(ring.bars()).containsExactlyInAnyOrder("front", "rear");
        assertThat(ring.openings())
                .extracting(opening -> opening.between().square().toPlainString())
                .containsExactly("22500", "22500");
    }

    @Test
    void aWholeSideThatIsOpenIsAnOpening() {
        Ring ring = Enclosure.round(ZONE, List.of(west(), north(), south())).orElseThrow();

        assertThat(ring.openings())
                .singleElement()
                .satisfies(opening -> assertThat(List.of(
                                opening.between().from(), opening.between().to()))
                        .containsExactlyInAnyOrder(point(2000, 2000), point(2000, -2000)));
    }

    @Test
    void nothingGoesRoundWhereASideIsOpen() {
        assertThat(Enclosure.round(ZONE, List.of())).isEmpty();
        assertThat(Enclosure.round(ZONE, List.of(west()))).isEmpty();
        assertThat(Enclosure.round(ZONE, List.of(west(), bar("through the zone", 900, -3000, 900, 3000))))
                .as("the zone reaches past the fence")
                .isEmpty();
    }

    static LongStream seeds() {
        return LongStream.range(0, 24);
    }

    /**
     * Against the widest disc that gets out, found on a grid with the distances of java.awt.geom: the way with the greatest least
     * distance from all bars, which is half the width of the widest opening of the narrowest ring.
     */
    @ParameterizedTest
    @MethodSource("seeds")
    void theWidestOpeningIsThatOfTheWidestDiscThatGetsOut(long seed) {
        Random random = new Random(seed);
        List<double[]> walls = IntStream.range(0, 14)
                .mapToObj(i -> {
                    double angle = (i + random.nextDouble()) * 2 * Math.PI / 14;
                    double radius = 1500 + 1500 * random.nextDouble();
                    double turned = angle + Math.PI / 2 + random.nextDouble() - 0.5;
                    double x = Math.rint(radius * Math.cos(angle));
                    double y = Math.rint(radius * Math.sin(angle));
                    double half = 150 + 350 * random.nextDouble();
                    double dx = Math.rint(half * Math.cos(turned));
                    double dy = Math.rint(half * Math.sin(turned));
                    return new double[] {x - dx, y - dy, x + dx, y + dy};
                })
                .toList();
        List<Bar> bars = walls.stream()
                .map(wall -> bar("wall", wall[0], wall[1], wall[2], wall[3]))
                .toList();

        double widest = Enclosure.round(circle(2), bars).orElseThrow().openings().stream()
                .mapToDouble(opening -> Math.sqrt(opening.between().square().doubleValue()))
                .max()
                .orElse(0);

        assertThat(widest).isCloseTo(2 * widestDisc(walls), within(1.5 * STEP));
    }

    private static final int STEP = 20;
    private static final int CELLS = 2 * 4000 / STEP + 1;

    /** Cells are flooded from the middle, the one furthest from all walls first, until the rim is reached. */
    private static double widestDisc(List<double[]> walls) {
        record Cell(int x, int y, double room) {}
        java.util.PriorityQueue<Cell> open = new java.util.PriorityQueue<>(
                Comparator.comparingDouble(Cell::room).reversed());
        boolean[][] seen = new boolean[CELLS][CELLS];
        open.add(new Cell(CELLS / 2, CELLS / 2, room(CELLS / 2, CELLS / 2, walls)));
        seen[CELLS / 2][CELLS / 2] = true;
        double least = Double.MAX_VALUE;
        while (true) {
            Cell cell = open.remove();
            least = Math.min(least, cell.room());
            if (cell.x() == 0 || cell.y() == 0 || cell.x() == CELLS - 1 || cell.y() == CELLS - 1) {
                return least;
            }
            for (int dx = -1; dx <= 1; dx++) {
                for (int dy = -1; dy <= 1; dy++) {
                    int x = cell.x() + dx;
                    int y = cell.y() + dy;
                    if (!seen[x][y]) {
                        seen[x][y] = true;
                        open.add(new Cell(x, y, room(x, y, walls)));
                    }
                }
            }
        }
    }

    private static double room(int x, int y, List<double[]> walls) {
        double left = x * STEP - 4000;
        double up = y * STEP - 4000;
        return walls.stream()
                .mapToDouble(wall -> Line2D.ptSegDist(wall[0], wall[1], wall[2], wall[3], left, up))
                .min()
                .orElseThrow();
    }

    @Test
    void theSameBarsInAnyOrderHaveTheSameOpenings() {
        List<Bar> bars = new ArrayList<>(List.of(north(), east(1600, -1900), south(), west()));
        List<Opening> openings = Enclosure.round(ZONE, bars).orElseThrow().openings();
        java.util.Collections.reverse(bars);

        assertThat(Enclosure.round(ZONE, bars).orElseThrow().openings())
                .extracting(opening -> opening.between().square())
                .containsExactlyInAnyOrderElementsOf(openings.stream()
                        .map(opening -> opening.between().square())
                        .toList());
    }

    private static Bar north() {
        return bar("north", -2000, 2000, 2000, 2000);
    }

    private static Bar south() {
        return bar("south", -2000, -2000, 2000, -2000);
    }

    private static Bar west() {
        return bar("west", -2000, -2000, -2000, 2000);
    }

    private static Bar east(int upTo, int from) {
        return bar("east", 2000, from, 2000, upTo);
    }

    private static Bar bar(String name, double x1, double y1, double x2, double y2) {
        return new Bar(name, Shape.line(List.of(point(x1, y1), point(x2, y2))));
    }

    private static List<Point> corners(double x1, double y1, double x2, double y2) {
        return List.of(point(x1, y1), point(x2, y1), point(x2, y2), point(x1, y2));
    }

    private static Shape circle(int radius) {
        return Shape.circle(point(0, 0), new BigDecimal(radius), Arcs.AROUND);
    }

    private static Point point(double x, double y) {
        return new Point(BigDecimal.valueOf(x), BigDecimal.valueOf(y));
    }
}
