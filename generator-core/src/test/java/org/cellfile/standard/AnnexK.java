package org.cellfile.standard;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Unit;
import org.cellfile.trace.Count;
import org.cellfile.trace.Term;

/**
 * ISO 13849-1:2015, table K.1, once more, typed for the tests; the program's own resource is not read here. From memory. Only row 30
 * of category 1 (two digits) and of category 4 (a contribution to a forum of controls engineers, 2010) and row 2500 of category 4
 * (Siemens SINAMICS DCM, functional safety, 2016, p. 56 and 59) were read in public.
 */
final class AnnexK {

    private AnnexK() {}

    /** Years; then 1/h and performance level in category B up to 27 years and in 1 from 30 on, 2 low, 2 medium, 3 low, 3 medium, 4. */
    private static final String UP_TO_100_YEARS = """
            3   3.80e-5 a  2.58e-5 a  1.99e-5 a  1.26e-5 a  6.09e-6 b  -
            3.3 3.46e-5 a  2.33e-5 a  1.79e-5 a  1.13e-5 a  5.41e-6 b  -
            3.6 3.17e-5 a  2.13e-5 a  1.62e-5 a  1.03e-5 a  4.86e-6 b  -
            3.9 2.93e-5 a  1.95e-5 a  1.48e-5 a  9.37e-6 b  4.40e-6 b  -
            4.3 2.65e-5 a  1.76e-5 a  1.33e-5 a  8.39e-6 b  3.89e-6 b  -
            4.7 2.43e-5 a  1.60e-5 a  1.20e-5 a  7.58e-6 b  3.48e-6 b  -
            5.1 2.24e-5 a  1.47e-5 a  1.10e-5 a  6.91e-6 b  3.15e-6 b  -
            5.6 2.04e-5 a  1.33e-5 a  9.87e-6 b  6.21e-6 b  2.80e-6 c  -
            6.2 1.84e-5 a  1.19e-5 a  8.80e-6 b  5.53e-6 b  2.47e-6 c  -
            6.8 1.68e-5 a  1.08e-5 a  7.93e-6 b  4.98e-6 b  2.20e-6 c  -
            7.5 1.52e-5 a  9.75e-6 b  7.10e-6 b  4.45e-6 b  1.95e-6 c  -
            8.2 1.39e-5 a  8.87e-6 b  6.43e-6 b  4.02e-6 b  1.74e-6 c  -
            9.1 1.25e-5 a  7.94e-6 b  5.71e-6 b  3.57e-6 b  1.53e-6 c  -
            10  1.14e-5 a  7.18e-6 b  5.14e-6 b  3.21e-6 b  1.36e-6 c  -
            11  1.04e-5 a  6.44e-6 b  4.53e-6 b  2.81e-6 c  1.18e-6 c  -
            12  9.51e-6 b  5.84e-6 b  4.04e-6 b  2.49e-6 c  1.04e-6 c  -
            13  8.78e-6 b  5.33e-6 b  3.64e-6 b  2.23e-6 c  9.21e-7 d  -
            15  7.61e-6 b  4.53e-6 b  3.01e-6 b  1.82e-6 c  7.44e-7 d  -
            16  7.13e-6 b  4.21e-6 b  2.77e-6 c  1.67e-6 c  6.76e-7 d  -
            18  6.34e-6 b  3.68e-6 b  2.37e-6 c  1.41e-6 c  5.67e-7 d  -
            20  5.71e-6 b  3.26e-6 b  2.06e-6 c  1.22e-6 c  4.85e-7 d  -
            22  5.19e-6 b  2.93e-6 c  1.82e-6 c  1.07e-6 c  4.21e-7 d  -
            24  4.76e-6 b  2.65e-6 c  1.62e-6 c  9.47e-7 d  3.70e-7 d  -
            27  4.23e-6 b  2.32e-6 c  1.39e-6 c  8.04e-7 d  3.10e-7 d  -
            30  3.80e-6 b  2.06e-6 c  1.21e-6 c  6.94e-7 d  2.65e-7 d  9.54e-8 e
            33  3.46e-6 b  1.85e-6 c  1.06e-6 c  5.94e-7 d  2.30e-7 d  8.57e-8 e
            36  3.17e-6 b  1.67e-6 c  9.39e-7 d  5.16e-7 d  2.01e-7 d  7.77e-8 e
            39  2.93e-6 c  1.53e-6 c  8.40e-7 d  4.53e-7 d  1.78e-7 d  7.11e-8 e
            43  2.65e-6 c  1.37e-6 c  7.34e-7 d  3.87e-7 d  1.54e-7 d  6.37e-8 e
            47  2.43e-6 c  1.24e-6 c  6.49e-7 d  3.35e-7 d  1.34e-7 d  5.76e-8 e
            51  2.24e-6 c  1.13e-6 c  5.80e-7 d  2.93e-7 d  1.19e-7 d  5.26e-8 e
            56  2.04e-6 c  1.02e-6 c  5.10e-7 d  2.52e-7 d  1.03e-7 d  4.73e-8 e
            62  1.84e-6 c  9.06e-7 d  4.43e-7 d  2.13e-7 d  8.84e-8 e  4.22e-8 e
            68  1.68e-6 c  8.17e-7 d  3.90e-7 d  1.84e-7 d  7.68e-8 e  3.80e-8 e
            75  1.52e-6 c  7.31e-7 d  3.40e-7 d  1.57e-7 d  6.62e-8 e  3.41e-8 e
            82  1.39e-6 c  6.61e-7 d  3.01e-7 d  1.35e-7 d  5.79e-8 e  3.08e-8 e
            91  1.25e-6 c  5.88e-7 d  2.61e-7 d  1.14e-7 d  4.94e-8 e  2.74e-8 e
            100 1.14e-6 c  5.28e-7 d  2.29e-7 d  1.01e-7 d  4.29e-8 e  2.47e-8 e
            """;

