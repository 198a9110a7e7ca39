package org.cellfile.subject.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cellfile.claim.Claim;
import org.cellfile.claim.Recomputed;
import org.cellfile.claim.Recorded;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.geometry.Arcs;
import org.cellfile.geometry.Bar;
import org.cellfile.geometry.Enclosure;
import org.cellfile.geometry.Floor;
import org.cellfile.geometry.Shape;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.standard.RobotCellStandard;
import org.cellfile.subject.safeguard.Device.Footprint;
import org.cellfile.subject.safeguard.Guarding;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Drawing;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Least;
import org.cellfile.trace.Term;

/**
 * What stands round a hazard zone: structures that nobody gets across, fixed guards, and the safeguards that protect this zone. What
 * protects another zone only keeps nobody from this one.
 */
public final class Perimeter implements Recomputed {

    /** Somebody gets to a hazard zone without crossing a safeguard of it. */
    public static final FindingId OPEN = new FindingId("installed.perimeter-open");

    /** What is drawn along something may be this far from it, in mm. */
    private static final BigDecimal DRAWN_ALONG = new BigDecimal("1");

    private final Layout layout;
    private final DrawnZone drawn;
    private final Shape zone;
    private final List<Around> around;
    private final List<Optional<Enclosure.Ring>> rings;
    private final Derived widest;
    private final List<Opening> openings = new ArrayList<>();
    private final Shape taken;
    private final Map<BigDecimal, Floor> floors = new HashMap<>();

    /**
     * One thing round it.
     *
     * @param guarding empty for a structure
     */
    private record Around(String tag, Shape shape, Optional<Guarding> guarding) {
        /** True when nobody gets across it at all. */
        boolean fixed() {
            return guarding.filter(one -> one.safeguard().kind().stopsTheHazard())
                    .isEmpty();
        }

        boolean covers() {
            return guarding.filter(one -> one.safeguard().device().footprint() == Footprint.AREA)
                    .isPresent();
        }
    }

    /** A way through the ring round the zone, with its width. */
    public record Opening(Enclosure.Opening drawn, Derived width) {}

    /** @param drawn of the pieces in which the zone is drawn the first */
    Perimeter(Layout layout, DrawnZone drawn) {
        this.layout = layout;
        this.drawn = drawn;
        this.zone = layout.zone(tag());
        this.around = Stream.concat(structures(), safeguards())
                .filter(one -> !one.shape().empty())
                .toList();
        List<Bar> bars =
                around.stream().map(one -> new Bar(one.tag(), one.shape())).toList();
        this.rings =
                zone.parts().stream().map(part -> Enclosure.round(part, bars)).toList();
        this.widest = widest(layout.around().cells());
        rings.stream()
                .flatMap(Optional::stream)
                .flatMap(ring -> ring.openings().stream())
                .distinct()
                .forEach(opening -> openings.add(new Opening(opening, width(opening, openings.size() + 1))));
        this.taken = Shape.of(Stream.concat(
                        around.stream().map(Around::shape),
                        openings.stream()
                                .map(opening -> Shape.line(List.of(
                                        opening.drawn().between().from(),
                                        opening.drawn().between().to()))))
                .toList());
    }

    private Stream<Around> structures() {
        return layout.plan().structures().stream()
                .filter(Structure::bars)
                .map(structure -> new Around(
                        structure.tag().characters(),
                        structure
                                .outline()
                                .map(outline -> outline.shape(Arcs.WITHIN))
                                .orElseGet(Shape::nothing),
                        Optional.empty()));
    }

    private Stream<Around> safeguards() {
        return relevant()
                .map(guarding -> new Around(guarding.tag(), layout.effective(guarding.tag()), Optional.of(guarding)));
    }

    /** Fixed guards bar whatever they were put up for; what stops a machine keeps people from that machine alone. */
    private Stream<Guarding> relevant() {
        return layout.around().safeguards().stream()
                .filter(guarding -> guarding.safeguard().device().footprint() != Footprint.SPOT)
                .filter(guarding -> !guarding.safeguard().kind().stopsTheHazard() || protects(guarding));
    }

    private boolean protects(Guarding guarding) {
        return guarding.zones().stream()
                .anyMatch(protectedZone -> protectedZone.tag().characters().equals(tag()));
    }

    private Derived widest(List<RobotCellStandard> editions) {
        List<Fixed> limits =
                editions.stream().map(RobotCellStandard::widestGapBelow).toList();
        Term least = limits.size() == 1 ? limits.get(0) : new Least(List.copyOf(limits));
        return new Derived(
                about(tag()),
                "widest-opening",
                "widest opening through which nobody gets in",
                "e_max",
                limits.stream()
                        .map(limit -> limit.reference().clause().toString())
                        .collect(Collectors.joining("; ")),
                least,
                Rounding.down(Quantity.millimetres("1")));
    }

    private Derived width(Enclosure.Opening opening, int number) {
        return new Derived(
                about(tag()),
                "opening-" + number,
                "width of an opening in the perimeter",
                "e_" + number,
                "straight line from " + opening.between().from() + " to "
                        + opening.between().to(),
                Straight.length(
                        opening.between(),
                        opening.from(),
                        opening.to(),
                        drawn.of().where().position()),
                Rounding.up(Quantity.millimetres("1")));
    }

    /** Under what its values stand. */
    static String about(String zone) {
        return zone + ".plan";
    }

