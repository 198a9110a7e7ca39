package org.cellfile.subject.stopping;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cellfile.claim.Claim;
import org.cellfile.claim.Recomputed;
import org.cellfile.claim.Recorded;
import org.cellfile.finding.Finding;
import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.quantity.Unit;
import org.cellfile.source.Stated;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Difference;
import org.cellfile.trace.Given;
import org.cellfile.trace.Quotient;
import org.cellfile.trace.Term;

/**
 * How a stop has grown slower since it was first measured as it is now, and what is left until a safeguard would stand too close.
 * What it says about the future is advice: wear follows no straight line by law.
 */
public final class StopTrend implements Recomputed {

    /** Days counted as a number: a quantity without a dimension, written with its unit. */
    static final Unit DAY = new Unit("d", Dimension.NONE, Quantity.count(1).number());

    /** Under what its values stand beside those of the stop test. */
    static final String PART = "trend";

    private static final Quantity TENTH_OF_A_MILLISECOND = Quantity.seconds("0.0001");

    /**
     * A safeguard that triggers the stop.
     *
     * @param longestStop how long the stop may take; empty where that is not known
     */
    public record Allowing(String safeguard, Optional<Derived> longestStop) {}

    /** A change after which the stop is another one. */
    public record Interruption(String change, LocalDate on) {}

    /** What became of a measurement. */
    public enum Use {
        IN_THE_LINE("in the line"),
        BEFORE_A_CHANGE("before a change"),
        NOT_COMPARABLE("other load or speed"),
        NOT_KNOWN("not read");

        private final String words;

