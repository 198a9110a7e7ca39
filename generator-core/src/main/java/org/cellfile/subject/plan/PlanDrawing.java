package org.cellfile.subject.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cellfile.claim.Workings;
import org.cellfile.dossier.Block.Drawing;
import org.cellfile.geometry.Arcs;
import org.cellfile.geometry.Extent;
import org.cellfile.geometry.Point;
import org.cellfile.geometry.Shape;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding.Side;
import org.cellfile.quantity.Unit;
import org.cellfile.subject.mode.Mode;
import org.cellfile.subject.mode.Mode.State;
import org.cellfile.subject.plan.Labels.Box;
import org.cellfile.subject.plan.Picture.Format;
import org.cellfile.subject.safeguard.Guarding;

/** A plan as drawings: of a cell with one hazard zone one, of others one of the whole and one for each zone with its distances. */
final class PlanDrawing {

    static final String TEMPLATE = "drawings/plan.svg.ftl";

    /** How far down the frame may reach, tried one after the other until all of a drawing fits on a page. */
    private static final List<Integer> LOWER_EDGES = List.of(6000, 5000, 4000, 3000, 2000);

    /** As high as a drawing may be on a page of either format, with its caption and the heading above it: 215 mm. */
    private static final BigDecimal HIGHEST = BigDecimal.valueOf(860);

    /** Of a zone, what of the plan is drawn around it with its safeguards, in mm. */
    private static final BigDecimal AROUND = BigDecimal.valueOf(600);

    private final Layout layout;
    private final Plan plan;

    PlanDrawing(Layout layout) {
        this.layout = layout;
        this.plan = layout.plan();
    }

    /** The plan with the distances measured on it. */
    List<Drawing> measured(Workings workings) {
        List<String> zones = plan.zones().stream()
                .map(zone -> zone.of().characters())
                .distinct()
                .toList();
        Optional<Extent> all = all();
        if (all.isEmpty()) {
            return List.of();
        }
        if (zones.size() < 2) {
            return List.of(
                    drawing("plan", "Plan of the cell", all.get(), layout.distances(), workings, Optional.empty()));
        }
        List<Drawing> drawings = new ArrayList<>();
        drawings.add(drawing("plan", "Plan of the cell", all.get(), List.of(), workings, Optional.empty()));
        for (String zone : zones) {
            List<PlanDistance> distances = layout.distances().stream()
                    .filter(distance -> distance.zone().equals(zone))
                    .toList();
            around(zone, distances)
                    .ifPresent(extent -> drawings.add(drawing(
                            "zone-" + zone,
                            "Plan of the hazard zone " + zone,
                            extent,
                            distances,
                            workings,
                            Optional.of(zone))));
        }
        return drawings;
    }

    /**
     * A plan with distances.
     *
     * @param only the zone of which it is; of a plan of one zone only that and what stands in it are named
     */
    private Drawing drawing(
            String id,
            String caption,
            Extent extent,
            List<PlanDistance> distances,
            Workings workings,
            Optional<String> only) {
        List<String> measured = distances.stream().map(PlanDistance::tag).toList();
        return new Drawing(
                TEMPLATE,
                caption,
                caption + " from above, x to the right and y upwards. " + told(distances, workings) + places(),
                data(id, caption, extent, picture -> {
                    only.ifPresent(zone -> picture.onlyWithin());
                    distances(picture, distances, workings);
                    new Scene(layout, picture)
                            .draw(
                                    tag -> true,
                                    guarding -> only.isPresent() || measured.contains(guarding.tag())
                                            ? Optional.empty()
                                            : Optional.of(guarding.tag()),
                                    (tag, shape) -> only.map(zone -> tag.equals(zone)
                                                    || (!isZone(tag) && shape.meets(layout.zone(zone))))
                                            .orElse(true));
                }));
    }

    /** Of a drawing that fits on a page. */
    private Map<String, Object> data(String id, String title, Extent extent, Consumer<Picture> drawing) {
        Map<String, Object> data = Map.of();
        for (int lower : LOWER_EDGES) {
            Picture picture = new Picture(extent, new Format(new Box(440, 30, 6380, lower), 6400, 105, 3170));
            drawing.accept(picture);
            data = picture.data(id, title, unit(), kind -> List.of(kind.words()));
            if (data.get("height") instanceof BigDecimal height && height.compareTo(HIGHEST) <= 0) {
                break;
            }
        }
        return data;
    }

    /**
     * The plan in a mode: what does not act is dotted.
     *
     * @param told what holds in it, for those who cannot see the drawing
     */
    List<Drawing> in(Mode mode, String told) {
        String title = "Plan in the mode " + mode.name().characters();
        return all()
                .map(extent -> new Drawing(
                        TEMPLATE,
                        "",
                        title + ". " + told,
                        data(
                                "mode-" + mode.tag().characters(),
                                title,
                                extent,
                                picture -> new Scene(layout, picture)
                                        .draw(
                                                tag -> acts(tag, mode),
                                                guarding -> Optional.of(text(guarding, mode)),
                                                (tag, shape) -> isZone(tag)))))
                .stream()
                .toList();
    }

    private boolean isZone(String tag) {
        return plan.zones().stream().anyMatch(zone -> zone.of().characters().equals(tag));
    }