    /** Tag of the hazard zone. */
    @Override
    public String tag() {
        return drawn.of().characters();
    }

    /** The zone as drawn. */
    public Shape zone() {
        return zone;
    }

    /** Through the narrowest ring round the zone, in the order of going round. */
    public List<Opening> openings() {
        return openings;
    }

    /** What the ring consists of, in the order of going round; of a zone drawn in several parts one for each part. */
    public List<List<String>> rings() {
        return rings.stream()
                .map(ring -> ring.map(Enclosure.Ring::bars).orElseGet(List::of))
                .toList();
    }

    /** The widest opening through which nobody gets in. */
    public Derived widestOpening() {
        return widest;
    }

    /** True when nobody gets to the zone without crossing what stands round it. */
    boolean closed() {
        return rings.stream().allMatch(Optional::isPresent) && openings.stream().noneMatch(this::admits);
    }

    /** True when somebody gets in through it. */
    public boolean admits(Opening opening) {
        return opening.width()
                .value()
                .flatMap(width -> widest.value().map(limit -> width.compareTo(limit) > 0))
                .orElse(true);
    }

    @Override
    public List<Derived> derived() {
        return Stream.concat(Stream.of(widest), openings.stream().map(Opening::width))
                .toList();
    }

    @Override
    public Recorded recorded() {
        return drawn.recorded();
    }

    @Override
    public List<Claim> requirements() {
        return List.of();
    }

    /** Where something that belongs to the perimeter is not drawn, that is said, and the gap it leaves is not told. */
    @Override
    public List<Finding> faults() {
        if (!layout.drawnWhole()) {
            return List.of();
        }
        if (rings.stream().anyMatch(Optional::isEmpty)) {
            return List.of(nothingRound());
        }
        return openings.stream().filter(this::admits).map(this::open).toList();
    }

    private Finding nothingRound() {
        List<String> names = around.stream()
                .map(Around::tag)
                .distinct()
                .map(tag -> "`" + tag + "`")
                .toList();
        return Finding.refuses(
                OPEN,
                tag(),
                drawn.of().where(),
                "nothing goes round the hazard zone `" + tag() + "` on the plan"
                        + (names.isEmpty() ? "" : ": " + String.join(", ", names) + " leave a side of it open"),
                "draw what keeps people from it on every side; a safeguard that does not protect this zone, and a structure that"
                        + " is passable, keep nobody from it, and neither does what stands within the zone");
    }

    private Finding open(Opening opening) {
        List<String> because = new ArrayList<>(Drawing.of(opening.width()).lines());
        because.addAll(Drawing.of(widest).lines());
        return Finding.refuses(
                        OPEN,
                        tag(),
                        drawn.of().where(),
                        "the way to the hazard zone `" + tag() + "` is open by "
                                + opening.width()
                                        .rounded()
                                        .map(Quantity::toString)
                                        .orElse("") + " from `"
                                + opening.drawn().from() + "` at "
                                + opening.drawn().between().from() + " to `"
                                + opening.drawn().to() + "` at "
                                + opening.drawn().between().to()
                                + ", and no safeguard of that zone is crossed there; a person gets through what is wider than "
                                + widest.rounded().map(Quantity::toString).orElse(""),
                        "look there at the cell: close the opening, or draw what stands in it and state that it protects the"
                                + " zone; until then a named person may state a deviation")
                .because(because);
    }

    /** The floor round the zone that nothing takes, for somebody wider than that; openings of the ring are closed. */
    Floor floor(BigDecimal width) {
        return floors.computeIfAbsent(width.stripTrailingZeros(), wide -> Floor.around(taken, wide));
    }

    /**
     * Over which edge people come into the area in which a safeguard detects them, without having been kept from the zone or detected
     * by it before: where the floor beside the edge does not lead on to the zone and is reached on another way than across this very
     * area. An edge along a fence or a structure lets nobody in.
     */
    Shape outerEdge(String safeguard) {
        Shape area = layout.effective(safeguard);
        List<Around> others =
                around.stream().filter(one -> !one.tag().equals(safeguard)).toList();
        List<Floor.Place> places =
                widest.value().map(limit -> floor(limit.coherent()).places()).orElseGet(List::of);
        List<Shape> outer = places.stream()
                .filter(place -> isOuter(place, others))
                .map(Floor.Place::floor)
                .toList();
        Shape outside = Shape.of(outer).grown(DRAWN_ALONG);
        List<Floor.Place> inner =
                places.stream().filter(place -> !isOuter(place, others)).toList();
        Shape around = area.grown(DRAWN_ALONG);
        Shape along = Shape.of(others.stream()
                        .filter(one -> one.fixed() || one.covers())
                        .map(one -> one.shape().about(around))
                        .toList())
                .grown(DRAWN_ALONG);
        return Shape.of(area.edge().without(along).stretches().stream()
                .filter(stretch -> stretch.meets(outside))
                // A corner that nobody fits into belongs to the floor at either side of it.
                .map(stretch ->
                        inner.stream().noneMatch(place -> place.touches(stretch)) ? stretch : stretch.common(outside))
                .toList());
    }

    private boolean isOuter(Floor.Place place, List<Around> others) {
        return !place.reachesInto(zone)
                && (place.isOutside()
                        || others.stream().filter(one -> !one.fixed()).anyMatch(one -> place.touches(one.shape())));
    }
}
