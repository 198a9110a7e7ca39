package org.cellfile.standard;

import java.util.Set;
import org.cellfile.standard.Asked.Form;
import org.cellfile.trace.Clause;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Reference;
import org.cellfile.trace.Standing;
import org.cellfile.trace.Standing.FromMemory;
import org.cellfile.trace.Standing.Published;

/**
 * What ISO 13855:2024 fixes, as far as articles about it tell; each value names them. What they leave open is from memory, or not
 * known and asked for. The numbers of clauses 6.3, 8 and 9 stand in the titles of those articles, the others are from memory.
 */
final class Iso13855Ed2024Values extends FixedValues {

    static final String ID = "ISO 13855:2024";
    static final Clause PERPENDICULAR = new Clause(ID, "cl. 6.2");
    static final Clause PARALLEL = new Clause(ID, "cl. 6.3");
    static final Clause MATS = new Clause(ID, "cl. 7");
    static final Clause TWO_HANDS = new Clause(ID, "cl. 8");
    static final Clause GUARDS = new Clause(ID, "cl. 9");
    static final Clause STOPPING = new Clause(ID, "measurement of the stopping time");

    private static final String PARALLEL_PAGE =
            "GT Engineering, EN ISO 13855, 6.3 detection zone parallel to the direction"
                    + " of approach (text of 2024)";
    private static final String CHANGES = "Odrade, stop time measurement in 2025, what has changed";

    private static final Standing PARALLEL_ARTICLE = new Published(PARALLEL_PAGE);
    private static final Standing TWO_HAND_ARTICLE =
            new Published("GT Engineering, EN ISO 13855, 8 two-hand control devices (text of 2024)");
    private static final Standing LIKE_2010 = new FromMemory("the value of the edition of 2010");
    private static final Standing MAT_ARTICLE = new FromMemory(
            "GT Engineering, positioning of pressure-sensitive mats or floors, gives it, but may describe the edition of 2010");

    Iso13855Ed2024Values(CopyValues copy) {
        super("iso-13855-2024", copy);
    }

    final Fixed armSpeed = speed("2000", "approach-speed-arm", "approach speed of the arm", PERPENDICULAR, LIKE_2010);
    final Fixed walkingSpeed = speed(
            "1600",
            "approach-speed-walking",
            "approach speed of walking",
            PERPENDICULAR,
            new FromMemory("the value of the edition of 2010; articles give it for two-hand controls and guards"));
    final Fixed near = length("S_min", "100", "least-distance", "least distance of a field", PERPENDICULAR, LIKE_2010);
    final Fixed far = length(
            "S_K",
            "500",
            "speed-limit-distance",
            "distance above which walking speed counts",
            PERPENDICULAR,
            LIKE_2010);

    final Fixed resolutionFactor = factor(
            "8",
            "resolution-factor",
            "reaching distance for each millimetre of detection capability",
            PERPENDICULAR,
            new FromMemory("an article says that the formula was extended"));
    final Fixed finger = length(
            "14 mm",
            "14",
            "finest-resolution",
            "detection capability without reaching through",
            PERPENDICULAR,
            LIKE_2010);
    final Fixed noReach =
            length("0 mm", "0", "no-negative-reach", "reaching through is never below zero", PERPENDICULAR, LIKE_2010);
    final Fixed armDetection = length(
            "40 mm",
            "40",
            "arm-resolution",
            "detection capability from which on another formula holds, which is not public",
            PERPENDICULAR,
            new Published(CHANGES));
    final Fixed unknownUntil = length(
            "55 mm",
            "55",
            "unknown-formula-end",
            "detection capability up to which the formula that is not public holds",
            PERPENDICULAR,
            new Published(CHANGES));
    final Fixed bodyReach = length(
            "850 mm",
            "850",
            "body-reach",
            "reaching distance through a field that detects bodies only",
            PERPENDICULAR,
            new FromMemory(""));
    final Fixed bodyDetection = length(
            "120 mm",
            "120",
            "body-resolution",
            "coarsest detection capability of a field approached at a right angle",
            PERPENDICULAR,
            new FromMemory(""));
    final Fixed severalBeams = length(
            "D_DT",
            "850",
            "beams-reach",
            "reaching distance between two, three or four beams",
            PERPENDICULAR,
            LIKE_2010);
    final Fixed singleBeam = length(
            "D_DT", "1200", "single-beam-reach", "reaching distance past a single beam", PERPENDICULAR, LIKE_2010);

