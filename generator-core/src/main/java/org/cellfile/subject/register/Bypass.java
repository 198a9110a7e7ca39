package org.cellfile.subject.register;

import java.time.LocalDate;
import java.util.List;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.subject.complement.ComplementaryDevice;
import org.cellfile.subject.identity.Person;
import org.cellfile.subject.safeguard.Safeguard;

/**
 * A safeguard, or another stop path, that was put out of action for a time.
 *
 * @param of tags of the safeguards or devices concerned; none when it is a path that is not a safety function
 * @param what was done
 * @param by who answers for it
 * @param until the day on which it was to be taken out
 * @param ended the day on which it was; missing while it is open
 * @param endedBy who saw that
 */
public record Bypass(
        Stated<String> tag,
        List<Stated<String>> of,
        Stated<String> what,
        Stated<String> why,
        Stated<String> by,
        Stated<LocalDate> from,
        Stated<LocalDate> until,
        Stated<String> compensation,
        Stated<LocalDate> ended,
        Stated<String> endedBy) {

    public static final String SORT = "bypass";

    static Bypass read(Section section) {
        Stated<LocalDate> from = section.date("from");
        return new Bypass(
                section.tag(SORT),
                section.referencesIfStated("of", List.of(Safeguard.SORT, ComplementaryDevice.SORT)),
                section.statement("what"),
                section.statement("why"),
                section.reference("by", Person.SORT),
                from,
                section.inOrder("from", from, "until", section.date("until")),
                section.statement("compensation"),
                section.inOrder(
                        "from",
                        from,
                        "ended",
                        section.has("ended-by") ? section.date("ended") : section.dateIfStated("ended")),
                section.has("ended")
                        ? section.reference("ended-by", Person.SORT)
                        : section.referenceIfStated("ended-by", Person.SORT));
    }

    /** True while nobody has ended it. */
    public boolean open() {
        return ended.value().isEmpty() && endedBy.value().isEmpty();
    }

    /** True when it was in place on that day. */
    public boolean inPlaceOn(LocalDate day) {
        return from.value().filter(day::isBefore).isEmpty()
                && ended.value().filter(day::isAfter).isEmpty();
    }
}
