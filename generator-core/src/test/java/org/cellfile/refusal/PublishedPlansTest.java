package org.cellfile.refusal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cellfile.FolderWorld;
import org.cellfile.Generator;
import org.cellfile.cell.Cell;
import org.cellfile.quantity.Quantity;
import org.cellfile.subject.plan.PlanDistance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Published examples of safety distances laid out as plans: a safeguard drawn as far from the hazard zone as the source says is as
 * far away on the plan, and what the source asks for is enough by exactly the uncertainty of the plan. Only what surrounds the
 * example, a round hazard zone and the other safeguards, is constructed.
 */
class PublishedPlansTest {

    /** Radius of the zone of the base cell. */
    private static final int ZONE = 2700;

    /** Of the plan laid out here, in mm. */
    private static final int UNCERTAINTY = 1;

    @TempDir
    private Path folder;

    /**
     * An example.
     *
     * @param source title and page
     * @param machine the stop of the machine in ms
     * @param device the response of the device in ms
     * @param kind as in the cell's files
     * @param keys of the kind
     * @param published the distance in mm
     */
    record Example(String source, String machine, String device, String kind, String keys, int published) {

        /** True for what is stood on: it is drawn as an area whose outer edge is as far away. */
        boolean onTheFloor() {
            return kind.equals("pressure-sensitive-mat");
        }

        @Override
        public String toString() {
            return kind + ", " + published + " mm: " + source;
        }
    }

    static List<Example> published() {
        String curtain = "    lower-edge: 300 mm\n    upper-edge: 2600 mm\n    behind: {gap: 75 mm}\n    resolution: ";
        return List.of(
                // check values A-W1, A-W3, A-W6, A-W11, A-W13
                new Example(
                        "SICK C4000 operating instructions 8009861/WA65, p. 41: T 0.320 s, d 14 mm; Rockwell 450L-UM001D, p. 72, prints the same",
                        "0.290",
                        "30 ms",
                        "light-curtain",
                        curtain + "14 mm",
                        512),
                new Example(
                        "Panasonic SF4-AH instruction manual MJE-SF4A No.0038-55V, p. 38; T 0.111 s, d 30 mm",
                        "0.100",
                        "11 ms",
                        "light-curtain",
                        curtain + "30 mm",
                        350),
                new Example(
                        "DAIDISIKE, minimum distance of light curtains (article): d 14 mm, device 15 ms, machine 150 ms",
                        "0.150",
                        "15 ms",
                        "light-curtain",
                        curtain + "14 mm",
                        330),
                new Example(
                        "Panasonic ST4 instruction manual, p. 17: four beams, unit 25 ms, machine 0.1 s (recalculated)",
                        "0.100",
                        "25 ms",
                        "light-beams",
                        "    behind: {gap: 75 mm}\n    beams: [300 mm, 600 mm, 900 mm, 1200 mm]",
                        1050),
                new Example(
                        "OEM Update, April 2012, pressure mat safety distances: mat with module 70 ms, machine 117.5 ms, on the floor",
                        "0.1175",
                        "70 ms",
                        "pressure-sensitive-mat",
                        "    step: 0 mm\n    width: 1650 mm",
                        1500));
    }

    @ParameterizedTest
    @MethodSource("published")
    void isAsFarAwayOnThePlanAsThePublishedDistance(Example example) throws IOException {
        Cell cell = laidOut(example, example.published());

        assertThat(distance(cell).guarding().separationDistance().rounded())
                .contains(Quantity.millimetres(String.valueOf(example.published())));
        assertThat(distance(cell).distance().rounded())
                .contains(Quantity.millimetres(String.valueOf(example.published())));
        assertThat(tooClose(cell)).as("less its uncertainty it is too little").isTrue();
    }

    @ParameterizedTest
    @MethodSource("published")
    void isEnoughWithTheUncertaintyOfThePlanAdded(Example example) throws IOException {
        assertThat(tooClose(laidOut(example, example.published() + UNCERTAINTY)))
                .isFalse();
    }

