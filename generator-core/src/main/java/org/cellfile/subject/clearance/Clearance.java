package org.cellfile.subject.clearance;

import java.time.LocalDate;
import org.cellfile.claim.Recorded;
import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Quantity;
import org.cellfile.read.Recordings;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.standard.CrushingStandard;
import org.cellfile.subject.hazard.Zone;
import org.cellfile.subject.identity.Instrument;
import org.cellfile.subject.identity.Person;

/**
 * The narrowest gap that a movement leaves to something fixed, as measured at the machine.
 *
 * @param zone tag of the hazard zone in which the movement goes on
 * @param moving what moves, for a robot at its full reach with tool, part and overrun
 * @param fixed what stands
 * @param part of the body that can get into the gap
 * @param uncertainty of the measured gap
 * @param measure what keeps people from being crushed where the gap is too narrow; missing when the gap alone has to
 */
public record Clearance(
        Stated<String> tag,
        Stated<String> zone,
        Stated<String> moving,
        Stated<String> fixed,
        Stated<String> part,
        Stated<Quantity> gap,
        Stated<Quantity> uncertainty,
        Stated<String> by,
        Stated<LocalDate> on,
        Stated<String> instrument,
        Stated<String> measure,
        Recorded recorded) {

    public static final String SORT = "clearance";

    public static Clearance read(Section section) {
        Stated<String> tag = section.tag(SORT);
        return new Clearance(
                tag,
                section.reference("zone", Zone.SORT),
                section.text("between"),
                section.text("and"),
                section.word("body-part", CrushingStandard.PARTS),
                section.quantity("gap", Dimension.LENGTH),
                section.quantity("uncertainty", Dimension.LENGTH),
                section.reference("by", Person.SORT),
                section.date("on"),
                section.reference("instrument", Instrument.SORT),
                section.statementIfStated("measure"),
                Recordings.read(section, tag.characters()));
    }
}
