package org.cellfile.subject.identity;

import org.cellfile.claim.Recorded;
import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Quantity;
import org.cellfile.read.Recordings;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;

/**
 * A robot with what it carries and the speeds it is used at.
 *
 * @param reach of the wrist from the base axis
 */
public record Robot(
        Stated<String> tag,
        Stated<String> name,
        Stated<String> serial,
        Stated<Quantity> reach,
        Stated<Quantity> payload,
        Carried tool,
        Carried part,
        Controller controller,
        Stated<Quantity> automaticSpeed,
        Stated<Quantity> manualReducedSpeed,
        Recorded recorded) {

    public static final String SORT = "robot";

    /**
     * A tool, or the part it holds.
     *
     * @param length by which it extends the reach
     */
    public record Carried(Stated<String> name, Stated<Quantity> mass, Stated<Quantity> length) {
        static Carried read(Section section) {
            Carried carried = new Carried(
                    section.text("name"),
                    section.quantity("mass", Dimension.MASS),
                    section.quantity("length", Dimension.LENGTH));
            section.close();
            return carried;
        }
    }

    /**
     * The robot's controller.
     *
     * @param checksum of the safety configuration, as its screen shows it
     */
    public record Controller(
            Stated<String> name, Stated<String> serial, Stated<String> software, Stated<String> checksum) {
        static Controller read(Section section) {
            Controller controller = new Controller(
                    section.text("name"), section.text("serial"), section.text("software"), section.text("checksum"));
            section.close();
            return controller;
        }
    }

    static Robot read(Section section) {
        Stated<String> tag = section.tag(SORT);
        Section speeds = section.section("speeds");
        Robot robot = new Robot(
                tag,
                section.text("name"),
                section.text("serial"),
                section.positive("reach", Dimension.LENGTH),
                section.positive("payload", Dimension.MASS),
                Carried.read(section.section("tool")),
                Carried.read(section.section("part")),
                Controller.read(section.section("controller")),
                speeds.positive("automatic", Dimension.SPEED),
                speeds.positive("manual-reduced", Dimension.SPEED),
                Recordings.read(section, tag.characters()));
        speeds.close();
        return robot;
    }
}
