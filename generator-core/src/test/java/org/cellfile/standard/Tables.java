package org.cellfile.standard;

import java.util.Arrays;
import java.util.List;
import java.util.Map;

/** The published tables once more, typed for the tests; the program's own resources are not read here. */
final class Tables {

    private Tables() {}

    /** A table by height of the hazard (rows, from the highest) and height of the edge (columns), in mm. */
    record Heights(List<Integer> edges, List<List<Integer>> rows) {

        /** The printed cell of a row and a column. */
        int cell(int hazard, int edge) {
            return row(hazard).get(1 + edges.indexOf(edge));
        }

        private List<Integer> row(int hazard) {
            return rows.stream().filter(row -> row.get(0) == hazard).findFirst().orElseThrow();
        }

        List<Integer> hazards() {
            return rows.stream().map(row -> row.get(0)).toList();
        }

        /**
         * What a careful reader takes for heights between the printed ones: every row that bounds the hazard or lies within it,
         * and the next lower edge.
         */
        int reach(int lowest, int highest, int edge) {
            int column = edges.stream()
                    .filter(one -> one <= edge)
                    .reduce((a, b) -> b)
                    .orElseThrow();
            int bottom =
                    hazards().stream().filter(one -> one <= lowest).findFirst().orElseThrow();
            int top = hazards().stream()
                    .filter(one -> one >= highest)
                    .reduce((a, b) -> b)
                    .orElse(hazards().get(0));
            return hazards().stream()
                    .filter(one -> one >= bottom && one <= top)
                    .mapToInt(one -> cell(one, column))
                    .max()
                    .orElseThrow();
        }
    }

    private static Heights heights(String edges, String rows) {
        return new Heights(numbers(edges), rows.lines().map(Tables::numbers).toList());
    }

    static List<Integer> numbers(String line) {
        return Arrays.stream(line.strip().split(" +")).map(Integer::valueOf).toList();
    }

    /**
     * Schmersal SLC440/SLG440 operating instructions, p. 13. One copy prints 85 for row 1200 and column 1300, a misprint of 850:
     * the row above gives 900 and the next cell is 800.
     */
    static final Heights OVER_A_FIELD = heights("900 1000 1100 1200 1300 1400 1600 1800 2000 2200 2400 2600", """
                2600 0    0    0    0    0   0   0   0   0   0   0   0
                2500 400  400  350  300  300 300 300 300 250 150 100 0
                2400 550  550  550  500  450 450 400 400 300 250 100 0
                2200 800  750  750  700  650 650 600 550 400 250 0   0
                2000 950  950  850  850  800 750 700 550 400 0   0   0
                1800 1100 1100 950  950  850 800 750 550 0   0   0   0
                1600 1150 1150 1100 1000 900 850 750 450 0   0   0   0
                1400 1200 1200 1100 1000 900 850 650 0   0   0   0   0
                1200 1200 1200 1100 1000 850 800 0   0   0   0   0   0
                1000 1200 1150 1050 950  750 700 0   0   0   0   0   0
                800  1150 1050 950  800  500 450 0   0   0   0   0   0
                600  1050 950  750  550  0   0   0   0   0   0   0   0
                400  900  700  0    0    0   0   0   0   0   0   0   0
                200  600  0    0    0    0   0   0   0   0   0   0   0
                0    0    0    0    0    0   0   0   0   0   0   0   0
                """);

    /** ISO 13857, table 2: from memory. Only the first zero of row 1000 is published (Genmacs, how to position). */
    static final Heights OVER_A_STRUCTURE = heights("1000 1200 1400 1600 1800 2000 2200 2400 2500 2700", """
                2700 0    0    0    0   0   0   0   0   0   0
                2600 900  800  700  600 600 500 400 300 100 0
                2400 1100 1000 900  800 700 600 400 300 100 0
                2200 1300 1200 1000 900 800 600 400 300 0   0
                2000 1400 1300 1100 900 800 600 400 0   0   0
                1800 1500 1400 1100 900 800 600 0   0   0   0
                1600 1500 1400 1100 900 800 500 0   0   0   0
                1400 1500 1400 1100 900 800 0   0   0   0   0
                1200 1500 1400 1100 900 700 0   0   0   0   0
                1000 1500 1400 1000 800 0   0   0   0   0   0
                800  1500 1300 900  600 0   0   0   0   0   0
                600  1400 1300 800  0   0   0   0   0   0   0
                400  1400 1200 400  0   0   0   0   0   0   0
                200  1200 900  0    0   0   0   0   0   0   0
                0    1100 500  0    0   0   0   0   0   0   0
                """);

    /**
     * ISO 13857:2008 and 2019, table 4: largest opening of the row, then slot, square, round. ZT Grassberger, ISO 13857 table;
     * slot 12 to 20, slot 20 to 30 and square 30 to 40 also Dr. Birn, safety distance of lattice fences. The relief for
     * slots up to 65 mm long stands below.
     */
    static final List<List<Integer>> THROUGH_AN_OPENING =
            """
                4   2   2   2
                6   10  5   5
                8   20  15  5
                10  80  25  20
                12  100 80  80
                20  120 120 120
                30  850 120 120
                40  850 200 120
                120 850 850 850
                """.lines().map(Tables::numbers).toList();

    /** Slots up to 65 mm long, table 4: above, up to, reach. ZT Grassberger, ISO 13857 table; safety-products.de; safetyfenceguarding.com. */
    static final List<Integer> THROUGH_A_SHORT_SLOT = List.of(20, 40, 200);

    /**
     * ISO 13857:2008 and 2019, table 7: largest opening of the row, then slot, square, round; -1 where the body passes. From memory
     * but for the slot of 180 mm (ZT Grassberger, ISO 13857 table) and the last two limits (the same; safety-products.de).
     */
    static final List<List<Integer>> THROUGH_WITH_LEGS =
            """
                5   0    0    0
                15  10   0    0
                35  80   25   25
                60  180  80   80
                80  650  180  180
                95  1100 650  650
                180 1100 1100 1100
                240 -1   1100 1100
                """.lines().map(Tables::numbers).toList();

    /** Table 3: 850 from the shoulder is published (GT Engineering, EN ISO 13857 upper limbs), the others are from memory. */
    static final Map<String, Integer> AROUND_AN_END =
            Map.of("shoulder", 850, "elbow", 550, "wrist", 230, "knuckles", 130);
}
