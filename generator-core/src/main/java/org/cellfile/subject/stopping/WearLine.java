package org.cellfile.subject.stopping;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cellfile.calculation.StraightLine;
import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.quantity.Unit;
import org.cellfile.standard.StudentsT;
import org.cellfile.trace.Count;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Difference;
import org.cellfile.trace.Product;
import org.cellfile.trace.Term;

/** The straight line through the stopping times of a series, and when it meets the time allowed. */
public final class WearLine {

    /** Measurements that a line with a band takes: two fix it, the third tells how they scatter. */
    static final int FEWEST = 3;

    /** Beyond so many years ahead a straight line tells nothing. Constructed. */
    private static final int HORIZON = 50;

    /** The Julian year, for slopes that people can picture. */
    private static final Term YEAR = new Count(Quantity.of("365.25", StopTrend.DAY));

    private static final Unit PER_DAY = new Unit("µs/d", Dimension.TIME, new BigDecimal("0.000001"));
    private static final Unit PER_DAY_SQUARED =
            new Unit("µs²/d²", Dimension.TIME.times(Dimension.TIME), new BigDecimal("0.000000000001"));
    private static final Unit PER_YEAR = new Unit("ms/year", Dimension.TIME, new BigDecimal("0.001"));
    private static final Unit DAYS_SQUARED = new Unit("d²", Dimension.NONE, BigDecimal.ONE);

    /**
     * The days on which the line and the edges of its band meet the time allowed.
     *
     * @param latest empty when it lies beyond the horizon
     */
    public record Meeting(LocalDate earliest, LocalDate middle, Optional<LocalDate> latest) {}

    private final String about;
    private final LocalDate first;
    private final List<Term> days;
    private final List<Term> times;
    private final StraightLine straight;
    private final Optional<Derived> allowed;
    private final Derived meanDay;
    private final Derived meanTime;
    private final Derived spread;
    private final Derived slope;
    private final Derived perYear;
    private final Derived scatter;
    private final Derived students;
    private final Derived doubt;
    private final Derived certainty;
    private final List<Derived> meetingDays;

    /**
     * @param first day of the series, from which the days are counted
     * @param days at least three, all different
     * @param times on these days, all known
     */
    WearLine(String about, LocalDate first, List<Term> days, List<Term> times, Optional<Derived> allowed) {
        this.about = about;
        this.first = first;
        this.days = days;
        this.times = times;
        this.allowed = allowed;
        straight = new StraightLine(days, times);
        meanDay = derived("mean-day", "mean of the days", "x_m", straight.meanDay(), up("0.1", StopTrend.DAY));
        meanTime = derived(
                "mean-time", "mean of the stopping times", "t_m", straight.meanReading(), up("0.0001", Unit.SECOND));
        spread = derived(
                "spread",
                "sum of the squares of the days about their mean",
                "S",
                straight.spread(meanDay),
                up("1", DAYS_SQUARED));
        slope = derived(
                "slope",
                "slope of the line of least squares",
                "b",
                straight.slope(meanDay, meanTime, spread),
                up("0.001", PER_DAY));
        perYear = derived("slope-per-year", "slope in a year", "b_y", new Product(slope, YEAR), up("0.01", PER_YEAR));
        scatter = derived(
                "scatter",
                "standard deviation of the times about the line",
                "s",
                straight.scatter(meanDay, meanTime, slope),
                up("0.001", Unit.MILLISECOND));
        students = derived(
                "students-t",
                "Student's t for 95 %",
                "t_95",
                StudentsT.of(days.size() - 2, straight.degrees()),
                up("0.001", Unit.ONE));
        doubt = derived(
                "doubt",
                "Student's t times the standard deviation",
                "u",
                new Product(students, scatter),
                up("0.001", Unit.MILLISECOND));
        certainty = derived(
                "certainty",
                "square of the slope above that of mere scatter",
                "A",
                StraightLine.certainty(slope, doubt, spread),
                Rounding.down(Quantity.of("0.001", PER_DAY_SQUARED)));
        meetingDays = rises() && certain() ? allowed.map(this::meetingDays).orElse(List.of()) : List.of();
    }

    private List<Derived> meetingDays(Derived limit) {
        Derived gap = derived(
                "gap",
                "allowed stopping time above the mean",
                "g",
                new Difference(limit, meanTime),
                Rounding.down(Quantity.of("0.001", Unit.MILLISECOND)));
        return List.of(
                gap,
                derived(
                        "earliest-day",
                        "days from the first measurement to the first day on which the band meets the allowed time",
                        "x_1",
                        straight.earliest(meanDay, slope, gap, doubt, certainty, spread),
                        Rounding.down(Quantity.of("1", StopTrend.DAY))),
                derived(
                        "meeting-day",
                        "days from the first measurement to the day on which the line meets the allowed time",
                        "x_a",
                        StraightLine.meeting(meanDay, meanTime, slope, limit),
                        Rounding.down(Quantity.of("1", StopTrend.DAY))),
                derived(
                        "latest-day",
                        "days from the first measurement to the last day on which the band meets the allowed time",
                        "x_2",
                        straight.latest(meanDay, slope, gap, doubt, certainty, spread),
                        up("1", StopTrend.DAY)));
    }

