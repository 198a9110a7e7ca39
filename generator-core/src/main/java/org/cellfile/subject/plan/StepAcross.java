package org.cellfile.subject.plan;

import java.math.BigDecimal;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.cellfile.geometry.Between;
import org.cellfile.geometry.Floor;
import org.cellfile.geometry.Shape;

/**
 * A place at which somebody gets from floor to floor by one step across a field or a mat without touching it. The step is straight and
 * leads through nothing that bars, and through no line that detects.
 *
 * @param over tags of the fields and mats
 * @param way from the edge over which people come to the edge beyond
 */
record StepAcross(List<String> over, Between way) {

    /** What lies no further apart is drawn to touch, in mm. */
    private static final BigDecimal APART = Straight.NARROWEST;

    /** Floor no further from an edge than that is beside it, in mm. */
    private static final BigDecimal BESIDE = new BigDecimal("0.2");

    /** In place of the number of a place: nobody gets there. */
    private static final int NOT = -1;

    /**
     * The steps by which somebody gets from outside to a zone.
     *
     * @param areas fields and mats by tag
     * @param lines what else stands there
     * @param least depth of what nobody steps across, in mm
     */
    static List<StepAcross> onTheWayTo(
            Shape zone, Map<String, Shape> areas, Shape lines, List<Floor.Place> places, BigDecimal least) {
        Map<List<Integer>, List<StepAcross>> steps = between(places, areas, lines, least);
        int[] from = reached(places, zone, steps);
        Set<StepAcross> onTheWay = new LinkedHashSet<>();
        for (int place = 0; place < from.length; place++) {
            if (from[place] != NOT && places.get(place).reachesInto(zone)) {
                for (int at = place; at != from[at]; at = from[at]) {
                    onTheWay.addAll(steps.getOrDefault(List.of(from[at], at), List.of()));
                }
            }
        }
        return List.copyOf(onTheWay);
    }

    /** By the numbers of two places, the steps from the one to the other: one for each area that hangs together. */
    private static Map<List<Integer>, List<StepAcross>> between(
            List<Floor.Place> places, Map<String, Shape> areas, Shape lines, BigDecimal least) {
        Map<List<Integer>, List<StepAcross>> steps = new HashMap<>();
        Shape all = Shape.of(areas.values());
        Shape along = lines.grown(APART);
        for (Shape about : all.grown(APART.divide(BigDecimal.valueOf(2))).parts()) {
            Shape edge = all.common(about).areas().edge().without(along);
            Map<Integer, Shape> beside = new TreeMap<>();
            for (int i = 0; i < places.size(); i++) {
                Shape part = edge.common(places.get(i).floor().grown(BESIDE));
                if (!part.empty()) {
                    beside.put(i, part);
                }
            }
            beside.forEach((i, here) -> {
                Shape near = here.reaching(least, lines);
                beside.forEach((j, there) -> {
                    if (!i.equals(j)) {
                        here.nearest(there.common(near))
                                .filter(way -> way.square().compareTo(least.multiply(least)) < 0)
                                .ifPresent(way -> steps.computeIfAbsent(List.of(i, j), any -> new ArrayList<>())
                                        .add(new StepAcross(over(way, areas), way)));
                    }
                });
            });
        }
        return steps;
    }

    private static List<String> over(Between way, Map<String, Shape> areas) {
        Shape line = way.from().equals(way.to()) ? Shape.spot(way.from()) : Shape.line(List.of(way.from(), way.to()));
        return areas.entrySet().stream()
                .filter(area -> area.getValue()
                        .nearest(line)
                        .filter(between -> between.square().compareTo(BigDecimal.ONE) < 0)
                        .isPresent())
                .map(Map.Entry::getKey)
                .toList();
    }

    /** Of each place the one before it on the way from outside; the zone is where nobody goes on from. */
    private static int[] reached(List<Floor.Place> places, Shape zone, Map<List<Integer>, List<StepAcross>> steps) {
        int[] from = new int[places.size()];
        Deque<Integer> open = new ArrayDeque<>();
        for (int i = 0; i < from.length; i++) {
            from[i] = places.get(i).isOutside() ? i : NOT;
            if (from[i] == i) {
                open.add(i);
            }
        }
        while (!open.isEmpty()) {
            int at = open.remove();
            for (int next = 0; next < from.length; next++) {
                if (from[next] == NOT
                        && steps.containsKey(List.of(at, next))
                        && !places.get(at).reachesInto(zone)) {
                    from[next] = at;
                    open.add(next);
                }
            }
        }
        return from;
    }
}
