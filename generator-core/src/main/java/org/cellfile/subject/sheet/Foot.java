package org.cellfile.subject.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.subject.identity.CellFacts;
import org.cellfile.subject.identity.Robot;
import org.cellfile.subject.register.Configuration;

/** The foot of a sheet: which it is, of which state of the cell it speaks, who answers for it, and what to compare at the machine. */
final class Foot {

    private Foot() {}

    /** The days of a sheet: until when it is valid, and when the description was. */
    static List<Fact> dates(Optional<LocalDate> validUntil, PostedCell cell, List<Wording> wordings) {
        return List.of(
                fact(
                        "valid-until",
                        wordings,
                        wording -> validUntil
                                .map(wording::date)
                                .orElseGet(() -> wording.shared("foot.valid-until.nothing"))),
                fact(
                        "as-of",
                        wordings,
                        wording -> cell.identity()
                                .facts()
                                .asOf()
                                .value()
                                .map(wording::date)
                                .orElse("")));
    }

    static List<Fact> of(String sheet, PostedCell cell, List<Wording> wordings) {
        CellFacts facts = cell.identity().facts();
        List<Fact> foot = new ArrayList<>();
        foot.add(fact("cell", wordings, wording -> facts.id().characters()));
        foot.add(fact("revision", wordings, wording -> facts.revision().characters()));
        foot.add(fact("sheet", wordings, wording -> sheet + " (" + wording.shared("language.name") + ")"));
        foot.add(fact("responsible", wordings, wording -> cell.responsible()));
        return foot;
    }

    /** What the machine shows, to be compared: the checksums of its safety configurations. */
    static List<Fact> displays(PostedCell cell, List<Wording> wordings) {
        List<Fact> displays = new ArrayList<>();
        List<Configuration> configurations = cell.registers().configurations();
        shownAlike(configurations)
                .values()
                .forEach(alike -> displays.add(new Fact(
                        Wording.inEach(wordings, wording -> wording.shared("foot.configuration")),
                        alike.stream()
                                .map(one -> one.thing() + " "
                                        + one.installed().value().characters())
                                .collect(Collectors.joining(", ")),
                        "("
                                + Wording.inEach(
                                        wordings,
                                        wording -> wording.text(alike.get(0).shownAt())) + ")")));
        for (Robot robot : cell.identity().robots()) {
            String tag = robot.tag().characters();
            if (configurations.stream().noneMatch(one -> one.isOf(tag))) {
                displays.add(new Fact(
                        Wording.inEach(wordings, wording -> wording.shared("foot.checksum", tag)),
                        robot.controller().checksum().characters()));
            }
        }
        return displays;
    }

    private static Fact fact(String key, List<Wording> wordings, Function<Wording, String> value) {
        return new Fact(
                Wording.inEach(wordings, wording -> wording.shared("foot." + key)), Wording.inEach(wordings, value));
    }

    /** Those shown at the same place of each device stand on one line, so that a cell with many of them keeps to its page. */
    private static Map<String, List<Configuration>> shownAlike(List<Configuration> configurations) {
        return configurations.stream()
                .collect(Collectors.groupingBy(
                        one -> one.shownAt().characters(), LinkedHashMap::new, Collectors.toList()));
    }
}
