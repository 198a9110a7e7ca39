package org.cellfile.standard;

import static org.cellfile.standard.Iso13855Ed2010Values.GUARDS;
import static org.cellfile.standard.Iso13855Ed2010Values.ID;
import static org.cellfile.standard.Iso13855Ed2010Values.MATS;
import static org.cellfile.standard.Iso13855Ed2010Values.PARALLEL;
import static org.cellfile.standard.Iso13855Ed2010Values.PERPENDICULAR;
import static org.cellfile.standard.Iso13855Ed2010Values.REACHING_OVER;
import static org.cellfile.standard.Iso13855Ed2010Values.TWO_HANDS;
import static org.cellfile.standard.Positions.distance;
import static org.cellfile.standard.Positions.guard;
import static org.cellfile.standard.Positions.length;
import static org.cellfile.standard.Positions.limit;
import static org.cellfile.standard.Positions.longest;
import static org.cellfile.standard.Positions.notBelow;
import static org.cellfile.standard.Positions.stepped;
import static org.cellfile.standard.Positions.walking;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cellfile.calculation.PerpendicularApproach;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.trace.Case;
import org.cellfile.trace.Case.Branch;
import org.cellfile.trace.Condition;
import org.cellfile.trace.Condition.Comparison;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Difference;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Formula;
import org.cellfile.trace.Greatest;
import org.cellfile.trace.Least;
import org.cellfile.trace.Product;
import org.cellfile.trace.Sum;
import org.cellfile.trace.Term;
import org.cellfile.trace.Withheld;

/** ISO 13855:2010, a rule for each way of approach; what it fixes stands in {@link Iso13855Ed2010Values}. */
@AutoService(Edition.class)
public final class Iso13855Ed2010 implements PositioningStandard {

    private final Iso13855Ed2010Values values;

    /** As its values are held here. */
    public Iso13855Ed2010() {
        this(CopyValues.NONE);
    }

    private Iso13855Ed2010(CopyValues copy) {
        values = new Iso13855Ed2010Values(copy);
    }

    @Override
    public Iso13855Ed2010 reading(CopyValues copy) {
        return new Iso13855Ed2010(copy);
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
        return "Positioning of safeguards with respect to the approach speeds of parts of the human body";
    }

    @Override
    public Optional<Position> perpendicular(PerpendicularField field) {
        Approach at = field.approach();
        Derived through = length(
                at,
                "reach-through",
                "intrusion by reaching through the field",
                "C_RT",
                PERPENDICULAR,
                intrusion(field.resolution()));
        Derived over = length(
                at,
                "reach-over",
                "intrusion by reaching over the field",
                "C_RO",
                REACHING_OVER,
                values.reachOver.reach(at.zoneLowest(), at.zoneHighest(), field.upperEdge()));
        PerpendicularApproach approachThrough = approach(through, field.supplements());
        PerpendicularApproach approachOver = approach(over, field.supplements());
        Derived distanceThrough = length(
                at,
                "distance-through",
                "separation distance against reaching through",
                "S_RT",
                PERPENDICULAR,
                approachThrough.distance(at.timing().overall()));
        Derived distanceOver = length(
                at,
                "distance-over",
                "separation distance against reaching over",
                "S_RO",
                REACHING_OVER,
                approachOver.distance(at.timing().overall()));
        Derived distance = distance(at, PERPENDICULAR, Greatest.of(distanceThrough, distanceOver));
        Derived longest = longest(
                at,
                PERPENDICULAR,
                Least.of(approachThrough.longestTime(at.installed()), approachOver.longestTime(at.installed())));
        return Optional.of(Position.of(
                distance,
                longest,
                List.of(through, over, distanceThrough, distanceOver),
                List.of(limit(at, "greatest-lower-edge", values.lowestBeam, Rounding.Side.DOWN), gapBehind(at))));
    }

    private Term intrusion(Term resolution) {
        if (resolution.value().isPresent() && resolution.value().get().compareTo(values.bodyDetection.quantity()) > 0) {
            return Withheld.noRule(
                    "C_RT",
                    PERPENDICULAR + " has no rule for a field of " + Formula.shown(resolution)
                            + " resolution that is approached at a right angle: it ends at "
                            + values.bodyDetection.quantity());
        }
        return new Case(
                List.of(new Branch(
                        new Condition(resolution, Comparison.AT_MOST, values.armDetection),
                        Greatest.of(
                                new Product(values.resolutionFactor, new Difference(resolution, values.finger)),
                                values.noIntrusion))),
                values.bodyIntrusion);
    }

