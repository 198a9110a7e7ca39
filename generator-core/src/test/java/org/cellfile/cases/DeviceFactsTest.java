package org.cellfile.cases;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.subject.safeguard.Device;
import org.cellfile.subject.safeguard.Kinds;
import org.cellfile.trace.Derived;
import org.junit.jupiter.api.Test;

/**
 * What a reader of the printed file is told about each kind of safeguard, and the figures its drawing is made from. All of it is as
 * stated; figures constructed.
 */
class DeviceFactsTest {

    private static final String FIELD = "lower-edge: 300 mm, upper-edge: 1.8 m, behind: {gap: 75 mm}";

    /** Label, value and remark, a line each. */
    private static List<String> facts(Device device) {
        return device.facts().stream()
                .map(fact -> fact.label() + ": " + fact.value()
                        + (fact.remark().isEmpty() ? "" : " (" + fact.remark() + ")"))
                .toList();
    }

    private static Map<String, String> drawing(Device device) {
        Map<String, String> figures = new TreeMap<>();
        device.drawing()
                .forEach((name, figure) -> figures.put(
                        name,
                        figure instanceof BigDecimal number
                                ? number.stripTrailingZeros().toPlainString()
                                : figure.toString()));
        return figures;
    }

    @Test
    void aLightCurtain() {
        Device curtain = AsRead.device("light-curtain", "resolution: 14 mm, " + FIELD);

        assertThat(facts(curtain))
                .containsExactly(
                        "Resolution: 14 mm",
                        "Field: from 300 mm to 1.8 m above the floor",
                        "Gap behind: 75 mm between field and machine");
        assertThat(drawing(curtain)).isEqualTo(Map.of("lowerEdge", "300", "upperEdge", "1800"));
    }

    @Test
    void aLightCurtainWithAllThatMayBeStatedOfOne() {
        Device curtain = AsRead.device(
                "light-curtain",
                "resolution: 14 mm, blanking: {effective-resolution: 30 mm, barricaded: no, source: table 3}, lower-edge: 300 mm,"
                        + " upper-edge: 1800 mm, space-below: bed of the conveyor, behind: {gap: 400 mm, measure: second"
                        + " field}, approach: {angle: 60 °, height: 300 mm}, initiates-cycle: yes");

        assertThat(facts(curtain))
                .containsExactly(
                        "Resolution: 14 mm",
                        "Blanking: effective resolution 30 mm (the effective resolution counts; table 3)",
                        "Field: from 300 mm to 1800 mm above the floor",
                        "Space below: closed: bed of the conveyor",
                        "Gap behind: 400 mm between field and machine (against standing there: second field)",
                        "Approach: at 60 ° to the field (the side furthest from the hazard is 300 mm above the floor)",
                        "Start: the machine starts as soon as the field is left");
        assertThat(drawing(curtain))
                .isEqualTo(Map.of("lowerEdge", "300", "upperEdge", "1800", "angle", "60", "farHeight", "300"));
    }

    @Test
    void aBarricadedBlankedGapLeavesTheResolutionOfTheDevice() {
        Device curtain = AsRead.device(
                "light-curtain",
                "resolution: 14 mm, blanking: {effective-resolution: 30 mm, barricaded: yes, source: table 3}, "
                        + FIELD);

        assertThat(facts(curtain))
                .contains(
                        "Blanking: effective resolution 30 mm, blanked gap barricaded (the device's own resolution counts;"
                                + " table 3)");
    }

    @Test
    void laserScanners() {
        Device level = AsRead.device(
                "laser-scanner",
                "resolution: 70 mm, field-height: 30 cm, supplements: [{name: measuring error, distance: 100 mm, source:"
                        + " manual}]");
        Device upright = AsRead.device(
                "laser-scanner",
                "field: vertical, resolution: 70 mm, " + FIELD
                        + ", supplements: [{name: measuring error, distance: 100 mm, source: manual}]");

        assertThat(facts(level))
                .containsExactly(
                        "Resolution: 70 mm",
                        "Height of the field: 30 cm above the floor",
                        "Supplement: 100 mm, measuring error (manual)");
        assertThat(drawing(level)).isEqualTo(Map.of("fieldHeight", "300"));
        assertThat(facts(upright))
                .containsExactly(
                        "Resolution: 70 mm",
                        "Field: from 300 mm to 1.8 m above the floor",
                        "Gap behind: 75 mm between field and machine",
                        "Supplement: 100 mm, measuring error (manual)");
        assertThat(drawing(upright)).isEqualTo(Map.of("lowerEdge", "300", "upperEdge", "1800"));
    }

    @Test
    void separateBeams() {
        Device beams = AsRead.device("light-beams", "beams: [40 cm, 900 mm], behind: {gap: 75 mm}");

        assertThat(facts(beams))
                .containsExactly(
                        "Beams: 40 cm, 900 mm (above the floor)", "Gap behind: 75 mm between field and machine");
        assertThat(drawing(beams)).isEqualTo(Map.of("beam1", "400", "beam2", "900"));
    }

    @Test
    void aMat() {
        Device mat = AsRead.device("pressure-sensitive-mat", "step: 150 mm, width: 1 m");

        assertThat(facts(mat))
                .containsExactly(
                        "Width: 1 m (in the direction of approach)",
                        "Step: 150 mm (height of what the mat lies on above the floor people come from)");
        assertThat(drawing(mat)).isEqualTo(Map.of("step", "150", "width", "1000"));
    }