    /** Category 4 above 100 years, all of performance level e. */
    private static final String ABOVE_100_YEARS = """
            110 2.23e-8; 120 2.03e-8; 130 1.87e-8; 150 1.61e-8; 160 1.50e-8; 180 1.33e-8; 200 1.19e-8;
            220 1.08e-8; 240 9.81e-9; 270 8.67e-9; 300 7.76e-9; 330 7.04e-9; 360 6.44e-9; 390 5.94e-9;
            430 5.38e-9; 470 4.91e-9; 510 4.52e-9; 560 4.11e-9; 620 3.70e-9; 680 3.37e-9; 750 3.05e-9;
            820 2.79e-9; 910 2.51e-9; 1000 2.28e-9; 1100 2.07e-9; 1200 1.90e-9; 1300 1.75e-9; 1500 1.51e-9;
            1600 1.42e-9; 1800 1.26e-9; 2000 1.13e-9; 2200 1.03e-9; 2300 9.85e-10; 2400 9.44e-10;
            2500 9.06e-10;
            """;

    /** A structure with a class of coverage. */
    enum Column {
        B(Category.B, 0),
        ONE(Category.ONE, 0),
        TWO_LOW(Category.TWO, 60),
        TWO_MEDIUM(Category.TWO, 90),
        THREE_LOW(Category.THREE, 60),
        THREE_MEDIUM(Category.THREE, 90),
        FOUR(Category.FOUR, 99);

        private final Category category;
        private final int percent;

        Column(Category category, int percent) {
            this.category = category;
            this.percent = percent;
        }

        Category category() {
            return category;
        }

        /** The least coverage of its class. */
        double coverage() {
            return percent / 100.0;
        }

        /** What the program looks up for it. */
        Term pfh(ControlStandard standard, Quantity mttfd) {
            return standard.pfh(
                    category, new Count(mttfd), new Count(Quantity.of(String.valueOf(percent), Unit.PERCENT)));
        }
    }

    /** A number of the table, and the level printed with it. */
    record Cell(Column column, BigDecimal years, BigDecimal perHour, String level) {

        /** As what the printed digits leave open, as a part of the whole. */
        double rounding() {
            return perHour.ulp().doubleValue() / 2 / perHour.doubleValue();
        }

        Quantity mttfd() {
            return new Quantity(years, Unit.YEAR);
        }
    }

    static List<Cell> cells() {
        List<Cell> cells = new ArrayList<>();
        UP_TO_100_YEARS.lines().map(line -> line.split(" +")).forEach(words -> {
            int column = new BigDecimal(words[0]).intValue() < 30 ? 0 : 1;
            for (int i = 1; i < words.length && !words[i].equals("-"); i += 2) {
                cells.add(cell(Column.values()[column], words[0], words[i], words[i + 1]));
                column = Math.max(column, 1) + 1;
            }
        });
        Stream.of(ABOVE_100_YEARS.strip().split(";\\s*"))
                .map(pair -> pair.split(" "))
                .forEach(pair -> cells.add(cell(Column.FOUR, pair[0], pair[1], "e")));
        return cells;
    }

    static List<Cell> of(Column column) {
        return cells().stream().filter(cell -> cell.column() == column).toList();
    }

    private static Cell cell(Column column, String years, String perHour, String level) {
        return new Cell(column, new BigDecimal(years), new BigDecimal(perHour), level);
    }
}