    private static PlanDistance distance(Cell cell) {
        return cell.layout().orElseThrow().distances().stream()
                .filter(one -> one.tag().equals("curtain"))
                .findFirst()
                .orElseThrow();
    }

    private static boolean tooClose(Cell cell) {
        return distance(cell).findings().stream().anyMatch(one -> one.id().equals(PlanDistance.TOO_CLOSE));
    }

    /** The base cell whose curtain is the example's safeguard, at that distance from its zone on the plan and by the tape. */
    private Cell laidOut(Example example, int distance) throws IOException {
        BaseCell.withPlan(BaseCell.copyTo(folder));
        stop(example.machine());
        Path safeguards = folder.resolve("safeguards.yaml");
        String text = Files.readString(safeguards);
        int next = text.indexOf("  - tag: scanner");
        Files.writeString(
                safeguards,
                "cellfile: 1\n\nsafeguards:\n" + safeguard(example, distance + UNCERTAINTY) + text.substring(next));
        int y = ZONE + distance;
        BaseCell.change(
                folder,
                "plan.yaml",
                "{of: curtain, line: [[-600, 4000], [600, 4000]]}",
                example.onTheFloor()
                        ? String.format(
                                Locale.ROOT,
                                "{of: curtain, outline: [[-600, 2600], [600, 2600], [600, %d], [-600, %d]]}",
                                y,
                                y)
                        : String.format(Locale.ROOT, "{of: curtain, line: [[-600, %d], [600, %d]]}", y, y));
        BaseCell.change(folder, "plan.yaml", "uncertainty: 5 mm", "uncertainty: " + UNCERTAINTY + " mm");
        BaseCell.change(folder, "plan.yaml", "[-600, 4000]", "[-600, " + y + "]");
        BaseCell.change(folder, "plan.yaml", "[600, 4000]", "[600, " + y + "]");
        // The track of the base cell would stand where the example has nothing.
        String plan = Files.readString(folder.resolve("plan.yaml"));
        Files.writeString(
                folder.resolve("plan.yaml"),
                plan.lines().filter(line -> !line.contains("exit-track")).collect(Collectors.joining("\n", "", "\n")));
        return new Generator().check(FolderWorld.of(folder)).cell().orElseThrow();
    }

    private void stop(String seconds) throws IOException {
        String milliseconds =
                new BigDecimal(seconds).movePointRight(3).stripTrailingZeros().toPlainString();
        Path stops = folder.resolve("stops.yaml");
        Files.writeString(
                stops,
                Files.readString(stops)
                        .replaceAll("\\{time: \\d+ ms, distance", "{time: " + milliseconds + " ms, distance")
                        .replaceAll("stated: \\{highest-time.*\\}", "")
                        .replace("carried-forward: {time: 0.2 s", "carried-forward: {time: " + seconds + " s"));
        Files.writeString(
                folder.resolve("runs").resolve("warm.csv"),
                Stream.concat(
                                Stream.of("run,time [ms],distance [mm]"),
                                IntStream.rangeClosed(1, 10).mapToObj(run -> run + "," + milliseconds + ",84"))
                        .collect(Collectors.joining("\n", "", "\n")));
    }

    private static String safeguard(Example example, int tape) {
        return String.join(
                "\n",
                "  - tag: curtain",
                "    kind: " + example.kind(),
                "    name: the example",
                "    model: none",
                "    serial: none-1",
                "    position: pallet exit",
                "    protects: [zone]",
                "    triggers: protective stop of the robot",
                "    stop-tests: [stop]",
                "    response:",
                "      - {link: device, time: " + example.device() + ", part: device, source: the example}",
                example.keys(),
                "    installed: {distance: " + tape
                        + " mm, uncertainty: 0 mm, from: the safeguard, to: nearest point of"
                        + " zone, by: ilse, on: 2026-10-06, instrument: tape}",
                "");
    }
}
