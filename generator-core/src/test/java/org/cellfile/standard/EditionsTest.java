package org.cellfile.standard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class EditionsTest {

    @Test
    void everyEditionIsFoundSortedAndHasATitle() {
        assertThat(Editions.ids())
                .isSorted()
                .contains("ISO 10218-1:2011", "ISO 10218-2:2011", "ISO 13855:2010", "ISO 13857:2008", "ISO 13857:2019");
        for (String id : Editions.ids()) {
            assertThat(Editions.of(id).orElseThrow().id()).isEqualTo(id);
            assertThat(Editions.of(id).orElseThrow().title()).isNotBlank();
        }
        assertThat(Editions.of("ISO 13855")).isEmpty();
    }

    @Test
    void editionsOfASubject() {
        assertThat(Editions.ids(ReachStandard.class))
                .containsExactly("29 CFR 1910.217", "ISO 13857:2008", "ISO 13857:2019");
        assertThat(Editions.ids(RobotStandard.class))
                .containsExactly("ANSI R15.06:2012", "ISO 10218-1:2011", "ISO 10218-1:2025");
    }

    /** A speed of zero was misread; that nothing is reached below zero is zero; of what is not known here nothing can be said. */
    @Test
    void whatCannotBeZeroInACopy() {
        List<Asked> asked =
                new ArrayList<>(Editions.of("ISO 13855:2010").orElseThrow().asked());
        asked.addAll(Editions.of("ISO 13855:2024").orElseThrow().asked());

        assertThat(aboveZero(asked, "iso-13855-2024.approach-speed-walking")).isTrue();
        assertThat(aboveZero(asked, "iso-13855-2024.no-negative-reach")).isFalse();
        assertThat(aboveZero(asked, "iso-13855-2024.reach-under")).isFalse();
    }

    private static boolean aboveZero(List<Asked> asked, String id) {
        return asked.stream()
                .filter(one -> one.reference().id().equals(id))
                .findFirst()
                .orElseThrow()
                .aboveZero();
    }

    /** An edition named for comparison is in force for nothing, and one named for a safeguard for no other. */
    @Test
    void whatIsInForceForWhom() {
        Edition of2010 = Editions.of("ISO 13855:2010").orElseThrow();
        Edition of2024 = Editions.of("ISO 13855:2024").orElseThrow();
        Edition b11 = Editions.of("ANSI B11.19:2019").orElseThrow();
        Standards standards = new Standards(List.of(
                new Standards.Named(of2010, true, List.of()),
                new Standards.Named(of2024, false, List.of()),
                new Standards.Named(b11, true, List.of("curtain"))));

        assertThat(standards.compared()).containsExactly(of2024);
        assertThat(standards.inForce(PositioningStandard.class))
                .containsExactly((PositioningStandard) of2010, (PositioningStandard) b11);
        assertThat(standards.inForce(PositioningStandard.class, "curtain")).containsExactly((PositioningStandard) b11);
        assertThat(standards.inForce(PositioningStandard.class, "door")).containsExactly((PositioningStandard) of2010);
        assertThat(standards.stopMeasurement().orElseThrow().leastRuns().quantity())
                .hasToString("10");
    }

    /**
     * What is fixed outside the formulas. Sources: OSHA Technical Manual, section IV chapter 4, at second hand (250 mm/s);
     * robot-safety.net, material entry and exit (1400 mm, 180 mm); the runs of a stop test from memory.
     */
    @Test
    void fixedValues() {
        Standards standards = Standards.of(List.of(
                Editions.of("ISO 10218-1:2011").orElseThrow(),
                Editions.of("ISO 10218-2:2011").orElseThrow(),
                Editions.of("ISO 13855:2010").orElseThrow()));
        PositioningStandard positioning =
                standards.inForce(PositioningStandard.class).get(0);
        assertThat(standards
                        .inForce(RobotStandard.class)
                        .get(0)
                        .manualReducedSpeed()
                        .quantity())
                .hasToString("250 mm/s");
        assertThat(standards
                        .inForce(RobotCellStandard.class)
                        .get(0)
                        .leastFenceHeight()
                        .quantity())
                .hasToString("1400 mm");
        assertThat(standards
                        .inForce(RobotCellStandard.class)
                        .get(0)
                        .widestGapBelow()
                        .quantity())
                .hasToString("180 mm");
        assertThat(positioning.stopMeasurement().orElseThrow().leastRuns().quantity())
                .hasToString("10");
        assertThat(positioning
                        .stopMeasurement()
                        .orElseThrow()
                        .leastRuns()
                        .reference()
                        .fromMemory())
                .isTrue();
        assertThat(positioning.stopMeasurement().orElseThrow().deviations().quantity())
                .hasToString("3");
        assertThat(standards.inForce(ReachStandard.class)).isEmpty();
    }
}
