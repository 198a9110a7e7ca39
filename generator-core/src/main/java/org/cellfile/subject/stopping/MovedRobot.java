package org.cellfile.subject.stopping;

import org.cellfile.quantity.Quantity;
import org.cellfile.source.Stated;
import org.cellfile.subject.identity.RobotLoad;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Given;
import org.cellfile.trace.Term;

/**
 * A robot whose movement a stop ends.
 *
 * @param speed at which it is used in the mode of the stop test
 */
public record MovedRobot(RobotLoad robot, Stated<Quantity> speed) {

    Derived load() {
        return robot.derived("handled-mass");
    }

    Term used() {
        return new Given("v", "speed of `" + robot.tag() + "` in the mode of the stop test", speed);
    }
}
