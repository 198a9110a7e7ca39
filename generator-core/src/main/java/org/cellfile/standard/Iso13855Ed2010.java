package org.cellfile.standard;

import com.google.auto.service.AutoService;
import java.util.List;
import org.cellfile.calculation.PerpendicularApproach;
import org.cellfile.calculation.WalkingApproach;
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
import org.cellfile.trace.Formula;
import org.cellfile.trace.Greatest;
import org.cellfile.trace.Least;
import org.cellfile.trace.Product;
import org.cellfile.trace.Reference;
import org.cellfile.trace.Standing;
import org.cellfile.trace.Standing.FromMemory;
import org.cellfile.trace.Standing.Published;
import org.cellfile.trace.Term;
import org.cellfile.trace.Withheld;

/**
 * ISO 13855:2010. The values were read in public makers' manuals that cite it (named with each); clause numbers are from memory
 * where no source is named.
 */
@AutoService(Edition.class)
public final class Iso13855Ed2010 implements PositioningStandard {

    private static final String ID = "ISO 13855:2010";
    private static final Clause PERPENDICULAR = new Clause(ID, "cl. 6.2");
    private static final Clause PARALLEL = new Clause(ID, "cl. 6.3");
    private static final Clause REACHING_OVER = new Clause(ID, "cl. 6.5 and table 1");
    private static final Clause GUARDS = new Clause(ID, "cl. 9");
    private static final Clause STOPPING = new Clause(ID, "cl. 5");

    private static final Standing CURTAIN_MANUALS = new Published(
            "SICK C4000 operating instructions 8009861, p. 41; Rockwell Automation 450L-UM001D, p. 72; Panasonic SF4-AH manual,"
                    + " p. 38");
    private static final Standing SCANNER_MANUALS = new Published(
            "SICK microScan3 operating instructions, p. 31 and 37; Datalogic general catalogue, p. 383; Schmersal SLC 410-B,"
                    + " p. 47");

    private static final Rounding DISTANCE = Rounding.up(Quantity.millimetres("1"));
    private static final Rounding TIME_ALLOWED = Rounding.down(Quantity.seconds("0.001"));

    private static final Fixed ARM_SPEED =
            speed("2000", "approach-speed-arm", "approach speed of the arm", PERPENDICULAR);
    private static final Fixed WALKING_SPEED =
            speed("1600", "approach-speed-walking", "approach speed of walking", PERPENDICULAR);
    private static final Fixed NEAR =
            length("S_min", "100", "least-distance", "least distance of a field", PERPENDICULAR, CURTAIN_MANUALS);
    private static final Fixed FAR = length(
            "S_K",
            "500",
            "speed-limit-distance",
            "distance above which walking speed counts",
            PERPENDICULAR,
            CURTAIN_MANUALS);
    private static final Fixed RESOLUTION_FACTOR = new Fixed(
            "8",
            Quantity.count(8),
            reference(
                    "resolution-factor",
                    "intrusion for each millimetre of resolution",
                    PERPENDICULAR,
                    CURTAIN_MANUALS));
    private static final Fixed FINGER =
            length("14 mm", "14", "finest-resolution", "resolution without intrusion", PERPENDICULAR, CURTAIN_MANUALS);
    private static final Fixed NO_INTRUSION = length(
            "0 mm", "0", "no-negative-intrusion", "intrusion is never below zero", PERPENDICULAR, CURTAIN_MANUALS);
    private static final Fixed ARM_DETECTION = length(
            "40 mm",
            "40",
            "arm-resolution",
            "coarsest resolution for which the intrusion follows the resolution",
            PERPENDICULAR,
            CURTAIN_MANUALS);
    private static final Fixed BODY_DETECTION = length(
            "70 mm",
            "70",
            "body-resolution",
            "coarsest resolution of a field approached at a right angle",
            PERPENDICULAR,
            new Published("wenglor SG4-..I operating instructions, p. 31"));
    private static final Fixed BODY_INTRUSION = length(
            "850 mm",
            "850",
            "body-intrusion",
            "intrusion through a field that detects bodies only",
            PERPENDICULAR,
            new Published(
                    "wenglor SG4-..I operating instructions, p. 31; Datalogic general catalogue, p. 383; Leuze Safety at"
                            + " Work handbook"));

