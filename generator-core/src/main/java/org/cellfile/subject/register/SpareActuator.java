package org.cellfile.subject.register;

import java.util.List;
import org.cellfile.quantity.Quantity;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.subject.identity.Person;
import org.cellfile.subject.safeguard.Safeguard;

/**
 * Spare actuators of interlocked doors: held against the switch, one makes an open door pass for a closed one.
 *
 * @param fits tags of the doors
 * @param count how many there are
 * @param lockedAt where they are kept under lock
 * @param holder who answers for them
 */
public record SpareActuator(
        Stated<String> tag,
        List<Stated<String>> fits,
        Stated<Quantity> count,
        Stated<String> lockedAt,
        Stated<String> holder) {

    public static final String SORT = "spare actuator";

    static SpareActuator read(Section section) {
        return new SpareActuator(
                section.tag(SORT),
                section.references("fits", Safeguard.SORT),
                section.count("count"),
                section.statement("locked-at"),
                section.reference("holder", Person.SORT));
    }
}
