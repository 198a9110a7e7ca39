package org.cellfile.subject.identity;

import java.time.LocalDate;
import java.util.List;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;

/**
 * Somebody with a role in the cell.
 *
 * @param competence what qualifies the person for it
 * @param holds editions of which the person has a licensed copy
 * @param left the last day on which the person could act for the employer; missing while that lasts
 */
public record Person(
        Stated<String> tag,
        Stated<String> name,
        Stated<String> employer,
        List<Stated<String>> roles,
        Stated<String> competence,
        List<Stated<String>> holds,
        Stated<LocalDate> left) {

    public static final String SORT = "person";

    static Person read(Section section) {
        return new Person(
                section.tag(SORT),
                section.text("name"),
                section.text("employer"),
                section.texts("roles"),
                section.text("competence"),
                section.textsIfStated("holds"),
                section.dateIfStated("left"));
    }

    /** True when the person has a licensed copy of the edition. */
    public boolean holds(String edition) {
        return holds.stream().anyMatch(held -> held.characters().equals(edition));
    }
}
