package org.cellfile.subject.stopping;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.cellfile.claim.Workings;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Block.Column;
import org.cellfile.dossier.Block.Drawing;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.dossier.Block.Facts;
import org.cellfile.dossier.Block.Paragraph;
import org.cellfile.dossier.Block.Section;
import org.cellfile.dossier.Block.Table;
import org.cellfile.dossier.Text;
import org.cellfile.quantity.Quantity;
import org.cellfile.source.Stated;
import org.cellfile.subject.identity.Identity;
import org.cellfile.subject.stopping.Coverage.Measure;
import org.cellfile.subject.stopping.StopTrend.Judged;
import org.cellfile.subject.stopping.WearLine.Meeting;
import org.cellfile.trace.Count;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Term;

/** How it is printed with what a stop was measured, and how it has changed since. */
final class StopOverTime {

    /** Decimals of a position in the drawing; nothing is read off it. */
    private static final int PLACES = 6;

    /** Steps in which the band is drawn. */
    private static final int STEPS = 40;

    private static final String NONE = "–";

    private StopOverTime() {}

    static Section coverage(StopEvidence evidence, Workings workings) {
        Coverage coverage = evidence.coverage();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Table(
                "Measured against what is used in production",
                List.of(
                        Column.text("", 2),
                        Column.figures("In use", 3),
                        Column.figures("Greatest measured", 3),
                        Column.text("Reached", 2)),
                coverage.measures().stream()
                        .map(measure -> List.of(
                                Text.capital(measure.name()),
                                measure.used().map(workings::inUnits).orElse("not stated"),
                                measure.measured().map(workings::inUnits).orElse(NONE),
                                reached(measure)))
                        .toList()));
        blocks.add(new Paragraph(together(coverage)));
        blocks.add(workings.rows("Where these figures come from", coverage.derived(), evidence.recorded()));
        return new Section("", "Load, speed and extension in use", blocks);
    }

    private static String reached(Measure measure) {
        if (measure.used().isEmpty() || measure.measured().isEmpty()) {
            return "not known";
        }
        return measure.reached() ? "yes" : "no";
    }

    private static String together(Coverage coverage) {
        if (coverage.measures().stream().anyMatch(measure -> measure.used().isEmpty())) {
            return "What is used in production is not known in full, so that the stop is not shown to reach it.";
        }
        return coverage.together()
                .map(condition -> "All of it is reached together under the condition "
                        + condition.name().characters()
                        + " (worst-case operating conditions decide: DGUV 209-030, annex 9).")
                .orElse("No single condition reaches all of it together, and worst-case operating conditions decide"
                        + " (DGUV 209-030, annex 9).");
    }

    static Section trend(StopTrend trend, Identity identity) {
        Workings workings = identity.facts().workings();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Facts(facts(trend)));
        if (!trend.earlier().isEmpty()) {
            blocks.add(measurements(trend, identity));
        }
        blocks.add(new Paragraph(advice(trend)));
        if (trend.line().isPresent()) {
            blocks.add(drawing(trend, trend.line().get()));
        }
        if (!trend.derived().isEmpty()) {
            blocks.add(workings.rows("Trend, recomputed", trend.derived(), trend.recorded()));
        }
        return new Section("", "Change of the stop over time", blocks);
    }

    private static String advice(StopTrend trend) {
        boolean dated = trend.line().flatMap(WearLine::meeting).isPresent();
        return trend.advice()
                + (dated ? " This is advice, not a limit: wear follows no straight line by law." : "")
                + " What counts is the next measurement"
                + trend.evidence().due().map(due -> ", due " + due.on()).orElse("") + ".";
    }

    private static List<Fact> facts(StopTrend trend) {
        StopTest test = trend.evidence().test();
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact(
                "Measured again",
                test.repeat()
                        .map(repeat -> "every " + repeat.every().characters())
                        .orElse("not stated"),
                test.repeat().map(repeat -> repeat.source().characters()).orElse("")));
        trend.evidence()
                .due()
                .ifPresent(due ->
                        facts.add(new Fact("Next measurement due", due.on().toString())));
        trend.interruption()
                .ifPresent(change -> facts.add(new Fact(
                        "Series begins anew",
                        change.on().toString(),
                        "change `" + change.change() + "`; what was measured before is left out of the line")));
        test.wearAllowance()
                .ifPresent(wear -> facts.add(new Fact(
                        "Allowance for wear",
                        wear.time().characters(),
                        wear.source().characters())));
        if (test.brakeMonitor().value().isPresent()) {
            facts.add(new Fact(
                    "Brake monitor reports at",
                    test.brakeMonitor().characters(),
                    "editions that ask for an allowance have taken it off the longest stopping time already"));
        }
        return facts;
    }

    private static Table measurements(StopTrend trend, Identity identity) {
        List<List<String>> rows = new ArrayList<>();
        for (Judged judged : trend.earlier()) {
            EarlierMeasurement one = judged.measurement();
            rows.add(List.of(
                    one.on().characters(),
                    one.time().characters(),
                    one.distance().characters(),
                    one.load().characters(),
                    one.speed().characters(),
                    one.occasion().characters() + ", " + identity.nameOf(one.measuredBy()) + " with "
                            + one.instrument().characters() + ", "
                            + one.report().characters(),
                    judged.use().words()));
        }
        StopEvidence now = trend.evidence();
        EarlierMeasurement last =
                trend.earlier().get(trend.earlier().size() - 1).measurement();
        rows.add(List.of(
                now.test().on().characters(),
                beside(now.governing().get(0), last.time()),
                beside(now.governing().get(1), last.distance()),
                greatest(now.coverage().measuredLoad()),
                greatest(now.coverage().measuredSpeed()),
                "present measurement, " + identity.nameOf(now.test().measuredBy()) + " with "
                        + now.test().instrument().characters(),
                StopTrend.Use.IN_THE_LINE.words()));
        return new Table(
                "Governing values of each measurement, earlier ones as reported then",
                List.of(
                        Column.text("On", 4),
                        Column.figures("Time", 3),
                        Column.figures("Distance", 4),
                        Column.figures("Load", 3),
                        Column.figures("Speed", 4),
                        Column.text("Occasion, by whom, report", 7),
                        Column.text("Use", 3)),
                rows);
    }

    /** As the measurement before was written, so that the two can be compared at a glance. */
    private static String beside(Derived now, Stated<Quantity> before) {
        return before.value().flatMap(now::roundedLike).map(Quantity::toString).orElse(Workings.shown(now));
    }

    private static String greatest(Optional<Quantity> measured) {
        return measured.map(one -> one.plain().toString()).orElse(NONE);
    }

    private static Drawing drawing(StopTrend trend, WearLine line) {
        Optional<Meeting> meeting = line.meeting();
        BigDecimal end = end(line, meeting);
        Map<String, Object> data = new TreeMap<>();
        data.put("title", "Stopping time, " + trend.evidence().test().name().characters());
        data.put("points", points(line));
        data.put("end", end);
        data.put("years", years(line.first(), end));
        data.put("line", List.of(onLine(line, BigDecimal.ZERO), onLine(line, end)));
        data.put("upper", edge(line, end, 1));
        data.put("lower", edge(line, end, -1));
        trend.allowed().time().ifPresent(longest -> {
            Quantity limit = longest.value().orElseThrow();
            data.put("allowed", place(limit.coherent()));
            data.put("allowedWords", "allowed " + Workings.shown(longest));
            trend.evidence()
                    .test()
                    .wearAllowance()
                    .flatMap(wear -> wear.time().value())
                    .ifPresent(wear -> {
                        data.put("unworn", place(limit.coherent().add(wear.coherent())));
                        data.put(
                                "unwornWords",
                                "safeguards allow " + longest.rounding().round(limit.plus(wear)));
                    });
        });
        meeting.ifPresent(met -> {
            data.put("earliest", since(line.first(), met.earliest()));
            data.put("middle", since(line.first(), met.middle()));
            data.put("latest", met.latest().map(day -> since(line.first(), day)).orElse(end));
            data.put(
                    "meetingWords",
                    met.earliest() + " to "
                            + met.latest().map(LocalDate::toString).orElse("beyond the picture"));
        });
        return new Drawing(
                "drawings/stop-trend.svg.ftl",
                "Stopping times since " + line.first() + ", their line (full), its 95 % confidence band (dashed)"
                        + (trend.allowed().time().isPresent() ? " and the allowed stopping time (bold)" : ""),
                "Plot of " + line.times().size() + " stopping times from " + line.first() + " to " + line.last()
                        + " with the line of least squares, which changes by " + Workings.shown(line.perYear()) + ". "
                        + trend.advice(),
                data);
    }

    /** The right-hand end of the drawing, in days since the first measurement. */
    private static BigDecimal end(WearLine line, Optional<Meeting> meeting) {
        long last = line.last().toEpochDay() - line.first().toEpochDay();
        long shown = meeting.map(met -> {
                    long middle = met.middle().toEpochDay() - line.first().toEpochDay();
                    long latest = met.latest()
                            .map(day -> day.toEpochDay() - line.first().toEpochDay())
                            .orElse(2 * middle);
                    return latest < 2 * middle ? latest : 2 * middle;
                })
                .orElse(last);
        return BigDecimal.valueOf(shown + shown / 12 + 1);
    }

    private static List<List<BigDecimal>> points(WearLine line) {
        List<List<BigDecimal>> points = new ArrayList<>();
        for (int i = 0; i < line.days().size(); i++) {
            points.add(List.of(exact(line.days().get(i)), exact(line.times().get(i))));
        }
        return points;
    }

    private static List<List<BigDecimal>> edge(WearLine line, BigDecimal end, int sign) {
        List<List<BigDecimal>> edge = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            BigDecimal x = end.multiply(BigDecimal.valueOf(i))
                    .divide(BigDecimal.valueOf(STEPS), PLACES, RoundingMode.HALF_EVEN);
            Term day = new Count(Quantity.of(x.toPlainString(), StopTrend.DAY));
            BigDecimal half = exact(line.halfBand(day)).multiply(BigDecimal.valueOf(sign));
            edge.add(List.of(x, exact(line.on(day)).add(half)));
        }
        return edge;
    }

    private static List<BigDecimal> onLine(WearLine line, BigDecimal x) {
        return List.of(x, exact(line.on(new Count(Quantity.of(x.toPlainString(), StopTrend.DAY)))));
    }

    /** The beginning of each calendar year within the drawing. */
    private static List<Map<String, Object>> years(LocalDate first, BigDecimal end) {
        List<Map<String, Object>> years = new ArrayList<>();
        LocalDate day = LocalDate.of(first.getYear() + 1, 1, 1);
        while (since(first, day).compareTo(end) <= 0) {
            years.add(new TreeMap<>(Map.of("x", since(first, day), "words", String.valueOf(day.getYear()))));
            day = day.plusYears(1);
        }
        return years;
    }

    private static BigDecimal since(LocalDate first, LocalDate day) {
        return BigDecimal.valueOf(day.toEpochDay() - first.toEpochDay());
    }

    private static BigDecimal exact(Term term) {
        return place(term.value().orElseThrow().coherent());
    }

    private static BigDecimal place(BigDecimal exact) {
        return exact.setScale(PLACES, RoundingMode.HALF_EVEN);
    }
}
