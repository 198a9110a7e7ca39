package org.cellfile.standard;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.cellfile.quantity.Quantity;
import org.cellfile.trace.Clause;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Lookup;
import org.cellfile.trace.Reference;
import org.cellfile.trace.Standing.FromMemory;
import org.cellfile.trace.Standing.Published;
import org.cellfile.trace.Term;

/** The tables that ISO 13857 has carried unchanged through its editions of 2008 and 2019. */
final class Iso13857Tables extends FixedValues {

    private static final Published BODY =
            new Published("safety-products.de, safety distances; ZT Grassberger, ISO 13857 safety distance table");

    private final OpeningTable arms;
    private final OpeningTable legs;
    private final HeightTable structures;
    private final Map<String, List<String>> ends = new TreeMap<>();
    private final Map<String, Fixed> around = new TreeMap<>();
    private final Fixed slotForBody;
    private final Fixed openingForBody;

    /**
     * @param edition as cited
     * @param prefix of the ids of its values
     */
    Iso13857Tables(String edition, String prefix, CopyValues copy) {
        super(prefix, copy);
        Clause table2 = new Clause(edition, "table 2");
        Clause table3 = new Clause(edition, "table 3");
        Clause table4 = new Clause(edition, "table 4");
        Clause table7 = new Clause(edition, "table 7");
        arms = openings(
                "iso-13857-table-4.csv",
                "s_r",
                "an arm",
                reference(
                        "reach-through",
                        "reaching through regular openings, persons from 14 years on",
                        table4,
                        new Published(
                                "ZT Grassberger, ISO 13857 safety distance table; in part Dr. Birn, safety distance of lattice"
                                        + " fences; short slots also safety-products.de, safety distances, and"
                                        + " safetyfenceguarding.com, reaching through openings")),
                Map.of());
        legs = openings(
                "iso-13857-table-7.csv",
                "s_l",
                "a leg",
                reference(
                        "reach-with-legs",
                        "reaching through regular openings with the legs",
                        table7,
                        new FromMemory(
                                "published are 50 mm for slots up to 75 mm long (safety-products.de, safety distances),"
                                        + " without the row it belongs to")),
                Map.of(
                        new CopyKey.Opening(Optional.of("slot"), Quantity.millimetres("180")),
                        reference(
                                "reach-with-legs-slot",
                                "reaching with the legs through slots up to 180 mm",
                                table7,
                                new Published("ZT Grassberger, ISO 13857 safety distance table"))));
        structures = heights(
                "iso-13857-table-2.csv",
                "c",
                reference(
                        "reach-over",
                        "reaching over protective structures, high risk",
                        table2,
                        new FromMemory("one cell agrees with Genmacs, how to position")));
        Reference supported = reference(
                "reach-around-supported",
                "reaching around an end with the arm held back",
                table3,
                new FromMemory("the least length of 300 mm is published: GT Engineering, EN ISO 13857 upper limbs"));
        Map<String, Fixed> heldBack = new TreeMap<>();
        HeightTable.lines("iso-13857-table-3.csv").stream().skip(1).forEach(line -> ends.put(line.get(0), line));
        ends.forEach((support, line) -> {
            if (isFree(line)) {
                around.put(
                        support,
                        length(
                                "s_r",
                                line.get(1),
                                "reach-around",
                                "reaching around an end from the shoulder",
                                table3,
                                new Published("GT Engineering, EN ISO 13857 upper limbs")));
            } else {
                heldBack.put(support, new Fixed("s_r", Quantity.millimetres(line.get(1)), supported));
            }
        });
        around.putAll(rows("support", heldBack));
        slotForBody =
                length("e_max", "180", "body-through-slot", "widest slot through which no body passes", table7, BODY);
        openingForBody = length(
                "e_max",
                "240",
                "body-through-opening",
                "widest square or round opening through which no body passes",
                table7,
                BODY);
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
        Fixed reach = Objects.requireNonNull(around.get(support), support);
        List<String> row = Objects.requireNonNull(ends.get(support), support);
        return new Lookup(
                "s_r",
                reach.quantity(),
                reach.reference(),
                List.of(),
                "s_r: the arm is held back up to the " + support
                        + (isFree(row) ? "" : ", by something at least " + row.get(2) + " mm long"));
    }

    /** True when nothing holds the arm back, so that nothing has to be long. */
    private static boolean isFree(List<String> row) {
        return row.get(2).isEmpty();
    }

    Fixed widestWithoutBody(String shape) {
        return shape.equals("slot") ? slotForBody : openingForBody;
    }
}
