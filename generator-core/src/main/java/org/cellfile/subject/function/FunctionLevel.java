package org.cellfile.subject.function;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.cellfile.claim.Claim;
import org.cellfile.claim.Recomputed;
import org.cellfile.claim.Recorded;
import org.cellfile.finding.Finding;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.quantity.Unit;
import org.cellfile.source.Stated;
import org.cellfile.standard.ControlStandard;
import org.cellfile.subject.complement.ComplementaryDevice;
import org.cellfile.subject.hazard.Risk;
import org.cellfile.subject.safeguard.Guarding;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Given;
import org.cellfile.trace.Greatest;
import org.cellfile.trace.Least;
import org.cellfile.trace.Reference;
import org.cellfile.trace.Sum;
import org.cellfile.trace.Term;
import org.cellfile.trace.Withheld;

/** A safety function with the performance level it needs and the one it reaches. */
public final class FunctionLevel implements Recomputed {

    private static final int DIGITS = 3;

    /** A subsystem in the chain, where it is described. */
    public record Stage(SafetyFunction.Element element, Optional<SubsystemLevel> subsystem) {}

    /**
     * What a function has to reach, apart from what it is built of.
     *
     * @param risks hazards against which its triggers are named
     * @param standards what standards ask of every function of its sort
     */
    public record Due(List<Risk> risks, Minimums standards) {

        /** The levels that standards ask of every function of its sort. */
        public List<Fixed> minimums() {
            return standards.levels();
        }
    }

    /** What sets a function off; one that is described nowhere has been reported. */
    public record Triggers(List<Guarding> safeguards, List<ComplementaryDevice> devices) {

        static Triggers of(SafetyFunction function, List<Guarding> safeguards, List<ComplementaryDevice> devices) {
            return new Triggers(
                    safeguards.stream()
                            .filter(guarding -> function.triggeredBy(guarding.tag()))
                            .toList(),
                    devices.stream()
                            .filter(device -> function.triggeredBy(device.tag().characters()))
                            .toList());
        }
    }

    private final SafetyFunction function;
    private final ControlStandard standard;
    private final List<Stage> stages;
    private final Triggers triggers;
    private final Due due;
    private final Derived required;
    private final Derived pfh;
    private final Derived bySum;
    private final Derived reached;

    /**
     * @param subsystems by tag; one that is described nowhere has been reported
     */
    public FunctionLevel(
            SafetyFunction function,
            Function<Stated<String>, Optional<SubsystemLevel>> subsystems,
            Triggers triggers,
            Due due,
            ControlStandard standard) {
        this.function = function;
        this.standard = standard;
        this.triggers = triggers;
        this.due = due;
        this.stages = function.chain().stream()
                .map(element -> new Stage(element, subsystems.apply(element.subsystem())))
                .toList();
        this.required = level("required-level", "required performance level", "PL_r", "4.3", asked(), true);
        Term sum = sum();
        this.pfh = new Derived(
                tag(),
                "pfh",
                "frequency of dangerous failure of the function",
                "PFH_D",
                standard.id() + ", 6.3",
                sum,
                Rounding.upToDigits(DIGITS, sum.value().map(exact -> exact.in(Unit.PER_HOUR))));
        this.bySum = level("level-by-sum", "performance level by the sum", "PL_Σ", "4.5.1", standard.level(pfh), false);
        List<Term> levels = new ArrayList<>();
        levels.addAll(numbered(subsystems().map(SubsystemLevel::level).toList()));
        levels.add(bySum);
        this.reached = level("reached-level", "reached performance level", "PL", "6.3", new Least(levels), false);
    }

    private Derived level(String name, String words, String symbol, String clause, Term expression, boolean up) {
        Quantity step = Quantity.level("a");
        return new Derived(
                tag(),
                name,
                words,
                symbol,
                standard.id() + ", " + clause,
                expression,
                up ? Rounding.up(step) : Rounding.down(step));
    }

    private Term asked() {
        List<Term> levels = new ArrayList<>();
        levels.addAll(numbered(due.risks().stream().map(Risk::required).toList()));
        levels.addAll(due.minimums());
        function.requires()
                .ifPresent(requires ->
                        levels.add(new Given("PL_stated", requires.because().characters(), requires.level())));
        return levels.isEmpty()
                ? new Withheld("PL_r", "no hazard names what triggers it, and no other reason for it is stated")
                : new Greatest(levels);
    }

    private Term sum() {
        boolean all = stages.stream().allMatch(stage -> stage.subsystem().isPresent());
        return all && !stages.isEmpty()
                ? new Sum(numbered(subsystems().map(SubsystemLevel::pfh).toList()))
                : new Withheld("PFH_D", "a subsystem of its chain is not described");
    }

    /** Several of one sort, told apart in the formula. */
    private static List<Term> numbered(List<Derived> alike) {
        List<Term> numbered = new ArrayList<>();
        for (Derived one : alike) {
            numbered.add(alike.size() == 1 ? one : one.numbered(numbered.size() + 1));
        }
        return numbered;
    }

    Stream<SubsystemLevel> subsystems() {
        return stages.stream().flatMap(stage -> stage.subsystem().stream());
    }

    public SafetyFunction function() {
        return function;
    }

    /** Its chain, from the sensor to what switches the power. */
    public List<Stage> stages() {
        return stages;
    }

    /** The safeguards that set it off. */
    public List<Guarding> triggers() {
        return triggers.safeguards();
    }

    /** The complementary devices that set it off. */
    public List<ComplementaryDevice> devices() {
        return triggers.devices();
    }

    /** Every rule in words of an edition that it is held against. */
    public List<Reference> rules() {
        return due.standards().rules();
    }

    /** Why the level it needs is what it is. */
    public Due due() {
        return due;
    }

    /** The performance level it needs. */
    public Derived required() {
        return required;
    }

    /** The frequency of dangerous failure, in 1/h. */
    public Derived pfh() {
        return pfh;
    }

    /** The performance level that the frequency alone would let it have. */
    public Derived levelBySum() {
        return bySum;
    }

    /** The performance level it reaches: by the sum, and by the weakest of its subsystems. */
    public Derived reached() {
        return reached;
    }

    @Override
    public String tag() {
        return function.tag().characters();
    }

    @Override
    public List<Derived> derived() {
        return List.of(required, pfh, bySum, reached);
    }

    @Override
    public Recorded recorded() {
        return function.recorded();
    }

    @Override
    public List<Claim> requirements() {
        return List.of();
    }

    @Override
    public List<Finding> faults() {
        List<Finding> faults = new ArrayList<>(new LevelFaults(this).found());
        faults.addAll(new ChainFaults(function).found());
        faults.addAll(new LinkFaults(function, triggers).found());
        return faults;
    }
}
