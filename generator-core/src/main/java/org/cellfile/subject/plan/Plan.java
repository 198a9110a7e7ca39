package org.cellfile.subject.plan;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.geometry.Arcs;
import org.cellfile.geometry.Point;
import org.cellfile.geometry.Shape;
import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Unit;
import org.cellfile.read.Section;
import org.cellfile.source.Span;
import org.cellfile.source.Stated;
import org.cellfile.subject.identity.Person;
import org.cellfile.subject.safeguard.Safeguard;

/**
 * The cell from above, as somebody drew it. All coordinates are held in millimetres.
 *
 * @param where it is described
 * @param drawing from which its coordinates were taken
 * @param axes where the origin lies and which way the axes point, in words
 * @param by who held the drawing against the floor
 * @param tolerance by which a distance on the plan may differ from the one measured at the machine
 * @param uncertainty by which a distance on the plan may be shorter in truth
 */
public record Plan(
        Span where,
        Stated<String> drawing,
        Stated<String> axes,
        Stated<String> unit,
        Stated<String> by,
        Stated<LocalDate> on,
        Stated<Quantity> tolerance,
        Stated<Quantity> uncertainty,
        List<DrawnZone> zones,
        List<DrawnRobot> robots,
        List<Structure> structures,
        List<DrawnSafeguard> safeguards,
        List<DrawnDevice> devices,
        List<OperatorPlace> places,
        List<WayOut> waysOut) {

    /** Units in which coordinates can be written. */
    private static final Set<String> UNITS = Set.of("mm", "in");

    /** A plan and the cell may differ by so much that neither tells anything of the other. */
    public static final FindingId TOO_WIDE = new FindingId("plan.tolerance-too-wide");

    /**
     * The greatest tolerance of a plan; constructed: somebody walks over it in 63 ms at 1600 mm/s, which is what the parts of a response
     * are counted in, and under ISO 13855:2010 no light curtain may stand nearer to a hazard zone. Tapes and drawings of cells agree to some
     * centimetres (common practice).
     */
    private static final Quantity WIDEST_TOLERANCE = Quantity.millimetres("100");

    /** The plan has more corners than anybody draws by hand. */
    public static final FindingId TOO_MANY_POINTS = new FindingId("plan.too-many-points");

    /**
     * So many corners, and so many places where edges cross, are measured. No robot cell needs as many to be drawn (common practice);
     * a drawing program that exports every screw does. The time to measure most plans grows with their corners, but where the edge of
     * a hazard zone has many notches it grows with the square of them, so that the bound is no higher.
     */
    private static final int MOST_POINTS = 2_500;

    /** The cell has no plan. */
    public static final FindingId MISSING = new FindingId("plan.missing");

    /** What is said of a cell without a plan, at the place of the cell. */
    public static Finding missing(Span cell) {
        return Finding.warns(
                MISSING,
                "",
                cell,
                "no plan of this cell is described, so that nothing but the tape tells its distances and nothing tells whether its"
                        + " safeguards close all ways in",
                "draw under `plan` where hazard zones, safeguards and devices are");
    }

    /** Nobody works at the cell, by its plan. */
    public static final FindingId NO_PLACES = new FindingId("plan.no-places");

    /** That no operator place is drawn, if none is. */
    Optional<Finding> noPlaces() {
        return places.isEmpty()
                ? Optional.of(Finding.warns(
                        NO_PLACES,
                        "",
                        where,
                        "no operator place is drawn, so that nothing tells whether an emergency stop is within reach of those who"
                                + " work at the cell",
                        "draw under `places` where they work, and state how near an emergency stop has to be"))
                : Optional.empty();
    }

    /**
     * Reads the plan of a cell; empty when it has none.
     *
     * @param listed the safeguards of the cell, which have their forms by their kinds
     */
    public static Optional<Plan> read(Section top, List<Safeguard> listed) {
        return top.sectionIfStated("plan").map(section -> {
            Stated<String> unit = section.word("unit", UNITS);
            Unit of = unit.value().flatMap(Unit::of).orElse(Unit.MILLIMETRE);
            Plan plan = new Plan(
                    section.where(),
                    section.text("drawing"),
                    section.text("axes"),
                    unit,
                    section.reference("by", Person.SORT),
                    section.date("on"),
                    section.quantity("tolerance", Dimension.LENGTH),
                    section.positive("uncertainty", Dimension.LENGTH),
                    each(section.list("zones"), of, DrawnZone::read),
                    each(section.listIfStated("robots"), of, DrawnRobot::read),
                    each(section.listIfStated("structures"), of, Structure::read),
                    each(section.list("safeguards"), of, (one, in) -> DrawnSafeguard.read(one, in, listed)),
                    each(section.listIfStated("devices"), of, DrawnDevice::read),
                    each(section.listIfStated("places"), of, OperatorPlace::read),
                    each(section.listIfStated("ways-out"), of, WayOut::read));
            section.close();
            plan.tooWide().ifPresent(section::report);
            Optional<Finding> tooLarge = plan.tooLarge();
            tooLarge.ifPresent(section::report);
            return tooLarge.isPresent() ? plan.withoutOutlines() : plan;
        });
    }

    /** Its outlines, wherever they stand. */
    private List<Outline> outlines() {
        return Stream.of(
                        zones.stream().map(DrawnZone::outline),
                        robots.stream().map(DrawnRobot::reach),
                        robots.stream().map(DrawnRobot::restricted),
                        structures.stream().map(Structure::outline),
                        safeguards.stream().map(DrawnSafeguard::outline),
                        safeguards.stream().map(DrawnSafeguard::warning))
                .flatMap(outlines -> outlines)
                .flatMap(Optional::stream)
                .toList();
    }

    /** The same with nothing that could be measured, as if no outline could be read. */
    private Plan withoutOutlines() {
        return new Plan(
                where,
                drawing,
                axes,
                unit,
                by,
                on,
                tolerance,
                uncertainty,
                zones.stream()
                        .map(zone -> new DrawnZone(zone.of(), Optional.empty(), zone.recorded()))
                        .toList(),
                robots.stream().map(DrawnRobot::withoutOutlines).toList(),
                structures.stream().map(Structure::withoutOutline).toList(),
                safeguards.stream().map(DrawnSafeguard::withoutOutlines).toList(),
                devices,
                places,
                waysOut);
    }

    /** That it was drawn too roughly to be held against anything, if it was. */
    private Optional<Finding> tooWide() {
        return tolerance
                .value()
                .filter(allowed -> allowed.compareTo(WIDEST_TOLERANCE) > 0)
                .map(allowed -> tooWide(
                        tolerance,
                        "plan and tape may differ by " + tolerance.characters() + ", more than the " + WIDEST_TOLERANCE
                                + " up to which they tell anything of each other"))
                .or(() -> uncertainty
                        .value()
                        .filter(uncertain ->
                                tolerance.value().stream().anyMatch(allowed -> uncertain.compareTo(allowed) > 0))
                        .map(uncertain -> tooWide(
                                uncertainty,
                                "the plan is uncertain by " + uncertainty.characters()
                                        + ", more than the tolerance of " + tolerance.characters()
                                        + " by which it may differ from the tape")));
    }

    private static Finding tooWide(Stated<Quantity> stated, String sentence) {
        return Finding.refuses(
                TOO_WIDE,
                "",
                stated.where(),
                sentence,
                "hold the drawing against the floor once more, correct it where it is wrong, and state how exactly it was drawn then");
    }

    /** That it holds more corners or crossings than are measured, if it does. */
    private Optional<Finding> tooLarge() {
        int points = outlines().stream().mapToInt(Outline::count).sum();
        if (points > MOST_POINTS) {
            return Optional.of(tooMany(
                    "the plan holds " + points + " corners, more than the " + MOST_POINTS + " that are measured",
                    "draw what keeps people out and what they can be hurt at, with straight edges where the cell has them; leave"
                            + " out the detail that a drawing program exports"));
        }
        List<Shape> shapes =
                outlines().stream().map(outline -> outline.shape(Arcs.WITHIN)).toList();
        return Shape.crossings(shapes, MOST_POINTS) <= MOST_POINTS
                ? Optional.empty()
                : Optional.of(tooMany(
                        "things on the plan cross each other at more than the " + MOST_POINTS
                                + " places that are measured",
                        "draw what stands at one place as one thing, with its outer edges"));
    }

    private Finding tooMany(String sentence, String help) {
        return Finding.refuses(TOO_MANY_POINTS, "", where, sentence, help);
    }

    /** True when something stands on it against which a robot could press somebody. */
    public boolean holdsGaps() {
        return !robots.isEmpty() && !structures.isEmpty();
    }

    /** The unit in which its points are written; millimetres when that could not be read. */
    Unit pointsIn() {
        return unit.value().flatMap(Unit::of).orElse(Unit.MILLIMETRE);
    }

    /** A point as it is written on the plan: in inches to the hundredth, in millimetres to the tenth. */
    String words(Point point) {
        Unit in = pointsIn();
        return in.equals(Unit.MILLIMETRE)
                ? point.toString()
                : new Point(hundredths(point.x(), in), hundredths(point.y(), in)).toString();
    }

    private static BigDecimal hundredths(BigDecimal millimetres, Unit in) {
        return new Quantity(millimetres, Unit.MILLIMETRE).in(in).number().setScale(2, RoundingMode.HALF_EVEN);
    }

    /** A point that somebody wrote; as written where it could not be read. */
    String words(Stated<Point> point) {
        return point.value().map(this::words).orElse(point.characters());
    }

    private static <T> List<T> each(List<Section> sections, Unit unit, BiFunction<Section, Unit, T> reader) {
        return Section.each(sections, section -> reader.apply(section, unit));
    }
}
