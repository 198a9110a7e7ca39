package org.cellfile.subject.register;

import java.time.LocalDate;
import java.util.Set;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.subject.identity.Person;

/**
 * Something that is still to be done.
 *
 * @param owner who answers for it
 * @param until the last day on which it may be open
 * @param beforeRelease {@code yes} when the cell must not be released before it is closed
 * @param closed the day on which it was done; missing while it is open
 * @param closedBy who saw that
 */
public record OpenPoint(
        Stated<String> tag,
        Stated<String> what,
        Stated<String> owner,
        Stated<LocalDate> since,
        Stated<LocalDate> until,
        Stated<String> beforeRelease,
        Stated<LocalDate> closed,
        Stated<String> closedBy) {

    public static final String SORT = "open point";

    static OpenPoint read(Section section) {
        Stated<LocalDate> since = section.date("since");
        return new OpenPoint(
                section.tag(SORT),
                section.statement("what"),
                section.reference("owner", Person.SORT),
                since,
                section.inOrder("since", since, "until", section.date("until")),
                section.word("before-release", Set.of("yes", "no")),
                section.inOrder(
                        "since",
                        since,
                        "closed",
                        section.has("closed-by") ? section.date("closed") : section.dateIfStated("closed")),
                section.has("closed")
                        ? section.reference("closed-by", Person.SORT)
                        : section.referenceIfStated("closed-by", Person.SORT));
    }

    /** True while nobody has closed it. */
    public boolean open() {
        return closed.value().isEmpty() && closedBy.value().isEmpty();
    }

    /** True when the cell must not be released while it is open. */
    public boolean barsRelease() {
        return beforeRelease.value().filter("yes"::equals).isPresent();
    }
}
