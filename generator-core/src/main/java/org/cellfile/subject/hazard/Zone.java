package org.cellfile.subject.hazard;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cellfile.claim.Recorded;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Quantity;
import org.cellfile.read.Recordings;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.subject.identity.Person;
import org.cellfile.subject.identity.Robot;
import org.cellfile.subject.stopping.StopTest;

/**
 * A space in which something can hurt.
 *
 * @param robot the robot that moves in it; missing when it belongs to another machine
 * @param extent the radius kept as hazard zone around the robot's base axis; missing when a limitation keeps the movement in
 * @param stoppedBy the stop tests that end the movement in it
 * @param overrun the stop test whose stopping distance the extent allows for
 * @param limitation what keeps the movement in
 */
public record Zone(
        Stated<String> tag,
        Stated<String> name,
        Stated<String> hazard,
        Stated<Quantity> lowest,
        Stated<Quantity> highest,
        Stated<String> robot,
        List<Stated<String>> stoppedBy,
        Stated<Quantity> extent,
        Stated<String> overrun,
        Optional<Limitation> limitation,
        Recorded recorded) {

    public static final String SORT = "hazard zone";

    /** Nothing says how far the movement goes. */
    public static final FindingId UNBOUNDED = new FindingId("zone.unbounded");

    /** The zone's lowest point is above its highest. */
    public static final FindingId UPSIDE_DOWN = new FindingId("zone.upside-down");

    /** What keeps a movement within its zone, and who signed for it. */
    public record Limitation(Stated<String> by, Stated<String> signedBy, Stated<LocalDate> on) {
        static Limitation read(Section section) {
            Limitation limitation = new Limitation(
                    section.statement("by"), section.reference("signed-by", Person.SORT), section.date("on"));
            section.close();
            return limitation;
        }
    }

    public static Zone read(Section section) {
        Stated<String> tag = section.tag(SORT);
        Section heights = section.section("heights");
        Stated<Quantity> lowest = heights.quantity("lowest", Dimension.LENGTH);
        Stated<Quantity> highest = heights.positive("highest", Dimension.LENGTH);
        heights.close();
        Stated<String> robot = section.referenceIfStated("robot", Robot.SORT);
        Optional<Limitation> limitation = section.sectionIfStated("limitation").map(Limitation::read);
        boolean byExtent = section.has("extent") || section.has("overrun");
        if (byExtent == limitation.isPresent() || (byExtent && robot.value().isEmpty())) {
            section.report(Finding.refuses(
                    UNBOUNDED,
                    tag.characters(),
                    section.where(),
                    byExtent && limitation.isPresent()
                            ? "`" + tag.characters() + "` states an extent and a limitation, and only one can bound it"
                            : "nothing says how far the movement in `" + tag.characters() + "` goes",
                    "for a robot that uses its full reach state `robot`, `extent` and `overrun`; otherwise state under"
                            + " `limitation` what keeps the movement in and who signed for it"));
        }
        if (lowest.value().isPresent()
                && highest.value().isPresent()
                && lowest.value().get().compareTo(highest.value().get()) >= 0) {
            section.report(Finding.refuses(
                    UPSIDE_DOWN,
                    tag.characters(),
                    highest.where(),
                    "the highest point of `" + tag.characters() + "`, " + highest.characters()
                            + ", is not above its lowest, " + lowest.characters(),
                    "measure both from the floor people stand on"));
        }
        return new Zone(
                tag,
                section.text("name"),
                section.text("hazard"),
                lowest,
                highest,
                robot,
                section.references("stopped-by", StopTest.SORT),
                byExtent
                        ? section.positive("extent", Dimension.LENGTH)
                        : new Stated.Missing<>(section.where(), "extent"),
                byExtent
                        ? section.reference("overrun", StopTest.SORT)
                        : new Stated.Missing<>(section.where(), "overrun"),
                limitation,
                Recordings.read(section, tag.characters()));
    }

    /** True when that stop test tells how the movement in it ends. */
    public boolean endedBy(String stopTest) {
        return Stream.concat(stoppedBy.stream(), Stream.of(overrun))
                .anyMatch(one -> one.value().equals(Optional.of(stopTest)));
    }
}
