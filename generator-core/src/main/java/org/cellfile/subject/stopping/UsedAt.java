package org.cellfile.subject.stopping;

import java.util.ArrayList;
import java.util.List;
import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Quantity;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;

/**
 * What the machine is used with in production, as far as it was stated beside the stop test.
 *
 * @param load missing where tool and part of a robot tell it
 * @param speed missing where that of a robot is stated
 * @param extension of the arm, as a share of its reach
 * @param written keys under which something is written, whether it could be read or not
 */
record UsedAt(Stated<Quantity> load, Stated<Quantity> speed, Stated<Quantity> extension, List<String> written) {

    static final String LOAD = "load";
    static final String SPEED = "speed";
    static final String EXTENSION = "extension";

    static UsedAt read(Section test) {
        return test.sectionIfStated("used-at").map(UsedAt::of).orElseGet(() -> none(test));
    }

    private static UsedAt of(Section used) {
        List<String> written = new ArrayList<>(List.of(LOAD, SPEED, EXTENSION));
        written.removeIf(key -> !used.has(key));
        UsedAt read = new UsedAt(
                used.quantityIfStated(LOAD, Dimension.MASS),
                used.quantityIfStated(SPEED, Dimension.SPEED),
                used.quantityIfStated(EXTENSION, Dimension.NONE),
                List.copyOf(written));
        used.close();
        return read;
    }

    private static UsedAt none(Section test) {
        return new UsedAt(
                new Stated.Missing<>(test.where(), LOAD),
                new Stated.Missing<>(test.where(), SPEED),
                new Stated.Missing<>(test.where(), EXTENSION),
                List.of());
    }
}
