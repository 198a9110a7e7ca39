package org.cellfile.subject.identity;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cellfile.read.Section;
import org.cellfile.source.Span;
import org.cellfile.source.Stated;
import org.cellfile.standard.CopyValues;
import org.cellfile.standard.Edition;
import org.cellfile.standard.Standards;

/** Everything about the cell as a whole. */
public record Identity(
        CellFacts facts,
        List<Revision> revisions,
        List<Person> people,
        List<Instrument> instruments,
        List<Robot> robots,
        List<ChosenEdition> editions,
        List<Confirmation> confirmations,
        List<CopyValue> copyValues,
        Span where) {

    public static Identity read(Section top) {
        Section cell = top.section("cell");
        return new Identity(
                CellFacts.read(cell),
                Section.each(top.list("revisions"), Revision::read),
                Section.each(top.list("people"), Person::read),
                Section.each(top.list("instruments"), Instrument::read),
                Section.each(top.list("robots"), Robot::read),
                Section.each(top.list("standards"), ChosenEdition::read),
                Section.each(top.listIfStated("confirmations"), Confirmation::read),
                Section.each(top.listIfStated("copy-values"), CopyValue::read),
                cell.where());
    }

    /** What was read in copies of the standards. */
    private CopyValues readInCopies() {
        return new CopyValues(copyValues.stream()
                .flatMap(value -> value.reads(nameOf(value.by())).stream())
                .toList());
    }

    /** The editions named, as rules, with the values that were read in copies of them. */
    public Standards standards() {
        CopyValues copy = readInCopies();
        Map<String, Edition> read = new HashMap<>();
        return new Standards(editions.stream()
                .map(chosen -> chosen.named(known -> read.computeIfAbsent(known.id(), id -> known.reading(copy))))
                .flatMap(Optional::stream)
                .toList());
    }

    /** The person with that tag. */
    public Optional<Person> person(Stated<String> tag) {
        return people.stream()
                .filter(person -> person.tag().value().equals(tag.value()))
                .findFirst();
    }

    /** The name of the person with that tag, or the tag when there is none. */
    public String nameOf(Stated<String> tag) {
        return person(tag).map(person -> person.name().characters()).orElse(tag.characters());
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
