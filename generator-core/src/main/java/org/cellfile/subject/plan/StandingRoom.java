package org.cellfile.subject.plan;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cellfile.claim.Claim;
import org.cellfile.claim.Recomputed;
import org.cellfile.claim.Recorded;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.geometry.Arcs;
import org.cellfile.geometry.Between;
import org.cellfile.geometry.Floor;
import org.cellfile.geometry.Point;
import org.cellfile.geometry.Shape;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.source.Stated;
import org.cellfile.standard.PositioningStandard;
import org.cellfile.subject.safeguard.Behind;
import org.cellfile.subject.safeguard.Device.Footprint;
import org.cellfile.subject.safeguard.Guarding;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Drawing;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Least;
import org.cellfile.trace.Term;

/**
 * The floor on the hazard side of a safeguard that people pass, as far as nothing detects them there. Of what is passed by opening it
 * only, a reset is the measure, and nothing is asked here.
 */
public final class StandingRoom implements Recomputed {

    /** Somebody who has passed a safeguard can stand undetected between it and the hazard. */
    public static final FindingId STANDING = new FindingId("installed.standing-on-plan");

    private static final BigDecimal SQUARE_METRE = new BigDecimal("1000000");

    private final Guarding guarding;
    private final Plan plan;
    private final List<DrawnSafeguard> drawn;
    private final Derived limit;
    private final Optional<Derived> gap;
    private final List<Place> places;

    /**
     * A place in which somebody can stand.
     *
     * @param zone tag of the hazard zone it lies before
     * @param at beside the safeguard
     * @param area of the floor that one gets to from there undetected, in m²
     */
    public record Place(String zone, Point at, BigDecimal area) {
        /** For print, in millimetres. */
        public String words() {
            return words(at.toString());
        }

        /** For print, as it is written on the plan. */
        String words(Plan plan) {
            return words(plan.words(at));
        }

        private String words(String point) {
            return "at " + point + ", " + area.toPlainString() + " m²";
        }
    }

    /** Empty for what nobody passes unless it is opened, and where no edition in force has a limit. */
    static Optional<StandingRoom> behind(Guarding guarding, Layout layout) {
        List<Fixed> limits = guarding.editions().stream()
                .map(Guarding.Under::edition)
                .map(PositioningStandard::widestGapBehind)
                .flatMap(Optional::stream)
                .toList();
        boolean passed = guarding.safeguard().kind().stopsTheHazard()
                && !guarding.safeguard().kind().closedByHand()
                && guarding.safeguard().device().footprint() != Footprint.SPOT
                && !layout.effective(guarding.tag()).empty()
                && layout.drawnWhole();
        return passed && !limits.isEmpty() ? Optional.of(new StandingRoom(guarding, layout, limits)) : Optional.empty();
    }

    private StandingRoom(Guarding guarding, Layout layout, List<Fixed> limits) {
        this.guarding = guarding;
        this.plan = layout.plan();
        this.drawn = layout.drawn(guarding.tag());
        String about = PlanDistance.about(guarding.tag());
        Term least = limits.size() == 1 ? limits.get(0) : new Least(List.copyOf(limits));
        this.limit = new Derived(
                about,
                "standing-width",
                limits.get(0).reference().name(),
                "g_b",
                limits.stream().map(one -> one.reference().clause().toString()).collect(Collectors.joining("; ")),
                least,
                Rounding.down(Quantity.millimetres("1")));
        Shape shape = layout.effective(guarding.tag());
        this.places = limit.value()
                .map(width -> guarding.zones().stream()
                        .map(zone -> layout.perimeter(zone.tag().characters()))
                        .flatMap(Optional::stream)
                        .flatMap(perimeter -> places(perimeter, shape, width.coherent()))
                        .sorted(Comparator.comparing(Place::area).reversed().thenComparing(Place::at))
                        .toList())
                .orElseGet(List::of);
        this.gap = guarding.safeguard()
                .device()
                .behind()
                .flatMap(behind -> gapOnPlan(layout, shape))
                .map(between -> new Derived(
                        about,
                        "gap-behind",
                        "gap behind on the plan",
                        "g_p",
                        "straight line from " + between.from() + " to " + between.to(),
                        Straight.length(
                                between,
                                "the safeguard",
                                "what stands behind it",
                                drawn.get(0).of().where().position()),
                        Rounding.down(Quantity.millimetres("1"))
                                .beside(layout.plan().uncertainty().value())));
    }

    private boolean isField() {
        return guarding.safeguard().device().footprint() == Footprint.AREA;
    }

    /** The zone itself is floor too: somebody can stand in it while the machine waits elsewhere. */
    private Stream<Place> places(Perimeter perimeter, Shape shape, BigDecimal width) {
        Floor floor = perimeter.floor(width);
        Shape beside = isField()
                ? shape.edge().alongside(floor.besideALine())
                : shape.alongside(floor.besideALine(), perimeter.zone());
        return floor.places().stream().filter(place -> !place.isOutside()).flatMap(place -> {
            Shape entered = place.entered(beside);
            return entered.empty()
                    ? Stream.empty()
                    : Stream.of(new Place(
                            perimeter.tag(),
                            entered.within(),
                            place.floor().area().divide(SQUARE_METRE, 2, RoundingMode.HALF_EVEN)));
        });
    }

