package org.cellfile.subject.plan;

import org.cellfile.geometry.Point;
import org.cellfile.quantity.Unit;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.subject.complement.ComplementaryDevice;

/** A complementary device on the plan; of a pendant, the place it hangs at. */
public record DrawnDevice(Stated<String> of, Stated<Point> at) {

    static DrawnDevice read(Section section, Unit unit) {
        return new DrawnDevice(section.reference("of", ComplementaryDevice.SORT), section.point("at", unit));
    }
}
