package org.cellfile.subject.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cellfile.claim.Claim;
import org.cellfile.claim.Recomputed;
import org.cellfile.claim.Recorded;
import org.cellfile.finding.Finding;
import org.cellfile.geometry.Arcs;
import org.cellfile.geometry.Bar;
import org.cellfile.geometry.Enclosure;
import org.cellfile.geometry.Floor;
import org.cellfile.geometry.Shape;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.source.Span;
import org.cellfile.subject.safeguard.Device.Footprint;
import org.cellfile.subject.safeguard.Guarding;
import org.cellfile.trace.Derived;

/**
 * What stands round a hazard zone: structures that nobody gets across, fixed guards, and the safeguards that protect this zone. What
 * protects another zone only keeps nobody from this one.
 */
public final class Perimeter implements Recomputed {

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
    private final Optional<Derived> leastDepth;
    private final Optional<Derived> widestStrip;
    private final List<Step> steps = new ArrayList<>();

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

    /** A field or a mat, or several beside each other, that somebody steps across, with the depth there. */
    record Step(StepAcross drawn, Derived depth) {
        /** Tags of what is stepped across, for a sentence. */
        String over() {
            return drawn.over().stream().map(tag -> "`" + tag + "`").collect(Collectors.joining(" and "));
        }
    }

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
        this.widest =
                PerimeterLimits.widestOpening(about(tag()), layout.around().cells());
        rings.stream()
                .flatMap(Optional::stream)
                .flatMap(ring -> ring.openings().stream())
                .distinct()
                .forEach(opening -> openings.add(new Opening(opening, width(opening, openings.size() + 1))));
        this.taken = Shape.of(Stream.concat(around.stream().map(Around::shape), acrossOpenings())
                .toList());
        List<Guarding> covering = around.stream()
                .filter(Around::covers)
                .flatMap(one -> one.guarding().stream())
                .toList();
        this.widestStrip = PerimeterLimits.widestStrip(about(tag()), covering);
        this.leastDepth = PerimeterLimits.leastDepth(about(tag()), covering);
        if (closed()) {
            steps();
        }
    }

    private void steps() {
        Map<String, Shape> areas = around.stream()
                .filter(Around::covers)
                .collect(Collectors.toMap(Around::tag, Around::shape, (one, other) -> one, LinkedHashMap::new));
        Shape lines = Shape.of(
                Stream.concat(around.stream().filter(one -> !one.covers()).map(Around::shape), acrossOpenings())
                        .toList());
        leastDepth
                .flatMap(Derived::value)
                .ifPresent(least -> StepAcross.onTheWayTo(zone, areas, lines, places(), least.coherent())
                        .forEach(step -> steps.add(new Step(step, depth(step, steps.size() + 1)))));
        steps.removeIf(step -> !isSteppedAcross(step));
    }

    private Derived depth(StepAcross step, int number) {
        return new Derived(
                about(tag()),
                "step-" + number,
                "depth where somebody steps across",
                "w_" + number,
                "straight line from " + step.way().from() + " to " + step.way().to(),
                Straight.length(
                        step.way(),
                        "the edge",
                        "the edge beyond",
                        drawn.of().where().position()),
                Rounding.up(Quantity.millimetres("1")));
    }

    /** A fraction of a millimetre is what arcs and read coordinates leave over. */
    private boolean isSteppedAcross(Step step) {
        return step.depth()
                .rounded()
                .flatMap(depth -> leastDepth.flatMap(Derived::value).map(least -> depth.compareTo(least) < 0))
                .orElse(true);
    }

    /** The straight ways across its openings. */
    Stream<Shape> acrossOpenings() {
        return openings.stream()
                .map(opening -> Shape.line(List.of(
                        opening.drawn().between().from(),
                        opening.drawn().between().to())));
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
                        layout.drawnAt(opening.from(), opening.between().from()),
                        opening.to(),
                        layout.drawnAt(opening.to(), opening.between().to())),
                Rounding.up(Quantity.millimetres("1"))
                        .beside(layout.plan().uncertainty().value()));
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

    /** The least depth of a field or mat that nobody steps over; empty where there is none. */
    Optional<Derived> leastDepthToStepOver() {
        return leastDepth;
    }

    /** Where somebody gets to the zone by stepping across a field or a mat. */
    List<Step> steppedAcross() {
        return steps;
    }

    /** True when what stands round the zone leaves no opening through which somebody gets in. */
    boolean closed() {
        return rings.stream().allMatch(Optional::isPresent) && openings.stream().noneMatch(this::admits);
    }

    /** True when somebody gets in through it. */
    public boolean admits(Opening opening) {
        return opening.width()
                .value()
                .flatMap(width -> limit(opening).value().map(limit -> width.compareTo(limit) > 0))
                .orElse(true);
    }

    /** What an opening is held against: the widest that lets nobody in, or the widest strip where a field or a mat is on a side of it. */
    Derived limit(Opening opening) {
        return widestStrip
                .filter(any ->
                        covers(opening.drawn().from()) || covers(opening.drawn().to()))
                .orElse(widest);
    }

    private boolean covers(String tag) {
        return around.stream().anyMatch(one -> one.covers() && one.tag().equals(tag));
    }

    /** The widest strip beside a field or a mat on which nobody goes undetected; empty where there is none. */
    Optional<Derived> widestStrip() {
        return widestStrip;
    }

    @Override
    public List<Derived> derived() {
        return Stream.of(
                        Stream.of(widest),
                        widestStrip.stream(),
                        leastDepth.stream(),
                        openings.stream().map(Opening::width),
                        steps.stream().map(Step::depth))
                .flatMap(values -> values)
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

    /** None that is one of the zone as a whole: see {@link WaysIn}. */
    @Override
    public List<Finding> faults() {
        return List.of();
    }

    /** True when everything that belongs to it is drawn. */
    boolean drawnWhole() {
        return layout.drawnWhole();
    }

    /** Where the zone is drawn. */
    Span where() {
        return drawn.of().where();
    }

    /** Tags of what stands round it, in no order of going round. */
    List<String> tags() {
        return around.stream().map(Around::tag).distinct().toList();
    }

    /** Where somebody can be who gets through no opening of a closed ring. */
    private List<Floor.Place> places() {
        return widest.value().map(limit -> floor(limit.coherent()).places()).orElseGet(List::of);
    }

    /** The floor round the zone that nothing takes, for somebody wider than that; openings of the ring are closed. */
    Floor floor(BigDecimal width) {
        return floors.computeIfAbsent(width.stripTrailingZeros(), wide -> Floor.around(taken, wide));
    }

    /**
     * Over which edge people come into the area in which a safeguard detects them, without having been kept from the zone or detected
     * by it before: where the floor beside the edge does not lead on to the zone and is reached on another way than across this very
     * area. An edge along a fence or a structure lets nobody in.
     *
     * @see OuterEdge for what of an edge lies at a slit
     */
    Shape outerEdge(String safeguard) {
        Shape area = layout.effective(safeguard);
        List<Around> others =
                around.stream().filter(one -> !one.tag().equals(safeguard)).toList();
        List<Floor.Place> places = places();
        Shape near = area.grown(DRAWN_ALONG);
        Shape along = Shape.of(others.stream()
                        .filter(one -> one.fixed() || one.covers())
                        .map(one -> one.shape().about(near))
                        .toList())
                .grown(DRAWN_ALONG);
        Shape things = Shape.of(Stream.concat(others.stream().map(Around::shape), acrossOpenings())
                .toList());
        Map<Boolean, List<Floor.Place>> byOuter =
                places.stream().collect(Collectors.partitioningBy(place -> isOuter(place, others)));
        return new OuterEdge(byOuter.getOrDefault(true, List.of()), byOuter.getOrDefault(false, List.of()), things)
                .of(area.edge().without(along));
    }

    private boolean isOuter(Floor.Place place, List<Around> others) {
        return !place.reachesInto(zone)
                && (place.isOutside()
                        || others.stream().filter(one -> !one.fixed()).anyMatch(one -> place.touches(one.shape())));
    }
}
