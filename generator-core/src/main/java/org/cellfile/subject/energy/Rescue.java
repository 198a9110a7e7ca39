package org.cellfile.subject.energy;

import java.util.List;
import java.util.Optional;
import org.cellfile.read.Section;
import org.cellfile.source.Span;
import org.cellfile.source.Stated;
import org.cellfile.subject.hazard.Zone;

/**
 * How somebody who is trapped is freed, and where help is found.
 *
 * @param firstAid where it is found
 * @param aiders who gives it
 * @param meetingPlace where whoever comes to help is met
 */
public record Rescue(
        List<Way> ways, Stated<String> firstAid, Stated<String> aiders, Stated<String> meetingPlace, Span where) {

    /**
     * One way of freeing somebody.
     *
     * @param when in which plight, as in {@code caught by the arm}
     * @param of tags of the hazard zones in which that can happen
     * @param with what is needed and where it lies
     * @param by who may do it
     * @param beware what moves or falls when it is done; missing where nothing does
     * @param steps in their order
     */
    public record Way(
            Stated<String> when,
            List<Stated<String>> of,
            Stated<String> with,
            Stated<String> by,
            Stated<String> beware,
            List<Stated<String>> steps) {

        static Way read(Section section) {
            return new Way(
                    section.statement("when"),
                    section.references("of", Zone.SORT),
                    section.statement("with"),
                    section.statement("by"),
                    section.statementIfStated("beware"),
                    section.texts("do"));
        }

        boolean isOf(String zone) {
            return of.stream().anyMatch(one -> one.characters().equals(zone));
        }
    }

    /** Empty where the description says nothing of it. */
    public static Optional<Rescue> read(Section top) {
        return top.sectionIfStated("rescue").map(section -> {
            Rescue rescue = new Rescue(
                    Section.each(section.list("ways"), Way::read),
                    section.statement("first-aid"),
                    section.statement("aiders"),
                    section.statement("meeting-place"),
                    section.where());
            section.close();
            return rescue;
        });
    }
}
