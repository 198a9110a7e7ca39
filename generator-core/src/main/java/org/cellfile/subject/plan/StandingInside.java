package org.cellfile.subject.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.geometry.Arcs;
import org.cellfile.geometry.Point;
import org.cellfile.geometry.Shape;
import org.cellfile.source.Stated;

/**
 * What cannot lie where it is drawn: a hazard zone within a solid structure, an operator place or a way out on the hazard side of the
 * safeguards. Drawn so, walls of the hall would pass for the fence of the cell.
 */
final class StandingInside {

    /** A structure that nobody gets across is drawn over a whole hazard zone. */
    static final FindingId COVERED = new FindingId("plan.zone-covered");

    /** Somebody is to work, or to get out, where nobody is detected before the hazard. */
    static final FindingId INSIDE = new FindingId("installed.place-inside-on-plan");

    private StandingInside() {}

    static List<Finding> of(Layout layout) {
        List<Finding> findings = new ArrayList<>();
        for (DrawnZone zone : layout.plan().zones()) {
            Shape hazard = layout.zone(zone.of().characters());
            if (!hazard.empty()) {
                layout.plan().structures().stream()
                        .filter(structure -> structure.bars() && covers(structure, hazard))
                        // A bench may lie below the whole zone, but what guards the zone does not stand in the bench.
                        .filter(structure -> layout.guarding(zone.of().characters()).stream()
                                .map(guarding -> layout.safeguard(guarding.tag()))
                                .anyMatch(safeguard -> !safeguard.empty() && covers(structure, safeguard)))
                        .forEach(structure -> findings.add(covered(structure, zone)));
            }
        }
        if (findings.isEmpty() && layout.drawnWhole()) {
            layout.plan()
                    .places()
                    .forEach(place -> inside(layout, place.tag(), place.at()).ifPresent(findings::add));
            layout.plan()
                    .waysOut()
                    .forEach(way -> inside(layout, way.name(), way.at()).ifPresent(findings::add));
        }
        return findings;
    }

    private static boolean covers(Structure structure, Shape hazard) {
        return structure
                .outline()
                .filter(outline -> !(outline instanceof Outline.Line))
                .filter(outline -> outline.shape(Arcs.AROUND).covers(hazard))
                .isPresent();
    }

    private static Finding covered(Structure structure, DrawnZone zone) {
        return Finding.refuses(
                COVERED,
                structure.tag().characters(),
                structure.tag().where(),
                "the structure `" + structure.tag().characters()
                        + "`, which nobody gets across, is drawn over the whole hazard zone `"
                        + zone.of().characters() + "` and a safeguard of it",
                "draw only the floor that it takes up; a wall, or a hall around the cell, is a `line`");
    }

    private static Optional<Finding> inside(Layout layout, Stated<String> what, Stated<Point> at) {
        return at.value()
                .flatMap(point -> layout.plan().zones().stream()
                        .map(zone -> zone.of().characters())
                        .distinct()
                        .filter(zone -> !layout.zone(zone).empty())
                        .filter(zone -> layout.zone(zone).meets(Shape.spot(point))
                                || layout.inside(zone).meets(Shape.spot(point)))
                        .findFirst()
                        .map(zone -> Finding.refuses(
                                INSIDE,
                                what.characters(),
                                at.where(),
                                "`" + what.characters() + "` at " + point
                                        + " lies on the hazard side of the safeguards of `" + zone
                                        + "`, where nobody is detected",
                                "draw it where it is at the cell; if it is there, no safeguard keeps people from the zone: draw what keeps"
                                        + " them out nearer to it")));
    }
}