    private Derived derived(String name, String words, String symbol, Term expression, Rounding rounding) {
        return new Derived(about, name, words, symbol, "least squares", expression, rounding);
    }

    private static Rounding up(String step, Unit unit) {
        return Rounding.up(Quantity.of(step, unit));
    }

    private boolean rises() {
        return positive(slope);
    }

    private boolean certain() {
        return positive(certainty);
    }

    private static boolean positive(Derived derived) {
        return derived.value().filter(value -> value.number().signum() > 0).isPresent();
    }

    /** First day of the series. */
    public LocalDate first() {
        return first;
    }

    /** Last day of the series. */
    public LocalDate last() {
        return first.plusDays(exact(days.get(days.size() - 1)).longValueExact());
    }

    private static BigDecimal exact(Term term) {
        return term.value().orElseThrow().coherent();
    }

    /** Days since the first and stopping times, in the order measured. */
    public List<Term> days() {
        return days;
    }

    public List<Term> times() {
        return times;
    }

    /** By how much the stop grows slower in a year. */
    public Derived perYear() {
        return perYear;
    }

    /** The line on a day. */
    Term on(Term day) {
        return StraightLine.on(day, meanDay, meanTime, slope);
    }

    /** Half the width of the band on a day. */
    Term halfBand(Term day) {
        return straight.halfBand(day, meanDay, doubt, spread);
    }

    /** When the line meets the allowed time; empty where no date can be given. */
    public Optional<Meeting> meeting() {
        if (meetingDays.isEmpty() || !notMet().isEmpty() || beyond(meetingDays.get(2))) {
            return Optional.empty();
        }
        Derived latest = meetingDays.get(3);
        return Optional.of(new Meeting(
                date(meetingDays.get(1)),
                date(meetingDays.get(2)),
                beyond(latest) ? Optional.empty() : Optional.of(date(latest))));
    }

    private LocalDate date(Derived days) {
        return first.plusDays(days.rounded().orElseThrow().number().longValueExact());
    }

    private boolean beyond(Derived day) {
        long horizon = last().plusYears(HORIZON).toEpochDay() - first.toEpochDay();
        return exact(day).compareTo(BigDecimal.valueOf(horizon)) > 0;
    }

    private boolean byTheLast(Derived day) {
        return exact(day).compareTo(exact(days.get(days.size() - 1))) <= 0;
    }

    /** Why a line that rises has no day ahead on which it meets the allowed time; empty where it has one. */
    private String notMet() {
        if (byTheLast(meetingDays.get(2))) {
            return "the line has met the allowed stopping time by the last measurement already";
        }
        if (byTheLast(meetingDays.get(1))) {
            return "the uncertainty of the line reaches the allowed stopping time at the last measurement already";
        }
        return "";
    }

    /** When it meets the allowed time, or why no date is given: sentences. */
    String advice() {
        if (!rises()) {
            return "No date is given: the line through the measurements does not rise.";
        }
        if (!certain()) {
            return "No date is given: the rise of the line cannot be told from the scatter of the measurements (95 %"
                    + " confidence).";
        }
        if (meetingDays.isEmpty()) {
            return "No date is given: how long the stop may take is not known.";
        }
        if (!notMet().isEmpty()) {
            return "No date is given: " + notMet() + ".";
        }
        String limit = allowed.flatMap(Derived::rounded).map(Quantity::toString).orElse("");
        return meeting()
                .map(met -> "The line meets the allowed stopping time of " + limit + " on " + met.middle()
                        + ", its 95 % confidence band between " + met.earliest() + " and "
                        + met.latest().map(LocalDate::toString).orElse("a day more than " + HORIZON + " years ahead")
                        + ".")
                .orElse("No date is given: the line meets the allowed stopping time of " + limit + " more than "
                        + HORIZON + " years ahead, and a straight line tells nothing over such a time.");
    }

    List<Derived> derived() {
        List<Derived> derived = new ArrayList<>();
        derived.add((Derived) times.get(times.size() - 1));
        derived.addAll(List.of(meanDay, meanTime, spread, slope, perYear, scatter, students, doubt, certainty));
        derived.addAll(meetingDays);
        return derived;
    }
}
