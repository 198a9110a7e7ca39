package org.cellfile.subject.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cellfile.claim.Workings;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.geometry.Between;
import org.cellfile.geometry.Shape;
import org.cellfile.geometry.Sight;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding.Side;
import org.cellfile.source.Stated;
import org.cellfile.subject.safeguard.Device.Footprint;
import org.cellfile.subject.safeguard.Guarding;
import org.cellfile.trace.Derived;

/**
 * A hazard zone that scanners guard, and the floor around it that their fields must cover: all from which the straight way into the
 * zone is shorter than the separation distance, leads through nothing that bars or detects, and onto which somebody gets from
 * outside unnoticed. Where several scanners guard a zone the shortest of their distances counts here: the edge of each field is held
 * against its own.
 *
 * @param distance the shortest separation distance of these scanners
 * @param open floor that is in none of the fields
 */
record FieldCoverage(String zone, List<Guarding> scanners, Derived distance, Shape needed, Shape open, Shape hazard) {

    /** Floor that a field has to cover is not covered. */
    static final FindingId NOT_COVERED = new FindingId("installed.field-does-not-cover-on-plan");

    /** Of each zone that a scanner guards. */
    static List<FieldCoverage> of(Layout layout) {
        return layout.around().zones().stream()
                .map(extent -> extent.zone().tag().characters())
                .flatMap(zone -> of(layout, zone).stream())
                .toList();
    }

    private static Optional<FieldCoverage> of(Layout layout, String zone) {
        List<Guarding> guarding = layout.guarding(zone);
        List<Guarding> scanners = guarding.stream()
                .filter(one -> one.safeguard().device().looksFromOnePlace())
                .filter(one -> one.separationDistance().value().isPresent())
                .toList();
        Shape hazard = layout.zone(zone);
        return scanners.stream()
                .map(Guarding::separationDistance)
                .min(Comparator.comparing(one -> one.value().orElseThrow()))
                .filter(any -> !hazard.empty())
                .map(distance -> of(layout, zone, scanners, distance));
    }

    private static FieldCoverage of(Layout layout, String zone, List<Guarding> scanners, Derived distance) {
        Shape hazard = layout.zone(zone);
        Quantity within = distance.value().orElseThrow();
        Shape near = hazard.grown(within.coherent());
        Shape bars = layout.barring().about(near);
        List<Shape> lines = new ArrayList<>(List.of(bars));
        // Through an opening that lets nobody in no way leads to the zone.
        layout.perimeter(zone).ifPresent(perimeter -> perimeter.acrossOpenings().forEach(lines::add));
        List<Shape> fields = new ArrayList<>();
        for (Guarding one : layout.guarding(zone)) {
            Shape effective = layout.effective(one.tag()).about(near);
            (one.safeguard().device().footprint() == Footprint.AREA ? fields : lines).add(effective);
        }
        Shape floor = near.without(hazard).without(bars.areas()).areas();
        Shape needed = Sight.reaching(hazard, within.coherent(), floor, Shape.of(lines));
        Shape open = needed.common(layout.outside(zone))
                .areas()
                .without(Shape.of(fields))
                .areas()
                .roomFor(layout.widestOpening().quantity().coherent());
        return new FieldCoverage(zone, scanners, distance, needed, open, hazard);
    }

    /** What is not covered; at the first of the scanners. */
    Optional<Finding> finding(Layout layout) {
        if (open.empty()) {
            return Optional.empty();
        }
        Between nearest = open.nearest(hazard).orElseThrow();
        String names = scanners.stream().map(one -> "`" + one.tag() + "`").collect(Collectors.joining(" and "));
        Stated<String> at = layout.drawn(scanners.get(0).tag()).stream()
                .map(DrawnSafeguard::of)
                .findFirst()
                .orElseGet(() -> scanners.get(0).safeguard().tag());
        return Optional.of(Finding.refuses(
                NOT_COVERED,
                scanners.get(0).tag(),
                at.where(),
                "no field covers floor of " + Straight.place(open) + ", from which somebody gets to `" + zone
                        + "` undetected: the nearest of it, at " + nearest.from() + ", is "
                        + Straight.length(nearest, Side.DOWN) + " from the zone, and " + names
                        + " must detect whoever is within " + Workings.shown(distance),
                "enlarge the field, move or add a scanner, or close that way by a fence; until then a named person may state a"
                        + " deviation"));
    }
}
