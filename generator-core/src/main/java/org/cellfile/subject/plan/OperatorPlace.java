package org.cellfile.subject.plan;

import org.cellfile.geometry.Point;
import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Unit;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;

/**
 * Where somebody works at the cell.
 *
 * @param emergencyStopWithin the distance within which an emergency stop has to be, by the cell's own risk assessment
 */
public record OperatorPlace(
        Stated<String> tag, Stated<String> name, Stated<Point> at, Stated<Quantity> emergencyStopWithin) {

    public static final String SORT = "operator place";

    static OperatorPlace read(Section section, Unit unit) {
        return new OperatorPlace(
                section.tag(SORT),
                section.text("name"),
                section.point("at", unit),
                section.positive("emergency-stop-within", Dimension.LENGTH));
    }
}