    private boolean acts(String tag, Mode mode) {
        return layout.around().safeguards().stream()
                        .map(Guarding::safeguard)
                        .anyMatch(safeguard ->
                                safeguard.tag().characters().equals(tag) && mode.state(safeguard) == State.ACTIVE)
                || mode.emergencyStops().stream()
                        .anyMatch(stop -> stop.characters().equals(tag));
    }

    /** Whether it acts or is suspended shows by its line. */
    private static String text(Guarding guarding, Mode mode) {
        State state = mode.state(guarding.safeguard());
        return state == State.ACTIVE || state == State.SUSPENDED
                ? guarding.tag()
                : guarding.tag() + " (" + state.words() + ")";
    }

    private Optional<Unit> unit() {
        return plan.unit().value().flatMap(Unit::of);
    }

    /** Around everything that stands at the cell; a way out may be far off. */
    Optional<Extent> all() {
        return Stream.of(shapes(), points().stream().map(Shape::spot))
                .flatMap(Function.identity())
                .flatMap(shape -> shape.extent().stream())
                .reduce(Extent::with);
    }

    private Stream<Shape> shapes() {
        return Stream.of(
                        plan.zones().stream().flatMap(zone -> zone.outline().stream()),
                        plan.robots().stream()
                                .flatMap(robot -> Stream.concat(robot.reach().stream(), robot.restricted().stream())),
                        plan.structures().stream().flatMap(structure -> structure.outline().stream()),
                        plan.safeguards().stream()
                                .flatMap(piece -> Stream.concat(piece.outline().stream(), piece.warning().stream())))
                .flatMap(Function.identity())
                .map(outline -> outline.shape(Arcs.WITHIN));
    }

    private List<Point> points() {
        return Stream.of(
                        plan.devices().stream().map(DrawnDevice::at),
                        plan.places().stream().map(OperatorPlace::at),
                        plan.robots().stream().flatMap(robot -> Stream.of(robot.base(), robot.controller())),
                        plan.safeguards().stream()
                                .flatMap(piece -> Stream.concat(
                                        piece.scanner().stream().map(DrawnSafeguard.Scanner::at),
                                        piece.swing().stream()
                                                .flatMap(swing -> Stream.of(swing.hinge(), swing.open())))))
                .flatMap(Function.identity())
                .flatMap(at -> at.value().stream())
                .toList();
    }

    private Optional<Extent> around(String zone, List<PlanDistance> distances) {
        return Stream.concat(
                        layout.zone(zone).extent().stream(),
                        distances.stream()
                                .map(PlanDistance::between)
                                .flatMap(between -> Extent.of(List.of(between.from(), between.to())).stream()))
                .reduce(Extent::with)
                .map(extent -> extent.grown(AROUND, AROUND));
    }

    private void distances(Picture picture, List<PlanDistance> distances, Workings workings) {
        Map<String, String> governing = governing(distances);
        for (PlanDistance distance : distances) {
            boolean governs = distance.tag().equals(governing.get(distance.zone()));
            picture.distance(
                    distance.between(),
                    distance.guarding().separationDistance().value().map(Quantity::coherent),
                    governs,
                    distance.tag() + (governs ? " (governs)" : ""),
                    "plan " + workings.inUnits(distance.distance()),
                    "tape "
                            + workings.inUnits(
                                    distance.guarding().safeguard().installed().distance(), Side.DOWN),
                    "required " + workings.inUnits(distance.guarding().separationDistance()));
        }
    }

    /** By zone the safeguard of whose distance the least is left over. */
    private static Map<String, String> governing(List<PlanDistance> distances) {
        Map<String, PlanDistance> governing = new TreeMap<>();
        distances.stream()
                .filter(distance -> left(distance).isPresent())
                .sorted(Comparator.comparing(
                                (PlanDistance distance) -> left(distance).orElseThrow())
                        .thenComparing(PlanDistance::tag))
                .forEach(distance -> governing.putIfAbsent(distance.zone(), distance));
        return governing.entrySet().stream()
                .collect(Collectors.toMap(
                        Map.Entry::getKey, entry -> entry.getValue().tag()));
    }

    private static Optional<BigDecimal> left(PlanDistance distance) {
        return distance.counted()
                .value()
                .flatMap(counted -> distance.guarding()
                        .separationDistance()
                        .value()
                        .map(needed -> counted.coherent().subtract(needed.coherent())));
    }

    private String told(List<PlanDistance> distances, Workings workings) {
        Map<String, String> governing = governing(distances);
        return distances.stream()
                .map(distance -> "`" + distance.tag() + "` is " + workings.inUnits(distance.distance()) + " from `"
                        + distance.zone() + "`, from "
                        + plan.words(distance.between().from()) + " to "
                        + plan.words(distance.between().to()) + "; required "
                        + workings.inUnits(distance.guarding().separationDistance())
                        + (distance.tag().equals(governing.get(distance.zone())) ? "; this one governs. " : ". "))
                .collect(Collectors.joining());
    }

    /** Where people find what they need. */
    private String places() {
        return Stream.of(
                        plan.devices().stream()
                                .map(device -> device.of().characters() + " at " + plan.words(device.at())),
                        plan.places().stream().map(place -> place.tag().characters() + " at " + plan.words(place.at())),
                        plan.waysOut().stream()
                                .map(way -> "way out " + way.name().characters() + " at " + plan.words(way.at())))
                .flatMap(Function.identity())
                .collect(Collectors.joining("; ", "Devices, places and ways out: ", "."));
    }
}
