package org.cellfile.subject.identity;

import java.time.LocalDate;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;

/**
 * A value from memory, read by a named person in the standard itself.
 *
 * @param value id of the value, as the register of fixed values lists it
 * @param copy which copy it was read in
 */
public record Confirmation(Stated<String> value, Stated<String> by, Stated<LocalDate> on, Stated<String> copy) {

    static Confirmation read(Section section) {
        return new Confirmation(
                section.text("value"), section.reference("by", Person.SORT), section.date("on"), section.text("copy"));
    }
}
