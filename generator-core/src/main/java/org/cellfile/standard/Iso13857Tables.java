package org.cellfile.standard;

import org.cellfile.trace.Clause;
import org.cellfile.trace.Reference;
import org.cellfile.trace.Standing.FromMemory;
import org.cellfile.trace.Standing.Published;
import org.cellfile.trace.Term;

/** The tables that ISO 13857 has carried unchanged through its editions of 2008 and 2019. */
final class Iso13857Tables {

    private final OpeningTable openings;
    private final HeightTable structures;

    /**
     * @param edition as cited
     * @param prefix of the ids of its values
     */
    Iso13857Tables(String edition, String prefix) {
        openings = OpeningTable.load(
                "iso-13857-table-4.csv",
                new Reference(
                        prefix + ".reach-through",
                        "reaching through regular openings, persons from 14 years on",
                        new Clause(edition, "table 4"),
                        new Published(
                                "ZT Grassberger, ISO 13857 safety distance table; in part Dr. Birn, safety distance of lattice"
                                        + " fences")));
        structures = HeightTable.load(
                "iso-13857-table-2.csv",
                "c",
                new Reference(
                        prefix + ".reach-over",
                        "reaching over protective structures, high risk",
                        new Clause(edition, "table 2"),
                        new FromMemory("one cell agrees with Genmacs, how to position")));
    }

    Term through(ReachStandard.Opening opening) {
        return openings.reach(opening.shape(), opening.size());
    }

    Term over(Term zoneLowest, Term zoneHighest, Term height) {
        return structures.reach(zoneLowest, zoneHighest, height);
    }
}
