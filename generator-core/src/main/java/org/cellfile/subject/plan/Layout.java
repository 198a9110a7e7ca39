package org.cellfile.subject.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cellfile.claim.Recomputed;
import org.cellfile.finding.Finding;
import org.cellfile.geometry.Arcs;
import org.cellfile.geometry.Between;
import org.cellfile.geometry.Point;
import org.cellfile.geometry.Shape;
import org.cellfile.quantity.Quantity;
import org.cellfile.source.Span;
import org.cellfile.source.Stated;
import org.cellfile.standard.CrushingStandard;
import org.cellfile.standard.ReachStandard;
import org.cellfile.standard.RobotCellStandard;
import org.cellfile.subject.clearance.ClearanceGap;
import org.cellfile.subject.complement.Complement;
import org.cellfile.subject.complement.ComplementaryDevice;
import org.cellfile.subject.hazard.Zone;
import org.cellfile.subject.hazard.ZoneExtent;
import org.cellfile.subject.identity.RobotLoad;
import org.cellfile.subject.safeguard.Device.Footprint;
import org.cellfile.subject.safeguard.Guarding;
import org.cellfile.trace.Fixed;

/** The plan of a cell put together with what stands on it, and what was measured on it. */
public final class Layout {

    private final Plan plan;
    private final Around around;
    private final List<Obstacle> obstacles;
    private final Shape barring;
    private final List<Obstacle> shading;
    private final Map<String, List<SeenField>> fields;
    private final Map<String, Shape> zones = new TreeMap<>();
    private final Map<String, Shape> closing = new TreeMap<>();
    private final Map<String, Shape> outside = new TreeMap<>();
    private final Map<String, Shape> inside = new TreeMap<>();
    private final List<FieldCoverage> coverage;
    private final List<PlanGap> gaps;
    private final List<DoorSwing> swings;
    private final List<EmergencyStopReach> emergencyStops;
    private final List<ResetPlace> resets;
    private final List<Perimeter> perimeters;
    private final List<PlanDistance> distances;
    private final List<StandingRoom> standing;

    /**
     * The things of the cell that stand on its plan.
     *
     * @param cells the editions in force about robot cells, which say how wide an opening may be
     * @param reaches the editions in force about how far limbs reach
     * @param crushing the edition in force about gaps in which nobody is crushed
     */
    public record Around(
            List<RobotLoad> robots,
            List<ZoneExtent> zones,
            List<Guarding> safeguards,
            List<Complement> complementary,
            List<ClearanceGap> clearances,
            List<RobotCellStandard> cells,
            List<ReachStandard> reaches,
            Optional<CrushingStandard> crushing) {}

