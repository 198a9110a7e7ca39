package org.cellfile.standard;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.cellfile.quantity.Quantity;
import org.cellfile.trace.Clause;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Lookup;
import org.cellfile.trace.Reference;
import org.cellfile.trace.Standing.Published;
import org.cellfile.trace.Term;

/** The table of least gaps by part of the body that ISO 13854 took over from EN 349; its number is from memory. */
final class CrushingTable extends FixedValues {

    private final Reference reference;
    private final Map<String, Fixed> gaps;

    /**
     * @param edition as cited
     * @param prefix of the ids of its values
     */
    CrushingTable(String edition, String prefix, CopyValues copy) {
        super(prefix, copy);
        reference = reference(
                "least-gap",
                "least gap against crushing, by part of the body",
                new Clause(edition, "table 1"),
                new Published(
                        "AUVA lexicon, Safety Distances; in part Banner AG4 series manual, p. 45, and Access s.r.l.,"
                                + " minimum clearances floor to fence"));
        gaps = rows(
                "body-part",
                HeightTable.lines("iso-13854-table-1.csv").stream()
                        .skip(1)
                        .collect(Collectors.toMap(
                                line -> line.get(0),
                                line -> new Fixed("a", Quantity.millimetres(line.get(1)), reference))));
    }

    Term leastGap(String part) {
        Fixed gap = Objects.requireNonNull(gaps.get(part), part);
        return new Lookup(
                gap.symbol(),
                gap.quantity(),
                gap.reference(),
                List.of(),
                "a: row " + part + " of " + reference.clause());
    }
}
