package org.cellfile.standard;

import java.util.List;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Unit;
import org.cellfile.trace.Formula;
import org.cellfile.trace.Lookup;
import org.cellfile.trace.Reference;
import org.cellfile.trace.Term;
import org.cellfile.trace.Withheld;

/** A table of how wide the opening of a guard may be by its distance from the hazard, in inches, read the other way round. */
final class GuardOpeningTable {

    private final Reference published;
    private final Reference fromMemory;
    private final List<Row> rows;

    private record Row(Quantity from, Quantity to, Quantity width, boolean remembered) {}

    /**
     * Reads the resource beside this class: from, to, width, standing.
     *
     * @param published cited by the rows read in public
     * @param fromMemory cited by the others
     */
    GuardOpeningTable(String resource, Reference published, Reference fromMemory) {
        this.published = published;
        this.fromMemory = fromMemory;
        rows = HeightTable.lines(resource).stream()
                .skip(1)
                .map(line -> new Row(
                        Quantity.of(line.get(0), Unit.INCH),
                        Quantity.of(line.get(1), Unit.INCH),
                        Quantity.of(line.get(2), Unit.INCH),
                        line.get(3).equals("memory")))
                .toList();
    }

    /** The least distance at which an opening may be that wide; withheld when none of the rows is for so wide an opening. */
    Term distance(String symbol, Term opening) {
        if (opening.value().isEmpty()) {
            return new Withheld(symbol, "the opening is not known");
        }
        for (Row row : rows) {
            if (opening.value().get().compareTo(row.width) <= 0) {
                String taken = symbol + ": opening " + Formula.shown(opening) + ", row " + row.from + " to " + row.to
                        + " for a width of " + row.width + " at most";
                return new Lookup(symbol, row.from, row.remembered ? fromMemory : published, List.of(opening), taken);
            }
        }
        return Withheld.noRule(
                symbol,
                published.clause() + " ends at an opening of " + rows.get(rows.size() - 1).width + ", and this one is "
                        + Formula.shown(opening));
    }
}
