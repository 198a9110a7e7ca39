package org.cellfile.standard;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.cellfile.calculation.HeldGuard;
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
import org.cellfile.trace.Sum;
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
    private static final Clause MATS = new Clause(ID, "cl. 7");
    private static final Clause TWO_HANDS = new Clause(ID, "cl. 8");
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
            "height allowed for the lower edge of a field below which nobody passes",
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
    private static final Fixed HIGHEST_FIELD = length(
            "H_max", "1000", "parallel-highest-field", "greatest height of the field", PARALLEL, SCANNER_MANUALS);
    private static final Fixed CRAWLING = length(
            "H_c",
            "300",
            "parallel-crawling-height",
            "height above which crawling under the field has to be assessed",
            PARALLEL,
            new Published("Leuze Safety at Work handbook, multiple beam devices"));

    private static final Fixed GAP_BEHIND = length(
            "g_b",
            "75",
            "gap-behind",
            "widest gap between a field and the machine in which nobody stands undetected",
            PERPENDICULAR,
            new Published("Rockwell Automation 450L-UM001D, p. 72; SICK C4000 operating instructions 8009861, p. 41;"
                    + " Rockwell SafeShield hardware manual, p. 22"));

    private static final Standing BEAM_MANUALS = new Published(
            "Datalogic general catalogue, p. 383; Leuze Safety at Work handbook, multiple beam devices; the single-beam units of"
                    + " a third maker agree");
    private static final Fixed SEVERAL_BEAMS = length(
            "C", "850", "beams-intrusion", "intrusion between two, three or four beams", PERPENDICULAR, BEAM_MANUALS);
    private static final Fixed SINGLE_BEAM =
            length("C", "1200", "single-beam-intrusion", "intrusion past a single beam", PERPENDICULAR, BEAM_MANUALS);

    /** The heights at which separate beams may stand, by their number. */
    private static final Map<Integer, List<String>> BEAMS = Map.of(
            1, List.of("750"),
            2, List.of("400", "900"),
            3, List.of("300", "700", "1100"),
            4, List.of("300", "600", "900", "1200"));

    private static final Standing MAT_MANUALS = new Published(
            "GT Engineering, positioning of pressure-sensitive mats or floors; Allen-Bradley safety mats, application details;"
                    + " OEM Update, pressure mat safety distances");
    private static final Fixed MAT_REACH =
            length("1200 mm", "1200", "mat-intrusion", "intrusion over a mat on the floor", MATS, MAT_MANUALS);
    private static final Fixed STEP_FACTOR = new Fixed(
            "0.4",
            Quantity.of("0.4", Unit.ONE),
            reference("mat-step-factor", "intrusion saved for each millimetre of a step", MATS, MAT_MANUALS));
    private static final Fixed MAT_WIDTH = length(
            "w_min",
            "750",
            "mat-width",
            "least width of a mat that nobody steps over",
            MATS,
            new Published(
                    "GT Engineering, positioning of pressure-sensitive mats or floors; Tapeswitch CKP-S1 manual, p. 10"));

    private static final Standing TWO_HAND_MANUALS = new Published(
            "Moeller, two-hand controls; Jaeger Handling, minimum distance of two-hand controls (formula and speed)");
    private static final Fixed HANDS = length(
            "C",
            "250",
            "two-hand-intrusion",
            "intrusion of hands past a two-hand control",
            TWO_HANDS,
            TWO_HAND_MANUALS);
    private static final Fixed SHROUDED = length(
            "C",
            "0",
            "two-hand-shrouded",
            "intrusion where a shroud keeps the hands back",
            TWO_HANDS,
            TWO_HAND_MANUALS);
    private static final Fixed SHROUDED_LEAST = length(
            "S_min",
            "100",
            "two-hand-least-distance",
            "least distance of a shrouded two-hand control",
            TWO_HANDS,
            TWO_HAND_MANUALS);

    private static final Fixed RIGHT_ANGLE = new Fixed(
            "β_min",
            Quantity.of("30", Unit.DEGREE),
            reference(
                    "least-right-angle",
                    "least angle of approach that counts as a right angle",
                    PERPENDICULAR,
                    new Published("Datalogic general catalogue, p. 383; Datalogic Laser Sentinel manual, p. 16")));

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
    public Optional<Position> perpendicular(PerpendicularField field) {
        Approach at = field.approach();
        String tag = at.tag();
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
                REACH_OVER.reach(at.zoneLowest(), at.zoneHighest(), field.upperEdge()),
                DISTANCE);
        PerpendicularApproach approachThrough = approach(through, field.supplements());
        PerpendicularApproach approachOver = approach(over, field.supplements());
        Derived distanceThrough = new Derived(
                tag,
                "distance-through",
                "separation distance against reaching through",
                "S_RT",
                PERPENDICULAR.toString(),
                approachThrough.distance(at.timing().overall()),
                DISTANCE);
        Derived distanceOver = new Derived(
                tag,
                "distance-over",
                "separation distance against reaching over",
                "S_RO",
                REACHING_OVER.toString(),
                approachOver.distance(at.timing().overall()),
                DISTANCE);
        Derived distance = distance(tag, PERPENDICULAR, Greatest.of(distanceThrough, distanceOver));
        Derived longest = longest(
                tag,
                PERPENDICULAR,
                Least.of(approachThrough.longestTime(at.installed()), approachOver.longestTime(at.installed())));
        return Optional.of(Position.of(
                distance,
                longest,
                List.of(through, over, distanceThrough, distanceOver),
                List.of(
                        limit(at, "greatest-lower-edge", PERPENDICULAR, LOWEST_BEAM, Rounding.Side.DOWN),
                        gapBehind(at))));
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

    private static PerpendicularApproach approach(Term intrusion, List<Term> supplements) {
        List<Term> additions = new ArrayList<>(List.of(intrusion));
        additions.addAll(supplements);
        return new PerpendicularApproach(
                additions.size() == 1 ? intrusion : new Sum(additions), ARM_SPEED, WALKING_SPEED, NEAR, FAR);
    }

    @Override
    public Optional<Position> parallel(ParallelField field) {
        Approach at = field.approach();
        String tag = at.tag();
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
        Derived highest = limit(at, "greatest-height", PARALLEL, HIGHEST_FIELD, Rounding.Side.DOWN);
        Derived crawling = limit(at, "crawling-height", PARALLEL, CRAWLING, Rounding.Side.DOWN);
        return Optional.of(Position.of(
                distance(tag, PARALLEL, approach.distance(at.timing().overall())),
                longest(tag, PARALLEL, approach.longestTime(at.installed())),
                List.of(intrusion),
                List.of(lowest, highest, crawling)));
    }

    @Override
    public Optional<Position> beams(Beams beams) {
        Approach at = beams.approach();
        Fixed known = beams.heights().size() == 1 ? SINGLE_BEAM : SEVERAL_BEAMS;
        Derived intrusion = new Derived(
                at.tag(),
                "intrusion",
                known.reference().name(),
                "C",
                PERPENDICULAR.toString(),
                atListedHeights(beams.heights()) ? known : Withheld.noRule("C", listedHeights(beams.heights())),
                DISTANCE);
        return Optional.of(walking(at, PERPENDICULAR, WALKING_SPEED, intrusion, List.of(gapBehind(at))));
    }

    private static boolean atListedHeights(List<Term> heights) {
        List<String> listed = BEAMS.getOrDefault(heights.size(), List.of());
        return listed.size() == heights.size()
                && IntStream.range(0, listed.size())
                        .allMatch(beam -> heights.get(beam)
                                .value()
                                .map(Quantity.millimetres(listed.get(beam))::equals)
                                .orElse(true));
    }

    private static String listedHeights(List<Term> heights) {
        String found = heights.stream().map(Formula::shown).collect(Collectors.joining(", "));
        List<String> listed = BEAMS.get(heights.size());
        return listed == null
                ? PERPENDICULAR + " has no rule for " + heights.size() + " separate beams: it knows one to four"
                : PERPENDICULAR + " knows " + (heights.size() == 1 ? "a single beam" : heights.size() + " beams")
                        + " at " + String.join(", ", listed) + " mm only, and these are at " + found;
    }

    @Override
    public Optional<Position> mat(Mat mat) {
        Approach at = mat.approach();
        Derived intrusion = new Derived(
                at.tag(),
                "intrusion",
                "intrusion over the mat",
                "C",
                MATS.toString(),
                new Difference(MAT_REACH, new Product(STEP_FACTOR, mat.step())),
                DISTANCE);
        Derived width = limit(at, "least-width", MATS, MAT_WIDTH, Rounding.Side.UP);
        return Optional.of(walking(at, MATS, WALKING_SPEED, intrusion, List.of(width)));
    }

    @Override
    public Optional<Position> twoHandControl(TwoHandControl control) {
        if (control.clutch().isPresent()) {
            return Optional.empty();
        }
        Approach at = control.approach();
        Fixed known = control.shrouded() ? SHROUDED : HANDS;
        Derived intrusion = new Derived(
                at.tag(), "intrusion", known.reference().name(), "C", TWO_HANDS.toString(), known, DISTANCE);
        Position position = walking(at, TWO_HANDS, WALKING_SPEED, intrusion, List.of());
        return Optional.of(control.shrouded() ? notBelow(SHROUDED_LEAST, at, TWO_HANDS, position) : position);
    }

    /** The same with a least distance that no time goes below. */
    private static Position notBelow(Fixed least, Approach at, Clause clause, Position position) {
        Term longest = position.longestTime().orElseThrow().expression();
        return Position.of(
                distance(at.tag(), clause, Greatest.of(position.distance().expression(), least)),
                longest(
                        at.tag(),
                        clause,
                        new Case(
                                List.of(new Branch(
                                        new Condition(at.installed(), Comparison.LESS, least),
                                        new Withheld(
                                                "T",
                                                "the installed distance is below the least one, whatever the time"))),
                                longest)),
                position.parts(),
                position.limits());
    }

    @Override
    public Optional<Position> interlockedGuard(InterlockedGuard guard) {
        Approach at = guard.approach();
        if (guard.held().isEmpty()) {
            WalkingApproach approach = new WalkingApproach(GUARD_SPEED, guard.reach(), List.of());
            return Optional.of(Position.of(
                    distance(at.tag(), GUARDS, approach.distance(at.timing().overall())),
                    longest(at.tag(), GUARDS, approach.longestTime(at.installed())),
                    List.of(),
                    List.of()));
        }
        HeldGuard held = new HeldGuard(GUARD_SPEED, guard.reach(), guard.held().get());
        return Optional.of(Position.of(
                distance(at.tag(), GUARDS, held.distance(at.timing().overall())),
                longest(at.tag(), GUARDS, held.longestTime(at.installed())),
                List.of(),
                List.of()));
    }

    @Override
    public Optional<Fixed> leastRightAngle() {
        return Optional.of(RIGHT_ANGLE);
    }

    private static Position walking(Approach at, Clause clause, Fixed speed, Derived intrusion, List<Derived> limits) {
        WalkingApproach approach = new WalkingApproach(speed, intrusion, List.of());
        return Position.of(
                distance(at.tag(), clause, approach.distance(at.timing().overall())),
                longest(at.tag(), clause, approach.longestTime(at.installed())),
                List.of(intrusion),
                limits);
    }

    private static Derived gapBehind(Approach at) {
        return limit(at, "greatest-gap-behind", PERPENDICULAR, GAP_BEHIND, Rounding.Side.DOWN);
    }

    private static Derived limit(Approach at, String name, Clause clause, Fixed fixed, Rounding.Side side) {
        return new Derived(
                at.tag(),
                name,
                fixed.reference().name(),
                fixed.symbol(),
                clause.toString(),
                fixed,
                new Rounding(side, Quantity.millimetres("1")));
    }

    @Override
    public Optional<StopMeasurement> stopMeasurement() {
        return Optional.of(new StopMeasurement(
                new Fixed("n_min", Quantity.count(10), STOP_MEASUREMENT),
                new Fixed("3", Quantity.count(3), STOP_MEASUREMENT)));
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
