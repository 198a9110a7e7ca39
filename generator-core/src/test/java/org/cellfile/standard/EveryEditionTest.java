package org.cellfile.standard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cellfile.standard.EveryEditionTest.Figure.BEAMS;
import static org.cellfile.standard.EveryEditionTest.Figure.DEVICE;
import static org.cellfile.standard.EveryEditionTest.Figure.EDGE;
import static org.cellfile.standard.EveryEditionTest.Figure.FIELD_HEIGHT;
import static org.cellfile.standard.EveryEditionTest.Figure.HELD;
import static org.cellfile.standard.EveryEditionTest.Figure.HIGHEST;
import static org.cellfile.standard.EveryEditionTest.Figure.INSTALLED;
import static org.cellfile.standard.EveryEditionTest.Figure.LET_PASS;
import static org.cellfile.standard.EveryEditionTest.Figure.LOWEST;
import static org.cellfile.standard.EveryEditionTest.Figure.MACHINE;
import static org.cellfile.standard.EveryEditionTest.Figure.OPENING;
import static org.cellfile.standard.EveryEditionTest.Figure.POINTS;
import static org.cellfile.standard.EveryEditionTest.Figure.RESOLUTION;
import static org.cellfile.standard.EveryEditionTest.Figure.STEP;
import static org.cellfile.standard.EveryEditionTest.Figure.SUPPLEMENT;
import static org.cellfile.standard.EveryEditionTest.Figure.TURN;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.cellfile.cases.AsWritten;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Unit;
import org.cellfile.standard.CopyValues.Read;
import org.cellfile.standard.PositioningStandard.Beams;
import org.cellfile.standard.PositioningStandard.Clutch;
import org.cellfile.standard.PositioningStandard.InterlockedGuard;
import org.cellfile.standard.PositioningStandard.Mat;
import org.cellfile.standard.PositioningStandard.ParallelField;
import org.cellfile.standard.PositioningStandard.PerpendicularField;
import org.cellfile.standard.PositioningStandard.TwoHandControl;
import org.cellfile.trace.Count;
import org.cellfile.trace.Term;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What must hold of every positioning edition, every way of approach and every edition of reach behind it, whatever the figures: a
 * worse figure never shortens the distance, and the longest time fits the installed distance. The figures are drawn at random from
 * a fixed seed.
 */
class EveryEditionTest {

    private static final int ROUNDS = 60;
    private static final String COPY = "ISO 13855:2024 with values from a copy";
    private static final List<List<Integer>> HEIGHTS =
            List.of(List.of(750), List.of(400, 900), List.of(300, 700, 1100), List.of(300, 600, 900, 1200));

    /** A figure of a situation: which way it gets worse, and what it is not less than. */
    enum Figure {
        /** Times in tenths of a millisecond. */
        DEVICE(1, 0),
        MACHINE(1, 1),
        /** What a brake monitor lets pass, so that its setting moves with the stop; below zero where there is none. */
        LET_PASS(1, -1),
        HELD(-1, 0),
        TURN(1, 1),
        /** Engaging points of a clutch. */
        POINTS(-1, 1),
        /** Lengths in tenths of a millimetre. */
        RESOLUTION(1, 1),
        EDGE(-1, 0),
        LOWEST(-1, 0),
        HIGHEST(1, 0),
        FIELD_HEIGHT(-1, 0),
        STEP(-1, 0),
        SUPPLEMENT(1, 0),
        OPENING(1, 1),
        INSTALLED(0, 0),
        /** How many. */
        BEAMS(0, 1);

        private final int worse;
        private final int least;

        Figure(int worse, int least) {
            this.worse = worse;
            this.least = least;
        }
    }

    /** Everything a position depends on. */
    record Situation(Map<Figure, Integer> figures) {

        int of(Figure figure) {
            return Objects.requireNonNull(figures.get(figure));
        }

        Situation with(Figure figure, int number) {
            Map<Figure, Integer> changed = new EnumMap<>(figures);
            changed.put(figure, number);
            return new Situation(changed);
        }

