package org.cellfile.cases;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.cellfile.FolderWorld;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Findings;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Unit;
import org.cellfile.subject.function.FunctionLevel;
import org.cellfile.subject.function.PartLife;
import org.cellfile.subject.function.SubsystemLevel;
import org.cellfile.trace.Derived;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The safety functions of the demonstration cells from end to end, against numbers that another hand computed from the same inputs
 * with exact fractions, without this program, and with a transcription of Annex K of its own. Source: constructed; Annex K, the risk
 * graph and the scores are from memory.
 */
class DemonstratedFunctionsTest {

    /** A part; mean time to dangerous failure in years, cut after four decimals; the last day it may be in use. */
    private static final String KETTLEBROOK_PARTS = """
            contactor-lift-1 | 67.7083 | 2030-06-30
            contactor-lift-2 | 67.7083 | 2030-06-30
            contactor-turntable-1 | 216.6666 | 2046-09-28
            contactor-turntable-2 | 216.6666 | 2046-09-28
            contactor-main-1 | 13333.3333 | 2043-09-22
            contactor-main-2 | 13333.3333 | 2043-09-22
            contactor-transfer | 54.1666 | 2032-02-24
            switch-wrapper-a | 1666.6666 | 2046-09-28
            switch-wrapper-b | 1666.6666 | 2046-09-28
            relay-pusher-input-a | 190.0000 | 2043-09-22
            relay-pusher-input-b | 259.4437 | 2043-09-22
            relay-pusher-output-a | 120.1634 | 2043-09-22
            relay-pusher-output-b | 140.0000 | 2043-09-22
            valve-pusher | 125.0000 | 2036-03-22
            stroke-switch | 62.5000 | 2032-01-29
            """;

    /** A subsystem built from parts; category; frequency of dangerous failure; level. */
    private static final String KETTLEBROOK_SUBSYSTEMS = """
            door-wrapper-switches | 3 | 4.29e-8 1/h | PL e
            relay-pusher | 3 | 5.79e-8 1/h | PL e
            lift-contactors | 4 | 4.22e-8 1/h | PL e
            turntable-contactors | 4 | 1.19e-8 1/h | PL e
            main-contactors | 4 | 9.06e-10 1/h | PL e
            transfer-contactor | 1 | 2.24e-6 1/h | PL c
            aligner-valve | 2 | 2.29e-7 1/h | PL d
            """;

    /** A function; required level; sum of the frequencies in 1/h; reached level. */
    private static final String KETTLEBROOK_FUNCTIONS = """
            stop-by-curtain-north | PL d | 97400e-12 | PL d
            stop-by-curtain-infeed | PL d | 98200e-12 | PL d
            stop-by-scanner-south | PL d | 171100e-12 | PL d
            stop-by-scanner-upright | PL d | 167800e-12 | PL d
            stop-by-curtain-lift | PL d | 50400e-12 | PL e
            stop-by-curtain-ramp | PL d | 50400e-12 | PL e
            stop-by-scanner-lift | PL d | 120000e-12 | PL d
            stop-by-mat-lift | PL d | 84300e-12 | PL d
            stop-by-door-lift | PL d | 47100e-12 | PL e
            stop-by-door-west | PL d | 137100e-12 | PL d
            stop-by-curtain-wrapper | PL d | 20900e-12 | PL e
            stop-by-scanner-wrapper | PL d | 89700e-12 | PL d
            stop-by-door-wrapper | PL d | 55900e-12 | PL e
            stop-by-door-mast | PL d | 19600e-12 | PL e
            stop-by-curtain-transfer | PL c | 2247400e-12 | PL c
            stop-by-beams-transfer | PL c | 2246300e-12 | PL c
            stop-by-mat-transfer | PL c | 2282100e-12 | PL c
            stop-by-door-transfer | PL c | 2244900e-12 | PL c
            stop-by-curtain-pusher | PL c | 295300e-12 | PL d
            stop-by-curtain-pusher-rear | PL c | 294000e-12 | PL d
            stop-by-two-hand-pusher | PL c | 305900e-12 | PL d
            emergency-stop-panel | PL d | 96506e-12 | PL d
            emergency-stop-magazine | PL d | 96506e-12 | PL d
            emergency-stop-film | PL d | 96506e-12 | PL d
            emergency-stop-pendant | PL d | 96506e-12 | PL d
            enabling | PL d | 145100e-12 | PL d
            """;

