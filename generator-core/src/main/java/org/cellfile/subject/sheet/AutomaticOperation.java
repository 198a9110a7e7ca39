package org.cellfile.subject.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.dossier.Sheet;
import org.cellfile.dossier.Sheet.Kind;
import org.cellfile.dossier.Sheet.Panel;
import org.cellfile.dossier.Words;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.subject.hazard.ZoneExtent;
import org.cellfile.subject.identity.Identity;
import org.cellfile.subject.identity.Person;
import org.cellfile.subject.identity.Robot;
import org.cellfile.subject.safeguard.Guarding;
import org.cellfile.subject.safeguard.SafeguardChapters;

/**
 * The sheet for starting and running in automatic mode. The plant adds steps of its own; hazards, checks and prohibitions come
 * from the cell's own zones and safeguards.
 */
public record AutomaticOperation(
        Stated<String> postAt,
        List<Stated<String>> beforeStart,
        List<Stated<String>> start,
        List<Stated<String>> whileRunning,
        Stated<String> responsible) {

    private static final String ID = "automatic-operation";

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
    public Sheet sheet(Identity identity, List<ZoneExtent> zones, List<Guarding> safeguards) {
        Words words = Words.of("sheets/" + ID);
        return new Sheet(
                ID,
                words.get("title"),
                postAt.characters(),
                List.of(
                        new Panel(Kind.HAZARD, words.get("hazards"), false, hazards(zones)),
                        new Panel(Kind.ACTION, words.get("before"), true, before(words, safeguards)),
                        new Panel(Kind.ACTION, words.get("start"), true, texts(start)),
                        new Panel(Kind.INFORMATION, words.get("running"), false, running(words)),
                        new Panel(Kind.PROHIBITION, words.get("never"), false, never(safeguards)),
                        new Panel(Kind.EMERGENCY, words.get("emergency"), true, emergency(words, identity))),
                foot(words, identity));
    }

    private static List<String> hazards(List<ZoneExtent> zones) {
        return zones.stream()
                .map(zone -> zone.zone().name().characters() + ": "
                        + zone.zone().hazard().characters())
                .toList();
    }

    private List<String> before(Words words, List<Guarding> safeguards) {
        List<String> lines = texts(beforeStart);
        lines.add(words.get("before-look"));
        byKind(safeguards)
                .forEach((kind, ofKind) -> lines.add(words.get(
                        "before-check",
                        tags(ofKind),
                        SafeguardChapters.words(ofKind.get(0)).get("shift-check"))));
        return lines;
    }

    private List<String> running(Words words) {
        List<String> lines = new ArrayList<>();
        lines.add(words.get("running-outside"));
        lines.addAll(texts(whileRunning));
        lines.add(words.get("running-stop"));
        return lines;
    }

    private static List<String> never(List<Guarding> safeguards) {
        return byKind(safeguards).values().stream()
                .map(ofKind -> SafeguardChapters.words(ofKind.get(0)).get("never"))
                .toList();
    }

    private static List<String> emergency(Words words, Identity identity) {
        return List.of(
                words.get("emergency-stop"),
                words.get(
                        "emergency-call",
                        identity.facts().emergencyPhone().characters(),
                        identity.facts().name().characters()),
                words.get("emergency-trapped"));
    }

    private List<Fact> foot(Words words, Identity identity) {
        List<Fact> foot = new ArrayList<>();
        foot.add(
                new Fact(words.get("foot-revision"), identity.facts().revision().characters()));
        foot.add(new Fact(words.get("foot-as-of"), identity.facts().asOf().characters()));
        foot.add(new Fact(words.get("foot-responsible"), identity.nameOf(responsible)));
        for (Robot robot : identity.robots()) {
            foot.add(new Fact(
                    words.get("foot-checksum", robot.tag().characters()),
                    robot.controller().checksum().characters()));
        }
        foot.add(new Fact(words.get("foot-post"), postAt.characters()));
        return foot;
    }

    /** In the order in which each kind first stands in the cell's files. */
    private static Map<String, List<Guarding>> byKind(List<Guarding> safeguards) {
        return safeguards.stream()
                .collect(Collectors.groupingBy(
                        guarding -> guarding.safeguard().kind().id(), LinkedHashMap::new, Collectors.toList()));
    }

    private static String tags(List<Guarding> safeguards) {
        return safeguards.stream().map(Guarding::tag).collect(Collectors.joining(", "));
    }

    private static List<String> texts(List<Stated<String>> stated) {
        return stated.stream().map(Stated::characters).collect(Collectors.toCollection(ArrayList::new));
    }
}