        /** Worse by so many tenths, as far as the figure goes. Without a monitor there is nothing it lets pass. */
        Situation worse(Figure figure, int more) {
            if (figure == LET_PASS && of(LET_PASS) < 0) {
                return this;
            }
            Situation changed = with(figure, Math.max(figure.least, of(figure) + figure.worse * more));
            return figure == LOWEST || figure == HIGHEST || changed.of(LOWEST) <= changed.of(HIGHEST) ? changed : this;
        }

        /** Taking that long in all: the device as much of it as it needs, the machine the rest. */
        Situation lasting(Quantity time) {
            int all = time.coherent().movePointRight(4).intValueExact();
            int device = Math.min(of(DEVICE), all);
            return with(DEVICE, device).with(MACHINE, all - device);
        }

        Term length(String symbol, Figure figure) {
            return AsWritten.given(symbol, BigDecimal.valueOf(of(figure), 1) + " mm");
        }

        private Term time(String symbol, int tenths) {
            return AsWritten.given(symbol, BigDecimal.valueOf(tenths, 1) + " ms");
        }

        Term time(String symbol, Figure figure) {
            return time(symbol, of(figure));
        }

        Approach approach() {
            return new Approach(
                    "it",
                    new Timing(
                            time("T", of(DEVICE) + of(MACHINE)),
                            of(DEVICE) == 0 ? List.of() : List.of(time("t_1", DEVICE)),
                            List.of(time("t_2", MACHINE)),
                            of(LET_PASS) < 0 ? Optional.empty() : Optional.of(time("T_a", of(MACHINE) + of(LET_PASS)))),
                    length("a_1", LOWEST),
                    length("a_2", HIGHEST),
                    length("X", INSTALLED));
        }

        List<Term> supplements() {
            return of(SUPPLEMENT) == 0 ? List.of() : List.of(length("Z", SUPPLEMENT));
        }

        Quantity installed() {
            return Quantity.millimetres(BigDecimal.valueOf(of(INSTALLED), 1).toString());
        }
    }

    /** How people come, and past what. */
    enum Way {
        ACROSS {
            @Override
            Optional<Position> position(PositioningStandard edition, ReachStandard reach, Situation one) {
                return edition.perpendicular(field(one, false));
            }
        },
        ACROSS_AND_STARTING {
            @Override
            Optional<Position> position(PositioningStandard edition, ReachStandard reach, Situation one) {
                return edition.perpendicular(field(one, true));
            }
        },
        ALONG {
            @Override
            Optional<Position> position(PositioningStandard edition, ReachStandard reach, Situation one) {
                return edition.parallel(new ParallelField(
                        one.approach(), one.length("d", RESOLUTION), one.length("H", FIELD_HEIGHT), one.supplements()));
            }
        },
        BETWEEN_BEAMS {
            @Override
            Optional<Position> position(PositioningStandard edition, ReachStandard reach, Situation one) {
                List<Term> heights = HEIGHTS.get(one.of(BEAMS) - 1).stream()
                        .<Term>map(height -> AsWritten.given("h", height + " mm"))
                        .toList();
                return edition.beams(new Beams(one.approach(), heights));
            }
        },
        OVER_A_MAT {
            @Override
            Optional<Position> position(PositioningStandard edition, ReachStandard reach, Situation one) {
                return edition.mat(new Mat(one.approach(), one.length("H", STEP)));
            }
        },
        TWO_HANDS {
            @Override
            Optional<Position> position(PositioningStandard edition, ReachStandard reach, Situation one) {
                return edition.twoHandControl(new TwoHandControl(one.approach(), false, Optional.empty()));
            }
        },
        TWO_HANDS_SHROUDED {
            @Override
            Optional<Position> position(PositioningStandard edition, ReachStandard reach, Situation one) {
                return edition.twoHandControl(new TwoHandControl(one.approach(), true, Optional.empty()));
            }
        },
        TWO_HANDS_WITH_A_CLUTCH {
            @Override
            Optional<Position> position(PositioningStandard edition, ReachStandard reach, Situation one) {
                return edition.twoHandControl(new TwoHandControl(
                        one.approach(),
                        false,
                        Optional.of(new Clutch(new Count(Quantity.count(one.of(POINTS))), one.time("t_u", TURN)))));
            }
        },
        THROUGH_A_DOOR {
            @Override
            Optional<Position> position(PositioningStandard edition, ReachStandard reach, Situation one) {
                return edition.interlockedGuard(
                        new InterlockedGuard(one.approach(), opening(reach, one), Optional.empty()));
            }
        },
        THROUGH_A_LOCKED_DOOR {
            @Override
            Optional<Position> position(PositioningStandard edition, ReachStandard reach, Situation one) {
                return edition.interlockedGuard(
                        new InterlockedGuard(one.approach(), opening(reach, one), Optional.of(one.time("t_h", HELD))));
            }
        };

