package org.cellfile.subject.plan;

import org.cellfile.geometry.Point;
import org.cellfile.quantity.Unit;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;

/** Where people leave the place of the cell in an emergency. */
public record WayOut(Stated<String> name, Stated<Point> at) {

    static WayOut read(Section section, Unit unit) {
        return new WayOut(section.text("name"), section.point("at", unit));
    }
}
