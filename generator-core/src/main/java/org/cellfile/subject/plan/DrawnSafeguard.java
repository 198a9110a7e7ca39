package org.cellfile.subject.plan;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cellfile.claim.Recorded;
import org.cellfile.finding.Finding;
import org.cellfile.geometry.Point;
import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Unit;
import org.cellfile.read.Recordings;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.subject.safeguard.Safeguard;

/**
 * A safeguard on the plan, or a piece of it: several entries of one safeguard make it up together.
 *
 * @param outline the line in which it detects or bars, or the area in which it detects
 * @param scanner from where a field is seen; for scanners alone
 * @param warning the field in which somebody is only warned; empty where there is none
 * @param swing how a door turns; empty for one that slides and for everything else
 * @param standing what detects who stands between it and the hazard, or keeps the machine from starting; missing where nobody can
 */
public record DrawnSafeguard(
        Stated<String> of,
        Optional<Outline> outline,
        Optional<Scanner> scanner,
        Optional<Outline> warning,
        Optional<Swing> swing,
        Stated<String> standing,
        Recorded recorded) {

    /**
     * Where a scanner is and what it sees.
     *
     * @param facing direction of the middle of its view in degrees, counter-clockwise from the direction of x
     * @param sees angle of its view; scanners commonly see about 270 degrees (common practice)
     * @param range up to which a protective field may be set
     * @param warningRange up to which a warning field may be set; missing where nobody looked it up
     */
    public record Scanner(
            Stated<Point> at,
            Stated<Quantity> facing,
            Stated<Quantity> sees,
            Stated<Quantity> range,
            Stated<Quantity> warningRange) {
        static Scanner read(Section section, Unit unit) {
            Scanner scanner = new Scanner(
                    section.point("at", unit),
                    section.direction("facing"),
                    section.direction("sees"),
                    section.positive("range", Dimension.LENGTH),
                    section.positiveIfStated("warning-range", Dimension.LENGTH));
            section.close();
            scanner.sees()
                    .value()
                    .filter(Quantity::zero)
                    .ifPresent(none -> section.report(Finding.refuses(
                            Outline.OPEN,
                            "",
                            scanner.sees().where(),
                            "the scanner sees through an angle of 0 °",
                            "state as `sees` the angle of its view, as its instructions have it")));
            return scanner;
        }
    }

    /**
     * How a door turns.
     *
     * @param hinge one end of the closed door
     * @param open where its other end is when it stands open
     * @param turns which way it opens, seen from above; missing where it is the shorter way
     */
    public record Swing(Stated<Point> hinge, Stated<Point> open, Stated<String> turns) {
        /** As the hands of a clock turn, seen from above. */
        static final String CLOCKWISE = "clockwise";

        private static final Set<String> WAYS = Set.of(CLOCKWISE, "counter-clockwise");

        static Swing read(Section section, Unit unit) {
            Swing swing = new Swing(
                    section.point("hinge", unit), section.point("open", unit), section.wordIfStated("turns", WAYS));
            section.close();
            return swing;
        }
    }

    DrawnSafeguard withoutOutlines() {
        return new DrawnSafeguard(of, Optional.empty(), scanner, Optional.empty(), swing, standing, recorded);
    }

    static DrawnSafeguard read(Section section, Unit unit, List<Safeguard> listed) {
        Stated<String> of = section.reference("of", Safeguard.SORT);
        return new DrawnSafeguard(
                of,
                Outline.read(section, of.characters(), Outline.FORMS, forms(of, listed), unit),
                section.sectionIfStated("scanner").map(one -> Scanner.read(one, unit)),
                section.sectionIfStated("warning-field").flatMap(one -> {
                    Optional<Outline> field = Outline.read(one, of.characters(), Outline.AREAS, unit);
                    one.close();
                    return field;
                }),
                section.sectionIfStated("swing").map(one -> Swing.read(one, unit)),
                section.statementIfStated("standing"),
                Recordings.read(section, PlanDistance.about(of.characters())));
    }

    /** The forms it has by its kind; all of them where the safeguard is not listed. */
    private static Set<String> forms(Stated<String> of, List<Safeguard> listed) {
        return listed.stream()
                .filter(safeguard -> safeguard.tag().characters().equals(of.characters()))
                .findFirst()
                .map(safeguard -> DrawnFaults.forms(safeguard.device().footprint()))
                .orElse(Outline.FORMS);
    }
}
