package org.cellfile.subject.identity;

import java.time.LocalDate;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;

/** One entry of the revision list. */
public record Revision(Stated<String> revision, Stated<LocalDate> on, Stated<String> by, Stated<String> change) {

    static Revision read(Section section) {
        return new Revision(
                section.text("revision"),
                section.date("on"),
                section.reference("by", Person.SORT),
                section.text("change"));
    }
}
