package org.cellfile.standard;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.cellfile.quantity.Quantity;
import org.cellfile.standard.CopyValues.Read;
import org.cellfile.trace.Formula;
import org.cellfile.trace.Lookup;
import org.cellfile.trace.Reference;
import org.cellfile.trace.Term;

/**
 * A table of reach by height of the hazard and of the edge reached over, of which nothing is publicly known: it holds the cells that
 * somebody read in a copy, and no others. It is looked up like {@link HeightTable}; where the cells do not span the hazard zone,
 * nothing is taken from it.
 */
record ReadTable(String symbol, Reference asked, CopyValues copy) {

    /** A cell by its heights. */
    private record Cell(Quantity hazard, Quantity edge, Read read) {}

    /** The reach over an edge towards a zone; empty when a height or a cell that it needs is missing. */
    Optional<Term> reach(Term lowest, Term highest, Term edge) {
        if (lowest.value().isEmpty()
                || highest.value().isEmpty()
                || edge.value().isEmpty()) {
            return Optional.empty();
        }
        List<Cell> cells = copy.cells(asked).stream().map(ReadTable::cell).toList();
        Optional<Quantity> column = cells.stream()
                .map(Cell::edge)
                .filter(one -> one.compareTo(edge.value().get()) <= 0)
                .max(Comparator.naturalOrder());
        List<Cell> inColumn = cells.stream()
                .filter(cell -> Optional.of(cell.edge).equals(column))
                .toList();
        Optional<Quantity> first = inColumn.stream()
                .map(Cell::hazard)
                .filter(one -> one.compareTo(lowest.value().get()) <= 0)
                .max(Comparator.naturalOrder());
        Optional<Quantity> last = inColumn.stream()
                .map(Cell::hazard)
                .filter(one -> one.compareTo(highest.value().get()) >= 0)
                .min(Comparator.naturalOrder());
        if (first.isEmpty() || last.isEmpty()) {
            return Optional.empty();
        }
        return inColumn.stream()
                .filter(cell -> cell.hazard.compareTo(first.get()) >= 0 && cell.hazard.compareTo(last.get()) <= 0)
                .max(Comparator.comparing((Cell cell) -> cell.read.is()))
                .map(
                        greatest -> new Lookup(
                                symbol,
                                greatest.read.is(),
                                greatest.read.reference(asked, "not publicly known"),
                                List.of(lowest, highest, edge),
                                symbol + " is the greatest of the rows read from "
                                        + first.get().plain() + " to "
                                        + last.get().plain() + " (hazard from " + Formula.shown(lowest) + " to "
                                        + Formula.shown(highest) + ") in the column " + greatest.edge.plain()
                                        + " (edge at "
                                        + Formula.shown(edge) + "): row " + greatest.hazard.plain()
                                        + "; that the copy has no row or column between those stated is the word of who read it"));
    }

    private static Cell cell(Read read) {
        CopyKey.Heights heights = (CopyKey.Heights) read.key();
        return new Cell(heights.hazard(), heights.edge(), read);
    }
}
