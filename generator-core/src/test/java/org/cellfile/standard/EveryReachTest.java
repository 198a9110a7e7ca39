package org.cellfile.standard;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cellfile.cases.AsWritten;
import org.cellfile.quantity.Quantity;
import org.cellfile.standard.ReachStandard.Opening;
import org.cellfile.trace.Term;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold of every edition of reach, whatever the figures: what lets a limb further in never shortens the reach. */
class EveryReachTest {

    static Stream<ReachStandard> editions() {
        return Editions.ids(ReachStandard.class).stream()
                .map(id -> (ReachStandard) Editions.of(id).orElseThrow());
    }

    private static Term tenths(String symbol, int tenths) {
        return AsWritten.given(symbol, BigDecimal.valueOf(tenths, 1) + " mm");
    }

    /** What has no rule is refused, and that is the worst. */
    private static boolean noShorter(Optional<Quantity> before, Optional<Quantity> after) {
        return after.isEmpty() || (before.isPresent() && after.get().compareTo(before.get()) >= 0);
    }

    /** From slots of a given length to those of none stated, which count as long. */
    static Stream<Arguments> openings() {
        return editions()
                .flatMap(edition -> ReachStandard.SHAPES.stream()
                        .flatMap(shape -> Stream.of(0, 500, 650, 651, 750, 751)
                                .filter(length -> length == 0 || shape.equals("slot"))
                                .map(length -> Arguments.of(edition, shape, length))));
    }

    /** In tenths of a millimetre to beyond the end of every table; a length of 0 is not stated. */
    @ParameterizedTest
    @MethodSource("openings")
    void aWiderOpeningNeverShortensIt(ReachStandard edition, String shape, int length) {
        List<Function<Opening, Optional<Term>>> limbs = List.of(edition::through, edition::throughWithLegs);
        for (Function<Opening, Optional<Term>> limb : limbs) {
            Optional<Quantity> before = Optional.of(Quantity.millimetres("0"));
            for (int size = 1; size <= 2450; size++) {
                Opening opening = new Opening(
                        shape, tenths("e", size), length == 0 ? Optional.empty() : Optional.of(tenths("l", length)));
                Optional<Term> reach = limb.apply(opening);
                if (reach.isEmpty()) {
                    break;
                }
                Optional<Quantity> now = reach.get().value();
                assertThat(noShorter(before, now)).as("%s tenths of a mm", size).isTrue();
                before = now;
            }
        }
    }

    @ParameterizedTest
    @MethodSource("editions")
    void aLongerSlotNeverShortensIt(ReachStandard edition) {
        for (int size = 1; size <= 1810; size += 3) {
            for (List<Integer> lengths :
                    List.of(List.of(500, 650), List.of(650, 651), List.of(750, 751), List.of(751, 0))) {
                assertThat(noShorter(slot(edition, size, lengths.get(0)), slot(edition, size, lengths.get(1))))
                        .as("%s tenths of a mm wide, %s long", size, lengths)
                        .isTrue();
            }
        }
    }

    /** With arms and legs together. */
    private static Optional<Quantity> slot(ReachStandard edition, int size, int length) {
        Opening opening = new Opening(
                "slot", tenths("e", size), length == 0 ? Optional.empty() : Optional.of(tenths("l", length)));
        Optional<Quantity> arms = edition.through(opening).orElseThrow().value();
        return edition.throughWithLegs(opening)
                .map(legs -> legs.value().flatMap(leg -> arms.map(arm -> leg.compareTo(arm) > 0 ? leg : arm)))
                .orElse(arms);
    }

    /** Lowest and highest point of the hazard and height of the structure, in tenths of a millimetre. */
    static Stream<Arguments> structures() {
        Random random = new Random(13857);
        return editions()
                .filter(edition -> over(edition, 0, 0, 20000).isPresent())
                .flatMap(edition -> IntStream.range(0, 200).mapToObj(i -> {
                    int lowest = random.nextInt(28000);
                    return Arguments.of(
                            edition,
                            lowest,
                            lowest + (i % 3 == 0 ? 0 : random.nextInt(12000)),
                            9500 + random.nextInt(18500),
                            1 + random.nextInt(i % 2 == 0 ? 20 : 6000));
                }));
    }

    private static Optional<Term> over(ReachStandard edition, int lowest, int highest, int height) {
        return edition.over(tenths("a_1", lowest), tenths("a_2", highest), tenths("b", height));
    }

    @ParameterizedTest
    @MethodSource("structures")
    void aLowerStructureOrATallerHazardNeverShortensIt(
            ReachStandard edition, int lowest, int highest, int height, int more) {
        Optional<Quantity> before =
                over(edition, lowest, highest, height).orElseThrow().value();
        assertThat(noShorter(
                        before,
                        over(edition, lowest, highest, Math.max(0, height - more))
                                .orElseThrow()
                                .value()))
                .isTrue();
        assertThat(noShorter(
                        before,
                        over(edition, lowest, highest + more, height)
                                .orElseThrow()
                                .value()))
                .isTrue();
        assertThat(noShorter(
                        before,
                        over(edition, Math.max(0, lowest - more), highest, height)
                                .orElseThrow()
                                .value()))
                .isTrue();
    }

    /** The nearer to the hand an arm is held back, the less far it reaches. */
    @ParameterizedTest
    @MethodSource("editions")
    void anArmHeldBackNearerToTheHandReachesLess(ReachStandard edition) {
        List<Quantity> reaches = ReachStandard.SUPPORTS.stream()
                .map(edition::around)
                .flatMap(Optional::stream)
                .map(reach -> reach.value().orElseThrow())
                .toList();
        assertThat(reaches).isSortedAccordingTo(Collections.reverseOrder()).doesNotHaveDuplicates();
    }

    /** What each edition answers; 29 CFR 1910.217 knows hands at openings and nothing else. */
    @Test
    void whichEditionHasARuleForWhat() {
        Opening opening = new Opening("slot", tenths("e", 100), Optional.empty());
        editions().forEach(edition -> {
            boolean presses = edition.id().equals("29 CFR 1910.217");
            assertThat(edition.through(opening)).isPresent();
            assertThat(edition.throughWithLegs(opening).isPresent()).isEqualTo(!presses);
            assertThat(over(edition, 0, 10000, 20000).isPresent()).isEqualTo(!presses);
            for (String support : ReachStandard.SUPPORTS) {
                assertThat(edition.around(support).isPresent()).isEqualTo(!presses);
            }
            for (String shape : ReachStandard.SHAPES) {
                assertThat(edition.widestWithoutBody(shape).isPresent()).isEqualTo(!presses);
            }
        });
    }
}