    private static final Standing BEAM_HEIGHTS = new Published(
            "Pilz PSEN op2H operating manual, p. 11; Leuze Safety at Work handbook, multiple beam devices; GT Engineering,"
                    + " detection zone orthogonal to the direction of approach");
    private static final Fixed LOWEST_BEAM = length(
            "h_low",
            "300",
            "body-lowest-beam",
            "height allowed for the lowest beam of a field that detects bodies only",
            PERPENDICULAR,
            BEAM_HEIGHTS);
    private static final Fixed ARM_LENGTH =
            length("1200 mm", "1200", "parallel-intrusion", "intrusion at floor level", PARALLEL, SCANNER_MANUALS);
    private static final Fixed HEIGHT_FACTOR = new Fixed(
            "0.4",
            Quantity.of("0.4", Unit.ONE),
            reference(
                    "parallel-height-factor",
                    "intrusion saved for each millimetre of height",
                    PARALLEL,
                    SCANNER_MANUALS));
    private static final Fixed LEAST_INTRUSION =
            length("850 mm", "850", "parallel-least-intrusion", "least intrusion", PARALLEL, SCANNER_MANUALS);
    private static final Fixed HEIGHT_RATIO = new Fixed(
            "15",
            Quantity.count(15),
            reference("parallel-height-ratio", "height for each millimetre of resolution", PARALLEL, SCANNER_MANUALS));
    private static final Fixed FINEST_AT_FLOOR = length(
            "50 mm",
            "50",
            "parallel-floor-resolution",
            "coarsest resolution at floor level",
            PARALLEL,
            SCANNER_MANUALS);
    private static final Fixed HIGHEST_FIELD =
            length("H_max", "1000", "parallel-highest-field", "highest field", PARALLEL, SCANNER_MANUALS);
    private static final Fixed CRAWLING = length(
            "H_c",
            "300",
            "parallel-crawling-height",
            "height above which crawling under the field has to be assessed",
            PARALLEL,
            new Published("Leuze Safety at Work handbook, multiple beam devices"));

    private static final Fixed GUARD_SPEED = new Fixed(
            "K",
            Quantity.of("1600", Unit.MILLIMETRE_PER_SECOND),
            reference(
                    "approach-speed-guard",
                    "approach speed through a guard's opening",
                    GUARDS,
                    new Published("ABB product manuals 2TLC010088M0201, p. 10, and 2TLC172249M0201, p. 9")));

    private static final Reference STOP_MEASUREMENT = reference(
            "stop-measurement",
            "ten runs at least; the greater of the highest and the mean plus three standard deviations",
            STOPPING,
            new FromMemory(""));