    final Fixed lowestEdge = length(
            "h_low",
            "300",
            "lowest-edge",
            "height allowed for the lower edge of a field, or for the lowest beam, below which nobody passes",
            PERPENDICULAR,
            new FromMemory(
                    "the value of the edition of 2010; an article has the lowest beam generally at 200 mm now, and how far one"
                            + " reaches under it decides"));
    final Fixed gapBehind = length(
            "g_b",
            "75",
            "gap-behind",
            "widest gap between a field and the machine in which nobody stands undetected",
            PERPENDICULAR,
            new FromMemory(
                    "the value of the edition of 2010; an article says that standing behind a field must be examined"));

    final Reference through = unknownLength(
            "reach-through", "how far one reaches through, D_DT", PERPENDICULAR, Set.of(Form.OF_A_SAFEGUARD));
    final Reference over = unknownLength(
            "reach-over", "how far one reaches over, D_DO", PERPENDICULAR, Set.of(Form.OF_A_SAFEGUARD, Form.HEIGHTS));
    final Reference under =
            unknownLength("reach-under", "how far one reaches under, D_DU", PERPENDICULAR, Set.of(Form.OF_A_SAFEGUARD));

    final Fixed parallelReach = length(
            "D_DS",
            "1200",
            "parallel-reach",
            "reaching distance over a field along its plane",
            PARALLEL,
            new Published(PARALLEL_PAGE + "; " + CHANGES));
    final Fixed heightRatio = factor(
            "15",
            "parallel-height-ratio",
            "height for each millimetre of detection capability",
            PARALLEL,
            PARALLEL_ARTICLE);
    final Fixed finestAtFloor = length(
            "50 mm",
            "50",
            "parallel-floor-resolution",
            "coarsest detection capability at floor level",
            PARALLEL,
            PARALLEL_ARTICLE);
    final Fixed floor =
            length("0 mm", "0", "parallel-lowest-field", "least height of the field", PARALLEL, PARALLEL_ARTICLE);
    final Fixed highestField = length(
            "H_max", "1000", "parallel-highest-field", "greatest height of the field", PARALLEL, PARALLEL_ARTICLE);
    final Fixed crawling = length(
            "H_c",
            "200",
            "parallel-crawling-height",
            "height above which undetected access under the field has to be assessed",
            PARALLEL,
            new Published(PARALLEL_PAGE + "; " + CHANGES));

    final Fixed matReach =
            length("D_DS", "1200", "mat-reach", "reaching distance over a mat on the floor", MATS, MAT_ARTICLE);
    final Fixed matWidth =
            length("w_min", "750", "mat-width", "least width of a mat that nobody steps over", MATS, MAT_ARTICLE);
    final Fixed matSpeed = speed("1600", "approach-speed-mat", "approach speed over a mat", MATS, MAT_ARTICLE);

    final Fixed handSpeed = speed(
            "1600", "approach-speed-two-hand", "approach speed past a two-hand control", TWO_HANDS, TWO_HAND_ARTICLE);
    final Fixed hands = length(
            "D_DS",
            "550",
            "two-hand-reach",
            "reaching distance of hands past a two-hand control",
            TWO_HANDS,
            new Published("GT Engineering, EN ISO 13855, 8 two-hand control devices (text of 2024); " + CHANGES));
    final Fixed shrouded = length(
            "D_DS",
            "0",
            "two-hand-shrouded",
            "reaching distance where a shroud keeps the hands back",
            TWO_HANDS,
            TWO_HAND_ARTICLE);
    final Fixed shroudedLeast = length(
            "S_min",
            "100",
            "two-hand-least-distance",
            "least distance of a shrouded two-hand control",
            TWO_HANDS,
            TWO_HAND_ARTICLE);

    final Fixed guardSpeed = speed(
            "1600",
            "approach-speed-guard",
            "approach speed through a guard's opening",
            GUARDS,
            new Published("GT Engineering, EN ISO 13855, 9 interlocking guards without guard locking (text of 2024)"));
    final Fixed heldGuardSpeed = speed(
            "1600",
            "approach-speed-held-guard",
            "approach speed once a lock has let go; the time it holds counts for nothing",
            GUARDS,
            LIKE_2010);

    final Fixed leastRuns =
            number("n_min", "10", "least-runs", "runs due under each condition", STOPPING, new Published(CHANGES));
    final Fixed deviations = factor(
            "3",
            "standard-deviations",
            "standard deviations added to the mean of the runs; the highest run counts where it is greater",
            STOPPING,
            new FromMemory(
                    "the evaluation of the edition of 2010; an article says that the mean counts and is not read to"
                            + " its end"));
    final Reference coldAndWarm = reference(
            "cold-and-warm", "stops are measured with the machine cold and warm", STOPPING, new Published(CHANGES));
}
