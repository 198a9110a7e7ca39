package org.cellfile.standard;

import static org.cellfile.standard.AnsiB1119Ed2019Values.FORMULA;
import static org.cellfile.standard.AnsiB1119Ed2019Values.ID;
import static org.cellfile.standard.AnsiB1119Ed2019Values.MAT;
import static org.cellfile.standard.AnsiB1119Ed2019Values.PENETRATION;
import static org.cellfile.standard.Positions.limit;
import static org.cellfile.standard.Positions.stepped;

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
import org.cellfile.trace.Formula;
import org.cellfile.trace.Greatest;
import org.cellfile.trace.Product;
import org.cellfile.trace.Sum;
import org.cellfile.trace.Term;
import org.cellfile.trace.Withheld;

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
    public Optional<Fixed> widestGapBehind() {
        return Optional.of(values.around.widestGapBehind());
    }

    @Override
    public Optional<Position> perpendicular(PerpendicularField field) {
        Approach at = field.approach();
        Derived through =
                length(at, "reach-through", "penetration through the field", "D_pf,t", penetration(field.resolution()));
        WaysAround.Over over = values.around.over(field, values.arm);
        Derived penetration =
                length(at, "penetration", "depth penetration factor", "D_pf", Greatest.of(through, over.added()));
        List<Term> additions = new ArrayList<>(List.of(penetration));
        additions.addAll(field.supplements());
        return Optional.of(position(
                        at,
                        List.of(through, over.cell(), over.added(), penetration),
                        additions,
                        values.around.limits(at))
                .remark(
                        "The sources print 0.275 in and 0.276 in for the object sensitivity without penetration; 7 mm lies"
                                + " between them.")
                .remark(WaysAround.REMARK));
    }

    private Term penetration(Term sensitivity) {
        if (sensitivity.value().isPresent() && sensitivity.value().get().compareTo(values.body.quantity()) > 0) {
            return Withheld.noRule(
                    "D_pf,t",
                    PENETRATION + " is read as having no rule for a field of " + Formula.shown(sensitivity)
                            + " object sensitivity that is approached at a right angle: as in ISO 13855:2010 it ends at "
                            + values.body.quantity());
        }
        return new Case(
                List.of(new Branch(
                        new Condition(sensitivity, Comparison.AT_MOST, values.hand),
                        Greatest.of(
                                new Product(values.factor, new Difference(sensitivity, values.finger)), values.none))),
                values.arm);
    }

    @Override
    public Optional<Position> beams(Beams beams) {
        Approach at = beams.approach();
        List<Derived> limits = new ArrayList<>(listedHeights(at, beams.heights().size()));
        limits.add(values.around.behind(at));
        Term known = BeamHeights.onlyAtListed(ID + ", read as ISO 13855:2010,", "D_pf", values.beams, beams.heights());
        return Optional.of(
                penetrated(at, values.beams.reference().name(), known, List.of(), limits)
                        .remark(
                                "One maker prints 36 in, another 850 mm (33.5 in); the greater is taken. That the beams stand at the"
                                        + " heights of ISO 13855:2010, and how near to the machine, is this program's own reading."));
    }

    /** The heights for so many beams, so that their standing is printed and confirmed. */
    private List<Derived> listedHeights(Approach at, int number) {
        List<Derived> listed = new ArrayList<>();
        for (Quantity height : BeamHeights.of(number)) {
            int beam = listed.size() + 1;
            listed.add(new Derived(
                    at.tag(),
                    "listed-height-" + beam,
                    "listed height of beam " + beam,
                    "h_" + beam,
                    values.beamHeights.clause().toString(),
                    new Fixed("h_" + beam, height, values.beamHeights),
                    Rounding.up(Quantity.millimetres("1"))));
        }
        return listed;
    }

    @Override
    public Optional<Position> parallel(ParallelField field) {
        Approach at = field.approach();
        Derived lowest = Positions.length(
                at,
                "least-height",
                "least height of the field for its object sensitivity",
                "H_min",
                values.heightRatio.reference().clause(),
                Greatest.of(
                        new Product(values.heightRatio, new Difference(field.resolution(), values.finestAtFloor)),
                        values.floor));
        return Optional.of(
                penetrated(
                                at,
                                values.along.reference().name(),
                                values.along,
                                field.supplements(),
                                List.of(
                                        lowest,
                                        limit(at, "greatest-height", values.highestField, Rounding.Side.DOWN),
                                        limit(at, "crawling-height", values.crawling, Rounding.Side.DOWN)))
                        .remark(
                                "How low and how high the field may lie is read as in ISO 13855:2010, which is this program's own reading."));
    }

    @Override
    public Optional<Position> mat(Mat mat) {
        return Optional.of(penetrated(
                mat.approach(),
                values.mat.reference().name(),
                stepped(mat, "D_pf", MAT, values.mat),
                List.of(),
                List.of()));
    }

    /** A clutch that cannot be stopped within its turn is a matter of the rule for presses. */
    @Override
    public Optional<Position> twoHandControl(TwoHandControl control) {
        return control.clutch().isPresent()
                ? Optional.empty()
                : Optional.of(penetrated(
                        control.approach(), values.hands.reference().name(), values.hands, List.of(), List.of()));
    }

    private Position penetrated(Approach at, String words, Term known, List<Term> supplements, List<Derived> limits) {
        Derived penetration = length(at, "penetration", words, "D_pf", known);
        List<Term> additions = new ArrayList<>(List.of(penetration));
        additions.addAll(supplements);
        return position(at, List.of(penetration), additions, limits);
    }

    private Position position(Approach at, List<Derived> penetration, List<Term> additions, List<Derived> limits) {
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
                limits);
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
