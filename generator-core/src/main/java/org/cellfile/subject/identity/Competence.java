package org.cellfile.subject.identity;

import java.time.LocalDate;
import java.util.Set;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;

/**
 * For what a person is competent, since when and until when, and what proves it. What makes a person competent is for the law of
 * the place and the employer.
 *
 * @param until the last day on which it holds
 */
public record Competence(
        Stated<String> person,
        Stated<String> subject,
        Stated<LocalDate> from,
        Stated<LocalDate> until,
        Stated<String> proof) {

    /** For testing whether safeguards work. */
    public static final String FUNCTION_TESTS = "function tests";

    /** For measuring stops. */
    public static final String STOP_MEASUREMENT = "stop measurement";

    private static final Set<String> SUBJECTS = Set.of(FUNCTION_TESTS, STOP_MEASUREMENT);

    static Competence read(Section section) {
        Stated<LocalDate> from = section.date("from");
        return new Competence(
                section.reference("person", Person.SORT),
                section.word("for", SUBJECTS),
                from,
                section.inOrder("from", from, "until", section.date("until")),
                section.statement("proof"));
    }

    /** True when it is that person's, for that subject, on that day. Open where something could not be read. */
    boolean holds(Stated<String> who, String what, LocalDate day) {
        return person.value().equals(who.value())
                && subject.value().filter(what::equals).isPresent()
                && from.value().filter(day::isBefore).isEmpty()
                && until.value().filter(day::isAfter).isEmpty();
    }
}
