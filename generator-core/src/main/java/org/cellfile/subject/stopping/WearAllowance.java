package org.cellfile.subject.stopping;

import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Quantity;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;

/**
 * A time kept free for the wear of the brake.
 *
 * @param time by which the stop has to stay below what its safeguards allow
 * @param source who asks for that
 */
public record WearAllowance(Stated<Quantity> time, Stated<String> source) {

    static WearAllowance read(Section section) {
        WearAllowance allowance =
                new WearAllowance(section.positive("time", Dimension.TIME), section.statement("source"));
        section.close();
        return allowance;
    }
}
