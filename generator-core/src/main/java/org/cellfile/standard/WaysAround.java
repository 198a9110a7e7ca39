package org.cellfile.standard;

import java.util.List;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.quantity.Unit;
import org.cellfile.standard.PositioningStandard.PerpendicularField;
import org.cellfile.trace.Case;
import org.cellfile.trace.Case.Branch;
import org.cellfile.trace.Clause;
import org.cellfile.trace.Condition;
import org.cellfile.trace.Condition.Comparison;
import org.cellfile.trace.Count;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Standing;
import org.cellfile.trace.Standing.FromMemory;

/**
 * The ways below, over and behind a field approached at a right angle, for an edition of the United States of which no figures are
 * publicly known for them. Those of ISO 13855:2010 stand in for them as values of the edition's own, which a holder of it has to
 * confirm: a way around a field is not open because nothing was found about it.
 */
final class WaysAround {

    /** Of every value that stands in for one that is not publicly known. */
    static final Standing OWN_READING =
            new FromMemory("taken over from ISO 13855:2010, where it is published, as this program's own reading");

    static final String REMARK =
            "How a field is passed below, over and behind is read as in ISO 13855:2010, which is this program's own reading, to the"
                    + " cautious side. Where table 1 of that edition has a reach over the upper edge, however short, 36 in is counted; where"
                    + " it has none, nothing.";

    private static final Rounding INCHES = Rounding.up(Quantity.of("0.01", Unit.INCH));

    private static final Count NOTHING = new Count(Quantity.of("0", Unit.INCH));

    private final Clause clause;
    private final Fixed lowestEdge;
    private final Fixed gapBehind;
    private final HeightTable table;

    /**
     * @param values of the edition, among which these are
     * @param clause where the edition would have them
     */
    WaysAround(FixedValues values, Clause clause) {
        this.clause = clause;
        lowestEdge = values.length(
                "h_low",
                "300",
                "lowest-edge",
                "height allowed for the lower edge of a field below which nobody passes",
                clause,
                OWN_READING);
        gapBehind = values.length(
                "g_b",
                "75",
                "gap-behind",
                "widest gap between a field and the machine in which nobody stands undetected",
                clause,
                OWN_READING);
        table = values.heights(
                "iso-13855-2010-table-1.csv",
                "C_RO",
                values.reference("reach-over", "reaching over the upper edge of a field", clause, OWN_READING));
    }

    /** Of a field: how low it begins, and how narrow the space behind it is. */
    List<Derived> limits(Approach at) {
        return List.of(Positions.limit(at, "greatest-lower-edge", lowestEdge, Rounding.Side.DOWN), behind(at));
    }

    /** The widest gap behind a field in which nobody stands undetected. */
    Fixed widestGapBehind() {
        return gapBehind;
    }

    /** How narrow the space behind a field, or behind beams, is. */
    Derived behind(Approach at) {
        return Positions.limit(at, "greatest-gap-behind", gapBehind, Rounding.Side.DOWN);
    }

    /**
     * Over the upper edge.
     *
     * @param cell of the table, in mm; withheld where the edge is lower than the table begins
     * @param added to the distance for it, in inches
     */
    record Over(Derived cell, Derived added) {}

    /**
     * What is counted for reaching over the upper edge: nothing where the table has no reach.
     *
     * @param past what is counted where it has one
     */
    Over over(PerpendicularField field, Fixed past) {
        Approach at = field.approach();
        Derived cell = Positions.length(
                at,
                "reach-over-cell",
                "reach over the upper edge by table 1 of ISO 13855:2010",
                "C_RO",
                clause,
                table.reach(at.zoneLowest(), at.zoneHighest(), field.upperEdge()));
        Derived added = new Derived(
                at.tag(),
                "reach-over",
                "penetration over the field",
                "D_pf,o",
                past.reference().clause().toString(),
                new Case(List.of(new Branch(new Condition(cell, Comparison.AT_MOST, NOTHING), NOTHING)), past),
                INCHES);
        return new Over(cell, added);
    }
}
