package org.cellfile.subject.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Block.Column;
import org.cellfile.dossier.Block.Paragraph;
import org.cellfile.dossier.Block.Table;
import org.cellfile.dossier.Chapter;
import org.cellfile.quantity.Interval;
import org.cellfile.read.Redaction;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.subject.due.Due;
import org.cellfile.subject.identity.Identity;
import org.cellfile.subject.identity.Person;

/**
 * People were told at the machine what a sheet asks of them.
 *
 * @param sheets which they were briefed on
 * @param language in which
 * @param who by name; whoever works at the cell need not be listed among its people
 * @param by tag of who briefed them
 * @param next the last day on which it still holds
 */
public record Briefing(
        List<Stated<String>> sheets,
        Stated<String> language,
        List<Stated<String>> who,
        Stated<String> by,
        Stated<LocalDate> on,
        Stated<LocalDate> next) {

    static Briefing read(Section section) {
        List<Stated<String>> sheets = section.words("sheets", SheetSorts.ids());
        Stated<LocalDate> on = section.date("on");
        return new Briefing(
                sheets,
                section.text("language"),
                section.texts("who"),
                section.reference("by", Person.SORT),
                on,
                section.inOrder("on", on, "next", next(section, on)));
    }

    /** A day, or how long after the briefing. */
    private static Stated<LocalDate> next(Section section, Stated<LocalDate> on) {
        Stated<String> written = section.text("next");
        Optional<Interval> interval = written.value().flatMap(Interval::of);
        if (written.value().isEmpty() || interval.isPresent()) {
            return on.value().isPresent() && interval.isPresent()
                    ? written.map(text -> interval.get().after(on.value().get()))
                    : new Stated.Missing<>(written.where(), "next");
        }
        return section.date("next");
    }

    /**
     * One person was told one sheet.
     *
     * @param name the same for one person, whether written in capitals or with more blanks
     */
    public record Told(String name, Stated<String> person, Stated<String> sheet) {
        private boolean same(Told other) {
            return name.equals(other.name) && sheet.characters().equals(other.sheet.characters());
        }
    }

    /** Everyone of whom it is recorded, with each sheet. */
    public List<Told> told() {
        return who.stream()
                .flatMap(person -> sheets.stream()
                        .filter(sheet -> sheet.value().isPresent())
                        .map(sheet -> new Told(same(person), person, sheet)))
                .toList();
    }

    /** In a copy that names nobody each of them is somebody of his own. */
    private static String same(Stated<String> person) {
        return person.characters().equals(Redaction.MARK)
                ? person.where().position()
                : person.characters().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }

    /** When people have to be briefed again: for each person and sheet the latest briefing counts. */
    static List<Due> dues(List<Briefing> briefings, Identity identity) {
        List<Briefing> latestFirst = new ArrayList<>(briefings);
        latestFirst.removeIf(one -> one.on().value().isEmpty());
        latestFirst.sort((one, other) ->
                other.on().value().get().compareTo(one.on().value().get()));
        List<Told> seen = new ArrayList<>();
        List<Due> dues = new ArrayList<>();
        for (Briefing briefing : latestFirst) {
            List<Told> counts = briefing.told().stream()
                    .filter(told -> seen.stream().noneMatch(told::same))
                    .toList();
            seen.addAll(counts);
            briefing.next()
                    .value()
                    .ifPresent(day -> briefing.sheets().forEach(sheet -> {
                        List<String> names = counts.stream()
                                .filter(told -> told.sheet().characters().equals(sheet.characters()))
                                .map(told -> told.person().characters())
                                .toList();
                        if (!names.isEmpty()) {
                            dues.add(new Due(
                                    day,
                                    sheet.characters(),
                                    "brief again: " + String.join(", ", names),
                                    "briefing by " + identity.nameOf(briefing.by()) + " on "
                                            + briefing.on().characters(),
                                    briefing.next().where()));
                        }
                    }));
        }
        return dues;
    }

    /** Who was briefed on what. */
    public static Chapter chapter(List<Briefing> briefings, Identity identity) {
        Block table = new Table(
                "Who was briefed",
                List.of(
                        Column.text("On", 3),
                        Column.text("By", 4),
                        Column.text("Who", 8),
                        Column.text("Sheets", 6),
                        Column.text("Language", 2),
                        Column.text("Again by", 3)),
                briefings.stream()
                        .map(one -> List.of(
                                one.on().characters(),
                                identity.nameOf(one.by()),
                                all(one.who()),
                                all(one.sheets()),
                                one.language().characters(),
                                one.next().value().map(LocalDate::toString).orElse("–")))
                        .toList());
        return new Chapter(
                "briefings",
                "Briefings",
                List.of(
                        new Paragraph(
                                "Whoever works at the cell is told at the machine what its sheets ask. A briefing holds up to"
                                        + " the day named, and a later one of the same person on the same sheet takes its place. The"
                                        + " record with the signatures is kept by the plant."),
                        table));
    }

    private static String all(List<Stated<String>> texts) {
        return String.join(", ", texts.stream().map(Stated::characters).toList());
    }
}