    @Test
    void twoHandControls() {
        Device shrouded = AsRead.device(
                "two-hand-control",
                "type: III C, asynchrony: 0.5 s, shrouded: yes, shroud: cowl, height: 1100 mm, surface: horizontal, operators: 1,"
                        + " stations: 2");
        Device trip = AsRead.device(
                "two-hand-control",
                "type: III A, asynchrony: 0.3 s, shrouded: no, height: 900 mm, surface: inclined, operators: 2, stations: 2, clutch:"
                        + " {points: 14, turn: 0.5 s}");

        assertThat(facts(shrouded))
                .containsExactly(
                        "Type: III C (as type II, and begins only when both actuators are worked nearly together)",
                        "Asynchrony: 0.5 s (longest time between both actuators that it accepts)",
                        "Shrouded: yes (cowl)",
                        "Actuators: 1100 mm above the floor (in a surface that is horizontal)",
                        "Stations: 2 (operators in reach of the hazard: 1)");
        assertThat(drawing(shrouded)).isEqualTo(Map.of("actuators", "1100", "shrouded", "true"));
        assertThat(facts(trip))
                .contains("Clutch: turn of 0.5 s (engages at 14 points of a turn and cannot stop within it)");
        assertThat(drawing(trip)).isEqualTo(Map.of("actuators", "900"));
    }

    @Test
    void aFence() {
        Device fence = AsRead.device(
                "fixed-fence",
                "height: 2.2 m, gap-below: 10 mm, mesh: {shape: slot, opening: 20 mm, length: 100 mm}, fixings: captive screws,"
                        + " openings: [{name: inlet, shape: slot, opening: 60 mm, installed: {distance: 855 mm, uncertainty: 5 mm, from: edge,"
                        + " to: zone, by: ilse, on: 2026-10-06, instrument: tape}}, {name:"
                        + " outlet, shape: square, opening: 400 mm, guarded-by: curtain}], ends: [{name: end at the wall,"
                        + " installed: {distance: 850 mm, uncertainty: 0 mm, from: post, to: zone, by: ilse, on: 2026-10-06,"
                        + " instrument: tape}, support: shoulder}]");

        assertThat(facts(fence))
                .containsExactly(
                        "Height: 2.2 m",
                        "Gap below: 10 mm",
                        "Openings of the mesh: slot, 20 mm by 100 mm",
                        "Fixings: captive screws",
                        "Opening: inlet: slot, 60 mm",
                        "Opening: outlet: square, 400 mm (covered by curtain)",
                        "End: end at the wall (the arm is held back up to the shoulder)");
        assertThat(fence.leftOpen())
                .extracting(open -> open.guardedBy().value().orElse("nothing"))
                .contains("curtain");
        assertThat(drawing(fence)).isEqualTo(Map.of("height", "2200", "gapBelow", "10"));
    }

    @Test
    void doors() {
        Device timed = AsRead.device(
                "interlocked-door",
                "opening-at-trip: 12 mm, interlock: coded switch, coding: {type: 4, variations: 1001, level: high}, guard-locking:"
                        + " {releases: after-time, held: 0.5 s, source: data sheet}");
        Device waiting = AsRead.device(
                "interlocked-door",
                "opening-at-trip: 12 mm, interlock: coded switch, coding: {type: 3}, guard-locking: {releases: at-standstill,"
                        + " watched-by: two speed sensors, source: data sheet}");
        Device bare = AsRead.device("interlocked-door", "opening-at-trip: 12 mm, interlock: coded switch");

        assertThat(facts(timed))
                .containsExactly(
                        "Interlock: coded switch",
                        "Opening when it trips: 12 mm (slot between door and frame)",
                        "Coding: type 4, without contact, coded high (1001 variations)",
                        "Guard locking: releases after 0.5 s (data sheet)");
        assertThat(facts(waiting))
                .contains(
                        "Coding: type 3, without contact, uncoded",
                        "Guard locking: releases at standstill (watched by two speed sensors; data sheet)");
        assertThat(drawing(bare)).isEqualTo(Map.of("opening", "12"));
        Derived distance = new Derived(
                "door",
                "separation-distance",
                "separation distance",
                "S",
                "constructed",
                AsWritten.given("S", "600 mm"),
                Rounding.up(Quantity.millimetres("1")));
        assertThat(timed.whenTooClose(distance)).contains("have the lock keep it closed until standstill");
        assertThat(bare.whenTooClose(distance)).contains("fit a lock that keeps it closed");
    }

    /** Only a door has to be closed again by hand, only a fence stops nothing, and only a two-hand control leaves others unguarded. */
    @Test
    void whatIsSaidOfEachKind() {
        for (String id : Kinds.ids()) {
            assertThat(Kinds.of(id).orElseThrow().closedByHand()).as(id).isEqualTo(id.equals("interlocked-door"));
            assertThat(Kinds.of(id).orElseThrow().stopsTheHazard()).as(id).isEqualTo(!id.equals("fixed-fence"));
            assertThat(Kinds.of(id).orElseThrow().protectsOnlyItsUser())
                    .as(id)
                    .isEqualTo(id.equals("two-hand-control"));
        }
    }
}