        abstract Optional<Position> position(PositioningStandard edition, ReachStandard reach, Situation one);

        private static PerpendicularField field(Situation one, boolean startsCycle) {
            return new PerpendicularField(
                    one.approach(),
                    one.length("d", RESOLUTION),
                    AsWritten.given("e", "300 mm"),
                    one.length("b", EDGE),
                    one.supplements(),
                    startsCycle);
        }

        private static Term opening(ReachStandard reach, Situation one) {
            return reach.through(new ReachStandard.Opening("slot", one.length("e", OPENING), Optional.empty()))
                    .orElseThrow();
        }
    }

    /** An edition that has a rule for a way of approach, and the edition of reach behind it. */
    record Rule(String name, PositioningStandard edition, Way way, ReachStandard reach) {

        Position position(Situation one) {
            return way.position(edition, reach, one).orElseThrow();
        }

        Optional<Quantity> distance(Situation one) {
            return position(one).distance().value();
        }

        /** True when it may stand there; a distance that is not known is never enough. */
        boolean enough(Situation one) {
            Position position = position(one);
            return position.distance()
                    .value()
                    .map(distance -> one.installed().compareTo(distance))
                    .map(apart -> position.strict() ? apart > 0 : apart >= 0)
                    .orElse(false);
        }

        @Override
        public String toString() {
            return name + " " + way + (way.name().endsWith("DOOR") ? " by " + reach.id() : "");
        }
    }

    private static Map<String, PositioningStandard> editions() {
        Map<String, PositioningStandard> editions = new TreeMap<>();
        for (String id : Editions.ids(PositioningStandard.class)) {
            editions.put(id, (PositioningStandard) Editions.of(id).orElseThrow());
        }
        editions.put(
                COPY,
                new Iso13855Ed2024()
                        .reading(new CopyValues(List.of(
                                read("reach-through", "90"), read("reach-over", "300"), read("reach-under", "60")))));
        return editions;
    }

    /** The figures are constructed: nobody read them anywhere. */
    private static Read read(String value, String is) {
        return new Read(
                "iso-13855-2024." + value,
                new CopyKey.OfSafeguard("it"),
                Quantity.millimetres(is),
                "cl. 6",
                "I. Lorne",
                "2026-10-02",
                "a licensed copy",
                "standards.yaml:9:5");
    }

    static Stream<Rule> rules() {
        Situation any = situations().get(0);
        List<ReachStandard> reaches = Editions.ids(ReachStandard.class).stream()
                .map(id -> (ReachStandard) Editions.of(id).orElseThrow())
                .toList();
        List<Rule> rules = new ArrayList<>();
        editions().forEach((name, edition) -> {
            for (Way way : Way.values()) {
                for (ReachStandard reach : way.name().endsWith("DOOR") ? reaches : reaches.subList(0, 1)) {
                    if (way.position(edition, reach, any).isPresent()) {
                        rules.add(new Rule(name, edition, way, reach));
                    }
                }
            }
        });
        return rules.stream();
    }

