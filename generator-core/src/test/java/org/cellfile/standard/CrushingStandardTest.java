package org.cellfile.standard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.cellfile.quantity.Quantity;
import org.cellfile.trace.Lookup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The table of least gaps, typed once more for the tests, against what the editions give. */
class CrushingStandardTest {

    private static final List<String> EDITIONS = List.of("EN 349:1993+A1:2008", "ISO 13854:2017");

    /**
     * AUVA lexicon, Safety Distances, in mm; the body also Banner AG4 series manual, p. 45; the foot also Access s.r.l., minimum
     * clearances floor to fence.
     */
    private static final String PRINTED = """
            body   500
            head   300
            leg    180
            foot   120
            toes   50
            arm    120
            hand   100
            finger 25
            """;

    private static Map<String, Integer> printed() {
        Map<String, Integer> rows = new LinkedHashMap<>();
        PRINTED.lines().map(line -> line.split(" +")).forEach(row -> rows.put(row[0], Integer.valueOf(row[1])));
        return rows;
    }

    private static CrushingStandard edition(String id) {
        return (CrushingStandard) Editions.of(id).orElseThrow();
    }

    private static Quantity gap(String edition, String part) {
        return edition(edition).leastGap(part).value().orElseThrow();
    }

    static Stream<Arguments> rows() {
        return printed().entrySet().stream()
                .flatMap(row -> EDITIONS.stream().map(edition -> Arguments.of(edition, row.getKey(), row.getValue())));
    }

    @ParameterizedTest
    @MethodSource("rows")
    void rowByRow(String edition, String part, int millimetres) {
        assertThat(gap(edition, part)).isEqualTo(Quantity.millimetres("" + millimetres));
        assertThat(edition(edition).leastGap(part)).isInstanceOfSatisfying(Lookup.class, lookup -> {
            assertThat(lookup.taken()).isEqualTo("a: row " + part + " of " + edition + ", table 1");
            assertThat(lookup.reference().fromMemory()).isFalse();
        });
    }

    @Test
    void noPartAndNoEditionIsLeftOut() {
        assertThat(CrushingStandard.PARTS).containsExactlyElementsOf(printed().keySet());
        assertThat(Editions.ids(CrushingStandard.class)).isEqualTo(EDITIONS);
    }

    /** A larger part of the body never needs a narrower gap. */
    @Test
    void orderOfTheParts() {
        for (String edition : EDITIONS) {
            for (List<String> fromLarge :
                    List.of(List.of("body", "head", "arm", "hand", "finger"), List.of("body", "leg", "foot", "toes"))) {
                for (int i = 1; i < fromLarge.size(); i++) {
                    assertThat(gap(edition, fromLarge.get(i)).compareTo(gap(edition, fromLarge.get(i - 1))))
                            .as(fromLarge.get(i - 1) + " and " + fromLarge.get(i))
                            .isNegative();
                }
            }
        }
    }
}
