package org.cellfile.subject.function;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cellfile.claim.Recorded;
import org.cellfile.claim.Workings;
import org.cellfile.finding.Finding;
import org.cellfile.quantity.Quantity;
import org.cellfile.source.SourceFile;
import org.cellfile.source.Span;
import org.cellfile.source.Stated;
import org.cellfile.standard.Category;
import org.cellfile.standard.Iso13849Part1Ed2015;
import org.cellfile.subject.function.FunctionLevel.Due;
import org.cellfile.subject.function.FunctionLevel.Triggers;
import org.cellfile.subject.function.SafetyFunction.Element;
import org.cellfile.subject.function.SafetyFunction.Requires;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The sum over the chain, and its weakest subsystem. */
class FunctionLevelTest {

    private static final Span WHERE = SourceFile.unread("functions.yaml").whole();
    private static final Iso13849Part1Ed2015 STANDARD = new Iso13849Part1Ed2015();

    private final List<SubsystemLevel> chain = new ArrayList<>();

    private static <T> Stated<T> written(T content, String characters) {
        return new Stated.Written<>(content, WHERE, characters);
    }

    private static Stated<String> written(String text) {
        return written(text, text);
    }

    private static <T> Stated<T> missing(String key) {
        return new Stated.Missing<>(WHERE, key);
    }

    /** A subsystem as its maker tells it. */
    private void bought(String pfh, String level) {
        String tag = "unit-" + (chain.size() + 1);
        Subsystem.Maker maker = new Subsystem.Maker(
                written(Quantity.perHour(pfh), pfh + " 1/h"),
                written(Quantity.level(level), "PL " + level),
                written("data sheet"),
                missing("mission-time"),
                missing("installed"));
        Subsystem subsystem = new Subsystem(
                written(tag),
                written(tag),
                written(Category.THREE, "3"),
                Optional.of(maker),
                List.of(),
                List.of(),
                Optional.empty(),
                new Recorded(tag, WHERE, Map.of()));
        chain.add(new SubsystemLevel(subsystem, part -> Optional.empty(), STANDARD));
    }

    private FunctionLevel needing(String level) {
        List<Element> elements = chain.stream()
                .map(one -> new Element(written(one.tag()), written(place(one)), List.of()))
                .toList();
        SafetyFunction function = new SafetyFunction(
                written("stop"),
                written("Stop"),
                List.of(written("curtain")),
                written("a beam is interrupted"),
                written("protective stop"),
                written("1"),
                true,
                List.of(written("automatic")),
                elements,
                Optional.of(new Requires(written(Quantity.level(level), "PL " + level), written("constructed"))),
                new Recorded("stop", WHERE, Map.of()));
        return new FunctionLevel(
                function,
                tag -> chain.stream()
                        .filter(one -> one.tag().equals(tag.characters()))
                        .findFirst(),
                new Triggers(List.of(), List.of()),
                new Due(List.of(), Minimums.NONE),
                STANDARD);
    }

    private String place(SubsystemLevel one) {
        return one == chain.get(0) ? "input" : "output";
    }

    private static List<String> limits(FunctionLevel function) {
        return function.faults().stream()
                .filter(finding -> finding.id().equals(LevelFaults.TOO_LOW))
                .map(finding -> finding.because().get(0))
                .toList();
    }

    /** Source: a maker's table of a safety option of drives (published): 1.52e-8 given with PL d, limited by its architecture. */
    @Test
    void aLowFrequencyDoesNotLiftWhatItsArchitectureLimits() {
        bought("1.52e-8", "d");
        FunctionLevel function = needing("e");

        assertThat(Workings.shown(function.levelBySum())).isEqualTo("PL e");
        assertThat(Workings.shown(function.reached())).isEqualTo("PL d");
        assertThat(limits(function)).containsExactly("limited by `unit-1`, which by itself reaches no more than PL d");
    }

    /** Constructed: each below 1e-7 in an hour, together above it. */
    @Test
    void theSumLimitsWhatEachSubsystemReaches() {
        bought("6e-8", "e");
        bought("5e-8", "e");
        FunctionLevel function = needing("e");

        assertThat(Workings.shown(function.pfh())).isEqualTo("1.1e-7 1/h");
        assertThat(Workings.shown(function.reached())).isEqualTo("PL d");
        assertThat(limits(function))
                .containsExactly("the sum of the subsystems limits it: each of them by itself reaches more");
    }

    /** Constructed: the bound itself belongs to the lower level, since a level lies below its bound. */
    @ParameterizedTest
    @CsvSource({"9.9e-8, PL e", "1e-7, PL d", "9.99e-7, PL d", "1e-6, PL c", "9.9e-5, PL a"})
    void theBoundBelongsToTheLowerLevel(String pfh, String level) {
        bought(pfh, "e");

        assertThat(Workings.shown(needing("a").reached())).isEqualTo(level);
    }

    /** Constructed: 1e-4 in an hour and more belongs to no level, and that is not silence. */
    @Test
    void whatReachesNoLevelAtAllIsRefused() {
        bought("1e-4", "a");

        assertThat(needing("a").faults())
                .filteredOn(finding -> finding.id().equals(LevelFaults.TOO_LOW))
                .extracting(Finding::sentence)
                .containsExactly("`stop` reaches no performance level, and it needs PL a");
    }

    /**
     * Source: a maker's application guide (published), p. 81 and p. 78. Adding up is all that is checked: that a tenth of the frequency
     * of two contactors counts is that maker's own shortcut, and was taken before.
     */
    @Test
    void frequenciesAreAddedUp() {
        bought("7.67e-8", "d");
        bought("1.11e-9", "e");
        bought("1.03e-9", "e");
        bought("1.25e-9", "e");
        bought("1.94e-10", "e");
        assertThat(Workings.shown(needing("d").pfh())).isEqualTo("8.03e-8 1/h");

        chain.clear();
        bought("1.26e-10", "e");
        bought("1.11e-9", "e");
        bought("1.03e-9", "e");
        bought("1.25e-9", "e");
        bought("1.93e-9", "e");
        bought("1.11e-9", "e");
        assertThat(Workings.shown(needing("d").pfh())).isEqualTo("6.56e-9 1/h");
    }

    /** The order of the chain does not matter for the sum. */
    @Test
    void theOrderOfTheChainDoesNotMatter() {
        bought("7.67e-8", "d");
        bought("1.11e-9", "e");
        String one = Workings.shown(needing("d").pfh());
        chain.clear();
        bought("1.11e-9", "e");
        bought("7.67e-8", "d");

        assertThat(Workings.shown(needing("d").pfh())).isEqualTo(one);
    }
}
