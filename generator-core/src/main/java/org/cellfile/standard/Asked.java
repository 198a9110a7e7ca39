package org.cellfile.standard;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Quantity;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Reference;

/**
 * What an edition can be told from a copy of the standard, under one id.
 *
 * @param forms in which it can be told
 * @param ours what is held here, by key; nothing where nothing is publicly known
 */
public record Asked(Reference reference, Dimension dimension, Set<Form> forms, Map<CopyKey, Quantity> ours) {

    /** How a value is stated. */
    public enum Form {
        /** one value throughout */
        VALUE,
        /** one value for a safeguard */
        OF_A_SAFEGUARD,
        /** rows of a table of reach by heights */
        HEIGHTS,
        /** rows of a table by openings */
        OPENINGS,
        /** rows of a table that words head */
        WORDS
    }

    public Asked {
        forms = Set.copyOf(forms);
        ours = Map.copyOf(ours);
    }

    /** A value that is held here. */
    static Asked of(Fixed ours) {
        return new Asked(
                ours.reference(),
                ours.quantity().dimension(),
                Set.of(Form.VALUE),
                Map.of(new CopyKey.Whole(), ours.quantity()));
    }

    /** The cells of a table, one for each id in it. */
    static List<Asked> of(Form form, Map<CopyKey, Fixed> cells) {
        Map<Reference, Map<CopyKey, Quantity>> byReference = new LinkedHashMap<>();
        cells.forEach((key, cell) -> byReference
                .computeIfAbsent(cell.reference(), reference -> new LinkedHashMap<>())
                .put(key, cell.quantity()));
        return byReference.entrySet().stream()
                .map(one -> new Asked(one.getKey(), dimension(one.getValue()), Set.of(form), one.getValue()))
                .toList();
    }

    private static Dimension dimension(Map<CopyKey, Quantity> cells) {
        return cells.values().iterator().next().dimension();
    }

    /** True when no value of it can be zero, because the one held here is not, or is a rate. */
    public boolean aboveZero() {
        Quantity whole = ours.get(new CopyKey.Whole());
        return dimension.equals(Dimension.RATE) || (whole != null && !whole.zero());
    }
}
