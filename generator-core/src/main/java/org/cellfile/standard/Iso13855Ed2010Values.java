package org.cellfile.standard;

import org.cellfile.trace.Clause;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Reference;
import org.cellfile.trace.Standing;
import org.cellfile.trace.Standing.FromMemory;
import org.cellfile.trace.Standing.Published;

/**
 * What ISO 13855:2010 fixes. The values were read in public makers' manuals that cite it (named with each); clause numbers are from
 * memory where no source is named.
 */
final class Iso13855Ed2010Values extends FixedValues {

    static final String ID = "ISO 13855:2010";
    static final Clause PERPENDICULAR = new Clause(ID, "cl. 6.2");
    static final Clause PARALLEL = new Clause(ID, "cl. 6.3");
    static final Clause REACHING_OVER = new Clause(ID, "cl. 6.5 and table 1");
    static final Clause MATS = new Clause(ID, "cl. 7");
    static final Clause TWO_HANDS = new Clause(ID, "cl. 8");
    static final Clause GUARDS = new Clause(ID, "cl. 9");
    static final Clause STOPPING = new Clause(ID, "cl. 5");

    private static final Standing CURTAIN_MANUALS = new Published(
            "SICK C4000 operating instructions 8009861, p. 41; Rockwell Automation 450L-UM001D, p. 72; Panasonic SF4-AH manual,"
                    + " p. 38");
    private static final Standing SCANNER_MANUALS = new Published(
            "SICK microScan3 operating instructions, p. 31 and 37; Datalogic general catalogue, p. 383; Schmersal SLC 410-B,"
                    + " p. 47");

    Iso13855Ed2010Values(CopyValues copy) {
        super("iso-13855-2010", copy);
    }

