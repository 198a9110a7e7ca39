package org.cellfile.subject.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.dossier.Sheet;
import org.cellfile.dossier.Sheet.Kind;
import org.cellfile.dossier.Sheet.Panel;
import org.cellfile.dossier.Text;
import org.cellfile.dossier.Words;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.subject.hazard.Hazard.Residual;
import org.cellfile.subject.hazard.Risk;
import org.cellfile.subject.hazard.ZoneExtent;
import org.cellfile.subject.identity.Identity;
import org.cellfile.subject.identity.Person;
import org.cellfile.subject.identity.Robot;
import org.cellfile.subject.register.Configuration;
import org.cellfile.subject.safeguard.Guarding;

/**
 * The sheet for starting and running in automatic mode. The plant adds steps of its own; hazards, what remains of them,
 * checks and prohibitions come from the cell's own zones, hazards and safeguards.
 */
public record AutomaticOperation(
        Stated<String> postAt,
        List<Stated<String>> beforeStart,
        List<Stated<String>> start,
        List<Stated<String>> whileRunning,
        Stated<String> responsible) {

    /** Its key under {@code sheets}, and the name of its file. */
    public static final String ID = "automatic-operation";

    /** More doors than these are counted, not named: the line has to be read at a glance. */
    private static final int MOST_NAMED = 3;

    public static AutomaticOperation read(Section top) {
        Section sheets = top.section("sheets");
        Section section = sheets.section(ID);
        AutomaticOperation sheet = new AutomaticOperation(
                section.text("post-at"),
                section.textsIfStated("before-start"),
                section.texts("start"),
                section.textsIfStated("while-running"),
                section.reference("responsible", Person.SORT));
        section.close();
        sheets.close();
        return sheet;
    }

    /** The page as it is posted. */
    public Sheet sheet(
            Identity identity,
            List<ZoneExtent> zones,
            List<Risk> risks,
            List<Guarding> safeguards,
            List<Configuration> configurations) {
        Words words = Words.of("sheets/" + ID);
        List<Panel> panels = new ArrayList<>();
        panels.add(new Panel(Kind.HAZARD, words.get("hazards"), false, hazards(zones, risks)));
        panels.add(new Panel(Kind.ACTION, words.get("start"), true, starting(words, safeguards)));
        panels.add(new Panel(Kind.INFORMATION, words.get("running"), false, running(words)));
        panels.add(new Panel(Kind.PROHIBITION, words.get("never"), false, never(words, identity)));
        panels.add(new Panel(Kind.EMERGENCY, words.get("emergency"), true, emergency(words, identity)));
        return new Sheet(ID, words.get("title"), postAt.characters(), panels, foot(words, identity, configurations));
    }

    /** What remains of hazards and is posted, with what to do about it. */
    private static Stream<String> remaining(List<Risk> risks) {
        return risks.stream()
                .flatMap(risk -> risk.hazard().residual().stream())
                .filter(Residual::onSheets)
                .map(one -> Text.sentence(one.risk().characters()) + " "
                        + Text.sentence(one.instruction().characters()));
    }

    /** What is said alike of several stands there once. */
    private static List<String> hazards(List<ZoneExtent> zones, List<Risk> risks) {
        return Stream.concat(
                        zones.stream()
                                .map(zone -> Text.capital(zone.zone().hazard().characters())),
                        remaining(risks))
                .distinct()
                .toList();
    }

    private List<String> starting(Words words, List<Guarding> safeguards) {
        List<String> lines = new ArrayList<>();
        lines.add(words.get("start-nobody"));
        List<String> doors = safeguards.stream()
                .filter(guarding -> guarding.safeguard().kind().closedByHand())
                .map(Guarding::tag)
                .toList();
        if (doors.size() > MOST_NAMED) {
            lines.add(words.get("start-all-closed", String.valueOf(doors.size())));
        } else if (!doors.isEmpty()) {
            lines.add(words.get("start-closed", String.join(", ", doors)));
        }
        lines.add(words.get("start-check"));
        lines.addAll(texts(beforeStart));
        lines.addAll(texts(start));
        return lines;
    }

    private List<String> running(Words words) {
        List<String> lines = new ArrayList<>();
        lines.add(words.get("running-outside"));
        lines.addAll(texts(whileRunning));
        lines.add(words.get("running-stop"));
        return lines;
    }

    private List<String> never(Words words, Identity identity) {
        return List.of(words.get("never-reach"), words.get("never-report", identity.nameOf(responsible)));
    }

    private static List<String> emergency(Words words, Identity identity) {
        return List.of(
                words.get("emergency-stop"),
                words.get(
                        "emergency-call",
                        identity.facts().emergencyPhone().characters(),
                        identity.facts().name().characters(),
                        identity.facts().site().characters()));
    }

    private List<Fact> foot(Words words, Identity identity, List<Configuration> configurations) {
        List<Fact> foot = new ArrayList<>();
        foot.add(
                new Fact(words.get("foot-revision"), identity.facts().revision().characters()));
        foot.add(new Fact(words.get("foot-as-of"), identity.facts().asOf().characters()));
        foot.add(new Fact(words.get("foot-responsible"), identity.nameOf(responsible)));
        shownAlike(configurations)
                .forEach((shownAt, alike) -> foot.add(new Fact(
                        words.get("foot-configuration"),
                        alike.stream()
                                .map(one -> one.thing() + " "
                                        + one.installed().value().characters())
                                .collect(Collectors.joining(", ")),
                        words.get("foot-shown", shownAt))));
        for (Robot robot : identity.robots()) {
            String tag = robot.tag().characters();
            if (configurations.stream().noneMatch(one -> one.isOf(tag))) {
                foot.add(new Fact(
                        words.get("foot-checksum", tag),
                        robot.controller().checksum().characters()));
            }
        }
        return foot;
    }

    /** Those shown at the same place of each device stand on one line, so that a cell with many of them keeps to its page. */
    private static Map<String, List<Configuration>> shownAlike(List<Configuration> configurations) {
        return configurations.stream()
                .collect(Collectors.groupingBy(
                        one -> one.shownAt().characters(), LinkedHashMap::new, Collectors.toList()));
    }

    private static List<String> texts(List<Stated<String>> stated) {
        return stated.stream().map(Stated::characters).collect(Collectors.toCollection(ArrayList::new));
    }
}
