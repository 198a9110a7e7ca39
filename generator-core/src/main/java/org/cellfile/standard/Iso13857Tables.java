package org.cellfile.standard;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.cellfile.quantity.Quantity;
import org.cellfile.trace.Clause;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Lookup;
import org.cellfile.trace.Reference;
import org.cellfile.trace.Standing;
import org.cellfile.trace.Standing.FromMemory;
import org.cellfile.trace.Standing.Published;
import org.cellfile.trace.Term;

/** The tables that ISO 13857 has carried unchanged through its editions of 2008 and 2019. */
final class Iso13857Tables {

    private final String edition;
    private final String prefix;
    private final OpeningTable arms;
    private final OpeningTable legs;
    private final HeightTable structures;
    private final Map<String, List<String>> ends = new HashMap<>();

    /**
     * @param edition as cited
     * @param prefix of the ids of its values
     */
    Iso13857Tables(String edition, String prefix) {
        this.edition = edition;
        this.prefix = prefix;
        arms = OpeningTable.load(
                "iso-13857-table-4.csv",
                "s_r",
                "an arm",
                reference(
                        "reach-through",
                        "reaching through regular openings, persons from 14 years on",
                        "table 4",
                        new Published(
                                "ZT Grassberger, ISO 13857 safety distance table; in part Dr. Birn, safety distance of lattice"
                                        + " fences; short slots also safety-products.de, safety distances, and"
                                        + " safetyfenceguarding.com, reaching through openings")));
        legs = OpeningTable.load(
                "iso-13857-table-7.csv",
                "s_l",
                "a leg",
                reference(
                        "reach-with-legs",
                        "reaching through regular openings with the legs",
                        "table 7",
                        new FromMemory(
                                "published are the slot up to 180 mm with 1100 mm (ZT Grassberger, ISO 13857 safety"
                                        + " distance table) and 50 mm for slots up to 75 mm long (safety-products.de, safety distances),"
                                        + " without the row it belongs to")));
        structures = HeightTable.load(
                "iso-13857-table-2.csv",
                "c",
                reference(
                        "reach-over",
                        "reaching over protective structures, high risk",
                        "table 2",
                        new FromMemory("one cell agrees with Genmacs, how to position")));
        HeightTable.lines("iso-13857-table-3.csv").stream().skip(1).forEach(line -> ends.put(line.get(0), line));
    }

    Term through(ReachStandard.Opening opening) {
        return arms.reach(opening);
    }

    Term throughWithLegs(ReachStandard.Opening opening) {
        return legs.reach(opening);
    }

    Term over(Term zoneLowest, Term zoneHighest, Term height) {
        return structures.reach(zoneLowest, zoneHighest, height);
    }

    Term around(String support) {
        List<String> row = Objects.requireNonNull(ends.get(support), support);
        boolean free = row.get(2).isEmpty();
        Reference table = free
                ? reference(
                        "reach-around",
                        "reaching around an end from the shoulder",
                        "table 3",
                        new Published("GT Engineering, EN ISO 13857 upper limbs"))
                : reference(
                        "reach-around-supported",
                        "reaching around an end with the arm held back",
                        "table 3",
                        new FromMemory(
                                "the least length of 300 mm is published: GT Engineering, EN ISO 13857 upper limbs"));
        return new Lookup(
                "s_r",
                Quantity.millimetres(row.get(1)),
                table,
                List.of(),
                "s_r: the arm is held back up to the " + support
                        + (free ? "" : ", by something at least " + row.get(2) + " mm long"));
    }

    Fixed widestWithoutBody(String shape) {
        boolean slot = shape.equals("slot");
        return new Fixed(
                "e_max",
                Quantity.millimetres(slot ? "180" : "240"),
                reference(
                        slot ? "body-through-slot" : "body-through-opening",
                        slot
                                ? "widest slot through which no body passes"
                                : "widest square or round opening through which no body passes",
                        "table 7",
                        new Published(
                                "safety-products.de, safety distances; ZT Grassberger, ISO 13857 safety distance table")));
    }

    private Reference reference(String id, String name, String place, Standing standing) {
        return new Reference(prefix + "." + id, name, new Clause(edition, place), standing);
    }
}
