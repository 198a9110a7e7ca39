package org.cellfile.standard;

import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Unit;
import org.cellfile.trace.Clause;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Reference;
import org.cellfile.trace.Standing;

/**
 * Where an edition declares its fixed values, each once.
 *
 * @param edition as cited
 * @param prefix of the ids of its values
 */
record FixedValues(String edition, String prefix) {

    Fixed length(String symbol, String millimetres, String id, String name, Clause clause, Standing standing) {
        return fixed(symbol, Quantity.millimetres(millimetres), id, name, clause, standing);
    }

    Fixed speed(String millimetresPerSecond, String id, String name, Clause clause, Standing standing) {
        return fixed("K", Quantity.of(millimetresPerSecond, Unit.MILLIMETRE_PER_SECOND), id, name, clause, standing);
    }

    /** A factor or a count, which a formula writes as the number itself. */
    Fixed number(String number, String id, String name, Clause clause, Standing standing) {
        return fixed(number, Quantity.of(number, Unit.ONE), id, name, clause, standing);
    }

    Fixed angle(String symbol, String degrees, String id, String name, Clause clause, Standing standing) {
        return fixed(symbol, Quantity.of(degrees, Unit.DEGREE), id, name, clause, standing);
    }

    private Fixed fixed(String symbol, Quantity quantity, String id, String name, Clause clause, Standing standing) {
        return new Fixed(symbol, quantity, reference(id, name, clause, standing));
    }

    /** A table or a rule. */
    Reference reference(String id, String name, Clause clause, Standing standing) {
        return new Reference(prefix + "." + id, name, clause, standing);
    }

    Clause clause(String place) {
        return new Clause(edition, place);
    }
}
