package org.cellfile.standard;

import static org.cellfile.standard.Iso13855Ed2024Values.GUARDS;
import static org.cellfile.standard.Iso13855Ed2024Values.ID;
import static org.cellfile.standard.Iso13855Ed2024Values.MATS;
import static org.cellfile.standard.Iso13855Ed2024Values.PARALLEL;
import static org.cellfile.standard.Iso13855Ed2024Values.TWO_HANDS;
import static org.cellfile.standard.Positions.guard;
import static org.cellfile.standard.Positions.length;
import static org.cellfile.standard.Positions.limit;
import static org.cellfile.standard.Positions.notBelow;
import static org.cellfile.standard.Positions.stepped;
import static org.cellfile.standard.Positions.walking;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import org.cellfile.quantity.Rounding;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Difference;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Greatest;
import org.cellfile.trace.Product;

/**
 * ISO 13855:2024: {@code S = K · T + D_DS + Z}. Only what articles about it tell is known; what it fixes stands in {@link
 * Iso13855Ed2024Values}, what it asks of fields and beams approached at a right angle in {@link Iso13855Ed2024RightAngle}.
 */
@AutoService(Edition.class)
public final class Iso13855Ed2024 implements PositioningStandard {

    private final Iso13855Ed2024Values values;
    private final Iso13855Ed2024RightAngle rightAngle;

    /** As its values are held here. */
    public Iso13855Ed2024() {
        this(CopyValues.NONE);
    }

    private Iso13855Ed2024(CopyValues copy) {
        values = new Iso13855Ed2024Values(copy);
        rightAngle = new Iso13855Ed2024RightAngle(values, copy);
    }

    @Override
    public Iso13855Ed2024 reading(CopyValues copy) {
        return new Iso13855Ed2024(copy);
    }

    @Override
    public List<Asked> asked() {
        return values.asked();
    }

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Positioning of safeguards with respect to the approach of the human body";
    }

    @Override
    public Optional<String> remark() {
        return Optional.of(
                "It is for persons from 14 years on and does not cover running, jumping and falling (EVS, catalogue"
                        + " entry of EN ISO 13855:2025); stops are to be measured cold and warm (Odrade, stop time measurement in 2025,"
                        + " what has changed).");
    }

    @Override
    public Optional<Fixed> widestGapBehind() {
        return Optional.of(values.gapBehind);
    }

    @Override
    public Optional<Fixed> leastDepthToStepOver() {
        return Optional.of(values.matWidth);
    }

    @Override
    public Optional<Position> perpendicular(PerpendicularField field) {
        return Optional.of(rightAngle.field(field));
    }

    @Override
    public Optional<Position> beams(Beams beams) {
        return Optional.of(rightAngle.beams(beams));
    }

    @Override
    public Optional<Position> parallel(ParallelField field) {
        Approach at = field.approach();
        Derived reach = length(
                at,
                "reaching-distance",
                values.parallelReach.reference().name(),
                "D_DS",
                PARALLEL,
                values.parallelReach);
        Derived lowest = length(
                at,
                "least-height",
                "least height of the field for its effective detection capability",
                "H_min",
                PARALLEL,
                Greatest.of(
                        new Product(values.heightRatio, new Difference(field.resolution(), values.finestAtFloor)),
                        values.floor));
        Derived highest = limit(at, "greatest-height", values.highestField, Rounding.Side.DOWN);
        Derived crawling = limit(at, "crawling-height", values.crawling, Rounding.Side.DOWN);
        return Optional.of(walking(
                at, PARALLEL, values.walkingSpeed, reach, field.supplements(), List.of(lowest, highest, crawling)));
    }

    @Override
    public Optional<Position> mat(Mat mat) {
        Approach at = mat.approach();
        Derived reach = length(
                at,
                "reaching-distance",
                values.matReach.reference().name(),
                "D_DS",
                MATS,
                stepped(mat, "D_DS", MATS, values.matReach));
        Derived width = limit(at, "least-width", values.matWidth, Rounding.Side.UP);
        Position position = walking(at, MATS, values.matSpeed, reach, List.of(), List.of(width));
        return Optional.of(
                mat.step().value().filter(step -> step.zero()).isPresent()
                        ? position
                        : position.remark("Whether this edition takes something off for a step is not publicly known;"
                                + " nothing is taken off."));
    }

    @Override
    public Optional<Position> twoHandControl(TwoHandControl control) {
        if (control.clutch().isPresent()) {
            return Optional.empty();
        }
        Approach at = control.approach();
        Fixed known = control.shrouded() ? values.shrouded : values.hands;
        Derived reach = length(at, "reaching-distance", known.reference().name(), "D_DS", TWO_HANDS, known);
        Position position = walking(at, TWO_HANDS, values.handSpeed, reach, List.of(), List.of());
        return Optional.of(control.shrouded() ? notBelow(values.shroudedLeast, at, TWO_HANDS, position) : position);
    }

    @Override
    public Optional<Position> interlockedGuard(InterlockedGuard guard) {
        Fixed speed = guard.held().isPresent() ? values.heldGuardSpeed : values.guardSpeed;
        return Optional.of(guard(guard, GUARDS, speed)
                .remark(
                        "The reach through the opening is to be taken from ISO 13857:2019 (GT Engineering, EN ISO 13855, 9"
                                + " interlocking guards without guard locking)."));
    }

    @Override
    public Optional<StopMeasurement> stopMeasurement() {
        return Optional.of(new StopMeasurement(values.leastRuns, values.deviations, Optional.of(values.coldAndWarm)));
    }
}
