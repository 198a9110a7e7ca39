package org.cellfile.subject.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.cellfile.claim.Recomputed;
import org.cellfile.finding.Finding;
import org.cellfile.geometry.Arcs;
import org.cellfile.geometry.Between;
import org.cellfile.geometry.Shape;
import org.cellfile.source.Stated;
import org.cellfile.standard.RobotCellStandard;
import org.cellfile.subject.clearance.ClearanceGap;
import org.cellfile.subject.complement.Complement;
import org.cellfile.subject.hazard.Zone;
import org.cellfile.subject.hazard.ZoneExtent;
import org.cellfile.subject.identity.RobotLoad;
import org.cellfile.subject.safeguard.Device.Footprint;
import org.cellfile.subject.safeguard.Guarding;

/** The plan of a cell put together with what stands on it, and what was measured on it. */
public final class Layout {

    private final Plan plan;
    private final Around around;
    private final List<Perimeter> perimeters;
    private final List<PlanDistance> distances;
    private final List<StandingRoom> standing;

    /**
     * The things of the cell that stand on its plan.
     *
     * @param cells the editions in force about robot cells, which say how wide an opening may be
     */
    public record Around(
            List<RobotLoad> robots,
            List<ZoneExtent> zones,
            List<Guarding> safeguards,
            List<Complement> complementary,
            List<ClearanceGap> clearances,
            List<RobotCellStandard> cells) {}

    public Layout(Plan plan, Around around) {
        this.plan = plan;
        this.around = around;
        this.perimeters = around.zones().stream()
                .map(extent -> extent.zone().tag().characters())
                .flatMap(zone -> plan.zones().stream()
                        .filter(one -> one.of().characters().equals(zone)
                                && !zone(zone).empty())
                        .limit(1))
                .map(zone -> new Perimeter(this, zone))
                .toList();
        this.distances = around.safeguards().stream()
                .map(this::measured)
                .flatMap(Optional::stream)
                .toList();
        this.standing = around.safeguards().stream()
                .map(guarding -> StandingRoom.behind(guarding, this))
                .flatMap(Optional::stream)
                .toList();
    }

    public Plan plan() {
        return plan;
    }

    public Around around() {
        return around;
    }

    /** The distance of each safeguard to the nearest of its zones, where both are drawn. */
    public List<PlanDistance> distances() {
        return distances;
    }

    /** What stands round each zone that is drawn. */
    public List<Perimeter> perimeters() {
        return perimeters;
    }

    /** What stands round a zone; empty when it is not drawn. */
    public Optional<Perimeter> perimeter(String zone) {
        return perimeters.stream().filter(one -> one.tag().equals(zone)).findFirst();
    }

    /** The floor behind each safeguard that people pass. */
    public List<StandingRoom> standing() {
        return standing;
    }

    /** Everything on the plan with derived values, in the order it is printed. */
    public List<Recomputed> recomputed() {
        List<Recomputed> all = new ArrayList<>(distances);
        all.addAll(perimeters);
        all.addAll(standing);
        return all;
    }

    /** A hazard zone as drawn, no smaller than in truth; nothing when it is not drawn. */
    public Shape zone(String tag) {
        return Shape.of(plan.zones().stream()
                .filter(zone -> zone.of().characters().equals(tag))
                .flatMap(zone -> zone.outline().stream())
                .map(outline -> outline.shape(Arcs.AROUND))
                .toList());
    }

    /** A safeguard as drawn, no larger than in truth, all its pieces together; nothing when it is not drawn. */
    public Shape safeguard(String tag) {
        return Shape.of(drawn(tag).stream()
                .flatMap(piece -> piece.outline().stream())
                .map(outline -> outline.shape(Arcs.WITHIN))
                .toList());
    }

    /** A safeguard as far as it detects or bars in truth: what is drawn. */
    public Shape effective(String tag) {
        return safeguard(tag);
    }

    /** The pieces of a safeguard. */
    public List<DrawnSafeguard> drawn(String tag) {
        return plan.safeguards().stream()
                .filter(piece -> piece.of().characters().equals(tag))
                .toList();
    }

    /**
     * What of a safeguard its distance to a zone is measured from: its line, or the edge over which people come into the area in which
     * it detects them; nothing where the zone is not drawn.
     */
    public Shape detection(Guarding guarding, String zone) {
        return guarding.safeguard().device().footprint() == Footprint.AREA
                ? perimeter(zone)
                        .map(perimeter -> perimeter.outerEdge(guarding.tag()))
                        .orElseGet(Shape::nothing)
                : effective(guarding.tag());
    }

    private Optional<PlanDistance> measured(Guarding guarding) {
        return guarding.zones().stream()
                .map(Zone::tag)
                .map(Stated::characters)
                .flatMap(zone -> detection(guarding, zone).nearest(zone(zone)).stream()
                        .map(between -> new Nearest(zone, between)))
                .min(Comparator.comparing(Nearest::square).thenComparing(Nearest::zone))
                .map(nearest -> new PlanDistance(
                        guarding,
                        plan,
                        nearest.zone(),
                        nearest.between(),
                        drawn(guarding.tag()).get(0).of().where().position(),
                        drawn(guarding.tag()).get(0).recorded()));
    }

    private record Nearest(String zone, Between between) {
        BigDecimal square() {
            return between.square();
        }
    }

    /** What does not hold on the plan, besides what is held of each distance. */
    public List<Finding> findings() {
        return new ArrayList<>(DrawnFaults.of(this));
    }
}