    /** A part; mean time to dangerous failure in years, cut after four decimals; the last day it may be in use. */
    private static final String MARROWDALE_PARTS = """
            switch-east-a | 1893.9393 | 2034-05-19
            switch-east-b | 1893.9393 | 2034-05-19
            switch-filler-a | 126.2626 | 2026-12-31
            switch-filler-b | 126.2626 | 2026-12-31
            valve-jaw | 113.6363 | 2025-09-27
            """;

    /** A subsystem built from parts; category; frequency of dangerous failure; level. */
    private static final String MARROWDALE_SUBSYSTEMS = """
            east-door-switches | 3 | 4.29e-8 1/h | PL e
            filler-door-switches | 3 | 4.29e-8 1/h | PL e
            jaw-valve | B | 4.23e-6 1/h | PL b
            """;

    /** A function; required level; sum of the frequencies in 1/h; reached level. */
    private static final String MARROWDALE_FUNCTIONS = """
            stop-by-curtain-pallet | PL d | 148200e-12 | PL d
            stop-by-scanner-chain-place | PL d | 221100e-12 | PL d
            stop-by-door-east | PL d | 184000e-12 | PL d
            stop-by-door-filler | PL c | 4274000e-12 | PL b
            emergency-stop-panel | PL d | 146100e-12 | PL d
            emergency-stop-pendant | PL d | 146100e-12 | PL d
            enabling | PL d | 195100e-12 | PL d
            """;

    /** A part; mean time to dangerous failure in years, cut after four decimals; the last day it may be in use. */
    private static final String STONEWICK_PARTS = """
            contactor-table-1 | 44.2176 | 2029-08-24
            contactor-table-2 | 44.2176 | 2029-08-24
            """;

    /** A subsystem built from parts; category; frequency of dangerous failure; level. */
    private static final String STONEWICK_SUBSYSTEMS = """
            table-contactors | 4 | 6.37e-8 1/h | PL e
            """;

    /** A function; required level; sum of the frequencies in 1/h; reached level. */
    private static final String STONEWICK_FUNCTIONS = """
            stop-by-curtain-unload | PL d | 98200e-12 | PL d
            stop-by-scanner-aisle | PL d | 167800e-12 | PL d
            stop-by-door-service | PL d | 94900e-12 | PL d
            stop-by-curtain-load | PL d | 71100e-12 | PL e
            emergency-stop-load | PL d | 159300e-12 | PL d
            emergency-stop-unload | PL d | 159300e-12 | PL d
            emergency-stop-pendant | PL d | 159300e-12 | PL d
            enabling | PL d | 145100e-12 | PL d
            """;

    /** A part; mean time to dangerous failure in years, cut after four decimals; the last day it may be in use. */
    private static final String FARROWMERE_PARTS = """
            contact-base-a | 10869.5652 | 2045-05-05
            contact-base-b | 10869.5652 | 2045-05-05
            contact-feeder-a | 10869.5652 | 2045-05-05
            contact-feeder-b | 10869.5652 | 2045-05-05
            """;

    /** A subsystem built from parts; category; frequency of dangerous failure; level. */
    private static final String FARROWMERE_SUBSYSTEMS = """
            emergency-base-contacts | 4 | 9.06e-10 1/h | PL e
            emergency-feeder-contacts | 4 | 9.06e-10 1/h | PL e
            """;

