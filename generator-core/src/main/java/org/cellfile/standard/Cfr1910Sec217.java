package org.cellfile.standard;

import static org.cellfile.standard.Cfr1910Sec217Values.ID;
import static org.cellfile.standard.Cfr1910Sec217Values.OPENINGS;
import static org.cellfile.standard.Cfr1910Sec217Values.PRESENCE_SENSING;
import static org.cellfile.standard.Cfr1910Sec217Values.STARTING_COARSEST;
import static org.cellfile.standard.Cfr1910Sec217Values.STARTING_THE_CYCLE;
import static org.cellfile.standard.Cfr1910Sec217Values.TWO_HANDS;
import static org.cellfile.standard.Cfr1910Sec217Values.TWO_HAND_TRIP;

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
import org.cellfile.trace.Count;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Difference;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Formula;
import org.cellfile.trace.Greatest;
import org.cellfile.trace.Product;
import org.cellfile.trace.Quotient;
import org.cellfile.trace.Sum;
import org.cellfile.trace.Term;
import org.cellfile.trace.Withheld;

/**
 * 29 CFR 1910.217, the rule of the United States for mechanical power presses. It knows hands that reach for a point of operation;
 * about fields along the floor, mats and doors it says nothing.
 */
@AutoService(Edition.class)
public final class Cfr1910Sec217 implements PositioningStandard, ReachStandard {

    private static final Rounding DISTANCE = Rounding.up(Quantity.of("0.01", Unit.INCH));
    private static final Rounding TIME = Rounding.up(Quantity.seconds("0.0001"));
    private static final Rounding TIME_ALLOWED = Rounding.down(Quantity.seconds("0.001"));

    private static final String OTHER_MACHINES =
            "A memorandum of OSHA of 20 March 1991 lets the hand speed of 63 in/s be used on"
                    + " other machines as a de minimis matter.";
    private static final String STRICTLY =
            "The distance must be more than the hand speed times the time: a response just as long"
                    + " as the longest time beside it is too long.";

    private static final String ROUNDED_STOP =
            "A stop carried forward longer than it was measured leaves the brake monitor less to let pass. As that counts twice, it"
                    + " shortens this distance by 0.063 in for each millisecond: carry the stop forward no longer than it came out.";

    private final Cfr1910Sec217Values values;

    /** As its values are held here. */
    public Cfr1910Sec217() {
        this(CopyValues.NONE);
    }

    private Cfr1910Sec217(CopyValues copy) {
        values = new Cfr1910Sec217Values(copy);
    }

    @Override
    public Cfr1910Sec217 reading(CopyValues copy) {
        return new Cfr1910Sec217(copy);
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
        return "Mechanical power presses";
    }

    @Override
    public Optional<String> remark() {
        return Optional.of("A rule for mechanical power presses, applied to robot cells by analogy.");
    }

    @Override
    public Optional<Fixed> widestGapBehind() {
        return Optional.of(values.around.widestGapBehind());
    }

    @Override
    public Optional<Position> perpendicular(PerpendicularField field) {
        return Optional.of(field.startsCycle() ? startingTheCycle(field) : presenceSensing(field));
    }

    /** By the time, and as if the field were an opening as wide as the smallest object it detects: the greater counts. */
    private Position presenceSensing(PerpendicularField field) {
        Approach at = field.approach();
        Derived byTime = length(
                at,
                "distance-by-time",
                "distance by the time",
                "D_t",
                PRESENCE_SENSING,
                new Product(values.handSpeed, at.timing().overall()));
        Derived byOpening = length(
                at,
                "distance-by-opening",
                "distance of an opening as wide as the object sensitivity",
                "D_o",
                OPENINGS,
                values.openings.distance("D_o", field.resolution()));
        WaysAround.Over over = values.around.over(field, values.pastTheEdge);
        List<Term> additions = additions(over, field.supplements());
        Term distance = new Greatest(List.of(byTime, byOpening));
        if (!additions.isEmpty()) {
            List<Term> all = new ArrayList<>(List.of(distance));
            all.addAll(additions);
            distance = new Sum(all);
        }
        Term free = without(additions, at.installed());
        Term longest = new Case(
                List.of(new Branch(
                        new Condition(free, Comparison.LESS, byOpening),
                        new Withheld("T", "the distance of the opening alone is more than the installed distance"))),
                new Quotient(free, values.handSpeed));
        Position position = Position.of(
                        distance(at, PRESENCE_SENSING, distance),
                        longest(at, PRESENCE_SENSING, longest),
                        List.of(byTime, byOpening, over.cell(), over.added()),
                        values.around.limits(at))
                .remark(OTHER_MACHINES)
                .remark(STRICTLY)
                .remark(WaysAround.REMARK);
        boolean timeGoverns = byTime.value()
                .flatMap(time -> byOpening.value().map(opening -> time.compareTo(opening) >= 0))
                .orElse(true);
        return timeGoverns ? position.further() : position;
    }

    /** What is added to the distance: the supplements, and the way over the field where there is one. */
    private static List<Term> additions(WaysAround.Over over, List<Term> supplements) {
        List<Term> additions = new ArrayList<>();
        if (over.added().value().filter(Quantity::zero).isEmpty()) {
            additions.add(over.added());
        }
        additions.addAll(supplements);
        return additions;
    }

    private static Term without(List<Term> additions, Term installed) {
        return additions.isEmpty()
                ? installed
                : new Difference(installed, additions.size() == 1 ? additions.get(0) : new Sum(additions));
    }