    public Layout(Plan plan, Around around) {
        this.plan = plan;
        this.around = around;
        this.obstacles = Obstacle.barring(this);
        this.barring = Obstacle.together(obstacles);
        this.shading = Obstacle.shading(this);
        this.fields = around.safeguards().stream()
                .filter(guarding -> guarding.safeguard().device().looksFromOnePlace())
                .collect(Collectors.toMap(
                        Guarding::tag,
                        guarding -> SeenField.of(this, guarding),
                        (first, second) -> first,
                        TreeMap::new));
        this.perimeters = around.zones().stream()
                .map(extent -> extent.zone().tag().characters())
                .flatMap(zone -> plan.zones().stream()
                        .filter(one -> one.of().characters().equals(zone)
                                && !zone(zone).empty())
                        .limit(1))
                .map(zone -> new Perimeter(this, zone))
                .toList();
        this.coverage = FieldCoverage.of(this).stream()
                .filter(one -> drawnWhole()
                        && perimeter(one.zone()).filter(Perimeter::closed).isPresent())
                .toList();
        this.distances = around.safeguards().stream()
                .map(this::measured)
                .flatMap(Optional::stream)
                .toList();
        this.gaps = PlanGap.of(this);
        this.swings = DoorSwing.of(this);
        this.emergencyStops = EmergencyStopReach.of(this);
        this.resets = ResetPlace.of(this);
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

    /** Of each zone that a scanner guards, the floor its fields must cover. */
    List<FieldCoverage> coverage() {
        return coverage;
    }

    /** The gaps between structures and the spaces of robots. */
    public List<PlanGap> gaps() {
        return gaps;
    }

    /** The doors that turn. */
    List<DoorSwing> swings() {
        return swings;
    }

    /** From each operator place to its emergency stop. */
    public List<EmergencyStopReach> emergencyStops() {
        return emergencyStops;
    }

    /** The resets where they are drawn. */
    public List<ResetPlace> resets() {
        return resets;
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
        return Stream.of(distances, perimeters, standing, gaps, emergencyStops, resets)
                .<Recomputed>flatMap(List::stream)
                .toList();
    }

    /** A hazard zone as drawn, no smaller than in truth; nothing when it is not drawn. */
    public Shape zone(String tag) {
        return zones.computeIfAbsent(
                tag,
                any -> Shape.of(plan.zones().stream()
                        .filter(zone -> zone.of().characters().equals(tag))
                        .flatMap(zone -> zone.outline().stream())
                        .map(outline -> outline.shape(Arcs.AROUND))
                        .toList()));
    }

    /** A safeguard as drawn, no larger than in truth, all its pieces together; nothing when it is not drawn. */
    public Shape safeguard(String tag) {
        return Shape.of(drawn(tag).stream()
                .flatMap(piece -> piece.outline().stream())
                .filter(outline -> DrawnFaults.fits(outline, footprint(tag)))
                .map(outline -> outline.shape(Arcs.WITHIN))
                .toList());
    }

    /** What bars or detects of a safeguard: of a field what its scanner sees, of everything else what is drawn. */
    public Shape effective(String tag) {
        List<SeenField> seen = fields.getOrDefault(tag, List.of());
        return seen.isEmpty()
                ? safeguard(tag)
                : Shape.of(seen.stream().map(SeenField::seen).toList());
    }

    /** The fields that scanners see from where they stand. */
    List<SeenField> fields() {
        return fields.values().stream().flatMap(List::stream).toList();
    }

    /** The structures, fences and closed doors. */
    List<Obstacle> obstacles() {
        return obstacles;
    }

    /** What throws shadows on the fields of scanners. */
    List<Obstacle> shading() {
        return shading;
    }

    /** Structures, fences and closed doors together, which nobody gets across and nobody reaches through. */
    Shape barring() {
        return barring;
    }

    /** The safeguards of a hazard zone. */
    List<Guarding> guarding(String zone) {
        return around.safeguards().stream()
                .filter(guarding -> guarding.zones().stream()
                        .anyMatch(one -> one.tag().characters().equals(zone)))
                .toList();
    }

    /** The widest opening through which nobody gets in, by the strictest of the editions in force. */
    Fixed widestOpening() {
        return around.cells().stream()
                .map(RobotCellStandard::widestGapBelow)
                .min(Comparator.comparing(Fixed::quantity))
                .orElseThrow();
    }

    /** The floor onto which somebody gets without passing a safeguard of that zone or anything that bars. */
    Shape outside(String zone) {
        return outside.computeIfAbsent(
                zone,
                tag -> closing(tag)
                        .reachedFromOutside(
                                widestOpening().quantity().coherent(), zone(tag).grown(furthest())));
    }

    /** What bars the ways to a zone, or detects who goes there. */
    private Shape closing(String zone) {
        return closing.computeIfAbsent(
                zone,
                tag -> Shape.of(Stream.concat(
                                Stream.of(barring), guarding(tag).stream().map(one -> effective(one.tag())))
                        .toList()));
    }

    /** No separation distance is greater. */
    private BigDecimal furthest() {
        return around.safeguards().stream()
                .flatMap(guarding -> guarding.separationDistance().value().stream())
                .map(Quantity::coherent)
                .max(Comparator.naturalOrder())
                .orElse(BigDecimal.ZERO)
                .max(BigDecimal.ONE);
    }

    /** The floor onto which nobody gets from outside without passing such a thing, and on which nothing detects anybody. */
    Shape inside(String zone) {
        return inside.computeIfAbsent(zone, tag -> {
            return Shape.hull(List.of(closing(tag), zone(tag)))
                    .without(outside(tag))
                    .areas()
                    .roomFor(widestOpening().quantity().coherent(), Straight.NARROWEST, closing(tag));
        });
    }

    /** The structures that nobody gets across. */
    List<Obstacle> structures() {
        return obstacles.stream()
                .filter(one -> plan.structures().stream()
                        .anyMatch(structure -> structure.tag().characters().equals(one.tag())))
                .toList();
    }

    /** The hazard zones of a robot. */
    List<Zone> zonesOf(String robot) {
        return around.zones().stream()
                .map(ZoneExtent::zone)
                .filter(zone -> zone.robot().value().equals(Optional.of(robot)))
                .toList();
    }

    /** Tags of the drawn hazard zones in which a robot moves. */
    List<String> robotZones() {
        return around.zones().stream()
                .map(ZoneExtent::zone)
                .filter(zone -> zone.robot().value().isPresent())
                .map(zone -> zone.tag().characters())
                .filter(zone -> !zone(zone).empty())
                .toList();
    }

    /** Where a zone is drawn; where it is described when it is not. */
    Span where(Stated<String> zone) {
        return plan.zones().stream()
                .map(DrawnZone::of)
                .filter(drawn -> drawn.characters().equals(zone.characters()))
                .findFirst()
                .orElse(zone)
                .where();
    }

    /** The complementary device with that tag. */
    Optional<ComplementaryDevice> device(Stated<String> tag) {
        return around.complementary().stream()
                .map(Complement::device)
                .filter(device -> device.tag().characters().equals(tag.characters()))
                .findFirst();
    }

    private Footprint footprint(String tag) {
        return around.safeguards().stream()
                .filter(guarding -> guarding.tag().equals(tag))
                .map(guarding -> guarding.safeguard().device().footprint())
                .findFirst()
                .orElse(Footprint.LINE);
    }

    /** True when every structure and every safeguard is drawn, so that what is open is open at the cell. What is not was told. */
    boolean drawnWhole() {
        return plan.structures().stream()
                        .allMatch(structure -> structure.outline().isPresent())
                && around.safeguards().stream()
                        .map(guarding -> drawn(guarding.tag()))
                        .allMatch(pieces -> !pieces.isEmpty()
                                && pieces.stream()
                                        .allMatch(piece -> piece.outline()
                                                .filter(outline -> DrawnFaults.fits(
                                                        outline,
                                                        footprint(piece.of().characters())))
                                                .isPresent()));
    }

    /** Where the piece of a zone, structure or safeguard is drawn to which a point belongs, file, line and column. */
    String drawnAt(String tag, Point point) {
        return Stream.of(
                        plan.zones().stream().map(zone -> new Piece(zone.of(), zone.outline())),
                        plan.structures().stream().map(one -> new Piece(one.tag(), one.outline())),
                        plan.safeguards().stream().map(one -> new Piece(one.of(), one.outline())))
                .flatMap(pieces -> pieces)
                .filter(piece -> piece.of.characters().equals(tag))
                .min(Comparator.comparing(piece -> piece.apart(point)))
                .map(piece -> piece.of.where().position())
                .orElse("");
    }

    private record Piece(Stated<String> of, Optional<Outline> outline) {
        BigDecimal apart(Point point) {
            return outline.flatMap(drawn -> drawn.shape(Arcs.WITHIN).nearest(Shape.spot(point)))
                    .map(Between::square)
                    .orElse(BigDecimal.valueOf(Long.MAX_VALUE));
        }
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
                        isSeenWhole(guarding.tag()),
                        drawnAt(guarding.tag(), nearest.between().from()),
                        drawnAt(nearest.zone(), nearest.between().to()),
                        drawn(guarding.tag()).get(0).recorded()));
    }

    private boolean isSeenWhole(String tag) {
        return fields().stream()
                        .filter(field -> field.guarding().tag().equals(tag))
                        .allMatch(field -> field.parts().isEmpty())
                && coverage.stream()
                        .filter(one -> !one.open().empty())
                        .flatMap(one -> one.scanners().stream())
                        .noneMatch(scanner -> scanner.tag().equals(tag));
    }

    private record Nearest(String zone, Between between) {
        BigDecimal square() {
            return between.square();
        }
    }

    /** What does not hold on the plan, besides what is held of each distance. */
    public List<Finding> findings() {
        List<Finding> findings = new ArrayList<>(DrawnFaults.of(this));
        plan.noPlaces().ifPresent(findings::add);
        findings.addAll(ScannerFaults.of(this));
        fields().forEach(field -> findings.addAll(field.findings()));
        SeenField.warning(this).forEach(field -> findings.addAll(field.findings()));
        coverage.forEach(one -> one.finding(this).ifPresent(findings::add));
        findings.addAll(MatForm.of(this));
        perimeters.forEach(perimeter -> findings.addAll(WaysIn.of(perimeter)));
        swings.forEach(swing -> swing.finding(this).ifPresent(findings::add));
        findings.addAll(RobotSpace.of(this));
        findings.addAll(StandingInside.of(this));
        return findings;
    }
}
