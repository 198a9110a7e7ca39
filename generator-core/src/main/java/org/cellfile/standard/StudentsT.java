package org.cellfile.standard;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Unit;
import org.cellfile.trace.Clause;
import org.cellfile.trace.Lookup;
import org.cellfile.trace.Reference;
import org.cellfile.trace.Standing.Published;
import org.cellfile.trace.Term;

/**
 * Critical values of Student's t for a confidence of 95 %, half of what is left on each side. Source: NIST/SEMATECH e-Handbook of
 * Statistical Methods, section 1.3.6.7.2.
 */
public final class StudentsT {

    private static final String SOURCE = "NIST/SEMATECH e-Handbook of Statistical Methods";

    private static final Reference REFERENCE = new Reference(
            "students-t.both-sides-95",
            "Student's t for a confidence of 95 % on both sides together",
            new Clause(SOURCE, "section 1.3.6.7.2"),
            new Published(SOURCE + ", section 1.3.6.7.2, critical values of Student's t distribution, column 0.975"));

    private static final NavigableMap<Integer, Quantity> ROWS = rows();

    private StudentsT() {}

    private static NavigableMap<Integer, Quantity> rows() {
        NavigableMap<Integer, Quantity> rows = new TreeMap<>();
        HeightTable.lines("students-t.csv").stream()
                .skip(1)
                .forEach(line ->
                        rows.put(Integer.valueOf(line.get(0)), new Quantity(new BigDecimal(line.get(1)), Unit.ONE)));
        return rows;
    }

    /**
     * The value for a number of degrees of freedom. Where that has no row, the row before it is taken, whose value is greater.
     *
     * @param degrees at least 1, a whole number
     * @param number the same as a term
     */
    public static Lookup of(int degrees, Term number) {
        Map.Entry<Integer, Quantity> row = ROWS.floorEntry(degrees);
        return new Lookup(
                "t_95",
                row.getValue(),
                REFERENCE,
                List.of(number),
                "t_95 stands in the row of " + row.getKey() + (row.getKey() == 1 ? " degree" : " degrees")
                        + " of freedom, for " + degrees);
    }
}
