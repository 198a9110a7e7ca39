package org.cellfile.subject.verification;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.cellfile.quantity.Interval;
import org.cellfile.subject.safeguard.Kinds;
import org.cellfile.subject.verification.Protocol.Reading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever is tested has a protocol that tells what is done, what has to happen, and who asks for it. */
class ProtocolsTest {

    /** How far it was verified what a source says. */
    private static final String STANDING = ".*(\\(published|published\\)|from memory|common practice).*";

    static List<String> folders() {
        return Stream.of(
                        Kinds.ids().stream().map(kind -> "kinds/" + kind),
                        Kinds.COMPLEMENTARY.stream().map(sort -> "complements/" + sort),
                        Stream.of("robots"))
                .flatMap(each -> each)
                .toList();
    }

    private static Properties structure(String folder) throws IOException {
        Properties structure = new Properties();
        try (Reader reader = new InputStreamReader(
                Objects.requireNonNull(ProtocolsTest.class.getResourceAsStream(
                        "/org/cellfile/templates/" + folder + "/protocol.properties")),
                StandardCharsets.UTF_8)) {
            structure.load(reader);
        }
        return structure;
    }

    @ParameterizedTest
    @MethodSource("folders")
    void eachIsComplete(String folder) {
        Protocol protocol = Protocol.in(folder);

        assertThat(protocol.tests()).anyMatch(Protocol.Test::periodic);
        assertThat(protocol.tests()).extracting(Protocol.Test::id).doesNotHaveDuplicates();
        assertThat(protocol.longestSource()).matches(STANDING);
        for (Protocol.Test test : protocol.tests()) {
            assertThat(test.id()).matches("[a-z]+(-[a-z]+)*");
            assertThat(test.title()).isNotBlank();
            assertThat(test.how("14 mm")).endsWith(".").doesNotContain("{").hasSizeGreaterThan(20);
            assertThat(test.expected()).endsWith(".").hasSizeGreaterThan(10);
            assertThat(test.source()).as(test.id()).matches(STANDING);
            assertThat(test.reading() != Reading.TEST_PIECE || test.how("14 mm").contains("14 mm"))
                    .as("which test piece is used")
                    .isTrue();
        }
    }

    /** A mistyped mark would make a test less than it is. */
    @ParameterizedTest
    @MethodSource("folders")
    void eachMarkIsKnown(String folder) throws IOException {
        Properties structure = structure(folder);
        Set<String> known = new TreeSet<>(Set.of("shift", "starts", "periodic", "every-mode", "alone"));
        for (Reading reading : Reading.values()) {
            known.add("reads-" + reading.word());
        }
        for (String test : List.of(structure.getProperty("tests").split(" "))) {
            assertThat(List.of(structure.getProperty(test).split(" ")))
                    .filteredOn(mark -> !mark.startsWith("if-") && !mark.startsWith("only-"))
                    .isSubsetOf(known);
        }
    }

    /** No test is described and left out of the list, nor is any word of one left over. */
    @ParameterizedTest
    @MethodSource("folders")
    void nothingIsLeftOver(String folder) throws IOException {
        Properties structure = structure(folder);
        Set<String> keys = new TreeSet<>(Set.of("tests", "longest", "longest.source"));
        for (String test : List.of(structure.getProperty("tests").split(" "))) {
            keys.addAll(List.of(test, test + ".source"));
        }
        assertThat(structure.stringPropertyNames()).containsExactlyInAnyOrderElementsOf(keys);
    }

    /**
     * The longest interval, by kind. Yearly and by a competent person: DGUV Information 209-074, section 7.5, table 7 (curtains,
     * doors, mats, two-hand controls, emergency stops, enabling devices); a maker's guidance on the inspection of light curtains and
     * light beams, yearly or every 6 months; instructions of a maker of laser scanners, function and detection capability yearly; a
     * maker's manual of robots, yearly. The others: common practice.
     */
    @ParameterizedTest
    @CsvSource({
        "kinds/light-curtain, 1 year, DGUV Information 209-074",
        "kinds/light-beams, 1 year, a maker's guidance",
        "kinds/laser-scanner, 1 year, makers' instructions",
        "kinds/interlocked-door, 1 year, DGUV Information 209-074",
        "kinds/pressure-sensitive-mat, 1 year, DGUV Information 209-074",
        "kinds/two-hand-control, 1 year, DGUV Information 209-074",
        "kinds/fixed-fence, 1 year, common practice",
        "complements/emergency-stop, 1 year, DGUV Information 209-074",
        "complements/enabling-device, 1 year, DGUV Information 209-074",
        "complements/mode-selector, 1 year, common practice",
        "complements/pendant, 1 year, common practice",
        "complements/reset, 1 year, common practice",
        "robots, 1 year, a maker's manual of robots"
    })
    void theLongestIntervalHasASource(String folder, String longest, String source) {
        Protocol protocol = Protocol.in(folder);

        assertThat(protocol.longest()).isEqualTo(Interval.of(longest).orElseThrow());
        assertThat(protocol.longestSource()).startsWith(source);
    }

    /**
     * Single faults: on a line ready to be handed over the emergency stop stopped everything and the light screen seemed to work;
     * alone it stopped nothing, as two wires were exchanged (an engineer's published account).
     */
    @Test
    void whatStopsIsTestedAloneAndInEachModeInWhichItActs() {
        Map<String, List<String>> alone = new TreeMap<>();
        for (String folder : folders()) {
            alone.put(
                    folder,
                    Protocol.in(folder).tests().stream()
                            .filter(Protocol.Test::alone)
                            .map(Protocol.Test::id)
                            .toList());
        }
        assertThat(alone)
                .containsEntry("kinds/light-curtain", List.of("trip"))
                .containsEntry("kinds/light-beams", List.of("trip"))
                .containsEntry("kinds/laser-scanner", List.of("trip"))
                .containsEntry("kinds/interlocked-door", List.of("trip"))
                .containsEntry("kinds/pressure-sensitive-mat", List.of("trip"))
                .containsEntry("kinds/two-hand-control", List.of("release"))
                .containsEntry("complements/emergency-stop", List.of("stop"))
                .containsEntry("complements/enabling-device", List.of("let-go", "pressed-through"));
        for (String kind : Kinds.ids()) {
            if (Kinds.of(kind).orElseThrow().stopsTheHazard()) {
                assertThat(Protocol.in("kinds/" + kind).tests())
                        .as("the stop by " + kind)
                        .anyMatch(test -> test.alone() && test.everyMode() && test.periodic());
            }
        }
    }
}
