package org.cellfile.cases;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cellfile.finding.Finding;
import org.cellfile.finding.Findings;
import org.cellfile.quantity.Quantity;
import org.cellfile.standard.Approach;
import org.cellfile.standard.Asked;
import org.cellfile.standard.CopyValues;
import org.cellfile.standard.Edition;
import org.cellfile.standard.Editions;
import org.cellfile.standard.Position;
import org.cellfile.standard.PositioningStandard;
import org.cellfile.standard.PositioningStandard.PerpendicularField;
import org.cellfile.standard.ReachStandard;
import org.cellfile.standard.RobotCellStandard;
import org.cellfile.standard.Timing;
import org.cellfile.subject.safeguard.Device;
import org.cellfile.subject.safeguard.Positioning;
import org.cellfile.subject.safeguard.Surroundings;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Given;
import org.cellfile.trace.Sum;
import org.cellfile.trace.Term;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold of variants of a safeguard whatever the figures, as a cell states them. */
class VariantsTest {

    /** An edition that notes what it is fields and has no answer. */
    private record Listening(List<PerpendicularField> fields) implements PositioningStandard {
        @Override
        public String id() {
            return "listening";
        }

        @Override
        public String title() {
            return "listening";
        }

        @Override
        public Listening reading(CopyValues copy) {
            return this;
        }

        @Override
        public List<Asked> asked() {
            return List.of();
        }

        @Override
        public Optional<Position> perpendicular(PerpendicularField field) {
            fields.add(field);
            return Optional.empty();
        }
    }

    private static Surroundings around(PositioningStandard positioning) {
        return around(positioning, List.of("ISO 13857:2019"));
    }

    private static Surroundings around(PositioningStandard positioning, List<String> reach) {
        Term time = AsWritten.given("T", "0.3 s");
        return new Surroundings(
                positioning,
                new Surroundings.Rules(
                        List.of(positioning),
                        reach.stream()
                                .map(id -> (ReachStandard) Editions.of(id).orElseThrow())
                                .toList(),
                        List.of((RobotCellStandard)
                                Editions.of("ISO 10218-2:2011").orElseThrow())),
                new Approach(
                        "device",
                        new Timing(time, List.of(), List.of(time), Optional.empty()),
                        AsWritten.given("a_1", "0 mm"),
                        AsWritten.given("a_2", "1000 mm"),
                        AsWritten.given("X", "9000 mm")));
    }

    private static Positioning position(String kind, String given) {
        return AsRead.device(kind, given)
                .position(around(
                        (PositioningStandard) Editions.of("ISO 13855:2010").orElseThrow()))
                .orElseThrow();
    }

    private static Quantity value(Positioning positioning, String name) {
        return named(positioning, name).value().orElseThrow();
    }

