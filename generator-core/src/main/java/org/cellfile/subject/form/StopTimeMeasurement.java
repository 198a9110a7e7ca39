package org.cellfile.subject.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Block.Box;
import org.cellfile.dossier.Block.Column;
import org.cellfile.dossier.Block.Entry;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.dossier.Block.Facts;
import org.cellfile.dossier.Block.Line;
import org.cellfile.dossier.Block.Paragraph;
import org.cellfile.dossier.Block.Points;
import org.cellfile.dossier.Block.Section;
import org.cellfile.dossier.Block.SignatureLine;
import org.cellfile.dossier.Block.Tone;
import org.cellfile.dossier.Block.WriteInLines;
import org.cellfile.dossier.Block.WriteInTable;
import org.cellfile.dossier.Form;
import org.cellfile.dossier.Text;
import org.cellfile.dossier.Words;
import org.cellfile.quantity.Quantity;
import org.cellfile.source.Stated;
import org.cellfile.standard.StopMeasurement;
import org.cellfile.subject.identity.Identity;
import org.cellfile.subject.safeguard.Guarding;
import org.cellfile.subject.stopping.StopCondition;
import org.cellfile.subject.stopping.StopEvidence;
import org.cellfile.subject.stopping.StopTest;
import org.cellfile.trace.Derived;

/** The measurement of the stops, with their conditions filled in and the runs left blank. */
public final class StopTimeMeasurement {

    public static final String ID = "stop-time-measurement";

    private static final Words WORDS = Words.of("forms/" + ID);

    private StopTimeMeasurement() {}

    /**
     * The form with nothing filled in but what the cell states.
     *
     * @param rule how many runs are due
     * @param responsible who answers for the cell in the plant
     */
    public static Form form(
            List<StopEvidence> stops,
            List<Guarding> safeguards,
            StopMeasurement rule,
            Identity identity,
            String responsible) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Paragraph(WORDS.get("scope")));
        if (stops.isEmpty()) {
            blocks.add(new Paragraph(WORDS.get("none")));
        }
        for (StopEvidence stop : stops) {
            blocks.add(stop(stop.test(), waiting(stop, safeguards), rule, identity, responsible));
        }
        return new Form(ID, WORDS.get("title"), false, blocks);
    }

    /** The safeguards that wait for a stop. */
    private static List<Guarding> waiting(StopEvidence stop, List<Guarding> safeguards) {
        return safeguards.stream()
                .filter(guarding -> guarding.safeguard().stopTests().stream()
                        .anyMatch(tag -> tag.value().equals(stop.test().tag().value())))
                .toList();
    }

    private static Section stop(
            StopTest test, List<Guarding> waiting, StopMeasurement rule, Identity identity, String responsible) {
        String asOf = identity.facts().asOf().characters();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Facts(List.of(
                new Fact(
                        WORDS.get("mode"),
                        WORDS.get(
                                "mode.category",
                                test.mode().characters(),
                                test.category().characters())),
                new Fact(
                        WORDS.get("method"),
                        WORDS.get("method.last", test.on().characters(), identity.nameOf(test.measuredBy())),
                        test.method().characters()),
                new Fact(
                        WORDS.get("carried"),
                        WORDS.get(
                                "carried.both",
                                test.carriedTime().characters(),
                                test.carriedDistance().characters()),
                        WORDS.get("carried.as-of", asOf)),
                allowed(waiting, asOf))));
        blocks.add(new Box(
                Tone.CAUTION,
                WORDS.get("when-long"),
                List.of(new Points(
                        List.of(WORDS.get("when-long.carried", responsible), WORDS.get("when-long.allowed"))))));
        blocks.add(measurement());
        test.conditions().forEach(condition -> blocks.add(runs(test, condition, rule)));
        blocks.add(new SignatureLine(WORDS.get("measured"), WORDS.get("measured.who")));
        blocks.add(new SignatureLine(WORDS.get("checked"), WORDS.get("checked.who")));
        return new Section(test.tag().characters(), Text.capital(test.name().characters()), blocks);
    }

    /** The least of the longest stopping times that the installed distances allow. It says nothing where one of them is not known. */
    private static Fact allowed(List<Guarding> waiting, String asOf) {
        List<String> open = new ArrayList<>();
        Optional<Guarding> strictest = Optional.empty();
        for (Guarding guarding : waiting) {
            if (longest(guarding).isEmpty()) {
                open.add(guarding.tag());
            } else if (strictest.isEmpty()
                    || longest(guarding)
                                    .get()
                                    .compareTo(longest(strictest.get()).orElseThrow())
                            < 0) {
                strictest = Optional.of(guarding);
            }
        }
        String label = WORDS.get("allowed");
        if (waiting.isEmpty()) {
            return new Fact(label, WORDS.get("allowed.nobody"), WORDS.get("allowed.no-safeguard"));
        }
        if (!open.isEmpty()) {
            return new Fact(label, WORDS.get("allowed.unknown"), WORDS.get("allowed.open", String.join(", ", open)));
        }
        return new Fact(
                label,
                WORDS.get("allowed.at-most", longest(strictest.orElseThrow()).orElseThrow()),
                WORDS.get("allowed.by", strictest.get().tag(), asOf));
    }

    private static Optional<Quantity> longest(Guarding guarding) {
        return guarding.budget().longestStop().flatMap(Derived::rounded);
    }

    private static WriteInLines measurement() {
        return new WriteInLines(Stream.of("on", "by", "place", "program", "instrument", "certificate", "valid", "brake")
                .map(key -> new Line(WORDS.get(key), Entry.room()))
                .toList());
    }

    private static WriteInTable runs(StopTest test, StopCondition condition, StopMeasurement rule) {
        List<List<Entry>> rows = new ArrayList<>();
        int runs = rule.leastRuns().quantity().number().intValueExact();
        for (int run = 1; run <= runs; run++) {
            rows.add(List.of(
                    Entry.printed(String.valueOf(run)),
                    Entry.room(),
                    Entry.room(),
                    Entry.room(),
                    Entry.tick(WORDS.get("warm"), WORDS.get("cold")),
                    Entry.room()));
        }
        return new WriteInTable(
                asked(condition),
                List.of(
                        Column.figures(WORDS.get("run"), 11),
                        Column.text(in("time", test.carriedTime(), "s"), 34),
                        Column.text(in("distance", test.carriedDistance(), "mm"), 36),
                        Column.text(in("speed-at", condition.speed(), "mm/s"), 29),
                        Column.text(WORDS.get("state"), 36),
                        Column.text(WORDS.get("remark"), 30)),
                rows);
    }

    /** The condition as the file states it. */
    private static String asked(StopCondition condition) {
        return WORDS.get(
                        "condition",
                        condition.tag(),
                        condition.axis().characters(),
                        condition.load().characters(),
                        condition.speed().characters(),
                        condition.extension().characters(),
                        condition.state().characters())
                + "\n" + WORDS.get("condition.trigger", condition.trigger().characters());
    }

    /** The head of a column with the unit in which the file states the like. */
    private static String in(String key, Stated<Quantity> like, String otherwise) {
        return WORDS.get(key, like.value().map(value -> value.unit().symbol()).orElse(otherwise));
    }
}