    /** Half of the times and distances are small, so that the limits at 100 mm and 500 mm are met often. */
    private static List<Situation> situations() {
        Random random = new Random(13855);
        List<Situation> situations = new ArrayList<>();
        for (int i = 0; i < ROUNDS; i++) {
            boolean near = i % 2 == 0;
            Map<Figure, Integer> figures = new EnumMap<>(Figure.class);
            figures.put(DEVICE, i % 3 == 0 ? 0 : random.nextInt(800));
            figures.put(MACHINE, 1 + random.nextInt(near ? 2500 : 15000));
            figures.put(LET_PASS, i % 4 < 2 ? -1 : random.nextInt(600));
            figures.put(HELD, random.nextInt(near ? 3000 : 15000));
            figures.put(TURN, 1 + random.nextInt(9000));
            figures.put(POINTS, 1 + random.nextInt(20));
            figures.put(RESOLUTION, 60 + random.nextInt(i % 5 == 0 ? 1200 : 640));
            figures.put(EDGE, i % 7 == 0 ? random.nextInt(9000) : 9000 + random.nextInt(18000));
            figures.put(LOWEST, random.nextInt(20000));
            figures.put(HIGHEST, figures.get(LOWEST) + random.nextInt(10000));
            figures.put(FIELD_HEIGHT, random.nextInt(10001));
            figures.put(STEP, random.nextInt(10001));
            figures.put(SUPPLEMENT, random.nextInt(3) * 1000);
            figures.put(OPENING, 1 + random.nextInt(near ? 500 : 1300));
            figures.put(INSTALLED, 500 + random.nextInt(near ? 6000 : 40000));
            figures.put(BEAMS, 1 + random.nextInt(4));
            situations.add(new Situation(figures));
        }
        return situations;
    }

    /** Which edition answers for which way; for the others another edition has to stand beside it. */
    @Test
    void whichEditionHasARuleForWhat() {
        Map<String, Set<Way>> answered = new TreeMap<>();
        rules().forEach(rule -> answered.computeIfAbsent(rule.name, name -> EnumSet.noneOf(Way.class))
                .add(rule.way));
        Set<Way> allButClutches = EnumSet.complementOf(EnumSet.of(Way.TWO_HANDS_WITH_A_CLUTCH));
        Set<Way> allButDoors = EnumSet.complementOf(
                EnumSet.of(Way.TWO_HANDS_WITH_A_CLUTCH, Way.THROUGH_A_DOOR, Way.THROUGH_A_LOCKED_DOOR));
        assertThat(answered)
                .containsOnlyKeys(editions().keySet())
                .containsEntry("ISO 13855:2010", allButClutches)
                .containsEntry("ISO 13855:2024", allButClutches)
                .containsEntry(COPY, allButClutches)
                .containsEntry("ANSI B11.19:2019", allButDoors)
                .containsEntry(
                        "29 CFR 1910.217",
                        EnumSet.of(
                                Way.ACROSS,
                                Way.ACROSS_AND_STARTING,
                                Way.TWO_HANDS,
                                Way.TWO_HANDS_SHROUDED,
                                Way.TWO_HANDS_WITH_A_CLUTCH));
    }

    /**
     * To be refused is the worst: what has no rule gets none by a worse figure. The setting of a brake monitor moves with the stop
     * here; where it stays, see {@link #aSlowerStopUnderTheSameBrakeMonitor}.
     */
    @ParameterizedTest
    @MethodSource("rules")
    void aWorseFigureNeverShortensIt(Rule rule) {
        Random random = new Random(1910);
        for (Situation situation : situations()) {
            Optional<Quantity> before = rule.distance(situation);
            for (Figure figure : Figure.values()) {
                int more = 1 + random.nextInt(random.nextBoolean() ? 10 : 1500);
                Optional<Quantity> after = rule.distance(situation.worse(figure, more));
                assertThat(noShorter(before, after))
                        .as("%s worse by %s: %s after %s in %s", figure, more, after, before, situation)
                        .isTrue();
            }
        }
    }

    private static boolean noShorter(Optional<Quantity> before, Optional<Quantity> after) {
        return after.isEmpty() || (before.isPresent() && after.get().compareTo(before.get()) >= 0);
    }

