package org.cellfile.standard;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.cellfile.quantity.Quantity;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Formula;
import org.cellfile.trace.Lookup;
import org.cellfile.trace.Reference;
import org.cellfile.trace.Term;
import org.cellfile.trace.Withheld;

/**
 * The frequency of dangerous failure of a structure by the mean time to dangerous failure of its channels. Nothing is interpolated:
 * the row is the one at the time or the next lower one.
 */
final class FailureTable {

    private static final String SYMBOL = "PFH_D";

    /** Columns in the order of the resource; one for each structure and class of coverage. */
    private final List<String> columns;

    private final List<BigDecimal> rows = new ArrayList<>();
    private final Map<String, Fixed> cells = new LinkedHashMap<>();

    /**
     * Reads the resource beside this class.
     *
     * @param published cells, as {@code 4-high-30}, read in public, with the reference each cites
     * @param fromMemory cited by the others
     */
    FailureTable(String resource, Map<String, Reference> published, Reference fromMemory) {
        List<List<String>> lines = HeightTable.lines(resource);
        columns = lines.get(0).subList(1, lines.get(0).size());
        for (List<String> line : lines.subList(1, lines.size())) {
            rows.add(new BigDecimal(line.get(0)));
            for (int i = 0; i < columns.size(); i++) {
                String number = line.get(i + 1);
                if (!number.isEmpty()) {
                    String key = key(columns.get(i), line.get(0));
                    cells.put(
                            key,
                            new Fixed(
                                    SYMBOL,
                                    Quantity.perHour(number),
                                    Objects.requireNonNull(published.getOrDefault(key, fromMemory))));
                }
            }
        }
    }

    private FailureTable(List<String> columns, List<BigDecimal> rows, Map<String, Fixed> cells) {
        this.columns = columns;
        this.rows.addAll(rows);
        this.cells.putAll(cells);
    }

    /** The same with the cells as somebody read them in a copy. */
    FailureTable counting(Map<String, Fixed> read) {
        return new FailureTable(columns, rows, read);
    }

    Map<String, Fixed> cells() {
        return cells;
    }

    private static String key(String column, String row) {
        return column + "-" + row;
    }

    /** The cell of a column at a time. */
    Term at(String column, Term mttfd, List<Term> keys) {
        Optional<Quantity> time = mttfd.value();
        if (time.isEmpty()) {
            return new Withheld(SYMBOL, "the mean time to dangerous failure is not known");
        }
        for (int i = rows.size() - 1; i >= 0; i--) {
            Fixed cell = cells.get(key(column, rows.get(i).toPlainString()));
            Quantity row = Quantity.years(rows.get(i).toPlainString());
            if (cell != null && row.compareTo(time.get()) <= 0) {
                return new Lookup(
                        "K.1(" + column.replace("-", ", ") + ")",
                        cell.quantity(),
                        cell.reference(),
                        keys,
                        SYMBOL + " stands in the row " + row
                                + (lastFilled(i, time.get())
                                        ? ", the last filled below "
                                        : ", the one at or next below ")
                                + Formula.shown(mttfd) + ", in the column " + column.replace("-", ", "));
            }
        }
        return new Withheld(SYMBOL, "the table has no row for " + Formula.shown(mttfd) + " in the column " + column);
    }

    /** Whether rows between it and the time are empty. */
    private boolean lastFilled(int row, Quantity time) {
        return row + 1 < rows.size()
                && Quantity.years(rows.get(row + 1).toPlainString()).compareTo(time) <= 0;
    }
}
