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
import org.cellfile.trace.Count;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Difference;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Formula;
import org.cellfile.trace.Greatest;
import org.cellfile.trace.Product;
import org.cellfile.trace.Quotient;
import org.cellfile.trace.Reference;
import org.cellfile.trace.Standing;
import org.cellfile.trace.Standing.FromMemory;
import org.cellfile.trace.Standing.Published;
import org.cellfile.trace.Sum;
import org.cellfile.trace.Term;
import org.cellfile.trace.Withheld;

/**
 * 29 CFR 1910.217, the rule of the United States for mechanical power presses. It knows hands that reach for a point of operation;
 * about fields along the floor, mats and doors it says nothing.
 */
@AutoService(Edition.class)
public final class Cfr1910Sec217 implements PositioningStandard, ReachStandard {

    private static final String ID = "29 CFR 1910.217";
    private static final Clause PRESENCE_SENSING = new Clause(ID, "(c)(3)(iii)(e)");
    private static final Clause TWO_HANDS = new Clause(ID, "(c)(3)(vii)(c)");
    private static final Clause TWO_HAND_TRIP = new Clause(ID, "(c)(3)(viii)(c)");
    private static final Clause STARTING_THE_CYCLE = new Clause(ID, "(h)(9)(v)");
    private static final Clause OPENINGS = new Clause(ID, "table O-10");

    private static final Standing SPEED_SOURCES = new Published(
            "OSHA Machine Guarding eTool, presses, safety distance; WAC 296-806-45516; Rockwell Automation 450L-UM001D, p. 70");

    private static final Fixed HAND_SPEED =
            speed("63 in/s", "hand-speed", "hand speed", PRESENCE_SENSING, SPEED_SOURCES);
    private static final Fixed TWO_HAND_SPEED = speed(
            "63 in/s",
            "two-hand-speed",
            "hand speed from a two-hand control",
            TWO_HANDS,
            new Published("WAC 296-806-45524; OSHA Machine Guarding eTool, presses, safety distance"));
    private static final Fixed HALF_A_TURN = new Fixed(
            "1/2",
            Quantity.of("0.5", Unit.ONE),
            reference(
                    "clutch-half-turn",
                    "part of a turn in which the dies close once the clutch has engaged; to it comes one turn for each of its"
                            + " engaging points",
                    TWO_HAND_TRIP,
                    new Published("OSHA Machine Guarding eTool, presses, safety distance")));

    private static final Standing MEMORY_OF_STARTING = new FromMemory(
            "a damaged public copy shows the paragraph and the hand speed of 63 in/s, not the rest of the formula");
    private static final Fixed STARTING_SPEED = speed(
            "H_s",
            "starting-hand-speed",
            "hand speed where the field starts the cycle",
            STARTING_THE_CYCLE,
            MEMORY_OF_STARTING);
    private static final Fixed TWICE = new Fixed(
            "2",
            Quantity.count(2),
            reference(
                    "starting-brake-factor",
                    "how many times the allowance of the brake monitor counts",
                    STARTING_THE_CYCLE,
                    MEMORY_OF_STARTING));
    private static final Reference STARTING_PENETRATION = reference(
            "starting-penetration",
            "penetration by object sensitivity, 3.4 (d − 7 mm) up to 64 mm; the regulation has it in a chart",
            STARTING_THE_CYCLE,
            new FromMemory("taken from the formula that makers' manuals print for ANSI B11.19"));
    private static final Fixed STARTING_FACTOR = new Fixed("3.4", Quantity.of("3.4", Unit.ONE), STARTING_PENETRATION);
    private static final Fixed STARTING_FINGER = new Fixed("7 mm", Quantity.millimetres("7"), STARTING_PENETRATION);
    private static final Fixed STARTING_NONE = new Fixed("0 in", Quantity.of("0", Unit.INCH), STARTING_PENETRATION);
    private static final Quantity STARTING_COARSEST = Quantity.millimetres("64");

    private static final GuardOpeningTable TABLE = new GuardOpeningTable(
            "29-cfr-1910-217-table-o-10.csv",
            reference(
                    "openings",
                    "distance of an opening from the hazard by its width, 3/8 in to 1 1/2 in",
                    OPENINGS,
                    new Published(
                            "a public installation note that quotes the table; that the width is the smaller side, OSHA"
                                    + " interpretation of 22 January 1998")),
            reference(
                    "openings-from-memory",
                    "distance of an opening from the hazard by its width, 1/4 in, 1 7/8 in and 2 1/8 in",
                    OPENINGS,
                    new FromMemory("a public installation note that quotes the other rows leads up to these")));

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
    public Optional<Position> perpendicular(PerpendicularField field) {
        return Optional.of(field.startsCycle() ? startingTheCycle(field) : presenceSensing(field));
    }

