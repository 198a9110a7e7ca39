package org.cellfile.standard;

import java.util.ArrayList;
import java.util.HashMap;
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
 * The fixed values of an edition, each declared once in a field: as held here, or as somebody read it in a copy. An edition that fixes
 * many has a class of values beside it, one that fixes few is one.
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

    Fixed fixed(String symbol, Quantity quantity, String id, String name, Clause clause, Standing standing) {
        Fixed ours = new Fixed(symbol, quantity, reference(id, name, clause, standing));
        asked.add(Asked.of(ours));
        return copy.or(ours, new CopyKey.Whole());
    }

    /** A length that the edition fixes and that is not publicly known; only a copy can tell. */
    Reference unknownLength(String id, String name, Clause clause, Set<Form> forms) {
        Reference reference = reference(id, name, clause, new Standing.NotPublic());
        asked.add(new Asked(reference, Dimension.LENGTH, forms, Map.of()));
        return reference;
    }

    /** A table by height of the hazard and of the edge reached over. */
    HeightTable heights(String resource, String symbol, Reference reference) {
        HeightTable table = HeightTable.load(resource, symbol, reference, copy);
        asked.addAll(table.asked());
        return table;
    }

    /**
     * A table by shape and size of an opening.
     *
     * @param limb the largest thing that passes, for example {@code an arm}
     * @param apart cells that cite a reference of their own
     */
    OpeningTable openings(
            String resource, String symbol, String limb, Reference reference, Map<CopyKey, Reference> apart) {
        OpeningTable table = OpeningTable.load(resource, symbol, limb, reference, apart, copy);
        asked.addAll(table.asked());
        return table;
    }

    /**
     * A table of how wide an opening may be by its distance.
     *
     * @param published cited by the rows read in public
     * @param fromMemory cited by the others
     */
    GuardOpeningTable guardOpenings(String resource, Reference published, Reference fromMemory) {
        GuardOpeningTable table = GuardOpeningTable.load(resource, published, fromMemory, copy);
        asked.addAll(table.asked());
        return table;
    }

    /**
     * Lengths under one id that words tell apart.
     *
     * @param column what the words are, as {@code copy-values} has it, for example {@code body-part}
     * @param ours by word, all with the same reference
     */
    Map<String, Fixed> rows(String column, Map<String, Fixed> ours) {
        Map<CopyKey, Fixed> cells = new HashMap<>();
        Map<String, Fixed> counted = new HashMap<>();
        ours.forEach((word, row) -> {
            CopyKey key = new CopyKey.Row(column, word);
            cells.put(key, row);
            counted.put(word, copy.or(row, key));
        });
        asked.addAll(Asked.of(Form.WORDS, cells));
        return counted;
    }

    /** A rule in words, which can be confirmed but not stated as a value. */
    Reference reference(String id, String name, Clause clause, Standing standing) {
        return new Reference(prefix + "." + id, name, clause, standing);
    }

    /** All that can be told it from a copy. */
    public List<Asked> asked() {
        return List.copyOf(asked);
    }
}
