package org.cellfile.subject.function;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cellfile.calculation.DangerousFailure;
import org.cellfile.claim.Claim;
import org.cellfile.claim.Recomputed;
import org.cellfile.claim.Recorded;
import org.cellfile.claim.Workings;
import org.cellfile.finding.Finding;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.quantity.Unit;
import org.cellfile.source.Stated;
import org.cellfile.standard.ControlStandard;
import org.cellfile.subject.due.Due;
import org.cellfile.trace.Count;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Given;
import org.cellfile.trace.Least;
import org.cellfile.trace.Product;
import org.cellfile.trace.Quotient;
import org.cellfile.trace.Term;
import org.cellfile.trace.Withheld;

/** A part with how often it fails dangerously, and when it has to go. */
public final class PartLife implements Recomputed {

    private static final Quantity HUNDREDTH_OF_A_YEAR = Quantity.years("0.01");
    private static final BigDecimal DAYS = BigDecimal.valueOf(365);

    private final Part part;
    private final ControlStandard standard;
    private final Optional<Derived> operations;
    private final Optional<Derived> b10d;
    private final Derived mttfd;
    private final Optional<Derived> worn;
    private final Derived replaceAfter;

    public PartLife(Part part, ControlStandard standard) {
        this.part = part;
        this.standard = standard;
        this.operations = part.operations().map(this::operations);
        this.b10d = operations.map(one -> b10d());
        this.mttfd = derived("mttfd", "mean time to dangerous failure", "MTTF_D", "Annex C", failure());
        this.worn = b10d.flatMap(lasts -> operations.map(n -> derived(
                "t10d",
                "time in which a tenth of such parts fails dangerously",
                "T10_D",
                "C.4.2",
                new Quotient(lasts, n))));
        this.replaceAfter = life();
    }

    private Derived derived(String name, String words, String symbol, String clause, Term expression) {
        return new Derived(
                tag(),
                name,
                words,
                symbol,
                standard.id() + ", " + clause,
                expression,
                Rounding.down(HUNDREDTH_OF_A_YEAR));
    }

    private Derived operations(Part.Operations stated) {
        Term days = new Given("d_op", "days in a year", stated.days());
        Term counted = stated.perDay().value().isPresent()
                ? new Product(days, new Given("n_d", "operations in a day", stated.perDay()))
                : DangerousFailure.operations(
                        days,
                        new Given("h_op", "hours in a day", stated.hours()),
                        new Given("t_cycle", "from one operation to the next", stated.cycle()));
        return new Derived(
                tag(),
                "operations",
                "operations in a year",
                "n_op",
                standard.id() + ", C.4.2",
                counted,
                Rounding.up(Quantity.of("0.1", Unit.PER_YEAR)));
    }

    private Derived b10d() {
        Term operations = part.b10d().value().isPresent()
                ? new Given("B10_D", "operations until a tenth has failed dangerously", part.b10d())
                : new Quotient(new Given("B10", "operations until a tenth has failed", part.b10()), dangerous());
        return new Derived(
                tag(),
                "b10d",
                "operations until a tenth of such parts has failed dangerously",
                "B10_D",
                standard.id() + ", C.4.2",
                operations,
                Rounding.down(Quantity.count(1)));
    }

    /** The share of failures that is dangerous, as stated, or as the standard has it where nobody knows. */
    private Term dangerous() {
        return part.dangerous().value().isPresent()
                ? new Given("r_D", "share of the failures that is dangerous", part.dangerous())
                : standard.dangerousShare();
    }

    private Term failure() {
        Term one = new Count(Quantity.count(1));
        if (part.mttfd().value().isPresent()) {
            return new Given("MTTF_D", "mean time to dangerous failure, " + source(), part.mttfd());
        }
        if (part.mttf().value().isPresent()) {
            return new Quotient(new Given("MTTF", "mean time to failure, " + source(), part.mttf()), dangerous());
        }
        if (part.dangerousFailureRate().value().isPresent()) {
            return new Quotient(
                    one, new Given("λ_D", "rate of dangerous failures, " + source(), part.dangerousFailureRate()));
        }
        if (part.failureRate().value().isPresent()) {
            return new Quotient(
                    one, new Product(new Given("λ", "rate of failures, " + source(), part.failureRate()), dangerous()));
        }
        return b10d.<Term>flatMap(lasts -> operations.map(n -> DangerousFailure.ofWear(lasts, standard.wornShare(), n)))
                .orElseGet(() -> new Withheld("MTTF_D", "nothing says how often the part fails"));
    }

