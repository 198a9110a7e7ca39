package org.cellfile.subject.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
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

/** The form of a thing on the plan, as somebody drew it. */
public sealed interface Outline {

    /** What is drawn has no form, or more than one. */
    FindingId FORM = new FindingId("plan.form");

    /** An outline or a line has too few corners to enclose or to lead anywhere. */
    FindingId OPEN = new FindingId("plan.open-outline");

    /** An outline or a line crosses or touches itself. */
    FindingId CROSSES_ITSELF = new FindingId("plan.crosses-itself");

    /** Where it is described. */
    Span where();

    /** How many points were written down for it. */
    default int count() {
        return 1;
    }

    /** Its shape, with chords on that side of its arcs. */
    Shape shape(Arcs arcs);

    /** A single point, written {@code at}. */
    record Spot(Point at, Span where) implements Outline {
        @Override
        public Shape shape(Arcs arcs) {
            return Shape.spot(at);
        }
    }

    /** From point to point. */
    record Line(List<Point> points, Span where) implements Outline {
        @Override
        public int count() {
            return points.size();
        }

        @Override
        public Shape shape(Arcs arcs) {
            return Shape.line(points);
        }
    }

    /** An area with straight edges, the last corner joined to the first. */
    record Polygon(List<Point> corners, Span where) implements Outline {
        @Override
        public int count() {
            return corners.size();
        }

        @Override
        public Shape shape(Arcs arcs) {
            return Shape.area(corners);
        }
    }

    /**
     * A circle, or what lies between two of them around one point.
     *
     * @param inner radius of what is left out; nought for a whole circle
     */
    record Circle(Point centre, BigDecimal inner, BigDecimal radius, Span where) implements Outline {
        @Override
        public Shape shape(Arcs arcs) {
            return inner.signum() == 0 ? Shape.circle(centre, radius, arcs) : Shape.ring(centre, inner, radius, arcs);
        }
    }

    /**
     * A part of a circle.
     *
     * @param from direction of its first edge in degrees, counter-clockwise from the direction of x
     * @param through angle of the arc in degrees
     */
    record Sector(Point centre, BigDecimal radius, BigDecimal from, BigDecimal through, Span where) implements Outline {
        @Override
        public Shape shape(Arcs arcs) {
            return Shape.sector(centre, radius, from, through, arcs);
        }
    }

    /** The words for the forms, as keys. */
    Set<String> FORMS = new TreeSet<>(Set.of("at", "line", "outline", "circle", "ring", "sector"));

    /** Forms of what covers floor. */
    Set<String> AREAS = new TreeSet<>(Set.of("outline", "circle", "ring", "sector"));

    /**
     * Reads the one form that is stated in a section; empty when it cannot be read, which was then reported.
     *
     * @param what it is the form of, for messages
     * @param forms that it may have
     */
    static Optional<Outline> read(Section section, String what, Set<String> forms, Unit unit) {
        return read(section, what, forms, forms, unit);
    }

    /**
     * The same.
     *
     * @param read the forms that can be read of it, so that it can be told what is wrong with them
     * @param forms that it may have
     */
    static Optional<Outline> read(Section section, String what, Set<String> read, Set<String> forms, Unit unit) {
        List<String> stated = FORMS.stream().filter(section::has).toList();
        if (stated.size() != 1 || !read.contains(stated.get(0))) {
            section.report(Finding.refuses(
                    FORM,
                    what,
                    section.where(),
                    "`" + what + "` is drawn " + drawn(stated),
                    "state " + (forms.size() == 1 ? "" : "exactly one of ") + "`"
                            + String.join("`, `", new TreeSet<>(forms)) + "`"));
            return Optional.empty();
        }
        return switch (stated.get(0)) {
            case "at" -> section.point("at", unit).value().map(at -> new Spot(at, section.where("at")));
            case "line" -> line(section, what, unit);
            case "outline" -> polygon(section, what, unit);
            case "circle" -> circle(section.section("circle"), unit, false);
            case "ring" -> circle(section.section("ring"), unit, true);
            case "sector" -> sector(section.section("sector"), unit);
            default -> throw new IllegalArgumentException(stated.get(0));
        };
    }

    private static String drawn(List<String> stated) {
        return stated.isEmpty()
                ? "without a form"
                : stated.size() > 1
                        ? "twice, as `" + String.join("` and as `", stated) + "`"
                        : "as `" + stated.get(0) + "`, which such a thing has not";
    }

