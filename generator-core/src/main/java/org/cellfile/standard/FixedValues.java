package org.cellfile.standard;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Unit;
import org.cellfile.standard.Asked.Form;
import org.cellfile.trace.Clause;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Reference;
import org.cellfile.trace.Standing;

/**
 * The fixed values of an edition, each declared once in a field of a class for that edition: as held here, or as somebody read it in
 * a copy.
 */
abstract class FixedValues {

    private final String prefix;
    private final CopyValues copy;
    private final List<Asked> asked = new ArrayList<>();

    /**
     * @param prefix of the ids of its values
     * @param copy what was read in copies
     */
    FixedValues(String prefix, CopyValues copy) {
        this.prefix = prefix;
        this.copy = copy;
    }

    Fixed length(String symbol, String millimetres, String id, String name, Clause clause, Standing standing) {
        return fixed(symbol, Quantity.millimetres(millimetres), id, name, clause, standing);
    }

    Fixed speed(String millimetresPerSecond, String id, String name, Clause clause, Standing standing) {
        return fixed("K", Quantity.of(millimetresPerSecond, Unit.MILLIMETRE_PER_SECOND), id, name, clause, standing);
    }

    Fixed number(String symbol, String number, String id, String name, Clause clause, Standing standing) {
        return fixed(symbol, Quantity.of(number, Unit.ONE), id, name, clause, standing);
    }

    /** A factor, which formulas write as the figure it is. */
    Fixed factor(String number, String id, String name, Clause clause, Standing standing) {
        return number(number, number, id, name, clause, standing);
    }

    Fixed angle(String symbol, String degrees, String id, String name, Clause clause, Standing standing) {
        return fixed(symbol, Quantity.of(degrees, Unit.DEGREE), id, name, clause, standing);
    }

    private Fixed fixed(String symbol, Quantity quantity, String id, String name, Clause clause, Standing standing) {
        Fixed ours = new Fixed(symbol, quantity, reference(id, name, clause, standing));
        asked.add(Asked.of(ours));
        return copy.or(ours);
    }

    /** A length that the edition fixes and that is not publicly known; only a copy can tell. */
    Reference unknownLength(String id, String name, Clause clause, Set<Form> forms) {
        Reference reference = reference(id, name, clause, new Standing.NotPublic());
        asked.add(new Asked(reference, Dimension.LENGTH, forms, Map.of()));
        return reference;
    }

    /** A table. */
    HeightTable table(HeightTable ours) {
        asked.add(ours.asked());
        return ours.reading(copy);
    }

    /** A rule in words, which can be confirmed but not stated as a value. */
    Reference reference(String id, String name, Clause clause, Standing standing) {
        return new Reference(prefix + "." + id, name, clause, standing);
    }

    /** All that can be told it from a copy. */
    List<Asked> asked() {
        return List.copyOf(asked);
    }
}
