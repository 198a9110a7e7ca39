package org.cellfile.subject.plan;

import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.cellfile.quantity.Unit;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.subject.clearance.Clearance;

/**
 * Something that stands fixed: a wall, a column, a conveyor, a machine.
 *
 * @param outline an area, or a line for a wall
 * @param passable whether a person gets across it
 * @param hides whether a person does not see over it
 * @param clearance tag of the gap measured at the machine between it and the robot; missing where none was
 * @param measure what keeps people from being crushed against it; missing where the gap alone has to
 */
public record Structure(
        Stated<String> tag,
        Stated<String> name,
        Optional<Outline> outline,
        Stated<String> passable,
        Stated<String> hides,
        Stated<String> clearance,
        Stated<String> measure) {

    public static final String SORT = "structure";

    private static final Set<String> FORMS = forms();

    private static Set<String> forms() {
        Set<String> forms = new TreeSet<>(Outline.AREAS);
        forms.add("line");
        return forms;
    }

    static Structure read(Section section, Unit unit) {
        Stated<String> tag = section.tag(SORT);
        return new Structure(
                tag,
                section.text("name"),
                Outline.read(section, tag.characters(), FORMS, unit),
                section.word("passable", Set.of("yes", "no")),
                section.word("hides", Set.of("yes", "no")),
                section.referenceIfStated("clearance", Clearance.SORT),
                section.statementIfStated("measure"));
    }

    Structure withoutOutline() {
        return new Structure(tag, name, Optional.empty(), passable, hides, clearance, measure);
    }

    /** True when nobody gets across it. */
    public boolean bars() {
        return passable.value().filter("no"::equals).isPresent();
    }

    /** True when nobody sees over it. */
    public boolean isHiding() {
        return hides.value().filter("yes"::equals).isPresent();
    }
}