    private PerpendicularApproach approach(Term intrusion, List<Term> supplements) {
        List<Term> additions = new ArrayList<>(List.of(intrusion));
        additions.addAll(supplements);
        return new PerpendicularApproach(
                additions.size() == 1 ? intrusion : new Sum(additions),
                values.armSpeed,
                values.walkingSpeed,
                values.near,
                values.far);
    }

    @Override
    public Optional<Position> parallel(ParallelField field) {
        Approach at = field.approach();
        Derived intrusion = length(
                at,
                "intrusion",
                "intrusion over the field",
                "C",
                PARALLEL,
                Greatest.of(
                        new Difference(values.armLength, new Product(values.heightFactor, field.height())),
                        values.leastIntrusion));
        Derived lowest = length(
                at,
                "least-height",
                "least height of the field for its resolution",
                "H_min",
                PARALLEL,
                Greatest.of(
                        new Product(values.heightRatio, new Difference(field.resolution(), values.finestAtFloor)),
                        values.noIntrusion));
        Derived highest = limit(at, "greatest-height", values.highestField, Rounding.Side.DOWN);
        Derived crawling = limit(at, "crawling-height", values.crawling, Rounding.Side.DOWN);
        return Optional.of(walking(
                at, PARALLEL, values.walkingSpeed, intrusion, field.supplements(), List.of(lowest, highest, crawling)));
    }

    @Override
    public Optional<Position> beams(Beams beams) {
        Approach at = beams.approach();
        Fixed known = beams.heights().size() == 1 ? values.singleBeam : values.severalBeams;
        Derived intrusion = length(
                at,
                "intrusion",
                known.reference().name(),
                "C",
                PERPENDICULAR,
                BeamHeights.onlyAtListed(PERPENDICULAR.toString(), "C", known, beams.heights()));
        return Optional.of(
                walking(at, PERPENDICULAR, values.walkingSpeed, intrusion, List.of(), List.of(gapBehind(at))));
    }

    @Override
    public Optional<Position> mat(Mat mat) {
        Approach at = mat.approach();
        Derived intrusion = length(
                at,
                "intrusion",
                "intrusion over the mat",
                "C",
                MATS,
                stepped(
                        mat,
                        "C",
                        MATS,
                        Greatest.of(
                                new Difference(values.matReach, new Product(values.stepFactor, mat.step())),
                                values.noIntrusion)));
        Derived width = limit(at, "least-width", values.matWidth, Rounding.Side.UP);
        return Optional.of(walking(at, MATS, values.walkingSpeed, intrusion, List.of(), List.of(width)));
    }

    @Override
    public Optional<Position> twoHandControl(TwoHandControl control) {
        if (control.clutch().isPresent()) {
            return Optional.empty();
        }
        Approach at = control.approach();
        Fixed known = control.shrouded() ? values.shrouded : values.hands;
        Derived intrusion = length(at, "intrusion", known.reference().name(), "C", TWO_HANDS, known);
        Position position = walking(at, TWO_HANDS, values.walkingSpeed, intrusion, List.of(), List.of());
        return Optional.of(control.shrouded() ? notBelow(values.shroudedLeast, at, TWO_HANDS, position) : position);
    }

    @Override
    public Optional<Position> interlockedGuard(InterlockedGuard guard) {
        return Optional.of(guard(guard, GUARDS, values.guardSpeed));
    }

    @Override
    public Optional<Fixed> leastRightAngle() {
        return Optional.of(values.rightAngle);
    }

    @Override
    public Optional<Fixed> widestGapBehind() {
        return Optional.of(values.gapBehind);
    }

    @Override
    public Optional<Fixed> leastDepthToStepOver() {
        return Optional.of(values.matWidth);
    }

    private Derived gapBehind(Approach at) {
        return limit(at, "greatest-gap-behind", values.gapBehind, Rounding.Side.DOWN);
    }

    @Override
    public Optional<StopMeasurement> stopMeasurement() {
        return Optional.of(new StopMeasurement(
                new Fixed("n_min", Quantity.count(10), values.stopMeasurement),
                new Fixed("3", Quantity.count(3), values.stopMeasurement)));
    }
}