    private static Optional<Outline> line(Section section, String what, Unit unit) {
        List<Point> points = distinct(section.points("line", unit));
        Span where = section.where("line");
        return drawable(
                section,
                what,
                "line",
                points,
                2,
                where,
                Optional.of(points).filter(all -> all.size() > 1).map(all -> new Line(all, where)));
    }

    private static Optional<Outline> polygon(Section section, String what, Unit unit) {
        List<Point> corners = distinct(section.points("outline", unit));
        if (corners.size() > 1 && corners.get(0).equals(corners.get(corners.size() - 1))) {
            corners.remove(corners.size() - 1);
        }
        Span where = section.where("outline");
        return drawable(
                section,
                what,
                "outline",
                corners,
                3,
                where,
                Optional.of(corners).filter(all -> all.size() > 2).map(all -> new Polygon(all, where)));
    }

    /** A point written twice in a row is one point. */
    private static List<Point> distinct(List<Stated<Point>> stated) {
        List<Point> points = new ArrayList<>();
        for (Stated<Point> one : stated) {
            one.value()
                    .filter(point ->
                            points.isEmpty() || !points.get(points.size() - 1).equals(point))
                    .ifPresent(points::add);
        }
        return points;
    }

    private static Optional<Outline> drawable(
            Section section,
            String what,
            String form,
            List<Point> points,
            int fewest,
            Span where,
            Optional<? extends Outline> drawn) {
        if (points.isEmpty()) {
            return Optional.empty();
        }
        if (drawn.isEmpty()) {
            section.report(Finding.refuses(
                    OPEN,
                    what,
                    where,
                    "the " + form + " of `" + what + "` has "
                            + (points.size() == 1 ? "1 corner" : points.size() + " different corners") + ", and "
                            + fewest
                            + " are the fewest",
                    "write every corner once, in the order in which one goes round or along"));
            return Optional.empty();
        }
        Optional<Point> crossing = drawn.get().shape(Arcs.WITHIN).crossing();
        crossing.ifPresent(at -> section.report(Finding.refuses(
                CROSSES_ITSELF,
                what,
                where,
                "the " + form + " of `" + what + "` crosses or touches itself at " + at,
                "write the corners in the order in which one goes round or along, each once; draw what hangs together at a"
                        + " corner only as two things")));
        return crossing.isPresent() ? Optional.empty() : drawn.map(outline -> outline);
    }

    private static Optional<Outline> circle(Section section, Unit unit, boolean ring) {
        Stated<Point> centre = section.point("at", unit);
        Optional<BigDecimal> inner = ring
                ? section.positive("inner", Dimension.LENGTH).value().map(Quantity::coherent)
                : Optional.of(BigDecimal.ZERO);
        Stated<Quantity> radius = section.positive("radius", Dimension.LENGTH);
        section.close();
        if (centre.value().isEmpty() || inner.isEmpty() || radius.value().isEmpty()) {
            return Optional.empty();
        }
        BigDecimal outer = radius.value().get().coherent();
        if (inner.get().compareTo(outer) >= 0) {
            section.report(Finding.refuses(
                    OPEN,
                    "",
                    radius.where(),
                    "the ring has no width: its radius, " + radius.characters() + ", is not more than the inner one",
                    "state the radius of the outer circle as `radius` and that of the inner one as `inner`"));
            return Optional.empty();
        }
        return Optional.of(new Circle(centre.value().get(), inner.get(), outer, section.where()));
    }

    private static Optional<Outline> sector(Section section, Unit unit) {
        Stated<Point> centre = section.point("at", unit);
        Stated<Quantity> radius = section.positive("radius", Dimension.LENGTH);
        Stated<Quantity> from = section.direction("from");
        Stated<Quantity> through = section.direction("through");
        section.close();
        if (through.value().filter(Quantity::zero).isPresent()) {
            section.report(Finding.refuses(
                    OPEN, "", through.where(), "the sector opens by 0 °", "state the angle of its arc as `through`"));
            return Optional.empty();
        }
        return centre.value()
                .flatMap(at -> radius.value()
                        .flatMap(length -> from.value()
                                .flatMap(first -> through.value()
                                        .map(angle -> new Sector(
                                                at,
                                                length.coherent(),
                                                first.coherent(),
                                                angle.coherent(),
                                                section.where())))));
    }
}
