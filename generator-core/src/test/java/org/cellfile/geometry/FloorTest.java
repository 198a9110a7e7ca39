package org.cellfile.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The floor that things leave free. All figures are constructed. */
class FloorTest {

    private static final BigDecimal WIDTH = new BigDecimal(75);

    @Test
    void aClosedRoomIsAPlaceOfItsOwn() {
        Floor floor = Floor.around(room(0), WIDTH);

        assertThat(floor.places()).extracting(Floor.Place::isOutside).containsExactlyInAnyOrder(true, false);
        assertThat(inside(floor).floor().area()).isBetween(new BigDecimal(3_990_000), new BigDecimal(4_000_000));
    }

    @Test
    void aDoorwayNoWiderThanSomebodyLetsNobodyThrough() {
        assertThat(Floor.around(room(75), WIDTH).places()).hasSize(2);
        assertThat(Floor.around(room(76), WIDTH).places()).hasSize(1);
    }

    @Test
    void nobodyComesIntoAGapOfTheirWidth() {
        Shape line = line(500, 2000, 1500, 2000);
        for (int gap : new int[] {74, 75, 76, 90}) {
            // Behind the line stands a block between it and the room, open to both sides.
            Shape block = Shape.area(
                    List.of(point(500, 2000 - gap), point(1500, 2000 - gap), point(1500, 500), point(500, 500)));
            Floor floor = Floor.around(Shape.of(List.of(room(0), block)), WIDTH);
            Shape beside = line.alongside(floor.besideALine(), Shape.spot(point(1000, 0)));

            assertThat(inside(floor).entered(beside).empty())
                    .as("gap of " + gap)
                    .isEqualTo(gap <= 75);
        }
    }

    @Test
    void besideALineIsOnTheSideOfWhatItIsTurnedTo() {
        Shape line = line(0, 0, 1000, 0);
        Shape beside = line.alongside(BigDecimal.TEN, Shape.spot(point(5000, 20)));

        assertThat(beside.area()).isEqualByComparingTo("10000");
        assertThat(beside.covers(Shape.spot(point(500, 5)))).isTrue();
        assertThat(beside.covers(Shape.spot(point(500, -5)))).isFalse();
        assertThat(beside.covers(Shape.spot(point(-1, 5)))).isFalse();
        assertThat(line.alongside(BigDecimal.TEN).area()).isEqualByComparingTo("20000");
    }

    @Test
    void aPlaceTouchesTheLinesThatBoundIt() {
        Floor.Place inside = inside(Floor.around(room(0), WIDTH));

        assertThat(inside.touches(line(0, 0, 0, 2000))).isTrue();
        assertThat(inside.reachesInto(line(0, 0, 0, 2000))).isFalse();
        assertThat(inside.reachesInto(line(0, 0, 1000, 1000))).isTrue();
        assertThat(inside.touches(line(-10, 0, -10, 2000))).isFalse();
    }

    private static Floor.Place inside(Floor floor) {
        return floor.places().stream()
                .filter(place -> !place.isOutside())
                .findFirst()
                .orElseThrow();
    }

    /** Two metres square, with a doorway in its south wall. */
    private static Shape room(int doorway) {
        return Shape.of(Stream.of(
                        line(0, 0, 0, 2000),
                        line(0, 2000, 2000, 2000),
                        line(2000, 2000, 2000, 0),
                        line(2000, 0, 1000 + doorway, 0),
                        line(1000, 0, 0, 0))
                .toList());
    }

    private static Shape line(int x1, int y1, int x2, int y2) {
        return Shape.line(List.of(point(x1, y1), point(x2, y2)));
    }

    private static Point point(int x, int y) {
        return new Point(BigDecimal.valueOf(x), BigDecimal.valueOf(y));
    }
}