    final Fixed armSpeed =
            speed("2000", "approach-speed-arm", "approach speed of the arm", PERPENDICULAR, CURTAIN_MANUALS);
    final Fixed walkingSpeed =
            speed("1600", "approach-speed-walking", "approach speed of walking", PERPENDICULAR, CURTAIN_MANUALS);
    final Fixed near =
            length("S_min", "100", "least-distance", "least distance of a field", PERPENDICULAR, CURTAIN_MANUALS);
    final Fixed far = length(
            "S_K",
            "500",
            "speed-limit-distance",
            "distance above which walking speed counts",
            PERPENDICULAR,
            CURTAIN_MANUALS);
    final Fixed resolutionFactor = factor(
            "8", "resolution-factor", "intrusion for each millimetre of resolution", PERPENDICULAR, CURTAIN_MANUALS);
    final Fixed finger =
            length("14 mm", "14", "finest-resolution", "resolution without intrusion", PERPENDICULAR, CURTAIN_MANUALS);
    final Fixed noIntrusion = length(
            "0 mm", "0", "no-negative-intrusion", "intrusion is never below zero", PERPENDICULAR, CURTAIN_MANUALS);
    final Fixed armDetection = length(
            "40 mm",
            "40",
            "arm-resolution",
            "coarsest resolution for which the intrusion follows the resolution",
            PERPENDICULAR,
            CURTAIN_MANUALS);
    final Fixed bodyDetection = length(
            "70 mm",
            "70",
            "body-resolution",
            "coarsest resolution of a field approached at a right angle",
            PERPENDICULAR,
            new Published("wenglor SG4-..I operating instructions, p. 31"));
    final Fixed bodyIntrusion = length(
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
    final Fixed lowestBeam = length(
            "h_low",
            "300",
            "body-lowest-beam",
            "height allowed for the lower edge of a field below which nobody passes",
            PERPENDICULAR,
            BEAM_HEIGHTS);
    final Fixed armLength =
            length("1200 mm", "1200", "parallel-intrusion", "intrusion at floor level", PARALLEL, SCANNER_MANUALS);
    final Fixed heightFactor = factor(
            "0.4",
            "parallel-height-factor",
            "intrusion saved for each millimetre of height",
            PARALLEL,
            SCANNER_MANUALS);
    final Fixed leastIntrusion =
            length("850 mm", "850", "parallel-least-intrusion", "least intrusion", PARALLEL, SCANNER_MANUALS);
    final Fixed heightRatio = factor(
            "15", "parallel-height-ratio", "height for each millimetre of resolution", PARALLEL, SCANNER_MANUALS);
    final Fixed finestAtFloor = length(
            "50 mm",
            "50",
            "parallel-floor-resolution",
            "coarsest resolution at floor level",
            PARALLEL,
            SCANNER_MANUALS);
    final Fixed highestField = length(
            "H_max", "1000", "parallel-highest-field", "greatest height of the field", PARALLEL, SCANNER_MANUALS);
    final Fixed crawling = length(
            "H_c",
            "300",
            "parallel-crawling-height",
            "height above which crawling under the field has to be assessed",
            PARALLEL,
            new Published("Leuze Safety at Work handbook, multiple beam devices"));

    final Fixed gapBehind = length(
            "g_b",
            "75",
            "gap-behind",
            "widest gap between a field and the machine in which nobody stands undetected",
            PERPENDICULAR,
            new Published("Rockwell Automation 450L-UM001D, p. 72; SICK C4000 operating instructions 8009861, p. 41;"
                    + " Rockwell SafeShield hardware manual, p. 22"));

    private static final Standing BEAM_MANUALS = new Published(
            "Datalogic general catalogue, p. 383; Leuze Safety at Work handbook, multiple beam devices; Panasonic ST4"
                    + " instruction manual, p. 17");
    final Fixed severalBeams = length(
            "C", "850", "beams-intrusion", "intrusion between two, three or four beams", PERPENDICULAR, BEAM_MANUALS);
    final Fixed singleBeam =
            length("C", "1200", "single-beam-intrusion", "intrusion past a single beam", PERPENDICULAR, BEAM_MANUALS);

    private static final Standing MAT_MANUALS = new Published(
            "GT Engineering, positioning of pressure-sensitive mats or floors; Allen-Bradley safety mats, application details;"
                    + " OEM Update, pressure mat safety distances");
    final Fixed matReach =
            length("1200 mm", "1200", "mat-intrusion", "intrusion over a mat on the floor", MATS, MAT_MANUALS);
    final Fixed stepFactor =
            factor("0.4", "mat-step-factor", "intrusion saved for each millimetre of a step", MATS, MAT_MANUALS);
    final Fixed matWidth = length(
            "w_min",
            "750",
            "mat-width",
            "least width of a mat that nobody steps over",
            MATS,
            new Published(
                    "GT Engineering, positioning of pressure-sensitive mats or floors; Tapeswitch CKP-S1 manual, p. 10"));

    private static final Standing TWO_HAND_MANUALS = new Published(
            "Omron Safety handbook PNSPO, p. 27; Jaeger Handling, minimum distance of two-hand controls (formula and speed)");
    final Fixed hands = length(
            "C",
            "250",
            "two-hand-intrusion",
            "intrusion of hands past a two-hand control",
            TWO_HANDS,
            TWO_HAND_MANUALS);
    final Fixed shrouded = length(
            "C",
            "0",
            "two-hand-shrouded",
            "intrusion where a shroud keeps the hands back",
            TWO_HANDS,
            TWO_HAND_MANUALS);
    final Fixed shroudedLeast = length(
            "S_min",
            "100",
            "two-hand-least-distance",
            "least distance of a shrouded two-hand control",
            TWO_HANDS,
            TWO_HAND_MANUALS);

    final Fixed rightAngle = angle(
            "β_min",
            "30",
            "least-right-angle",
            "least angle of approach that counts as a right angle",
            PERPENDICULAR,
            new Published("Datalogic general catalogue, p. 383; Datalogic Laser Sentinel manual, p. 16"));

    final Fixed guardSpeed = speed(
            "1600",
            "approach-speed-guard",
            "approach speed through a guard's opening",
            GUARDS,
            new Published("ABB product manuals 2TLC010088M0201, p. 10, and 2TLC172249M0201, p. 9"));

    final Reference stopMeasurement = reference(
            "stop-measurement",
            "ten runs at least; the greater of the highest and the mean plus three standard deviations",
            STOPPING,
            new FromMemory(""));

    final HeightTable reachOver = heights(
            "iso-13855-2010-table-1.csv",
            "C_RO",
            reference(
                    "reach-over",
                    "reaching over the upper edge of a field",
                    REACHING_OVER,
                    new Published(
                            "Schmersal SLC440/SLG440 operating instructions, p. 13; between rows and columns as in wenglor SEFB"
                                    + " operating instructions, p. 39 and 41")));
}
