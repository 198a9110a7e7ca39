package org.cellfile.subject.register;

import java.time.LocalDate;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.subject.complement.ComplementaryDevice;
import org.cellfile.subject.identity.Person;

/**
 * A key, code or transponder with which the mode can be changed.
 *
 * @param number as it is marked, which tells it from all others of the cell
 * @param selector tag of the mode selector
 * @param holder who has it; missing where only its place is stated
 * @param keptAt where it is kept; missing where its holder carries it
 */
public record ModeKey(
        Stated<String> number,
        Stated<String> selector,
        Stated<String> holder,
        Stated<String> keptAt,
        Stated<LocalDate> received) {

    static ModeKey read(Section section) {
        return new ModeKey(
                section.text("number"),
                section.reference("selector", ComplementaryDevice.SORT),
                section.has("kept-at")
                        ? section.referenceIfStated("holder", Person.SORT)
                        : section.reference("holder", Person.SORT),
                section.statementIfStated("kept-at"),
                section.date("received"));
    }
}
