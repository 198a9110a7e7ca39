package org.cellfile.standard;

import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Unit;
import org.cellfile.trace.Clause;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Reference;
import org.cellfile.trace.Standing;
import org.cellfile.trace.Standing.FromMemory;
import org.cellfile.trace.Standing.Published;

/** What 29 CFR 1910.217 fixes; each value names where it was read. */
final class Cfr1910Sec217Values extends FixedValues {

    static final String ID = "29 CFR 1910.217";
    static final Clause PRESENCE_SENSING = new Clause(ID, "(c)(3)(iii)(e)");
    static final Clause TWO_HANDS = new Clause(ID, "(c)(3)(vii)(c)");
    static final Clause TWO_HAND_TRIP = new Clause(ID, "(c)(3)(viii)(c)");
    static final Clause STARTING_THE_CYCLE = new Clause(ID, "(h)(9)(v)");
    static final Clause OPENINGS = new Clause(ID, "table O-10");

    /** Asks for guards wherever a field does not protect (WAC 296-806-45516 (4)); the paragraph's letter is from memory. */
    private static final Clause AROUND = new Clause(ID, "(c)(3)(iii)(f)");

    private static final Standing SPEED_SOURCES = new Published(
            "OSHA Machine Guarding eTool, presses, safety distance; WAC 296-806-45516; Rockwell Automation 450L-UM001D, p. 70");

    Cfr1910Sec217Values(CopyValues copy) {
        super("29-cfr-1910-217", copy);
    }

    final Fixed handSpeed = handSpeed("63 in/s", "hand-speed", "hand speed", PRESENCE_SENSING, SPEED_SOURCES);
    final Fixed twoHandSpeed = handSpeed(
            "63 in/s",
            "two-hand-speed",
            "hand speed from a two-hand control",
            TWO_HANDS,
            new Published("WAC 296-806-45524; OSHA Machine Guarding eTool, presses, safety distance"));
    final Fixed halfATurn = fixed(
            "1/2",
            Quantity.of("0.5", Unit.ONE),
            "clutch-half-turn",
            "part of a turn in which the dies close once the clutch has engaged; to it comes one turn for each of its"
                    + " engaging points",
            TWO_HAND_TRIP,
            new Published("OSHA Machine Guarding eTool, presses, safety distance"));

    final WaysAround around = new WaysAround(this, AROUND);
    final Fixed pastTheEdge = fixed(
            "36 in",
            Quantity.of("36", Unit.INCH),
            "reach-over-penetration",
            "penetration over the upper edge of a field",
            AROUND,
            new FromMemory("what a maker's manual prints for ANSI B11.19, as this program's own reading"));

    private static final Standing MEMORY_OF_STARTING = new FromMemory(
            "a damaged public copy shows the paragraph and the hand speed of 63 in/s, not the rest of the formula");
    final Fixed startingSpeed = handSpeed(
            "H_s",
            "starting-hand-speed",
            "hand speed where the field starts the cycle",
            STARTING_THE_CYCLE,
            MEMORY_OF_STARTING);
    final Fixed twice = fixed(
            "2",
            Quantity.count(2),
            "starting-brake-factor",
            "how many times the allowance of the brake monitor counts",
            STARTING_THE_CYCLE,
            MEMORY_OF_STARTING);

    /** A chart of the regulation, which no single value can stand for: it can be confirmed only. */
    private final Reference startingPenetration = reference(
            "starting-penetration",
            "penetration by object sensitivity, 3.4 (d − 7 mm) up to 64 mm; the regulation has it in a chart",
            STARTING_THE_CYCLE,
            new FromMemory("taken from the formula that makers' manuals print for ANSI B11.19"));

    final Fixed startingFactor = new Fixed("3.4", Quantity.of("3.4", Unit.ONE), startingPenetration);
    final Fixed startingFinger = new Fixed("7 mm", Quantity.millimetres("7"), startingPenetration);
    final Fixed startingNone = new Fixed("0 in", Quantity.of("0", Unit.INCH), startingPenetration);
    static final Quantity STARTING_COARSEST = Quantity.millimetres("64");

    final GuardOpeningTable openings = guardOpenings(
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

    private Fixed handSpeed(String symbol, String id, String name, Clause clause, Standing standing) {
        return fixed(symbol, Quantity.of("63", Unit.INCH_PER_SECOND), id, name, clause, standing);
    }
}
