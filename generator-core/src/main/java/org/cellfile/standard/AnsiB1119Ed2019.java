package org.cellfile.standard;

import static org.cellfile.standard.AnsiB1119Ed2019Values.FORMULA;
import static org.cellfile.standard.AnsiB1119Ed2019Values.ID;
import static org.cellfile.standard.AnsiB1119Ed2019Values.PENETRATION;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cellfile.calculation.BrakeAllowance;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.quantity.Unit;
import org.cellfile.trace.Case;
import org.cellfile.trace.Case.Branch;
import org.cellfile.trace.Condition;
import org.cellfile.trace.Condition.Comparison;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Difference;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Greatest;
import org.cellfile.trace.Product;
import org.cellfile.trace.Sum;
import org.cellfile.trace.Term;

/** ANSI B11.19, a rule for each way of approach; what it fixes stands in {@link AnsiB1119Ed2019Values}. */
@AutoService(Edition.class)
public final class AnsiB1119Ed2019 implements PositioningStandard {

    private static final Rounding DISTANCE = Rounding.up(Quantity.of("0.01", Unit.INCH));
    private static final Rounding TIME = Rounding.up(Quantity.seconds("0.0001"));
    private static final Rounding TIME_ALLOWED = Rounding.down(Quantity.seconds("0.001"));

    private final AnsiB1119Ed2019Values values;

    /** As its values are held here. */
    public AnsiB1119Ed2019() {
        this(CopyValues.NONE);
    }

    private AnsiB1119Ed2019(CopyValues copy) {
        values = new AnsiB1119Ed2019Values(copy);
    }

    @Override
    public AnsiB1119Ed2019 reading(CopyValues copy) {
        return new AnsiB1119Ed2019(copy);
    }

    @Override
    public List<Asked> asked() {
        return values.asked();
    }

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Performance requirements for risk reduction measures: safeguarding and other means of reducing risk";
    }

    @Override
    public Optional<String> remark() {
        return Optional.of(
                "The public manuals in which the values were read cite the standard without a year and speak of hand"
                        + " speeds from 63 in/s to 100 in/s. That the values hold for the edition of 2019 is for its holder to see, and"
                        + " whether 63 in/s is fast enough is for the risk assessment.");
    }

    @Override
    public Optional<Position> perpendicular(PerpendicularField field) {
        Approach at = field.approach();
        Derived through = length(
                at,
                "reach-through",
                "penetration through the field",
                "D_pf,t",
                new Case(
                        List.of(new Branch(
                                new Condition(field.resolution(), Comparison.AT_MOST, values.hand),
                                Greatest.of(
                                        new Product(values.factor, new Difference(field.resolution(), values.finger)),
                                        values.none))),
                        values.arm));
        Derived over = length(
                at,
                "reach-over",
                "penetration over the field",
                "D_pf,o",
                new Case(
                        List.of(new Branch(
                                new Condition(at.zoneHighest(), Comparison.AT_MOST, field.upperEdge()), values.none)),
                        values.arm));
        Derived penetration = length(at, "penetration", "depth penetration factor", "D_pf", Greatest.of(through, over));
        List<Term> additions = new ArrayList<>(List.of(penetration));
        additions.addAll(field.supplements());
        return Optional.of(
                position(at, List.of(through, over, penetration), additions)
                        .remark(
                                "The sources print 0.275 in and 0.276 in for the object sensitivity without penetration; 7 mm lies"
                                        + " between them.")
                        .remark(
                                "That a field whose upper edge lies below the highest point of the hazard is reached over, and that this"
                                        + " counts as the penetration past a coarse field, is this program's own reading, to the cautious side."));
    }

    @Override
    public Optional<Position> beams(Beams beams) {
        return Optional.of(penetrated(beams.approach(), values.beams, List.of())
                .remark(
                        "One maker prints 36 in, another 850 mm (33.5 in); the greater is taken. At which heights the beams"
                                + " stand is not held against anything under this standard."));
    }

    @Override
    public Optional<Position> parallel(ParallelField field) {
        return Optional.of(penetrated(field.approach(), values.along, field.supplements()));
    }

    @Override
    public Optional<Position> mat(Mat mat) {
        return Optional.of(penetrated(mat.approach(), values.mat, List.of()));
    }

    /** A clutch that cannot be stopped within its turn is a matter of the rule for presses. */
    @Override
    public Optional<Position> twoHandControl(TwoHandControl control) {
        return control.clutch().isPresent()
                ? Optional.empty()
                : Optional.of(penetrated(control.approach(), values.hands, List.of()));
    }

    private Position penetrated(Approach at, Fixed known, List<Term> supplements) {
        Derived penetration = length(at, "penetration", known.reference().name(), "D_pf", known);
        List<Term> additions = new ArrayList<>(List.of(penetration));
        additions.addAll(supplements);
        return position(at, List.of(penetration), additions);
    }

    private Position position(Approach at, List<Derived> penetration, List<Term> additions) {
        Derived machine = time(
                at,
                "machine-time",
                "stopping time of the machine and time of its control",
                "(T_s + T_c)",
                new Sum(at.timing().machine()));
        Optional<Derived> device = at.timing().device().isEmpty()
                ? Optional.empty()
                : Optional.of(time(
                        at,
                        "device-time",
                        "response time of the device",
                        "T_r",
                        new Sum(at.timing().device())));
        Optional<Term> monitor = at.timing().brakeMonitor();
        Derived allowance = time(
                at,
                "brake-allowance",
                monitor.isPresent()
                        ? "time the brake monitor lets pass"
                        : "allowance for the brake, which no monitor watches",
                "T_bm",
                monitor.map(setting -> BrakeAllowance.monitored("T_bm", setting, machine))
                        .orElseGet(() -> new Product(values.share, machine)));
        BrakeAllowance brake = new BrakeAllowance(values.speed, machine, device.map(Term.class::cast), additions);
        List<Derived> parts = new ArrayList<>(List.of(machine));
        device.ifPresent(parts::add);
        parts.add(allowance);
        parts.addAll(penetration);
        Position position = Position.of(
                new Derived(
                        at.tag(),
                        "separation-distance",
                        "separation distance",
                        "D_s",
                        FORMULA.toString(),
                        brake.distance(allowance),
                        DISTANCE),
                new Derived(
                        at.tag(),
                        "longest-response-time",
                        "longest overall response time the installed distance allows",
                        "T_max",
                        FORMULA.toString(),
                        monitor.isPresent()
                                ? brake.longestTimeBeside(allowance, at.installed())
                                : brake.longestTimeWithShare(values.share, at.installed()),
                        TIME_ALLOWED),
                parts,
                List.of());
        return monitor.isPresent()
                ? position.remark(
                        "The longest times beside it leave the time that the brake monitor lets pass as it is: a slower"
                                + " stop asks for another setting of the monitor.")
                : position;
    }

    @Override
    public Optional<StopMeasurement> stopMeasurement() {
        return Optional.of(new StopMeasurement(
                new Fixed("n_min", Quantity.count(10), values.stopMeasurement),
                new Fixed("3", Quantity.count(3), values.stopMeasurement)));
    }

    private static Derived length(Approach at, String name, String words, String symbol, Term expression) {
        return new Derived(at.tag(), name, words, symbol, PENETRATION.toString(), expression, DISTANCE);
    }

    private static Derived time(Approach at, String name, String words, String symbol, Term expression) {
        return new Derived(at.tag(), name, words, symbol, FORMULA.toString(), expression, TIME);
    }
}
