package org.cellfile.subject.plan;

import java.util.Optional;
import org.cellfile.claim.Recorded;
import org.cellfile.quantity.Unit;
import org.cellfile.read.Recordings;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.subject.hazard.Zone;

/** A hazard zone on the plan, with everything that moves in it: for a robot with tool, part and overrun. */
public record DrawnZone(Stated<String> of, Optional<Outline> outline, Recorded recorded) {

    static DrawnZone read(Section section, Unit unit) {
        Stated<String> of = section.reference("of", Zone.SORT);
        return new DrawnZone(
                of,
                Outline.read(section, of.characters(), Outline.AREAS, unit),
                Recordings.read(section, Perimeter.about(of.characters())));
    }
}