    private static final HeightTable REACH_OVER = HeightTable.load(
            "iso-13855-2010-table-1.csv",
            "C_RO",
            reference(
                    "reach-over",
                    "reaching over the upper edge of a field",
                    REACHING_OVER,
                    new Published(
                            "Schmersal SLC440/SLG440 operating instructions, p. 13; between rows and columns as in wenglor SEFB"
                                    + " operating instructions, p. 39 and 41")));

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Positioning of safeguards with respect to the approach speeds of parts of the human body";
    }

    @Override
    public Position perpendicular(PerpendicularField field) {
        String tag = field.tag();
        Derived through = new Derived(
                tag,
                "reach-through",
                "intrusion by reaching through the field",
                "C_RT",
                PERPENDICULAR.toString(),
                intrusion(field.resolution()),
                DISTANCE);
        Derived over = new Derived(
                tag,
                "reach-over",
                "intrusion by reaching over the field",
                "C_RO",
                REACHING_OVER.toString(),
                REACH_OVER.reach(field.zoneLowest(), field.zoneHighest(), field.upperEdge()),
                DISTANCE);
        PerpendicularApproach approachThrough = approach(through);
        PerpendicularApproach approachOver = approach(over);
        Derived distanceThrough = new Derived(
                tag,
                "distance-through",
                "separation distance against reaching through",
                "S_RT",
                PERPENDICULAR.toString(),
                approachThrough.distance(field.responseTime()),
                DISTANCE);
        Derived distanceOver = new Derived(
                tag,
                "distance-over",
                "separation distance against reaching over",
                "S_RO",
                REACHING_OVER.toString(),
                approachOver.distance(field.responseTime()),
                DISTANCE);
        Derived distance = distance(tag, PERPENDICULAR, Greatest.of(distanceThrough, distanceOver));
        Derived longest = longest(
                tag,
                PERPENDICULAR,
                Least.of(approachThrough.longestTime(field.installed()), approachOver.longestTime(field.installed())));
        return new Position(distance, longest, List.of(through, over, distanceThrough, distanceOver), beams(field));
    }

    /** A field that detects bodies only must not let one pass below it; above it, the table for reaching over decides. */
    private static List<Derived> beams(PerpendicularField field) {
        boolean bodiesOnly = field.resolution()
                .value()
                .filter(resolution -> resolution.compareTo(ARM_DETECTION.quantity()) > 0)
                .isPresent();
        if (!bodiesOnly) {
            return List.of();
        }
        return List.of(new Derived(
                field.tag(),
                "greatest-lower-edge",
                LOWEST_BEAM.reference().name(),
                LOWEST_BEAM.symbol(),
                PERPENDICULAR.toString(),
                LOWEST_BEAM,
                Rounding.down(Quantity.millimetres("1"))));
    }

    private static Term intrusion(Term resolution) {
        if (resolution.value().isPresent() && resolution.value().get().compareTo(BODY_DETECTION.quantity()) > 0) {
            return Withheld.noRule(
                    "C_RT",
                    PERPENDICULAR + " has no rule for a field of " + Formula.shown(resolution)
                            + " resolution that is approached at a right angle: it ends at "
                            + BODY_DETECTION.quantity());
        }
        return new Case(
                List.of(new Branch(
                        new Condition(resolution, Comparison.AT_MOST, ARM_DETECTION),
                        Greatest.of(new Product(RESOLUTION_FACTOR, new Difference(resolution, FINGER)), NO_INTRUSION))),
                BODY_INTRUSION);
    }

    private static PerpendicularApproach approach(Term intrusion) {
        return new PerpendicularApproach(intrusion, ARM_SPEED, WALKING_SPEED, NEAR, FAR);
    }

    @Override
    public Position parallel(ParallelField field) {
        String tag = field.tag();
        Derived intrusion = new Derived(
                tag,
                "intrusion",
                "intrusion over the field",
                "C",
                PARALLEL.toString(),
                Greatest.of(new Difference(ARM_LENGTH, new Product(HEIGHT_FACTOR, field.height())), LEAST_INTRUSION),
                DISTANCE);
        WalkingApproach approach = new WalkingApproach(WALKING_SPEED, intrusion, field.supplements());
        Derived lowest = new Derived(
                tag,
                "least-height",
                "least height of the field for its resolution",
                "H_min",
                PARALLEL.toString(),
                Greatest.of(
                        new Product(HEIGHT_RATIO, new Difference(field.resolution(), FINEST_AT_FLOOR)), NO_INTRUSION),
                DISTANCE);
        Derived highest = new Derived(
                tag,
                "greatest-height",
                "greatest height of the field",
                "H_max",
                PARALLEL.toString(),
                HIGHEST_FIELD,
                Rounding.down(Quantity.millimetres("1")));
        Derived crawling = new Derived(
                tag,
                "crawling-height",
                "height above which crawling under has to be assessed",
                "H_c",
                PARALLEL.toString(),
                CRAWLING,
                Rounding.down(Quantity.millimetres("1")));
        return new Position(
                distance(tag, PARALLEL, approach.distance(field.responseTime())),
                longest(tag, PARALLEL, approach.longestTime(field.installed())),
                List.of(intrusion),
                List.of(lowest, highest, crawling));
    }

    @Override
    public Position interlockedGuard(InterlockedGuard guard) {
        WalkingApproach approach = new WalkingApproach(GUARD_SPEED, guard.reach(), List.of());
        return new Position(
                distance(guard.tag(), GUARDS, approach.distance(guard.responseTime())),
                longest(guard.tag(), GUARDS, approach.longestTime(guard.installed())),
                List.of(),
                List.of());
    }

    @Override
    public Fixed leastRuns() {
        return new Fixed("n_min", Quantity.count(10), STOP_MEASUREMENT);
    }

    @Override
    public Fixed deviations() {
        return new Fixed("3", Quantity.count(3), STOP_MEASUREMENT);
    }

    private static Derived distance(String tag, Clause clause, Term expression) {
        return new Derived(
                tag, "separation-distance", "separation distance", "S", clause.toString(), expression, DISTANCE);
    }

    private static Derived longest(String tag, Clause clause, Term expression) {
        return new Derived(
                tag,
                "longest-response-time",
                "longest overall response time the installed distance allows",
                "T_max",
                clause.toString(),
                expression,
                TIME_ALLOWED);
    }

    private static Fixed speed(String millimetresPerSecond, String id, String name, Clause clause) {
        return new Fixed(
                "K",
                Quantity.of(millimetresPerSecond, Unit.MILLIMETRE_PER_SECOND),
                reference(id, name, clause, CURTAIN_MANUALS));
    }

    private static Fixed length(
            String symbol, String millimetres, String id, String name, Clause clause, Standing standing) {
        return new Fixed(symbol, Quantity.millimetres(millimetres), reference(id, name, clause, standing));
    }

    private static Reference reference(String id, String name, Clause clause, Standing standing) {
        return new Reference("iso-13855-2010." + id, name, clause, standing);
    }
}
