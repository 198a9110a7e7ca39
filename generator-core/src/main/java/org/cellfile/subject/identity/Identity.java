package org.cellfile.subject.identity;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.read.Section;
import org.cellfile.source.Span;
import org.cellfile.source.Stated;
import org.cellfile.standard.CopyValues;
import org.cellfile.standard.Edition;
import org.cellfile.standard.Standards;

/**
 * Everything about the cell as a whole.
 *
 * @param readInCopies what was read in copies of the standards, as the editions ask for it
 * @param standards the editions named, as rules, with the values that were read in copies of them
 */
public record Identity(
        CellFacts facts,
        List<Revision> revisions,
        CellDates dates,
        List<Person> people,
        List<Competence> competences,
        List<Instrument> instruments,
        List<Robot> robots,
        List<ChosenEdition> editions,
        List<Confirmation> confirmations,
        List<CopyValue> copyValues,
        CopyValues readInCopies,
        Standards standards,
        Span where) {

    /** An edition is named twice. */
    public static final FindingId NAMED_TWICE = new FindingId("standard.named-twice");

    public static Identity read(Section top) {
        Section cell = top.section("cell");
        List<Person> people = Section.each(top.list("people"), Person::read);
        List<CopyValue> copyValues = Section.each(top.listIfStated("copy-values"), CopyValue::read);
        CopyValues readInCopies = new CopyValues(copyValues.stream()
                .flatMap(value -> value.reads(nameOf(people, value.by())).stream())
                .toList());
        List<ChosenEdition> editions = onceEach(top, Section.each(top.list("standards"), ChosenEdition::read));
        return new Identity(
                CellFacts.read(cell),
                Section.each(top.list("revisions"), Revision::read),
                CellDates.read(top.section("dates")),
                people,
                Section.each(top.listIfStated("competences"), Competence::read),
                Section.each(top.list("instruments"), Instrument::read),
                Section.each(top.list("robots"), Robot::read),
                editions,
                Section.each(top.listIfStated("confirmations"), Confirmation::read),
                copyValues,
                readInCopies,
                standards(editions, readInCopies),
                cell.where());
    }

    /** An edition named a second time is refused, and the first one counts. */
    private static List<ChosenEdition> onceEach(Section top, List<ChosenEdition> editions) {
        Map<String, ChosenEdition> first = new LinkedHashMap<>();
        for (ChosenEdition edition : editions) {
            String id = edition.edition().characters();
            ChosenEdition other = first.putIfAbsent(id, edition);
            if (other != null && edition.edition().value().isPresent()) {
                top.report(
                        Finding.refuses(
                                NAMED_TWICE,
                                "",
                                edition.edition().where(),
                                "`" + id + "` is named at "
                                        + other.edition().where().position() + " as well",
                                "name each edition once, in force or for comparison, and list under `only-for` all safeguards it is for"));
            }
        }
        return List.copyOf(first.values());
    }

    /** The editions named, as rules, with the values that were read in copies of them. */
    private static Standards standards(List<ChosenEdition> editions, CopyValues readInCopies) {
        Map<String, Edition> read = new HashMap<>();
        return new Standards(editions.stream()
                .map(chosen -> chosen.named(known -> read.computeIfAbsent(known.id(), id -> readInCopies.into(known))))
                .flatMap(Optional::stream)
                .toList());
    }

    /** The person with that tag. */
    public Optional<Person> person(Stated<String> tag) {
        return person(people, tag);
    }

    private static Optional<Person> person(List<Person> people, Stated<String> tag) {
        return people.stream()
                .filter(person -> person.tag().value().equals(tag.value()))
                .findFirst();
    }

    /** The name of the person with that tag, or the tag when there is none. */
    public String nameOf(Stated<String> tag) {
        return nameOf(people, tag);
    }

    private static String nameOf(List<Person> people, Stated<String> tag) {
        return person(people, tag).map(person -> person.name().characters()).orElse(tag.characters());
    }

    /** True when that person is competent for a subject of {@link Competence} on that day. */
    public boolean competent(Stated<String> person, String subject, LocalDate day) {
        return competences.stream().anyMatch(one -> one.holds(person, subject, day));
    }

    /** The instrument with that tag. */
    public Optional<Instrument> instrument(Stated<String> tag) {
        return instruments.stream()
                .filter(instrument -> instrument.tag().value().equals(tag.value()))
                .findFirst();
    }

    /** The robot with that tag. */
    public Optional<Robot> robot(Stated<String> tag) {
        return robots.stream()
                .filter(robot -> robot.tag().value().equals(tag.value()))
                .findFirst();
    }
}
