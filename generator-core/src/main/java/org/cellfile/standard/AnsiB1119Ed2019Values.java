package org.cellfile.standard;

import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Unit;
import org.cellfile.trace.Clause;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Reference;
import org.cellfile.trace.Standing;
import org.cellfile.trace.Standing.FromMemory;
import org.cellfile.trace.Standing.Published;

/**
 * What ANSI B11.19 fixes. The public makers' manuals in which its values were read cite it without a year, so that each value says
 * so. Where a manual prints a length in inches and in millimetres that are not the same, the one in inches is taken; it is the
 * longer one.
 */
final class AnsiB1119Ed2019Values extends FixedValues {

    static final String ID = "ANSI B11.19:2019";
    static final Clause FORMULA = new Clause(ID, "safety distance");
    static final Clause PENETRATION = new Clause(ID, "depth penetration factor");
    static final Clause MAT = new Clause(ID, "mats");
    private static final Clause AROUND = new Clause(ID, "ways around a field");
    private static final Clause ALONG = new Clause(ID, "horizontal fields");
    private static final Clause BEAMS = new Clause(ID, "separate beams");
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

    AnsiB1119Ed2019Values(CopyValues copy) {
        super("ansi-b11-19-2019", copy);
    }

    final Fixed speed =
            fixed("K", Quantity.of("63", Unit.INCH_PER_SECOND), "hand-speed", "hand speed", FORMULA, FORMULA_MANUALS);
    final Fixed share = fixed(
            "20 %",
            Quantity.of("20", Unit.PERCENT),
            "brake-share",
            "share of stopping time and control time added where no monitor watches the brake",
            FORMULA,
            FORMULA_MANUALS);
    final Fixed factor = fixed(
            "3.4",
            Quantity.of("3.4", Unit.ONE),
            "penetration-factor",
            "penetration for each unit of object sensitivity",
            PENETRATION,
            PENETRATION_MANUALS);
    final Fixed finger = fixed(
            "7 mm",
            Quantity.millimetres("7"),
            "finest-sensitivity",
            "object sensitivity without penetration",
            PENETRATION,
            PENETRATION_MANUALS);
    final Fixed none = inches(
            "0 in",
            "0",
            "no-negative-penetration",
            "penetration is never below zero",
            PENETRATION,
            PENETRATION_MANUALS);
    final Fixed hand = fixed(
            "64 mm",
            Quantity.millimetres("64"),
            "hand-sensitivity",
            "coarsest object sensitivity for which the penetration follows it",
            PENETRATION,
            new Published(
                    "Panasonic SF4-AH instruction manual, p. 39, which prints 64 mm (2.5 in); cited without a year"));
    final Fixed arm = inches(
            "36 in",
            "36",
            "arm-penetration",
            "penetration past a field of coarser object sensitivity, or over its upper edge",
            PENETRATION,
            COARSE_MANUAL);
    final Fixed body = length(
            "70 mm",
            "70",
            "body-sensitivity",
            "coarsest object sensitivity of a field approached at a right angle",
            PENETRATION,
            new FromMemory(
                    "where ISO 13855:2010 ends, as this program's own reading; the public manuals do not say where theirs end"));
    final WaysAround around = new WaysAround(this, AROUND);
    final Fixed beams =
            inches("D_pf", "36", "beams-penetration", "penetration between separate beams", PENETRATION, COARSE_MANUAL);
    final Fixed mat = inches(
            "D_pf",
            "48",
            "mat-penetration",
            "penetration over a mat",
            PENETRATION,
            new Published("Allen-Bradley safety mats, application details; cited without a year"));
    final Fixed along = inches(
            "D_pf",
            "48",
            "parallel-penetration",
            "penetration over a horizontal field",
            PENETRATION,
            new FromMemory("the same figure is published for mats"));
    final Fixed heightRatio = factor(
            "15",
            "parallel-height-ratio",
            "height for each millimetre of object sensitivity",
            ALONG,
            WaysAround.OWN_READING);
    final Fixed finestAtFloor = length(
            "50 mm",
            "50",
            "parallel-floor-sensitivity",
            "coarsest object sensitivity at floor level",
            ALONG,
            WaysAround.OWN_READING);
    final Fixed floor =
            length("0 mm", "0", "parallel-lowest-field", "least height of the field", ALONG, WaysAround.OWN_READING);
    final Fixed highestField = length(
            "H_max", "1000", "parallel-highest-field", "greatest height of the field", ALONG, WaysAround.OWN_READING);
    final Fixed crawling = length(
            "H_c",
            "300",
            "parallel-crawling-height",
            "height above which crawling under the field has to be assessed",
            ALONG,
            WaysAround.OWN_READING);

    /** A list by the number of beams, which no single value can stand for: it can be confirmed only. */
    final Reference beamHeights = reference(
            "beam-heights",
            "heights of separate beams: 750 mm; 400 and 900 mm; 300, 700 and 1100 mm; 300, 600, 900 and 1200 mm",
            BEAMS,
            WaysAround.OWN_READING);

    final Fixed hands = inches(
            "D_pf",
            "0",
            "two-hand-penetration",
            "penetration past a two-hand control",
            PENETRATION,
            new FromMemory(""));

    final Reference stopMeasurement = reference(
            "stop-measurement",
            "ten runs at least; the greater of the highest and the mean plus three standard deviations",
            STOPPING,
            new FromMemory(""));

    private Fixed inches(String symbol, String inches, String id, String name, Clause clause, Standing standing) {
        return fixed(symbol, Quantity.of(inches, Unit.INCH), id, name, clause, standing);
    }
}
