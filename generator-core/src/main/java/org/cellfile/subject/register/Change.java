package org.cellfile.subject.register;

import java.time.LocalDate;
import java.util.List;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.subject.complement.ComplementaryDevice;
import org.cellfile.subject.function.Part;
import org.cellfile.subject.function.SafetyFunction;
import org.cellfile.subject.function.Subsystem;
import org.cellfile.subject.hazard.Zone;
import org.cellfile.subject.identity.Person;
import org.cellfile.subject.identity.Robot;
import org.cellfile.subject.safeguard.Safeguard;
import org.cellfile.subject.stopping.StopTest;

/**
 * A change of the cell. What was tested or measured of the things it touches before that day no longer tells how they are.
 *
 * @param touches tags of the things concerned
 */
public record Change(
        Stated<String> tag,
        Stated<LocalDate> on,
        Stated<String> what,
        Stated<String> by,
        List<Stated<String>> touches) {

    public static final String SORT = "change";

    /** What a change can touch. */
    private static final List<String> TOUCHED = List.of(
            Safeguard.SORT,
            ComplementaryDevice.SORT,
            Robot.SORT,
            Zone.SORT,
            StopTest.SORT,
            Part.SORT,
            Subsystem.SORT,
            SafetyFunction.SORT);

    static Change read(Section section) {
        return new Change(
                section.tag(SORT),
                section.date("on"),
                section.statement("what"),
                section.reference("by", Person.SORT),
                section.references("touches", TOUCHED));
    }

    /** True when it concerns the thing with that tag. */
    public boolean touches(String thing) {
        return touches.stream().anyMatch(one -> one.characters().equals(thing));
    }
}
