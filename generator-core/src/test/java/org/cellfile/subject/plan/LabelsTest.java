package org.cellfile.subject.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.cellfile.subject.plan.Labels.Box;
import org.cellfile.subject.plan.Labels.Line;
import org.cellfile.subject.plan.Labels.Placed;
import org.cellfile.subject.plan.Labels.Spot;
import org.cellfile.subject.plan.Labels.Stroke;
import org.cellfile.subject.plan.Labels.Wish;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Texts of a drawing never lie on each other, whatever is wished. All figures are constructed. */
class LabelsTest {

    private static final Box FRAME = new Box(0, 0, 6000, 5000);
    private static final int SIZE = 105;

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void noTextLiesOnAnotherOrOnALeaderToAnother(int seed) {
        Labels labels = many(seed, 60);
        List<Placed> placed = labels.placed();
        assertThat(placed).hasSizeGreaterThan(40);
        for (int i = 0; i < placed.size(); i++) {
            assertThat(placed.get(i).box().within(FRAME)).isTrue();
            for (int j = 0; j < placed.size(); j++) {
                if (i != j) {
                    Box box = placed.get(i).box();
                    assertThat(box.meets(placed.get(j).box()))
                            .as("%s on %s", placed.get(i), placed.get(j))
                            .isFalse();
                    assertThat(placed.get(j).leader().filter(box::meets))
                            .as("%s on the leader of %s", placed.get(i), placed.get(j))
                            .isEmpty();
                }
            }
        }
    }

    @Test
    void everyTextIsPlacedOrHasANumber() {
        Labels labels = many(9, 400);
        List<String> numbered = labels.numbered();
        assertThat(numbered).isNotEmpty();
        for (int i = 0; i < 400; i++) {
            String text = text(i);
            boolean placed = labels.placed().stream()
                    .anyMatch(one -> one.lines().get(0).text().equals(text));
            assertThat(placed).as(text).isNotEqualTo(numbered.contains(text + ", 600 mm"));
        }
    }

    @Test
    void theSameWishesFindTheSamePlaces() {
        assertThat(many(10, 80).placed()).isEqualTo(many(10, 80).placed());
    }

    @Test
    void aTextKeepsClearOfSymbolsAndRatherOfLines() {
        Labels labels = new Labels(FRAME, SIZE);
        Box symbol = Box.around(3100, 2500, 130, 130);
        Stroke line = new Stroke(3000, 2300, 6000, 2300);
        labels.keepFree(symbol);
        labels.drawn(List.of(line), false, 1);
        labels.place(List.of(
                Wish.at(List.of(new Spot(3000, 2400)), List.of(), false, List.of(new Line("curtain-north", true)))));
        Box box = labels.placed().get(0).box();
        assertThat(box.meets(symbol)).isFalse();
        assertThat(box.meets(line)).isFalse();
    }

    @Test
    void aTextThatFindsNoPlaceIsANumber() {
        Labels labels = new Labels(new Box(0, 0, 400, 400), SIZE);
        labels.place(List.of(Wish.at(
                List.of(new Spot(200, 200)),
                List.of(),
                true,
                List.of(new Line("far too long for so small a drawing", true)))));
        assertThat(labels.placed()).hasSize(1);
        assertThat(labels.placed().get(0).lines()).containsExactly(new Line("1", true));
        assertThat(labels.numbered()).containsExactly("far too long for so small a drawing");
    }

    @Test
    void everyNumberStandsInTheDrawing() {
        Labels labels = many(11, 150);
        List<String> numbers = labels.placed().stream()
                .filter(Placed::number)
                .map(one -> one.lines().get(0).text())
                .sorted()
                .toList();
        assertThat(numbers)
                .containsExactlyElementsOf(
                        IntStream.rangeClosed(1, labels.numbered().size())
                                .mapToObj(String::valueOf)
                                .sorted()
                                .toList());
        assertThat(labels.numbered()).isSorted().isNotEmpty();
    }

    @Test
    void aTextStandsWithinItsThingWhereItFits() {
        Labels labels = new Labels(FRAME, SIZE);
        List<Stroke> field = rectangle(1000, 1000, 2500, 2000);
        labels.drawn(field, true, 1);
        labels.place(List.of(Wish.at(List.of(new Spot(1750, 1500)), field, true, List.of(new Line("field", true)))));
        Placed placed = labels.placed().get(0);
        assertThat(placed.leader()).isEmpty();
        assertThat(placed.box().within(new Box(1000, 1000, 2500, 2000))).isTrue();
    }

    @Test
    void aTextStandsBesideItsThingAndNotInAnother() {
        Labels labels = new Labels(FRAME, SIZE);
        List<Stroke> narrow = rectangle(2000, 1000, 2100, 3000);
        List<Stroke> zone = rectangle(2110, 500, 4500, 3500);
        labels.drawn(narrow, true, 1);
        labels.drawn(zone, true, 1);
        labels.place(
                List.of(Wish.at(List.of(new Spot(2050, 2000)), narrow, true, List.of(new Line("conveyor", true)))));
        assertThat(labels.placed().get(0).box().right()).isLessThanOrEqualTo(2000);
    }

    private static List<Stroke> rectangle(int left, int top, int right, int bottom) {
        return List.of(
                new Stroke(left, top, right, top),
                new Stroke(right, top, right, bottom),
                new Stroke(right, bottom, left, bottom),
                new Stroke(left, bottom, left, top));
    }

    @Test
    void aLineMeetsABoxWhenItPassesThroughIt() {
        Box box = new Box(100, 100, 200, 200);
        assertThat(box.meets(new Stroke(0, 0, 300, 300))).isTrue();
        assertThat(box.meets(new Stroke(120, 120, 130, 130))).isTrue();
        assertThat(box.meets(new Stroke(0, 0, 300, 0))).isFalse();
        assertThat(box.meets(new Stroke(0, 180, 120, 300))).isFalse();
        assertThat(box.meets(new Stroke(0, 60, 240, 300))).isTrue();
    }

    private static Labels many(int seed, int count) {
        Random random = new Random(seed);
        Labels labels = new Labels(FRAME, SIZE);
        List<Wish> wishes = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int x = 300 + random.nextInt(5400);
            int y = 300 + random.nextInt(4400);
            List<Stroke> outline = List.of(new Stroke(x - 200, y, x + 200, y));
            labels.drawn(outline, false, 1);
            wishes.add(Wish.at(
                    List.of(new Spot(x, y)),
                    outline,
                    random.nextBoolean(),
                    List.of(new Line(text(i), true), new Line("600 mm", false))));
        }
        labels.place(wishes);
        return labels;
    }

    private static String text(int i) {
        return "safeguard-" + i;
    }
}