    /**
     * Which figures count at all. Under ISO 13855:2024 neither the height of a field nor that of a step takes anything off, and
     * what a lower bound leaves out moves it by nothing.
     */
    @Test
    void whatMovesTheDistance() {
        EnumSet<Figure> time = EnumSet.of(DEVICE, MACHINE);
        EnumSet<Figure> watchedTime = EnumSet.of(DEVICE, MACHINE, LET_PASS);
        assertThat(moving("ISO 13855:2010", Way.ACROSS))
                .isEqualTo(and(time, RESOLUTION, EDGE, LOWEST, HIGHEST, SUPPLEMENT));
        assertThat(moving("ISO 13855:2010", Way.ALONG)).isEqualTo(and(time, FIELD_HEIGHT, SUPPLEMENT));
        assertThat(moving("ISO 13855:2010", Way.OVER_A_MAT)).isEqualTo(and(time, STEP));
        assertThat(moving("ISO 13855:2024", Way.ACROSS)).isEqualTo(and(time, RESOLUTION, SUPPLEMENT));
        assertThat(moving(COPY, Way.ACROSS)).isEqualTo(and(time, SUPPLEMENT));
        assertThat(moving("ISO 13855:2024", Way.ALONG)).isEqualTo(and(time, SUPPLEMENT));
        assertThat(moving("ISO 13855:2024", Way.OVER_A_MAT)).isEqualTo(time);
        for (String edition : List.of("ISO 13855:2010", "ISO 13855:2024", COPY)) {
            assertThat(moving(edition, Way.BETWEEN_BEAMS)).isEqualTo(time);
            assertThat(moving(edition, Way.TWO_HANDS)).isEqualTo(time);
            assertThat(moving(edition, Way.TWO_HANDS_SHROUDED)).isEqualTo(time);
            assertThat(moving(edition, Way.THROUGH_A_DOOR)).isEqualTo(and(time, OPENING));
            assertThat(moving(edition, Way.THROUGH_A_LOCKED_DOOR)).isEqualTo(and(time, OPENING, HELD));
        }
        assertThat(moving("ANSI B11.19:2019", Way.ACROSS))
                .isEqualTo(and(watchedTime, RESOLUTION, EDGE, HIGHEST, SUPPLEMENT));
        assertThat(moving("ANSI B11.19:2019", Way.ALONG)).isEqualTo(and(watchedTime, SUPPLEMENT));
        for (Way way : List.of(Way.BETWEEN_BEAMS, Way.OVER_A_MAT, Way.TWO_HANDS, Way.TWO_HANDS_SHROUDED)) {
            assertThat(moving("ANSI B11.19:2019", way)).isEqualTo(watchedTime);
        }
        assertThat(moving("29 CFR 1910.217", Way.ACROSS)).isEqualTo(and(time, RESOLUTION, EDGE, HIGHEST, SUPPLEMENT));
        assertThat(moving("29 CFR 1910.217", Way.ACROSS_AND_STARTING))
                .isEqualTo(and(watchedTime, RESOLUTION, EDGE, HIGHEST, SUPPLEMENT));
        assertThat(moving("29 CFR 1910.217", Way.TWO_HANDS)).isEqualTo(time);
        assertThat(moving("29 CFR 1910.217", Way.TWO_HANDS_WITH_A_CLUTCH)).isEqualTo(EnumSet.of(TURN, POINTS));
    }

    private static Set<Figure> and(EnumSet<Figure> figures, Figure... more) {
        EnumSet<Figure> all = EnumSet.copyOf(figures);
        all.addAll(List.of(more));
        return all;
    }

    private static Set<Figure> moving(String edition, Way way) {
        Rule rule = rules().filter(one -> one.name.equals(edition) && one.way == way)
                .findFirst()
                .orElseThrow();
        EnumSet<Figure> moving = EnumSet.noneOf(Figure.class);
        for (Situation situation : situations()) {
            Optional<Quantity> before = rule.distance(situation);
            for (Figure figure : EnumSet.complementOf(moving)) {
                if (!rule.distance(situation.worse(figure, 700)).equals(before)) {
                    moving.add(figure);
                }
            }
        }
        return moving;
    }

