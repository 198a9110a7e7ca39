package org.cellfile.standard;

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
import org.cellfile.trace.Clause;
import org.cellfile.trace.Condition;
import org.cellfile.trace.Condition.Comparison;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Difference;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Greatest;
import org.cellfile.trace.Product;
import org.cellfile.trace.Reference;
import org.cellfile.trace.Standing;
import org.cellfile.trace.Standing.FromMemory;
import org.cellfile.trace.Standing.Published;
import org.cellfile.trace.Sum;
import org.cellfile.trace.Term;

/**
 * ANSI B11.19. The public makers' manuals in which its values were read cite it without a year, so that each value says so. Where
 * a manual prints a length in inches and in millimetres that are not the same, the one in inches is taken; it is the longer one.
 */
@AutoService(Edition.class)
public final class AnsiB1119Ed2019 implements PositioningStandard {

    private static final String ID = "ANSI B11.19:2019";
    private static final Clause FORMULA = new Clause(ID, "safety distance");
    private static final Clause PENETRATION = new Clause(ID, "depth penetration factor");
    private static final Clause STOPPING = new Clause(ID, "stopping time");

    private static final String WITHOUT_A_YEAR = ", all of which cite the standard without a year";
    private static final Standing FORMULA_MANUALS = new Published(
            "Leuze Safety at Work handbook, US specifications; IDEC FS1A instruction manual, p. 7-5; Panasonic SF4-AH"
                    + " instruction manual, p. 39" + WITHOUT_A_YEAR);
    private static final Standing PENETRATION_MANUALS = new Published(
            "IDEC FS1A instruction manual, p. 7-5 (0.275 in); Panasonic SF4-AH instruction manual, p. 39 (0.276 in, and in mm"
                    + " 3.4 (d − 7))" + WITHOUT_A_YEAR);
    private static final Standing COARSE_MANUAL = new Published(
            "Panasonic SF4-AH instruction manual, p. 39, which prints 900 mm (3 ft); 3 ft is the longer of the two; cited without"
                    + " a year");

    private static final Fixed SPEED = new Fixed(
            "K",
            Quantity.of("63", Unit.INCH_PER_SECOND),
            reference("hand-speed", "hand speed", FORMULA, FORMULA_MANUALS));
    private static final Fixed SHARE = new Fixed(
            "20 %",
            Quantity.of("20", Unit.PERCENT),
            reference(
                    "brake-share",
                    "share of stopping time and control time added where no monitor watches the brake",
                    FORMULA,
                    FORMULA_MANUALS));
    private static final Fixed FACTOR = new Fixed(
            "3.4",
            Quantity.of("3.4", Unit.ONE),
            reference(
                    "penetration-factor",
                    "penetration for each unit of object sensitivity",
                    PENETRATION,
                    PENETRATION_MANUALS));
    private static final Fixed FINGER = new Fixed(
            "7 mm",
            Quantity.millimetres("7"),
            reference(
                    "finest-sensitivity", "object sensitivity without penetration", PENETRATION, PENETRATION_MANUALS));
    private static final Fixed NONE = inches(
            "0 in",
            "0",
            "no-negative-penetration",
            "penetration is never below zero",
            PENETRATION,
            PENETRATION_MANUALS);
    private static final Fixed HAND = new Fixed(
            "64 mm",
            Quantity.millimetres("64"),
            reference(
                    "hand-sensitivity",
                    "coarsest object sensitivity for which the penetration follows it",
                    PENETRATION,
                    new Published(
                            "Panasonic SF4-AH instruction manual, p. 39, which prints 64 mm (2.5 in); cited without a year")));
    private static final Fixed ARM = inches(
            "36 in",
            "36",
            "arm-penetration",
            "penetration past a field of coarser object sensitivity, or over its upper edge",
            PENETRATION,
            COARSE_MANUAL);
    private static final Fixed BEAMS =
            inches("D_pf", "36", "beams-penetration", "penetration between separate beams", PENETRATION, COARSE_MANUAL);
    private static final Fixed MAT = inches(
            "D_pf",
            "48",
            "mat-penetration",
            "penetration over a mat",
            PENETRATION,
            new Published("Allen-Bradley safety mats, application details; cited without a year"));
    private static final Fixed ALONG = inches(
            "D_pf",
            "48",
            "parallel-penetration",
            "penetration over a horizontal field",
            PENETRATION,
            new FromMemory("the same figure is published for mats"));
    private static final Fixed HANDS = inches(
            "D_pf",
            "0",
            "two-hand-penetration",
            "penetration past a two-hand control",
            PENETRATION,
            new FromMemory(""));

