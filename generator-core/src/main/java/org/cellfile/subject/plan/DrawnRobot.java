package org.cellfile.subject.plan;

import java.util.Optional;
import org.cellfile.geometry.Point;
import org.cellfile.quantity.Unit;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.subject.identity.Robot;

/**
 * A robot on the plan.
 *
 * @param base where its first axis stands
 * @param reach of arm, tool and part without overrun; the circle of its stated reach where it is not drawn
 * @param restricted the space it is limited to; empty where nothing limits it
 * @param controller where its controller stands
 */
public record DrawnRobot(
        Stated<String> of,
        Stated<Point> base,
        Optional<Outline> reach,
        Optional<Outline> restricted,
        Stated<Point> controller) {

    static DrawnRobot read(Section section, Unit unit) {
        Stated<String> of = section.reference("of", Robot.SORT);
        return new DrawnRobot(
                of,
                section.point("base", unit),
                area(section, of, "reach", unit),
                area(section, of, "restricted-space", unit),
                section.point("controller", unit));
    }

    DrawnRobot withoutOutlines() {
        return new DrawnRobot(of, base, Optional.empty(), Optional.empty(), controller);
    }

    private static Optional<Outline> area(Section robot, Stated<String> of, String key, Unit unit) {
        return robot.sectionIfStated(key).flatMap(section -> {
            Optional<Outline> outline = Outline.read(section, of.characters(), Outline.AREAS, unit);
            section.close();
            return outline;
        });
    }
}
