package org.cellfile.subject.stopping;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import org.cellfile.claim.Workings;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Block.Column;
import org.cellfile.dossier.Block.Drawing;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.dossier.Block.Facts;
import org.cellfile.dossier.Block.Section;
import org.cellfile.dossier.Block.Table;
import org.cellfile.dossier.Chapter;
import org.cellfile.dossier.Text;
import org.cellfile.quantity.Quantity;
import org.cellfile.source.Stated;
import org.cellfile.subject.identity.Identity;
import org.cellfile.subject.identity.Instrument;
import org.cellfile.subject.stopping.StopCondition.Run;
import org.cellfile.trace.Derived;

/** How stop evidence is printed. */
public final class StoppingChapter {

    private StoppingChapter() {}

    public static Chapter chapter(List<StopTrend> stops, Identity identity) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Paragraph(
                "Each stop was measured in repeated runs under the conditions named. The value carried forward into the distances"
                        + " is never below the greater of the highest run and the mean plus three sample standard deviations; that"
                        + " rule is stated from memory of ISO 13855:2010 and stands in the register of fixed values with whoever"
                        + " confirmed it. Stopping times grow with the wear of brakes; measure again after every change that"
                        + " touches the stop, and at least once a year (common practice). A stop counts only up to the load, the"
                        + " speed and the extension with which it was measured."));
        stops.forEach(stop -> blocks.add(test(stop, identity)));
        return new Chapter("stop-evidence", "Stop evidence", blocks);
    }

    private static Section test(StopTrend trend, Identity identity) {
        StopEvidence evidence = trend.evidence();
        StopTest test = evidence.test();
        Optional<Instrument> instrument = identity.instrument(test.instrument());
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Facts(List.of(
                new Fact(
                        "Mode",
                        test.mode().characters(),
                        "stop category " + test.category().characters()),
                new Fact("Method", test.method().characters()),
                new Fact(
                        "Measured",
                        test.on().characters() + " by " + identity.nameOf(test.measuredBy()),
                        "with " + test.instrument().characters()
                                + instrument
                                        .map(one -> ", calibrated "
                                                + one.calibration().calibrated().characters() + ", due "
                                                + one.calibration().due().characters())
                                        .orElse("")),
                new Fact(
                        "Carried forward",
                        test.carriedTime().characters() + " and "
                                + test.carriedDistance().characters(),
                        "into the distances and the hazard zones"))));
        blocks.add(summary(evidence));
        evidence.governing()
                .forEach(derived -> blocks.add(identity.facts().workings().of(derived, evidence.recorded())));
        blocks.add(StopOverTime.coverage(evidence, identity.facts().workings()));
        blocks.add(StopOverTime.trend(trend, identity));
        evidence.conditions()
                .forEach(condition -> blocks.add(
                        condition(evidence, condition, identity.facts().workings())));
        return new Section(evidence.tag(), Text.capital(test.name().characters()), blocks);
    }

    private static Table summary(StopEvidence evidence) {
        return new Table(
                "Stopping time by condition",
                List.of(
                        Column.text("Condition", 5),
                        Column.figures("Runs", 2),
                        Column.figures("Mean", 3),
                        Column.figures("Std. dev.", 3),
                        Column.figures("Highest", 3),
                        Column.figures("Mean + 3 s", 3)),
                evidence.conditions().stream()
                        .map(condition -> {
                            List<String> row = new ArrayList<>();
                            row.add(condition.condition().name().characters());
                            row.add(String.valueOf(condition.condition().runs().size()));
                            condition.time().stream()
                                    .limit(4)
                                    .map(Workings::shown)
                                    .forEach(row::add);
                            return List.copyOf(row);
                        })
                        .toList());
    }

    private static Section condition(StopEvidence evidence, ConditionStatistics statistics, Workings workings) {
        StopCondition condition = statistics.condition();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Facts(List.of(
                new Fact("Movement", condition.axis().characters()),
                new Fact(
                        "Load, speed, extension",
                        condition.load().characters() + ", " + condition.speed().characters() + ", "
                                + condition.extension().characters()),
                new Fact("State", condition.state().characters()),
                new Fact("Triggered by", condition.trigger().characters()))));
        blocks.add(runs(condition));
        blocks.add(chart(evidence, statistics));
        blocks.add(workings.rows("Statistics, recomputed from the runs", statistics.derived(), statistics.recorded()));
        return new Section(statistics.tag(), "Condition " + condition.name().characters(), blocks);
    }

    private static Table runs(StopCondition condition) {
        List<List<String>> rows = new ArrayList<>();
        for (Run run : condition.runs()) {
            rows.add(List.of(
                    String.valueOf(rows.size() + 1),
                    run.time().characters(),
                    run.distance().characters(),
                    run.time().where().position()));
        }
        return new Table(
                "Runs in the order taken",
                List.of(
                        Column.figures("Run", 1),
                        Column.figures("Stopping time", 3),
                        Column.figures("Stopping distance", 3),
                        Column.text("Written at", 5)),
                rows);
    }

    private static Drawing chart(StopEvidence evidence, ConditionStatistics statistics) {
        StopCondition condition = statistics.condition();
        Map<String, Object> data = new TreeMap<>();
        data.put("title", "Stopping time, " + condition.name().characters());
        data.put("unit", "s");
        data.put("runs", numbers(condition.runs(), Run::time));
        List<Derived> time = statistics.time();
        if (!time.isEmpty()) {
            put(data, "mean", time.get(0).value());
            put(data, "highest", time.get(2).value());
            put(data, "meanPlus3s", time.get(3).value());
        }
        put(data, "carried", evidence.test().carriedTime().value());
        return new Drawing(
                "drawings/stop-runs.svg.ftl",
                "Stopping time of each run of " + condition.name().characters(),
                "Dot plot of " + condition.runs().size() + " stopping times"
                        + (time.isEmpty()
                                ? ""
                                : ": highest " + Workings.shown(time.get(2)) + ", mean and three standard deviations "
                                        + Workings.shown(time.get(3)))
                        + ", carried forward " + evidence.test().carriedTime().characters(),
                data);
    }

    private static List<BigDecimal> numbers(List<Run> runs, Function<Run, Stated<Quantity>> reading) {
        return runs.stream()
                .map(reading)
                .map(Stated::value)
                .flatMap(Optional::stream)
                .map(Quantity::coherent)
                .toList();
    }

    private static void put(Map<String, Object> data, String name, Optional<Quantity> value) {
        value.ifPresent(quantity -> data.put(name, quantity.coherent()));
    }
}