    /** A function; required level; sum of the frequencies in 1/h; reached level. */
    private static final String FARROWMERE_FUNCTIONS = """
            stop-by-scanner-aisle | PL d | 183300e-12 | PL d
            stop-by-scanner-rear | PL d | 183300e-12 | PL d
            emergency-stop-base | PL d | 112206e-12 | PL d
            emergency-stop-feeder | PL d | 112206e-12 | PL d
            emergency-stop-pendant | PL d | 115800e-12 | PL d
            enabling | PL d | 165300e-12 | PL d
            """;

    /** A cell and the three tables of it. */
    record Demonstrated(String example, String parts, String subsystems, String functions) {
        /** Each read once: nothing changes a cell. */
        private static final Map<String, Cell> CELLS = new ConcurrentHashMap<>();

        Cell cell() {
            return CELLS.computeIfAbsent(example, Demonstrated::read);
        }

        private static Cell read(String example) {
            return Cell.read(FolderWorld.of(Path.of("..", "examples", example, "src", "main", "cell")), new Findings())
                    .orElseThrow();
        }

        @Override
        public String toString() {
            return example;
        }
    }

    static Stream<Demonstrated> cells() {
        return Stream.of(
                new Demonstrated(
                        "kettlebrook-palletising", KETTLEBROOK_PARTS, KETTLEBROOK_SUBSYSTEMS, KETTLEBROOK_FUNCTIONS),
                new Demonstrated("marrowdale-refit", MARROWDALE_PARTS, MARROWDALE_SUBSYSTEMS, MARROWDALE_FUNCTIONS),
                new Demonstrated("stonewick-tending", STONEWICK_PARTS, STONEWICK_SUBSYSTEMS, STONEWICK_FUNCTIONS),
                new Demonstrated("farrowmere-kitting", FARROWMERE_PARTS, FARROWMERE_SUBSYSTEMS, FARROWMERE_FUNCTIONS));
    }

    private static List<String> rows(String table) {
        return Arrays.stream(table.split("\n")).map(String::strip).toList();
    }

    private static String shown(Derived derived) {
        return derived.rounded().map(Quantity::toString).orElse("-");
    }

    @ParameterizedTest
    @MethodSource("cells")
    void partsFailAndAreReplaced(Demonstrated demonstrated) {
        assertThat(demonstrated.cell().controlSystem().parts().stream().map(DemonstratedFunctionsTest::row))
                .containsExactlyElementsOf(rows(demonstrated.parts));
    }

    private static String row(PartLife part) {
        return part.tag() + " | "
                + part.mttfd()
                        .value()
                        .orElseThrow()
                        .in(Unit.YEAR)
                        .number()
                        .setScale(4, RoundingMode.FLOOR)
                        .toPlainString()
                + " | " + part.replaceBy().orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("cells")
    void subsystemsReachALevel(Demonstrated demonstrated) {
        assertThat(demonstrated.cell().controlSystem().subsystems().stream()
                        .filter(subsystem -> !subsystem.channels().isEmpty())
                        .map(DemonstratedFunctionsTest::row))
                .containsExactlyElementsOf(rows(demonstrated.subsystems));
    }

    private static String row(SubsystemLevel subsystem) {
        return subsystem.tag() + " | "
                + subsystem.subsystem().category().value().orElseThrow().word() + " | " + shown(subsystem.pfh()) + " | "
                + shown(subsystem.level());
    }

    @ParameterizedTest
    @MethodSource("cells")
    void functionsNeedALevelAndReachOne(Demonstrated demonstrated) {
        assertThat(demonstrated.cell().controlSystem().functions().stream().map(DemonstratedFunctionsTest::row))
                .containsExactlyElementsOf(rows(demonstrated.functions));
    }

    private static String row(FunctionLevel function) {
        Quantity sum = function.pfh().value().orElseThrow().in(Unit.PER_HOUR);
        return function.tag() + " | " + shown(function.required()) + " | "
                + sum.number().movePointRight(12).stripTrailingZeros().toPlainString() + "e-12 | "
                + shown(function.reached());
    }
}
