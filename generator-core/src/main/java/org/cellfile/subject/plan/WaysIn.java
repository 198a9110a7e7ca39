package org.cellfile.subject.plan;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cellfile.claim.Workings;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.geometry.Point;
import org.cellfile.quantity.Quantity;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Drawing;

/** The ways by which somebody gets to a hazard zone undetected, told one by one. */
record WaysIn(Perimeter perimeter) {

    /** Somebody gets to a hazard zone without crossing a safeguard of it. */
    static final FindingId OPEN = new FindingId("installed.perimeter-open");

    /**
     * Each way in, about the zone and the things between which it opens, so that a deviation is for one of them alone. Where something
     * that belongs to the perimeter is not drawn, that is said, and the gap it leaves is not told.
     */
    static List<Finding> of(Perimeter perimeter) {
        return perimeter.drawnWhole() ? new WaysIn(perimeter).all() : List.of();
    }

    private List<Finding> all() {
        if (perimeter.rings().stream().anyMatch(List::isEmpty)) {
            return List.of(nothingRound());
        }
        Map<String, Integer> told = new HashMap<>();
        List<Finding> open = new ArrayList<>();
        perimeter.openings().stream()
                .filter(perimeter::admits)
                .sorted(Comparator.comparing(WaysIn::first))
                .forEach(opening -> open.add(open(
                        opening,
                        about(List.of(opening.drawn().from(), opening.drawn().to()), opening.width(), told))));
        perimeter
                .steppedAcross()
                .forEach(step -> open.add(stepped(step, about(step.drawn().over(), step.depth(), told))));
        return open;
    }

    /** The end of it that comes first, whichever way the ring was gone round. */
    private static Point first(Perimeter.Opening opening) {
        Point from = opening.drawn().between().from();
        Point to = opening.drawn().between().to();
        return from.compareTo(to) <= 0 ? from : to;
    }

    /**
     * What a deviation names: the zone, the things, the width in mm, so that it covers no wider way than it was stated for, and a number
     * from the second one on that opens between the same and as wide.
     */
    private String about(List<String> things, Derived width, Map<String, Integer> told) {
        String about = Stream.of(
                        Stream.of(perimeter.tag()),
                        things.stream().sorted(),
                        width.value().stream()
                                .map(value -> value.coherent()
                                        .setScale(0, RoundingMode.UP)
                                        .toPlainString()))
                .flatMap(parts -> parts)
                .collect(Collectors.joining("."));
        int number = told.merge(about, 1, Integer::sum);
        return number == 1 ? about : about + "." + number;
    }

    private static String deviation(String about) {
        return "; until then a named person may state a deviation, `of: " + about + "`";
    }

    private Finding nothingRound() {
        List<String> names =
                perimeter.tags().stream().map(tag -> "`" + tag + "`").toList();
        return Finding.refuses(
                OPEN,
                perimeter.tag(),
                perimeter.where(),
                "nothing goes round the hazard zone `" + perimeter.tag() + "` on the plan"
                        + (names.isEmpty() ? "" : ": " + String.join(", ", names) + " leave a side of it open"),
                "draw what keeps people from it on every side; a safeguard that does not protect this zone, and a structure that"
                        + " is passable, keep nobody from it, and neither does what stands within the zone");
    }

    private Finding open(Perimeter.Opening opening, String about) {
        List<String> because = new ArrayList<>(Drawing.of(opening.width()).lines());
        Derived limit = perimeter.limit(opening);
        because.addAll(Drawing.of(limit).lines());
        return Finding.refuses(
                        OPEN,
                        about,
                        perimeter.where(),
                        "the way to the hazard zone `" + perimeter.tag() + "` is open by "
                                + opening.width()
                                        .rounded()
                                        .map(Quantity::toString)
                                        .orElse("") + " from `"
                                + opening.drawn().from() + "` at "
                                + opening.drawn().between().from() + " to `"
                                + opening.drawn().to() + "` at "
                                + opening.drawn().between().to()
                                + ", and no safeguard of that zone is crossed there; "
                                + (limit.equals(perimeter.widestOpening())
                                        ? "a person gets through what is wider than "
                                        : "a field or a mat holds nobody back, and feet go beside it on a strip wider than ")
                                + limit.rounded().map(Quantity::toString).orElse(""),
                        "look there at the cell: close the opening, or draw what stands in it and state that it protects the"
                                + " zone" + deviation(about))
                .because(because);
    }

    private Finding stepped(Perimeter.Step step, String about) {
        List<String> because = new ArrayList<>(Drawing.of(step.depth()).lines());
        perimeter
                .leastDepthToStepOver()
                .ifPresent(least -> because.addAll(Drawing.of(least).lines()));
        return Finding.refuses(
                        OPEN,
                        about,
                        perimeter.where(),
                        "on the way to the hazard zone `" + perimeter.tag() + "` somebody steps across " + step.over()
                                + " without being detected: from floor to floor it is "
                                + Workings.shown(step.depth()) + " deep there, from "
                                + step.drawn().way().from() + " to "
                                + step.drawn().way().to() + ", and nobody steps over what is at least "
                                + perimeter
                                        .leastDepthToStepOver()
                                        .map(Workings::shown)
                                        .orElse("") + " deep",
                        "look there at the cell: have a field or a mat detect people over that depth, or bar the way beside it"
                                + deviation(about))
                .because(because);
    }
}