    private static Derived named(Positioning positioning, String name) {
        return Stream.concat(positioning.others().stream(), Stream.of(positioning.distance()))
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static Positioning fence(List<String> reach, String gap, String more) {
        return AsRead.device(
                        "fixed-fence",
                        "height: 2200 mm, gap-below: " + gap + ", mesh: {shape: square, opening: 4 mm}, fixings: screws"
                                + more)
                .position(around(
                        (PositioningStandard) Editions.of("ISO 13855:2010").orElseThrow(), reach))
                .orElseThrow();
    }

    /** Those that cover all of a fence, alone and together. */
    static Stream<List<String>> reaches() {
        return Stream.of(
                List.of("ISO 13857:2008"),
                List.of("ISO 13857:2019"),
                List.of("29 CFR 1910.217", "ISO 13857:2019"),
                List.of("ISO 13857:2008", "29 CFR 1910.217"));
    }

    /** In tenths of a millimetre up to where a body passes. To be refused because an edition has no rule is the worst. */
    @ParameterizedTest
    @MethodSource("reaches")
    void aWiderGapBelowNeverShortensIt(List<String> reach) {
        Optional<Quantity> before = Optional.of(Quantity.millimetres("0"));
        for (int tenths = 0; tenths <= 1800; tenths++) {
            Optional<Quantity> now = fence(reach, tenths / 10 + "." + tenths % 10 + " mm", "")
                    .distance()
                    .value();
            assertThat(noShorter(before, now))
                    .as("gap of %s tenths of a mm: %s after %s", tenths, now, before)
                    .isTrue();
            before = now;
        }
    }

    private static boolean noShorter(Optional<Quantity> before, Optional<Quantity> after) {
        return after.isEmpty() || (before.isPresent() && after.get().compareTo(before.get()) >= 0);
    }

    /**
     * Through openings wider than an arm one reaches over the lower edge, which legs at least make up for, even where it lies too
     * high to be reached over.
     */
    @ParameterizedTest
    @MethodSource("reaches")
    void aWiderOpeningNeverShortensIt(List<String> reach) {
        for (String shape : List.of("slot", "square", "round")) {
            for (int lowerEdge : List.of(1000, 1800)) {
                Optional<Quantity> before = Optional.of(Quantity.millimetres("0"));
                for (int size = 1; size <= (shape.equals("slot") ? 180 : 240); size++) {
                    Optional<Quantity> now = named(
                                    fence(
                                            reach,
                                            "0 mm",
                                            ", openings: [{name: inlet, shape: " + shape + ", opening: " + size
                                                    + " mm, lower-edge: " + lowerEdge
                                                    + " mm, installed: {distance: 9000 mm, uncertainty: 0 mm, from: edge of the opening, to: nearest point of zone, by: ilse, on: 2026-10-06, instrument: tape}}]"),
                                    "reach-opening-1")
                            .value();
                    assertThat(noShorter(before, now))
                            .as("%s of %s mm at %s mm: %s after %s", shape, size, lowerEdge, now, before)
                            .isTrue();
                    before = now;
                }
            }
        }
    }

    private static Positioning curtain(int resolution, String angle) {
        return position(
                "light-curtain",
                "resolution: " + resolution
                        + " mm, lower-edge: 200 mm, upper-edge: 1800 mm, behind: {gap: 0 mm}, approach:" + " {angle: "
                        + angle + ", height: 200 mm}");
    }

    static IntStream resolutions() {
        return IntStream.rangeClosed(10, 70);
    }

    /**
     * From a right angle to flat the distance against reaching through never shrinks. That against reaching over may: past a
     * low upper edge one reaches up to 1200 mm, and a field approached along its plane has no edge to reach over.
     */
    @ParameterizedTest
    @MethodSource("resolutions")
    void aFlatterApproachNeverShortensTheDistanceAgainstReachingThrough(int resolution) {
        Quantity flat = curtain(resolution, "29 °").distance().value().orElseThrow();
        assertThat(flat).isGreaterThanOrEqualTo(value(curtain(resolution, "30 °"), "distance-through"));
        assertThat(curtain(resolution, "0 °").distance().value()).contains(flat);
        assertThat(curtain(resolution, "90 °").distance().value())
                .isEqualTo(curtain(resolution, "30 °").distance().value());
    }

    @Test
    void anEditionWithoutALimitOfTheAngleHasNoRuleForAnInclinedField() {
        List<PerpendicularField> fields = new ArrayList<>();
        Device inclined = AsRead.device(
                "light-curtain",
                "resolution: 14 mm, lower-edge: 200 mm, upper-edge: 1800 mm, behind: {gap: 0 mm}, approach: {angle: 60 °,"
                        + " height: 200 mm}");
        assertThat(inclined.position(around(new Listening(fields)))).isEmpty();
        assertThat(fields).isEmpty();
    }

    /** H-W4: Pizzato general catalogue 2025-2026, p. 419 (ISO 14119:2024). */
    @ParameterizedTest
    @CsvSource({"1, low", "9, low", "10, medium", "1000, medium", "1001, high"})
    void theNumberOfVariationsMakesTheCoding(int variations, String level) {
        String given = "opening-at-trip: 4 mm, interlock: switch, coding: {type: 4, variations: " + variations;
        assertThat(AsRead.device("interlocked-door", given + "}").facts())
                .anySatisfy(fact -> assertThat(fact.value()).isEqualTo("type 4, without contact, coded " + level));
        for (String stated : List.of("low", "medium", "high")) {
            Findings findings = new Findings();
            AsRead.device("interlocked-door", given + ", level: " + stated + "}", findings);
            assertThat(findings.sorted()).hasSize(stated.equals(level) ? 0 : 1);
        }
    }

    /** H-5: IDEC, ISO 14119 page: 1 and 2 mechanical, 3 and 4 without contact; 1 and 3 uncoded. */
    @ParameterizedTest
    @CsvSource({
        "1, 'type 1, mechanical, uncoded'",
        "2, 'type 2, mechanical, coded low'",
        "3, 'type 3, without contact, uncoded'",
        "4, 'type 4, without contact, coded low'"
    })
    void theTypeSaysHowAnInterlockIsWorkedAndWhetherItIsCoded(String type, String words) {
        assertThat(AsRead.device(
                                "interlocked-door",
                                "opening-at-trip: 4 mm, interlock: switch, coding: {type: " + type + ", variations: 1}")
                        .facts())
                .anySatisfy(fact -> assertThat(fact.value()).isEqualTo(words));
        Findings findings = new Findings();
        AsRead.device(
                "interlocked-door",
                "opening-at-trip: 4 mm, interlock: switch, coding: {type: " + type + ", level: low}",
                findings);
        assertThat(findings.sorted()).hasSize(words.endsWith("uncoded") ? 1 : 0);
    }

    /** A word that nobody knows is no small matter where it was meant to be one that counts. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "light-curtain | resolution: 14 mm, blanking: {effective-resolution: 30 mm, barricaded: no, source: t, COLOUR}, lower-edge: 300 mm, upper-edge: 1800 mm, behind: {gap: 75 mm}",
                "light-curtain | resolution: 14 mm, lower-edge: 300 mm, upper-edge: 1800 mm, behind: {gap: 75 mm, COLOUR}",
                "light-curtain | resolution: 14 mm, lower-edge: 300 mm, upper-edge: 1800 mm, behind: {gap: 75 mm}, approach: {angle: 60 °, height: 300 mm, COLOUR}",
                "laser-scanner | resolution: 70 mm, field-height: 300 mm, supplements: [{name: z, distance: 1 mm, source: t, COLOUR}]",
                "light-beams | beams: [750 mm], behind: {gap: 75 mm, COLOUR}",
                "two-hand-control | type: III C, asynchrony: 0.5 s, shrouded: no, height: 1100 mm, surface: horizontal, operators: 1, stations: 1, clutch: {points: 14, turn: 0.5 s, COLOUR}",
                "interlocked-door | opening-at-trip: 4 mm, interlock: switch, coding: {type: 4, COLOUR}",
                "interlocked-door | opening-at-trip: 4 mm, interlock: switch, guard-locking: {releases: after-time, held: 1 s, source: t, COLOUR}",
                "fixed-fence | height: 2 m, gap-below: 0 mm, mesh: {shape: round, opening: 4 mm, COLOUR}, fixings: screws",
                "fixed-fence | height: 2 m, gap-below: 0 mm, mesh: {shape: round, opening: 4 mm}, fixings: screws, openings: [{name: o, shape: slot, opening: 60 mm, installed: {distance: 1 m, uncertainty: 0 mm, from: edge, to: zone, by: ilse, on: 2026-10-06, instrument: tape}, COLOUR}]",
                "fixed-fence | height: 2 m, gap-below: 0 mm, mesh: {shape: round, opening: 4 mm}, fixings: screws, ends: [{name: e, installed: {distance: 1 m, uncertainty: 0 mm, from: edge, to: zone, by: ilse, on: 2026-10-06, instrument: tape}, support: elbow, COLOUR}]"
            })
    void aWordThatNobodyKnowsIsReportedInEachGroup(String kind, String given) {
        Findings findings = new Findings();
        AsRead.device(kind, given.replace("COLOUR", "colour: red"), findings);
        assertThat(findings.sorted())
                .singleElement()
                .satisfies(finding -> assertThat(finding.id()).hasToString("read.unknown-key"));
    }

    /** Blanked beams can leave the resolution as it is, for instance at the end of the field, but make it no finer. */
    @ParameterizedTest
    @CsvSource({"13.9 mm, 1", "14 mm, 0", "14.1 mm, 0"})
    void blankedBeamsMakeNoFieldFiner(String effective, int found) {
        Findings findings = new Findings();
        AsRead.device(
                "light-curtain",
                "resolution: 14 mm, blanking: {effective-resolution: " + effective
                        + ", barricaded: no, source: t}, lower-edge: 300 mm, upper-edge: 1800 mm, behind: {gap: 0 mm}",
                findings);
        assertThat(findings.sorted()).hasSize(found);
    }

    /** 29 CFR 1910.217 alone bounds no opening by the body; how far one reaches is asked all the same. */
    @Test
    void anOpeningUnderAnEditionWithoutALimitForTheBody() {
        Positioning fence = fence(
                List.of("29 CFR 1910.217"),
                "0 mm",
                ", openings: [{name: inlet, shape: slot, opening: 20 mm, installed: {distance: 9000 mm, uncertainty: 0 mm, from: edge, to: zone,"
                        + " by: ilse, on: 2026-10-06, instrument: tape}}]");

        assertThat(fence.others())
                .extracting(Derived::name)
                .contains("reach-opening-1")
                .doesNotContain("widest-opening-1");
        assertThat(fence.requirements())
                .extracting(claim -> claim.id().toString())
                .contains("installed.opening-too-close");
    }

    /** Beams are numbered from the lowest. */
    @Test
    void theEditionIsAskedForBeamsByTheirNumbers() {
        List<String> asked = new ArrayList<>();
        PositioningStandard listening = new PositioningStandard() {
            @Override
            public String id() {
                return "listening";
            }

            @Override
            public String title() {
                return "listening";
            }

            @Override
            public Edition reading(CopyValues copy) {
                return this;
            }

            @Override
            public List<Asked> asked() {
                return List.of();
            }

            @Override
            public Optional<Position> beams(Beams beams) {
                beams.heights()
                        .forEach(height -> asked.add(height.symbols() + ", " + ((Given) height).name() + ": "
                                + height.value().orElseThrow()));
                return Optional.empty();
            }
        };
        AsRead.device("light-beams", "beams: [400 mm, 900 mm], behind: {gap: 0 mm}")
                .position(around(listening));

        assertThat(asked).containsExactly("h_1, height of beam 1: 400 mm", "h_2, height of beam 2: 900 mm");
    }

    /** Links of the scanner count together: 50 ms and 31 ms are more than SICK S300, p. 43, lets be set (80 ms). */
    @Test
    void allLinksOfAScannerCountForABodyThatPasses() {
        Term scanner = AsWritten.given("t_1a", "50 ms");
        Term control = AsWritten.given("t_1b", "31 ms");
        Term stop = AsWritten.given("t_2", "0.3 s");
        Surroundings around =
                around((PositioningStandard) Editions.of("ISO 13855:2010").orElseThrow());
        Approach approach = around.approach();
        Positioning upright = AsRead.device(
                        "laser-scanner",
                        "field: vertical, resolution: 70 mm, lower-edge: 300 mm, upper-edge: 1800 mm, behind: {gap: 75 mm},"
                                + " supplements: [{name: tolerance, distance: 100 mm, source: instructions}]")
                .position(new Surroundings(
                        around.positioning(),
                        around.rules(),
                        new Approach(
                                approach.tag(),
                                new Timing(
                                        Sum.of(scanner, control, stop),
                                        List.of(scanner, control),
                                        List.of(stop),
                                        Optional.empty()),
                                approach.zoneLowest(),
                                approach.zoneHighest(),
                                approach.installed())))
                .orElseThrow();

        assertThat(upright.requirements().stream()
                        .flatMap(claim -> claim.finding().stream())
                        .map(Finding::sentence))
                .singleElement()
                .asString()
                .contains("is 0.081 s", "of 0.080 s");
    }

    /** Edges at the same height leave no field. */
    @ParameterizedTest
    @CsvSource({"300 mm, 299.9 mm, 1", "300 mm, 300 mm, 1", "300 mm, 300.1 mm, 0"})
    void aFieldHasAnUpperEdgeAboveItsLowerOne(String lower, String upper, int found) {
        Findings findings = new Findings();
        AsRead.device(
                "light-curtain",
                "resolution: 14 mm, lower-edge: " + lower + ", upper-edge: " + upper + ", behind: {gap: 0 mm}",
                findings);
        assertThat(findings.sorted()).hasSize(found);
    }

    @Test
    void theEditionLearnsWhetherTheMachineStartsWhenTheFieldIsLeft() {
        String given = "resolution: 14 mm, lower-edge: 200 mm, upper-edge: 1800 mm, behind: {gap: 0 mm}";
        assertThat(startsCycle(given)).isFalse();
        assertThat(startsCycle(given + ", initiates-cycle: no")).isFalse();
        assertThat(startsCycle(given + ", initiates-cycle: yes")).isTrue();
    }

    private static boolean startsCycle(String given) {
        List<PerpendicularField> fields = new ArrayList<>();
        assertThat(AsRead.device("light-curtain", given).position(around(new Listening(fields))))
                .isEmpty();
        return fields.get(0).startsCycle();
    }
}
