package org.cellfile.subject.energy;

import java.time.LocalDate;
import java.util.List;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.subject.identity.Person;

/**
 * Somebody saw that the procedure is used as it is written.
 *
 * @param by who inspected
 * @param with who was included
 * @param found what was seen and what was done about it
 */
public record Inspection(Stated<LocalDate> on, Stated<String> by, List<Stated<String>> with, Stated<String> found) {

    static Inspection read(Section section) {
        return new Inspection(
                section.date("on"),
                section.reference("by", Person.SORT),
                section.references("with", Person.SORT),
                section.statement("found"));
    }

    boolean includes(Stated<String> person) {
        return with.stream().anyMatch(one -> one.value().equals(person.value()));
    }
}