        Use(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** An earlier measurement and what became of it. */
    public record Judged(EarlierMeasurement measurement, Use use) {}

    private final StopEvidence evidence;
    private final Optional<Interruption> interruption;
    private final List<Judged> earlier;
    private final Allowed allowed;
    private final List<Derived> change;
    private final Optional<WearLine> line;

    /**
     * @param allowing the safeguards that trigger the stop
     * @param interruption the last change before the present measurement that touches the stop or its robot
     */
    public StopTrend(StopEvidence evidence, List<Allowing> allowing, Optional<Interruption> interruption) {
        this.evidence = evidence;
        this.interruption = interruption;
        this.earlier = evidence.test().history().stream()
                .map(one -> new Judged(one, use(one)))
                .toList();
        this.allowed = Allowed.of(about(), allowing, evidence.test().wearAllowance());
        List<EarlierMeasurement> counted = earlier.stream()
                .filter(one -> one.use() == Use.IN_THE_LINE)
                .map(Judged::measurement)
                .toList();
        this.change = change(counted);
        this.line = line(counted);
    }

    private Use use(EarlierMeasurement one) {
        if (one.on().value().isEmpty()
                || one.time().value().isEmpty()
                || one.load().value().isEmpty()
                || one.speed().value().isEmpty()) {
            return Use.NOT_KNOWN;
        }
        LocalDate day = one.on().value().get();
        if (interruption.filter(change -> day.isBefore(change.on())).isPresent()) {
            return Use.BEFORE_A_CHANGE;
        }
        boolean alike = one.load().value().equals(evidence.coverage().measuredLoad())
                && one.speed().value().equals(evidence.coverage().measuredSpeed());
        return alike ? Use.IN_THE_LINE : Use.NOT_COMPARABLE;
    }

    /** Drift since the first measurement in the series, in time and as a share, and the reserve. */
    private List<Derived> change(List<EarlierMeasurement> counted) {
        List<Derived> change = new ArrayList<>();
        Derived now = evidence.time();
        counted.stream().filter(one -> now.value().isPresent()).findFirst().ifPresent(one -> {
            Term first = new Given("t_0", "stopping time when first measured in this series", one.time());
            Derived drift = new Derived(
                    about(),
                    "drift",
                    "change of the stopping time since the first measurement of the series",
                    "Δt",
                    "difference",
                    new Difference(now, first),
                    Rounding.up(TENTH_OF_A_MILLISECOND));
            change.add(drift);
            change.add(new Derived(
                    about(),
                    "drift-share",
                    "the same as a share of the first",
                    "δ",
                    "quotient",
                    new Quotient(drift, first),
                    Rounding.up(Quantity.of("0.1", Unit.PERCENT))));
        });
        allowed.time()
                .filter(longest -> now.value().isPresent())
                .ifPresent(longest -> change.add(new Derived(
                        about(),
                        "reserve",
                        "what the stop may still grow slower",
                        "R",
                        "difference",
                        new Difference(longest, now),
                        Rounding.down(TENTH_OF_A_MILLISECOND))));
        return change;
    }

    private Optional<WearLine> line(List<EarlierMeasurement> counted) {
        Stated<LocalDate> present = evidence.test().on();
        if (counted.size() + 1 < WearLine.FEWEST
                || present.value().isEmpty()
                || evidence.time().value().isEmpty()) {
            return Optional.empty();
        }
        LocalDate first = counted.get(0).on().value().orElseThrow();
        List<Term> days = new ArrayList<>();
        List<Term> times = new ArrayList<>();
        int number = counted.size() + 1;
        for (EarlierMeasurement one : counted) {
            days.add(day(first, one.on(), days.size() + 1, number));
            times.add(new Given(
                    Series.symbol("t", times.size() + 1, number), "stopping time of each measurement", one.time()));
        }
        days.add(day(first, present, number, number));
        times.add(new Derived(
                about(),
                "present-time",
                "stopping time of the present measurement",
                Series.symbol("t", number, number),
                "the present measurement",
                evidence.time(),
                Rounding.up(TENTH_OF_A_MILLISECOND)));
        boolean daysDiffer =
                days.stream().map(day -> day.value().orElseThrow()).distinct().count() == number;
        return daysDiffer ? Optional.of(new WearLine(about(), first, days, times, allowed.time())) : Optional.empty();
    }

    private static Term day(LocalDate first, Stated<LocalDate> on, int number, int of) {
        return new Given(
                Series.symbol("x", number, of),
                "days since the first measurement of the series",
                on.map(day -> Quantity.of(String.valueOf(ChronoUnit.DAYS.between(first, day)), DAY)));
    }

    private String about() {
        return evidence.tag() + "." + PART;
    }

    public StopEvidence evidence() {
        return evidence;
    }

    /** The earlier measurements, in the order stated, and what became of each. */
    public List<Judged> earlier() {
        return earlier;
    }

    public Optional<Interruption> interruption() {
        return interruption;
    }

    /** How long the stop may take. */
    public Allowed allowed() {
        return allowed;
    }

    /** The line through at least three measurements. */
    public Optional<WearLine> line() {
        return line;
    }

    /** When the line meets the allowed time, or why no date is given: sentences. */
    public String advice() {
        long number =
                1 + earlier.stream().filter(one -> one.use() == Use.IN_THE_LINE).count();
        if (allowed.time().isEmpty()) {
            return "No date is given: " + allowed.because() + ".";
        }
        return line.map(WearLine::advice)
                .orElse("No date is given: a line needs " + WearLine.FEWEST
                        + " measurements under the load and speed of the present one since the last change, and there "
                        + (number == 1 ? "is 1." : "are " + number + "."));
    }

    @Override
    public String tag() {
        return evidence.tag();
    }

    @Override
    public List<Derived> derived() {
        List<Derived> derived = new ArrayList<>();
        allowed.time().ifPresent(derived::add);
        derived.addAll(change);
        line.ifPresent(one -> derived.addAll(one.derived()));
        return derived;
    }

    @Override
    public Recorded recorded() {
        return evidence.test().recorded().part(PART);
    }

    @Override
    public List<Claim> requirements() {
        return List.of();
    }

    /** A stop that takes longer than allowed is found where its safeguards stand too close. */
    @Override
    public List<Finding> faults() {
        return List.of();
    }
}
