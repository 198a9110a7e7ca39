package org.cellfile.subject.safeguard;

import java.util.Map;
import java.util.TreeMap;
import org.cellfile.quantity.Quantity;
import org.cellfile.source.Stated;

/** Stated lengths as plain numbers for a drawing. */
final class Millimetres {

    private Millimetres() {}

    /** Those that are known, in mm, by name. */
    static Map<String, Object> of(Map<String, Stated<Quantity>> lengths) {
        Map<String, Object> known = new TreeMap<>();
        lengths.forEach((name, length) -> length.value().ifPresent(value -> known.put(name, value.coherent())));
        return known;
    }
}
