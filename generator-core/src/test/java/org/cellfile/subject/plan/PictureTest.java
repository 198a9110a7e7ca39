package org.cellfile.subject.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.cellfile.geometry.Between;
import org.cellfile.geometry.Extent;
import org.cellfile.geometry.Point;
import org.cellfile.subject.plan.Labels.Box;
import org.cellfile.subject.plan.Picture.Format;
import org.junit.jupiter.api.Test;

/** Distances that would lie on each other are drawn side by side. All figures are constructed. */
class PictureTest {

    @Test
    void distancesOnOneLineAreDrawnApart() {
        List<?> distances = distances(between(0, 0, 0, 2000), between(0, 0, 0, 1200), between(600, 0, 600, 1200));

        assertThat(one(distances, 0).get("aside")).isNull();
        assertThat(one(distances, 1).get("aside")).isNotNull();
        assertThat(one(distances, 1).get("line")).isNotEqualTo(one(distances, 0).get("line"));
        assertThat(one(distances, 1).get("x1")).isEqualTo(one(distances, 0).get("x1"));
        assertThat(one(distances, 2).get("aside")).isNull();
    }

    @Test
    void distancesThatOnlyMeetAreLeftWhereTheyAre() {
        List<?> distances = distances(between(0, 0, 0, 1000), between(0, 1000, 0, 2000), between(0, 0, 1500, 100));

        for (int i = 0; i < 3; i++) {
            assertThat(one(distances, i).get("aside")).isNull();
        }
    }

    private static Map<?, ?> one(List<?> distances, int i) {
        return (Map<?, ?>) distances.get(i);
    }

    private static List<?> distances(Between... all) {
        Picture picture = new Picture(
                Extent.of(List.of(point(-2000, -500), point(2000, 2500))).orElseThrow(),
                new Format(new Box(440, 30, 6380, 6000), 6400, 105, 3170));
        for (Between between : all) {
            picture.distance(between, Optional.of(BigDecimal.valueOf(500)), false, "a distance");
        }
        Map<String, Object> data = picture.data("plan", "Plan", Optional.empty(), kind -> List.of());
        return (List<?>) Objects.requireNonNull(data.get("distances"));
    }

    private static Between between(int x1, int y1, int x2, int y2) {
        return new Between(point(x1, y1), point(x2, y2));
    }

    private static Point point(int x, int y) {
        return new Point(BigDecimal.valueOf(x), BigDecimal.valueOf(y));
    }
}