    private static final Reference STOP_MEASUREMENT = reference(
            "stop-measurement",
            "ten runs at least; the greater of the highest and the mean plus three standard deviations",
            STOPPING,
            new FromMemory(""));

    private static final Rounding DISTANCE = Rounding.up(Quantity.of("0.01", Unit.INCH));
    private static final Rounding TIME = Rounding.up(Quantity.seconds("0.0001"));
    private static final Rounding TIME_ALLOWED = Rounding.down(Quantity.seconds("0.001"));

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
                                new Condition(field.resolution(), Comparison.AT_MOST, HAND),
                                Greatest.of(new Product(FACTOR, new Difference(field.resolution(), FINGER)), NONE))),
                        ARM));
        Derived over = length(
                at,
                "reach-over",
                "penetration over the field",
                "D_pf,o",
                new Case(
                        List.of(new Branch(
                                new Condition(at.zoneHighest(), Comparison.AT_MOST, field.upperEdge()), NONE)),
                        ARM));
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
        return Optional.of(penetrated(beams.approach(), BEAMS, List.of())
                .remark(
                        "One maker prints 36 in, another 850 mm (33.5 in); the greater is taken. At which heights the beams"
                                + " stand is not held against anything under this standard."));
    }

    @Override
    public Optional<Position> parallel(ParallelField field) {
        return Optional.of(penetrated(field.approach(), ALONG, field.supplements()));
    }

    @Override
    public Optional<Position> mat(Mat mat) {
        return Optional.of(penetrated(mat.approach(), MAT, List.of()));
    }

    /** A clutch that cannot be stopped within its turn is a matter of the rule for presses. */
    @Override
    public Optional<Position> twoHandControl(TwoHandControl control) {
        return control.clutch().isPresent()
                ? Optional.empty()
                : Optional.of(penetrated(control.approach(), HANDS, List.of()));
    }

    private static Position penetrated(Approach at, Fixed known, List<Term> supplements) {
        Derived penetration = length(at, "penetration", known.reference().name(), "D_pf", known);
        List<Term> additions = new ArrayList<>(List.of(penetration));
        additions.addAll(supplements);
        return position(at, List.of(penetration), additions);
    }

    private static Position position(Approach at, List<Derived> penetration, List<Term> additions) {
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
                        .orElseGet(() -> new Product(SHARE, machine)));
        BrakeAllowance brake = new BrakeAllowance(SPEED, machine, device.map(Term.class::cast), additions);
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
                                : brake.longestTimeWithShare(SHARE, at.installed()),
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
                new Fixed("n_min", Quantity.count(10), STOP_MEASUREMENT),
                new Fixed("3", Quantity.count(3), STOP_MEASUREMENT)));
    }

    private static Derived length(Approach at, String name, String words, String symbol, Term expression) {
        return new Derived(at.tag(), name, words, symbol, PENETRATION.toString(), expression, DISTANCE);
    }

    private static Derived time(Approach at, String name, String words, String symbol, Term expression) {
        return new Derived(at.tag(), name, words, symbol, FORMULA.toString(), expression, TIME);
    }

    private static Fixed inches(
            String symbol, String inches, String id, String name, Clause clause, Standing standing) {
        return new Fixed(symbol, Quantity.of(inches, Unit.INCH), reference(id, name, clause, standing));
    }

    private static Reference reference(String id, String name, Clause clause, Standing standing) {
        return new Reference("ansi-b11-19-2019." + id, name, clause, standing);
    }
}
