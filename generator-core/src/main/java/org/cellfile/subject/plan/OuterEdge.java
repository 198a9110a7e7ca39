package org.cellfile.subject.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cellfile.geometry.Floor;
import org.cellfile.geometry.Shape;

/**
 * Which part of the edge of a field belongs to the floor outside. Where somebody fits in that is the part beside him. What lies between
 * that and the next place where somebody fits in is a corner or a slit: between two places outside, or up to something that bars, all of
 * it is outside; on the way to a place inside, the part up to the mouth of the slit, which is the point nearest to what keeps somebody
 * from getting further along the edge.
 *
 * @param outer places from which people come in
 * @param inner all other places
 * @param things what else stands there
 */
record OuterEdge(List<Floor.Place> outer, List<Floor.Place> inner, Shape things) {

    /** Floor no further from an edge than that is beside it, in mm; what bars is taken out of the edge by more, so that none is seen through it. */
    private static final BigDecimal BESIDE = new BigDecimal("0.02");

    /** Of the edge of a field without what bars beside it. */
    Shape of(Shape edge) {
        Shape outside = floor(outer);
        Shape inside = floor(inner);
        return Shape.of(edge.stretches().stream()
                .filter(stretch -> stretch.meets(outside))
                .map(stretch -> stretch.meets(inside) ? part(stretch, outside, inside) : stretch)
                .toList());
    }

    private static Shape floor(List<Floor.Place> places) {
        return Shape.of(places.stream().map(Floor.Place::floor).toList()).grown(BESIDE);
    }

    private Shape part(Shape stretch, Shape outside, Shape inside) {
        List<Shape> parts = new ArrayList<>(List.of(stretch.common(outside)));
        for (Shape between : stretch.without(outside).without(inside).stretches()) {
            List<Shape> ends = between.edge().parts();
            List<Shape> outer = ends.stream().filter(end -> isAt(end, outside)).toList();
            if (!outer.isEmpty() && ends.stream().noneMatch(end -> isAt(end, inside))) {
                parts.add(between);
            } else {
                outer.forEach(end -> keptFrom(end).ifPresent(thing -> parts.add(between.upTo(end, thing))));
            }
        }
        return Shape.of(parts);
    }

    private static boolean isAt(Shape end, Shape floor) {
        return end.grown(BESIDE).meets(floor);
    }

    /** The point of a thing that keeps somebody from getting further along the edge than to its end. */
    private Optional<Shape> keptFrom(Shape end) {
        return outer.stream()
                .filter(place -> place.touches(end))
                .flatMap(place -> place.heldBy(things, end).stream())
                .findFirst()
                .map(Shape::spot);
    }
}