    private String source() {
        return part.source().characters();
    }

    private Derived life() {
        Term mission = part.missionTime().value().isPresent()
                ? new Given("T_M", "mission time, " + source(), part.missionTime())
                : standard.missionTime();
        return derived(
                "replace-after",
                "time after which it is replaced",
                "T_R",
                "C.4.2",
                worn.<Term>map(time -> Least.of(time, mission)).orElse(mission));
    }

    public Part part() {
        return part;
    }

    /** The mean time to dangerous failure. */
    public Derived mttfd() {
        return mttfd;
    }

    /** The time after which a tenth of such parts has failed dangerously; empty for what does not wear by operations. */
    public Optional<Derived> worn() {
        return worn;
    }

    /** The time after which it is replaced: when it is worn, or at the end of its mission time. */
    public Derived replaceAfter() {
        return replaceAfter;
    }

    /** The share of its dangerous failures that is found; none where nothing is said. */
    public Term coverage() {
        return coverage("DC");
    }

    /** The same under a symbol that tells several apart. */
    Term coverage(String symbol) {
        if (part.coverageStated()
                && part.coverage().value().filter(Part::notMoreThanAll).isEmpty()) {
            return new Withheld(symbol, "the coverage of `" + tag() + "` could not be read");
        }
        return part.coverage().value().isPresent()
                ? new Given(symbol, "diagnostic coverage of `" + tag() + "`", part.coverage())
                : new Count(Quantity.of("0", Unit.PERCENT));
    }

    /** The last day it may be in use. */
    public Optional<LocalDate> replaceBy() {
        return replaceBy(part.installed(), replaceAfter);
    }

    /** So long after a day; a part of a year counts as that part of 365 days, less what makes no whole day. */
    static Optional<LocalDate> replaceBy(Stated<LocalDate> installed, Derived after) {
        return installed
                .value()
                .flatMap(day -> after.rounded().map(time -> {
                    BigDecimal years = time.in(Unit.YEAR).number();
                    BigDecimal whole = years.setScale(0, RoundingMode.FLOOR);
                    long days = years.subtract(whole)
                            .multiply(DAYS)
                            .setScale(0, RoundingMode.FLOOR)
                            .longValueExact();
                    return day.plusYears(whole.min(BigDecimal.valueOf(10_000)).longValueExact())
                            .plusDays(days);
                }));
    }

    /** Its replacement, as something that falls due. */
    public Optional<Due> due() {
        return replaceBy()
                .map(day -> new Due(
                        day,
                        tag(),
                        "replace: " + part.name().characters(),
                        why(),
                        part.installed().where()));
    }

    private String why() {
        boolean wornFirst = worn.flatMap(Derived::value)
                .filter(time -> replaceAfter.value().equals(Optional.of(time)))
                .isPresent();
        return wornFirst
                ? "T10_D of " + Workings.shown(replaceAfter) + ", installed "
                        + part.installed().characters()
                : missionTime(replaceAfter, part.missionTime(), part.source(), standard) + ", installed "
                        + part.installed().characters();
    }

    /** The mission time with who sets it, as the reason why something is replaced. */
    static String missionTime(Derived after, Stated<Quantity> stated, Stated<String> source, ControlStandard standard) {
        return "mission time of " + after.unrounded().map(Quantity::toString).orElse("") + " by "
                + (stated.value().isPresent() ? source.characters() : standard.id());
    }

    @Override
    public String tag() {
        return part.tag().characters();
    }

    @Override
    public List<Derived> derived() {
        return Stream.of(b10d, operations, Optional.of(mttfd), worn, Optional.of(replaceAfter))
                .flatMap(Optional::stream)
                .toList();
    }

    @Override
    public Recorded recorded() {
        return part.recorded();
    }

    @Override
    public List<Claim> requirements() {
        return List.of();
    }

    @Override
    public List<Finding> faults() {
        return new PartFaults(part).findings();
    }
}
