package org.cellfile.standard;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Unit;
import org.cellfile.standard.Asked.Form;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Formula;
import org.cellfile.trace.Lookup;
import org.cellfile.trace.Reference;
import org.cellfile.trace.Term;
import org.cellfile.trace.Withheld;

/** A table of how wide the opening of a guard may be by its distance from the hazard, in inches, read the other way round. */
final class GuardOpeningTable {

    private final Reference reference;
    private final List<Row> rows;
    private final Map<CopyKey, Fixed> ours;

    /**
     * Openings up to a width.
     *
     * @param distance the least, as it counts: as read in a copy, or as held here
     */
    private record Row(Quantity to, Quantity width, Fixed distance) {}

    private GuardOpeningTable(Reference reference, List<Row> rows, Map<CopyKey, Fixed> ours) {
        this.reference = reference;
        this.rows = rows;
        this.ours = ours;
    }

    /**
     * Reads the resource beside this class: from, to, width, standing.
     *
     * @param published cited by the rows read in public
     * @param fromMemory cited by the others
     * @param copy whose rows stand in place of those held here from memory
     */
    static GuardOpeningTable load(String resource, Reference published, Reference fromMemory, CopyValues copy) {
        List<List<String>> lines = HeightTable.lines(resource);
        Map<CopyKey, Fixed> ours = new HashMap<>();
        List<Row> rows = new ArrayList<>();
        for (List<String> line : lines.subList(1, lines.size())) {
            Quantity width = Quantity.of(line.get(2), Unit.INCH);
            CopyKey key = new CopyKey.Opening(Optional.empty(), width);
            Fixed held = new Fixed(
                    "D", Quantity.of(line.get(0), Unit.INCH), line.get(3).equals("memory") ? fromMemory : published);
            ours.put(key, held);
            rows.add(new Row(Quantity.of(line.get(1), Unit.INCH), width, copy.or(held, key)));
        }
        return new GuardOpeningTable(published, rows, ours);
    }

    /** What a copy can tell of it: the least distance of every row, by the width it is for. */
    List<Asked> asked() {
        return Asked.of(Form.OPENINGS, ours);
    }

    /** The least distance at which an opening may be that wide; withheld when none of the rows is for so wide an opening. */
    Term distance(String symbol, Term opening) {
        if (opening.value().isEmpty()) {
            return new Withheld(symbol, "the opening is not known");
        }
        for (Row row : rows) {
            if (opening.value().get().compareTo(row.width) <= 0) {
                String taken = symbol + ": opening " + Formula.shown(opening) + ", row " + row.distance.quantity()
                        + " to " + row.to + " for a width of " + row.width + " at most";
                return new Lookup(symbol, row.distance.quantity(), row.distance.reference(), List.of(opening), taken);
            }
        }
        return Withheld.noRule(
                symbol,
                reference.clause() + " ends at an opening of " + rows.get(rows.size() - 1).width + ", and this one is "
                        + Formula.shown(opening));
    }
}