    private Position startingTheCycle(PerpendicularField field) {
        Approach at = field.approach();
        Derived machine = time(
                at,
                "machine-time",
                "stopping time of the machine and time of its control",
                "(T_s + T_r)",
                STARTING_THE_CYCLE,
                new Sum(at.timing().machine()));
        Optional<Derived> device = at.timing().device().isEmpty()
                ? Optional.empty()
                : Optional.of(time(
                        at,
                        "device-time",
                        "response time of the device",
                        "T_p",
                        STARTING_THE_CYCLE,
                        new Sum(at.timing().device())));
        Derived allowance = time(
                at,
                "brake-allowance",
                "time the brake monitor lets pass",
                "T_m",
                STARTING_THE_CYCLE,
                at.timing()
                        .brakeMonitor()
                        .map(setting -> BrakeAllowance.monitored("T_m", setting, machine))
                        .orElseGet(() -> Withheld.noRule(
                                "T_m",
                                STARTING_THE_CYCLE
                                        + " counts what a brake monitor lets pass, and not every stop has one")));
        Derived penetration = length(
                at,
                "penetration",
                "penetration through the field",
                "D_p",
                STARTING_THE_CYCLE,
                penetration(field.resolution()));
        WaysAround.Over over = values.around.over(field, values.pastTheEdge);
        List<Term> additions = new ArrayList<>(List.of(penetration));
        additions.addAll(additions(over, field.supplements()));
        BrakeAllowance brake =
                new BrakeAllowance(values.startingSpeed, machine, device.map(Term.class::cast), additions);
        Term twice = new Product(values.twice, allowance);
        List<Derived> parts = new ArrayList<>(List.of(machine));
        device.ifPresent(parts::add);
        parts.add(allowance);
        parts.addAll(List.of(penetration, over.cell(), over.added()));
        return Position.of(
                        distance(at, STARTING_THE_CYCLE, brake.distance(twice)),
                        longest(at, STARTING_THE_CYCLE, brake.longestTimeBeside(twice, at.installed())),
                        parts,
                        values.around.limits(at))
                .remark(OTHER_MACHINES)
                .remark(ROUNDED_STOP)
                .remark(WaysAround.REMARK);
    }

    private Term penetration(Term sensitivity) {
        if (sensitivity.value().isPresent() && sensitivity.value().get().compareTo(STARTING_COARSEST) > 0) {
            return Withheld.noRule(
                    "D_p",
                    STARTING_THE_CYCLE + " has no penetration for an object sensitivity of "
                            + Formula.shown(sensitivity) + ": what is known of it ends at " + STARTING_COARSEST);
        }
        return Greatest.of(
                new Product(values.startingFactor, new Difference(sensitivity, values.startingFinger)),
                values.startingNone);
    }

    @Override
    public Optional<Position> twoHandControl(TwoHandControl control) {
        Approach at = control.approach();
        if (control.clutch().isPresent()) {
            return Optional.of(twoHandTrip(at, control.clutch().get()));
        }
        return Optional.of(Position.of(
                        distance(
                                at,
                                TWO_HANDS,
                                new Product(values.twoHandSpeed, at.timing().overall())),
                        longest(at, TWO_HANDS, new Quotient(at.installed(), values.twoHandSpeed)),
                        List.of(),
                        List.of())
                .remark(OTHER_MACHINES)
                .remark(STRICTLY)
                .further());
    }

    /** The dies close before anything could be stopped, so that only the time of the turn counts and no time to stop. */
    private Position twoHandTrip(Approach at, Clutch clutch) {
        Derived closing = time(
                at,
                "closing-time",
                "time the dies take to close once tripped",
                "T_m",
                TWO_HAND_TRIP,
                new Product(
                        Sum.of(values.halfATurn, new Quotient(new Count(Quantity.count(1)), clutch.points())),
                        clutch.turn()));
        // Divided last, so that a distance that comes out even is not rounded up by a digit of 1/N.
        Derived distance = distance(
                at,
                TWO_HAND_TRIP,
                Sum.of(
                        new Product(values.twoHandSpeed, new Product(values.halfATurn, clutch.turn())),
                        new Quotient(new Product(values.twoHandSpeed, clutch.turn()), clutch.points())));
        return new Position(distance, Optional.empty(), List.of(closing), List.of(), true, Optional.empty(), List.of())
                .remark(OTHER_MACHINES)
                .remark("The distance is 63 in/s times T_m with the bracket of T_m written out.");
    }

    /** The width of an opening is its smaller side, whatever its shape. */
    @Override
    public Optional<Term> through(Opening opening) {
        return Optional.of(values.openings.distance("s_O", opening.size()));
    }

    private static Derived distance(Approach at, Clause clause, Term expression) {
        return length(at, "separation-distance", "separation distance", "D_s", clause, expression);
    }

    private static Derived longest(Approach at, Clause clause, Term expression) {
        return new Derived(
                at.tag(),
                "longest-response-time",
                "longest overall response time the installed distance allows",
                "T_max",
                clause.toString(),
                expression,
                TIME_ALLOWED);
    }

    private static Derived length(
            Approach at, String name, String words, String symbol, Clause clause, Term expression) {
        return new Derived(at.tag(), name, words, symbol, clause.toString(), expression, DISTANCE);
    }

    private static Derived time(Approach at, String name, String words, String symbol, Clause clause, Term expression) {
        return new Derived(at.tag(), name, words, symbol, clause.toString(), expression, TIME);
    }
}