    /** By the time, and as if the field were an opening as wide as the smallest object it detects: the greater counts. */
    private static Position presenceSensing(PerpendicularField field) {
        Approach at = field.approach();
        Derived byTime = length(
                at,
                "distance-by-time",
                "distance by the time",
                "D_t",
                PRESENCE_SENSING,
                new Product(HAND_SPEED, at.timing().overall()));
        Derived byOpening = length(
                at,
                "distance-by-opening",
                "distance of an opening as wide as the object sensitivity",
                "D_o",
                OPENINGS,
                TABLE.distance("D_o", field.resolution()));
        List<Term> each = new ArrayList<>(List.of(byTime, byOpening));
        Term distance = new Greatest(each);
        if (!field.supplements().isEmpty()) {
            List<Term> all = new ArrayList<>(List.of(distance));
            all.addAll(field.supplements());
            distance = new Sum(all);
        }
        Term free = without(field.supplements(), at.installed());
        Term longest = new Case(
                List.of(new Branch(
                        new Condition(free, Comparison.LESS, byOpening),
                        new Withheld("T", "the distance of the opening alone is more than the installed distance"))),
                new Quotient(free, HAND_SPEED));
        Position position = Position.of(
                        distance(at, PRESENCE_SENSING, distance),
                        longest(at, PRESENCE_SENSING, longest),
                        List.of(byTime, byOpening),
                        List.of())
                .remark(OTHER_MACHINES)
                .remark(STRICTLY);
        boolean timeGoverns = byTime.value()
                .flatMap(time -> byOpening.value().map(opening -> time.compareTo(opening) >= 0))
                .orElse(true);
        return timeGoverns ? position.further() : position;
    }

    private static Term without(List<Term> supplements, Term installed) {
        return supplements.isEmpty()
                ? installed
                : new Difference(installed, supplements.size() == 1 ? supplements.get(0) : new Sum(supplements));
    }

    private static Position startingTheCycle(PerpendicularField field) {
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
        List<Term> additions = new ArrayList<>(List.of(penetration));
        additions.addAll(field.supplements());
        BrakeAllowance brake = new BrakeAllowance(STARTING_SPEED, machine, device.map(Term.class::cast), additions);
        Term twice = new Product(TWICE, allowance);
        List<Derived> parts = new ArrayList<>(List.of(machine));
        device.ifPresent(parts::add);
        parts.add(allowance);
        parts.add(penetration);
        return Position.of(
                        distance(at, STARTING_THE_CYCLE, brake.distance(twice)),
                        longest(at, STARTING_THE_CYCLE, brake.longestTimeBeside(twice, at.installed())),
                        parts,
                        List.of())
                .remark(OTHER_MACHINES)
                .remark(ROUNDED_STOP);
    }

    private static Term penetration(Term sensitivity) {
        if (sensitivity.value().isPresent() && sensitivity.value().get().compareTo(STARTING_COARSEST) > 0) {
            return Withheld.noRule(
                    "D_p",
                    STARTING_THE_CYCLE + " has no penetration for an object sensitivity of "
                            + Formula.shown(sensitivity) + ": what is known of it ends at " + STARTING_COARSEST);
        }
        return Greatest.of(new Product(STARTING_FACTOR, new Difference(sensitivity, STARTING_FINGER)), STARTING_NONE);
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
                                new Product(TWO_HAND_SPEED, at.timing().overall())),
                        longest(at, TWO_HANDS, new Quotient(at.installed(), TWO_HAND_SPEED)),
                        List.of(),
                        List.of())
                .remark(OTHER_MACHINES)
                .remark(STRICTLY)
                .further());
    }

    /** The dies close before anything could be stopped, so that only the time of the turn counts and no time to stop. */
    private static Position twoHandTrip(Approach at, Clutch clutch) {
        Derived closing = time(
                at,
                "closing-time",
                "time the dies take to close once tripped",
                "T_m",
                TWO_HAND_TRIP,
                new Product(
                        Sum.of(HALF_A_TURN, new Quotient(new Count(Quantity.count(1)), clutch.points())),
                        clutch.turn()));
        // Divided last, so that a distance that comes out even is not rounded up by a digit of 1/N.
        Derived distance = distance(
                at,
                TWO_HAND_TRIP,
                Sum.of(
                        new Product(TWO_HAND_SPEED, new Product(HALF_A_TURN, clutch.turn())),
                        new Quotient(new Product(TWO_HAND_SPEED, clutch.turn()), clutch.points())));
        return new Position(distance, Optional.empty(), List.of(closing), List.of(), true, Optional.empty(), List.of())
                .remark(OTHER_MACHINES)
                .remark("The distance is 63 in/s times T_m with the bracket of T_m written out.");
    }

    /** The width of an opening is its smaller side, whatever its shape. */
    @Override
    public Optional<Term> through(Opening opening) {
        return Optional.of(TABLE.distance("s_O", opening.size()));
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

    private static Fixed speed(String symbol, String id, String name, Clause clause, Standing standing) {
        return new Fixed(symbol, Quantity.of("63", Unit.INCH_PER_SECOND), reference(id, name, clause, standing));
    }

    private static Reference reference(String id, String name, Clause clause, Standing standing) {
        return new Reference("29-cfr-1910-217." + id, name, clause, standing);
    }
}
