package org.cellfile.standard;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Unit;
import org.cellfile.standard.Asked.Form;
import org.cellfile.standard.CopyValues.Read;
import org.cellfile.trace.Formula;
import org.cellfile.trace.Lookup;
import org.cellfile.trace.Reference;
import org.cellfile.trace.Term;
import org.cellfile.trace.Withheld;

/**
 * A table of reach by height of the hazard (rows) and height of the edge reached over (columns), in mm, from a resource whose
 * head names its source.
 *
 * <p>Nothing is interpolated. The column is the one at the edge or the next lower one. The rows are all those from the one at or
 * below the hazard zone's lowest point to the one at or above its highest point, and the greatest cell of them counts, because
 * the table does not fall steadily with height.
 */
final class HeightTable {

    private final String symbol;
    private final Reference reference;
    private final List<BigDecimal> columns;
    private final List<Row> rows;
    private final CopyValues copy;

    private record Row(BigDecimal height, List<BigDecimal> cells) {}

    private HeightTable(String symbol, Reference reference, List<BigDecimal> columns, List<Row> rows, CopyValues copy) {
        this.symbol = symbol;
        this.reference = reference;
        this.columns = columns;
        this.rows = rows;
        this.copy = copy;
    }

    /** Reads the resource beside this class. */
    static HeightTable load(String resource, String symbol, Reference reference) {
        List<List<String>> lines = lines(resource);
        List<BigDecimal> columns = numbers(lines.get(0));
        List<Row> rows = lines.stream()
                .skip(1)
                .map(line -> new Row(new BigDecimal(line.get(0)), numbers(line)))
                .sorted((a, b) -> a.height.compareTo(b.height))
                .toList();
        return new HeightTable(symbol, reference, columns, rows, CopyValues.NONE);
    }

    /** The same with cells that were read in copies in place of those held here from memory. */
    HeightTable reading(CopyValues values) {
        return reference.fromMemory() ? new HeightTable(symbol, reference, columns, rows, values) : this;
    }

    /** What a copy can tell of it: every cell. */
    Asked asked() {
        Map<CopyKey, Quantity> cells = new HashMap<>();
        for (Row row : rows) {
            for (int column = 0; column < columns.size(); column++) {
                cells.put(key(row, column), millimetres(row.cells.get(column)));
            }
        }
        return new Asked(reference, Dimension.LENGTH, Set.of(Form.HEIGHTS), cells);
    }

    private CopyKey key(Row row, int column) {
        return new CopyKey.Heights(millimetres(row.height), millimetres(columns.get(column)));
    }

    private static Quantity millimetres(BigDecimal number) {
        return new Quantity(number, Unit.MILLIMETRE);
    }

    /** A cell as it counts: as it was read in a copy, or as it is held here. */
    private record Cell(Row row, Quantity ours, Optional<Read> theirs) {
        Quantity value() {
            return theirs.map(Read::is).orElse(ours);
        }
    }

    private Cell cell(Row row, int column) {
        return new Cell(row, millimetres(row.cells.get(column)), copy.of(reference.id(), key(row, column)));
    }

    /** The lines of a table resource that are not remarks, in cells. */
    static List<List<String>> lines(String resource) {
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(HeightTable.class.getResourceAsStream(resource), resource),
                StandardCharsets.UTF_8))) {
            return reader.lines()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .map(line -> Arrays.stream(line.split(",", -1))
                            .map(String::strip)
                            .toList())
                    .toList();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private static List<BigDecimal> numbers(List<String> cells) {
        return cells.stream().skip(1).map(BigDecimal::new).toList();
    }

    /** The reach over an edge towards a zone; withheld when the edge is lower than the table begins. */
    Term reach(Term lowest, Term highest, Term edge) {
        if (lowest.value().isEmpty()
                || highest.value().isEmpty()
                || edge.value().isEmpty()) {
            return new Withheld(symbol, "a height it needs is not known");
        }
        BigDecimal from = lowest.value().get().coherent();
        BigDecimal to = highest.value().get().coherent();
        BigDecimal height = edge.value().get().coherent();
        int column = -1;
        while (column + 1 < columns.size() && columns.get(column + 1).compareTo(height) <= 0) {
            column++;
        }
        if (column < 0) {
            return Withheld.noRule(
                    symbol,
                    reference.clause() + " begins at a height of " + columns.get(0) + " mm, and the edge is at "
                            + edge.value().get() + ", so no distance makes up for reaching over it");
        }
        int first = 0;
        while (first + 1 < rows.size() && rows.get(first + 1).height.compareTo(from) <= 0) {
            first++;
        }
        int last = rows.size() - 1;
        while (last - 1 >= first && rows.get(last - 1).height.compareTo(to) >= 0) {
            last--;
        }
        int taken = column;
        List<Cell> cells = rows.subList(first, last + 1).stream()
                .map(row -> cell(row, taken))
                .toList();
        Cell greatest = cells.get(0);
        for (Cell cell : cells) {
            if (cell.value().compareTo(greatest.value()) > 0) {
                greatest = cell;
            }
        }
        String how = symbol + " is the greatest cell of the rows " + rows.get(first).height + " mm to "
                + rows.get(last).height + " mm (hazard from " + Formula.shown(lowest) + " to " + Formula.shown(highest)
                + ") in the column " + columns.get(column) + " mm (edge at " + Formula.shown(edge) + "): row "
                + greatest.row.height + " mm";
        return new Lookup(symbol, greatest.value(), standing(greatest, cells), List.of(lowest, highest, edge), how);
    }

    /** The greatest cell was read in a copy only if those it was compared with were, too. */
    private Reference standing(Cell greatest, List<Cell> compared) {
        boolean all = compared.stream().allMatch(cell -> cell.theirs.isPresent());
        return greatest.theirs
                .filter(read -> all)
                .map(read -> read.reference(reference, CopyValues.beside(greatest.ours, read.is())))
                .orElse(reference);
    }
}
