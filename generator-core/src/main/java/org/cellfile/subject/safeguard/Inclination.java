package org.cellfile.subject.safeguard;

import java.util.List;
import java.util.Optional;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.quantity.Unit;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.trace.Case;
import org.cellfile.trace.Case.Branch;
import org.cellfile.trace.Condition;
import org.cellfile.trace.Condition.Comparison;
import org.cellfile.trace.Count;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Given;

/**
 * A field that is neither upright nor level to the way people approach it.
 *
 * @param angle between the direction of approach and the field
 * @param height above the floor of the side of the field furthest from the hazard
 */
record Inclination(Stated<Quantity> angle, Stated<Quantity> height) {

    private static final Rounding DEGREES = Rounding.down(Quantity.of("0.1", Unit.DEGREE));

    /** Reads {@code approach}; empty for a field approached at a right angle. */
    static Optional<Inclination> read(Section safeguard) {
        return safeguard.sectionIfStated("approach").map(section -> {
            Inclination inclination = new Inclination(
                    section.quantity("angle", Dimension.ANGLE), section.quantity("height", Dimension.LENGTH));
            section.close();
            return inclination;
        });
    }

    /** The same after something about its height was found. */
    Inclination heightNotKnown() {
        return new Inclination(angle, new Stated.Missing<>(height.where(), "height"));
    }

    Fact fact() {
        return new Fact(
                "Approach",
                "at " + angle.characters() + " to the field",
                "the side furthest from the hazard is " + height.characters() + " above the floor");
    }

    /** True when the field counts as approached along its plane. */
    boolean alongPlane(Fixed leastRightAngle) {
        return angle.value()
                .map(stated -> stated.compareTo(leastRightAngle.quantity()) < 0)
                .orElse(false);
    }

    /** The angle, the bound, and what the field therefore counts as. */
    List<Derived> derived(String tag, Fixed leastRightAngle) {
        String clause = leastRightAngle.reference().clause().toString();
        Given stated = new Given("β", "angle between the direction of approach and the field", angle);
        return List.of(
                new Derived(tag, "approach-angle", stated.name(), "β", "as stated", stated, DEGREES),
                new Derived(
                        tag,
                        "least-right-angle",
                        leastRightAngle.reference().name(),
                        leastRightAngle.symbol(),
                        clause,
                        leastRightAngle,
                        DEGREES),
                new Derived(
                        tag,
                        "counted-angle",
                        "angle at which the field counts as approached: 90 ° across, 0 ° along its plane",
                        "β_c",
                        clause,
                        new Case(
                                List.of(new Branch(
                                        new Condition(stated, Comparison.LESS, leastRightAngle), degrees("0"))),
                                degrees("90")),
                        DEGREES));
    }

    private static Count degrees(String number) {
        return new Count(Quantity.of(number, Unit.DEGREE));
    }
}