    /**
     * The longest time fits and one millisecond more does not; where there is none, no time of the machine at all would fit. Of a
     * lower bound no time can be allowed, and dies that cannot be stopped leave none to allow. Where the safeguard must stand
     * further away than the distance, the longest time itself is the first that does not fit.
     */
    @ParameterizedTest
    @MethodSource("rules")
    void theLongestTimeFitsAndOneMillisecondMoreDoesNot(Rule rule) {
        for (Situation situation : situations()) {
            Position position = rule.position(situation);
            if (position.longestTime().isEmpty()) {
                assertThat(rule.way).isEqualTo(Way.TWO_HANDS_WITH_A_CLUTCH);
                continue;
            }
            Optional<Quantity> longest = position.longestTime().get().rounded();
            if (position.open().isPresent() || position.distance().value().isEmpty()) {
                assertThat(longest).as("%s", situation).isEmpty();
            } else if (longest.isEmpty()) {
                assertThat(rule.enough(situation.with(MACHINE, 0)))
                        .as("%s", situation)
                        .isFalse();
            } else {
                Situation fitting = situation.lasting(longest.get());
                boolean itself = rule.position(fitting).strict()
                        && position.longestTime().get().value().equals(longest);
                assertThat(rule.enough(fitting)).as("%s", situation).isEqualTo(!itself);
                assertThat(rule.enough(situation.lasting(longest.get().plus(Quantity.seconds("0.001")))))
                        .as("%s", situation)
                        .isFalse();
            }
        }
    }

    static Stream<Rule> fields() {
        return rules().filter(rule -> rule.way == Way.ACROSS);
    }

    /** Half a millisecond is at most 1 mm more at 2000 mm/s, and nothing less, also where walking speed takes over. */
    @ParameterizedTest
    @MethodSource("fields")
    void theChangeOfSpeedLeavesNoJump(Rule rule) {
        Situation closed = situations().get(0).with(EDGE, 26000).with(LOWEST, 0).with(HIGHEST, 10000);
        for (int resolution : List.of(140, 300, 500)) {
            Situation start = closed.with(RESOLUTION, resolution).with(SUPPLEMENT, 0);
            Optional<Quantity> before = rule.distance(start.with(MACHINE, 1));
            for (int tenths = 6; tenths <= 3500; tenths += 5) {
                Optional<Quantity> now = rule.distance(start.with(MACHINE, tenths));
                assertThat(now.orElseThrow().minus(before.orElseThrow()))
                        .as("at %s tenths of a ms", tenths)
                        .isBetween(Quantity.millimetres("0"), Quantity.millimetres("1"));
                before = now;
            }
        }
    }

    /**
     * A brake monitor that is left as it is lets a slower stop wear less, because the stop it reports stays where it is. By ANSI
     * B11.19 the distance therefore stays the same. By 29 CFR 1910.217 (h)(9)(v) what it lets pass counts twice, from memory, so
     * that there the distance even shrinks: it holds for the stop as it was measured, and for a stop rounded up it is too short,
     * which is printed beside it.
     */
    @Test
    void aSlowerStopUnderTheSameBrakeMonitor() {
        Situation measured = situations()
                .get(0)
                .with(RESOLUTION, 300)
                .with(EDGE, 26000)
                .with(LOWEST, 0)
                .with(HIGHEST, 10000)
                .with(DEVICE, 200)
                .with(MACHINE, 2000)
                .with(LET_PASS, 300);
        Situation slower = measured.with(MACHINE, 2100).with(LET_PASS, 200);
        Rule b11 = rule("ANSI B11.19:2019", Way.ACROSS);
        Rule starting = rule("29 CFR 1910.217", Way.ACROSS_AND_STARTING);

        assertThat(b11.distance(slower)).isEqualTo(b11.distance(measured));
        assertThat(starting.distance(measured)
                        .orElseThrow()
                        .minus(starting.distance(slower).orElseThrow()))
                .isEqualTo(Quantity.of("0.63", Unit.INCH));
        assertThat(starting.position(measured).remarks())
                .anySatisfy(remark -> assertThat(remark).contains("0.063 in for each millisecond"));
    }

    private static Rule rule(String edition, Way way) {
        return rules().filter(one -> one.name.equals(edition) && one.way == way)
                .findFirst()
                .orElseThrow();
    }
}
