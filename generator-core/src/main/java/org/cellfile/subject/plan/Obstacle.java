package org.cellfile.subject.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.cellfile.geometry.Arcs;
import org.cellfile.geometry.Shape;
import org.cellfile.subject.safeguard.Guarding;
import org.cellfile.subject.safeguard.Kind;

/**
 * Something that stands on the floor of the cell.
 *
 * @param tag of the structure or the safeguard
 */
record Obstacle(String tag, Shape shape) {

    /** What nobody gets across, nobody reaches through and no field sees through: structures, fences and closed doors. */
    static List<Obstacle> barring(Layout layout) {
        List<Obstacle> barring = new ArrayList<>(
                of(layout.plan().structures().stream().filter(Structure::bars).toList()));
        for (Guarding guarding : layout.around().safeguards()) {
            Kind kind = guarding.safeguard().kind();
            if (!kind.stopsTheHazard() || kind.closedByHand()) {
                barring.add(new Obstacle(guarding.tag(), layout.safeguard(guarding.tag())));
            }
        }
        return List.copyOf(barring);
    }

    /** What throws shadows on the fields of scanners: all that bars, and what people get across and do not see over. */
    static List<Obstacle> shading(Layout layout) {
        return Stream.concat(
                        layout.obstacles().stream(),
                        of(layout.plan().structures().stream()
                                        .filter(structure -> structure.isHiding() && !structure.bars())
                                        .toList())
                                .stream())
                .toList();
    }

    /** What a person does not see over. */
    static List<Obstacle> hiding(Layout layout) {
        return of(
                layout.plan().structures().stream().filter(Structure::isHiding).toList());
    }

    private static List<Obstacle> of(List<Structure> structures) {
        return structures.stream()
                .flatMap(one ->
                        one
                                .outline()
                                .map(outline -> new Obstacle(one.tag().characters(), outline.shape(Arcs.AROUND)))
                                .stream())
                .toList();
    }

    /** All of them together. */
    static Shape together(List<Obstacle> obstacles) {
        return Shape.of(obstacles.stream().map(Obstacle::shape).toList());
    }
}
