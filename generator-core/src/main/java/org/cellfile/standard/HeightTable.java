package org.cellfile.standard;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Unit;
import org.cellfile.standard.Asked.Form;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Formula;
import org.cellfile.trace.Lookup;
import org.cellfile.trace.Reference;
import org.cellfile.trace.Standing.FromMemory;
import org.cellfile.trace.Standing.ReadInCopy;
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
    private final Map<CopyKey, Fixed> ours;

    /** The cells as they count: as read in a copy, or as held here. */
    private record Row(BigDecimal height, List<Cell> cells) {}

    private record Cell(BigDecimal height, CopyKey key, Fixed is) {}

    private HeightTable(
            String symbol, Reference reference, List<BigDecimal> columns, List<Row> rows, Map<CopyKey, Fixed> ours) {
        this.symbol = symbol;
        this.reference = reference;
        this.columns = columns;
        this.rows = rows;
        this.ours = ours;
    }

    /**
     * Reads the resource beside this class.
     *
     * @param copy whose cells stand in place of those held here from memory
     */
    static HeightTable load(String resource, String symbol, Reference reference, CopyValues copy) {
        List<List<String>> lines = lines(resource);
        List<BigDecimal> columns = numbers(lines.get(0));
        Map<CopyKey, Fixed> ours = new HashMap<>();
        List<Row> rows = new ArrayList<>();
        for (List<String> line : lines.subList(1, lines.size())) {
            BigDecimal height = new BigDecimal(line.get(0));
            List<BigDecimal> numbers = numbers(line);
            List<Cell> cells = new ArrayList<>();
            for (int column = 0; column < columns.size(); column++) {
                CopyKey key = new CopyKey.Heights(millimetres(height), millimetres(columns.get(column)));
                Fixed held = new Fixed(symbol, millimetres(numbers.get(column)), reference);
                ours.put(key, held);
                cells.add(new Cell(height, key, copy.or(held, key)));
            }
            rows.add(new Row(height, cells));
        }
        rows.sort(Comparator.comparing(Row::height));
        return new HeightTable(symbol, reference, columns, rows, ours);
    }

    /** What a copy can tell of it: every cell. */
    List<Asked> asked() {
        return Asked.of(Form.HEIGHTS, ours);
    }

    private static Quantity millimetres(BigDecimal number) {
        return new Quantity(number, Unit.MILLIMETRE);
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
                .map(row -> row.cells.get(taken))
                .toList();
        Cell greatest = cells.get(0);
        for (Cell cell : cells) {
            if (cell.is.quantity().compareTo(greatest.is.quantity()) > 0) {
                greatest = cell;
            }
        }
        String how = symbol + " is the greatest cell of the rows " + rows.get(first).height + " mm to "
                + rows.get(last).height + " mm (hazard from " + Formula.shown(lowest) + " to " + Formula.shown(highest)
                + ") in the column " + columns.get(column) + " mm (edge at " + Formula.shown(edge) + "): row "
                + greatest.height + " mm";
        return new Lookup(
                symbol, greatest.is.quantity(), standing(greatest, cells), List.of(lowest, highest, edge), how);
    }

    /**
     * The greatest cell was read in a copy only if those it was compared with were, too: otherwise the table stays from memory,
     * and says which of them were read.
     */
    private Reference standing(Cell greatest, List<Cell> compared) {
        List<String> read = compared.stream()
                .filter(cell -> cell.is.reference().standing() instanceof ReadInCopy)
                .map(cell -> "the cell" + cell.key.words() + " "
                        + cell.is.reference().standing().words())
                .toList();
        if (reference.standing() instanceof FromMemory memory && !read.isEmpty() && read.size() < compared.size()) {
            String remark = Stream.concat(Stream.of(memory.remark()), read.stream())
                    .filter(words -> !words.isEmpty())
                    .collect(Collectors.joining("; "));
            return new Reference(reference.id(), reference.name(), reference.clause(), new FromMemory(remark));
        }
        return greatest.is.reference();
    }
}