    /** To the nearest of what stands straight behind it, or to its hazard zone where that is nearer. */
    private Optional<Between> gapOnPlan(Layout layout, Shape line) {
        Shape zones = Shape.of(guarding.zones().stream()
                .map(zone -> layout.zone(zone.tag().characters()))
                .toList());
        return line.nearest(zones).map(toTheZone -> {
            Shape behind = line.alongside(reach(toTheZone), zones);
            return plan.structures().stream()
                    .filter(Structure::bars)
                    .flatMap(structure -> structure.outline().stream())
                    .map(outline -> outline.shape(Arcs.WITHIN).common(behind))
                    .flatMap(structure -> line.nearest(structure).stream())
                    .filter(between -> between.square().signum() > 0)
                    .min(Comparator.comparing(Between::square))
                    .filter(between -> between.square().compareTo(toTheZone.square()) < 0)
                    .orElse(toTheZone);
        });
    }

    private static BigDecimal reach(Between toTheZone) {
        return toTheZone.square().sqrt(MathContext.DECIMAL64);
    }

    public Guarding guarding() {
        return guarding;
    }

    /** What does not hold anybody: floor no wider than that. */
    public Derived widest() {
        return limit;
    }

    /** Where somebody can stand, the largest first. */
    public List<Place> places() {
        return places;
    }

    /** What detects who stands there or keeps the machine from starting; missing where nothing is stated. */
    public Optional<String> measure() {
        return Stream.concat(
                        guarding.safeguard().device().behind().map(Behind::measure).stream(),
                        drawn.stream().map(DrawnSafeguard::standing))
                .flatMap(stated -> stated.value().stream())
                .findFirst();
    }

    /** The gap behind as the plan has it; empty for what has none stated. */
    public Optional<Derived> gap() {
        return gap;
    }

    @Override
    public String tag() {
        return guarding.tag();
    }

    @Override
    public List<Derived> derived() {
        return Stream.concat(Stream.of(limit), gap.stream()).toList();
    }

    @Override
    public Recorded recorded() {
        return Recorded.none(PlanDistance.about(tag()));
    }

    @Override
    public List<Claim> requirements() {
        return List.of();
    }

    @Override
    public List<Finding> faults() {
        List<Finding> faults = new ArrayList<>();
        guarding.safeguard()
                .device()
                .behind()
                .flatMap(behind -> gap.flatMap(onPlan -> differs(behind.gap(), onPlan)))
                .ifPresent(faults::add);
        if (!places.isEmpty() && measure().isEmpty()) {
            faults.add(standing(places.get(0)));
        }
        return faults;
    }

    private Optional<Finding> differs(Stated<Quantity> tape, Derived onPlan) {
        boolean within = tape.value()
                .flatMap(measured -> onPlan.value()
                        .map(read -> measured.compareTo(read) >= 0 ? measured.minus(read) : read.minus(measured)))
                .flatMap(apart -> plan.tolerance().value().map(allowed -> apart.compareTo(allowed) <= 0))
                .orElse(true);
        return within
                ? Optional.empty()
                : Optional.of(Finding.refuses(
                                PlanDistance.DIFFERS,
                                tag(),
                                tape.where(),
                                "the gap behind `" + tag() + "` is stated as " + tape.characters()
                                        + ", and the plan has "
                                        + onPlan.rounded()
                                                .map(Quantity::toString)
                                                .orElse("")
                                        + " to the nearest of what stands behind it and its hazard zone: they differ by more than"
                                        + " the tolerance of "
                                        + plan.tolerance().characters(),
                                "measure once more at the machine, straight behind the field; then correct whichever of both does"
                                        + " not show what stands there")
                        .because(Drawing.of(onPlan).lines()));
    }

    private Finding standing(Place largest) {
        List<String> because = new ArrayList<>(Drawing.of(limit).lines());
        if (places.size() > 1) {
            because.add("further places: "
                    + places.stream().skip(1).map(Place::words).collect(Collectors.joining("; ")));
        }
        String measure = isField()
                ? "state as `standing` of it on the plan"
                : "state as `measure` under `behind` of the safeguard";
        return Finding.refuses(
                        STANDING,
                        tag(),
                        drawn.get(0).of().where(),
                        "somebody who has passed `" + tag() + "` can stand between it and the hazard zone `"
                                + largest.zone() + "`, " + largest.words()
                                + " of floor on which no field and no mat detects anybody",
                        "close that floor or have a field or a mat cover it; or " + measure
                                + " what detects who stands there or keeps the machine from starting; until then a named person"
                                + " may state a deviation")
                .because(because);
    }
}
