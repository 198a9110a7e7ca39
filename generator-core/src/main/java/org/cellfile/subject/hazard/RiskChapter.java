package org.cellfile.subject.hazard;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cellfile.claim.Workings;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Block.Column;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.dossier.Block.Facts;
import org.cellfile.dossier.Block.Paragraph;
import org.cellfile.dossier.Block.Section;
import org.cellfile.dossier.Block.Table;
import org.cellfile.dossier.Chapter;
import org.cellfile.dossier.Text;
import org.cellfile.source.Stated;
import org.cellfile.standard.Exposure;
import org.cellfile.subject.hazard.Hazard.Measure;
import org.cellfile.subject.hazard.Hazard.Residual;
import org.cellfile.trace.Drawing;

/** How the hazards are printed: how each was judged, what is done against it, and what remains. */
public final class RiskChapter {

    private static final String NONE = "–";

    /** The meaning of the letters of the risk graph, as makers' manuals and a public note quote it. */
    private static final Map<String, String> MEANINGS = Map.of(
            "S1", "slight injury, as a rule reversible",
            "S2", "serious injury, as a rule irreversible, or death",
            "F1", "seldom, or for a short time",
            "F2", "frequently, or for a long time",
            "P1", "can be avoided under certain conditions",
            "P2", "can scarcely be avoided");

    private static final Map<String, String> STEPS = Map.of(
            Hazard.DESIGN, "1, inherently safe design",
            Hazard.SAFEGUARDED, "2, safeguarding",
            Hazard.INFORMATION, "3, information for use");

    private final List<Risk> risks;
    private final Map<String, String> things;

    private RiskChapter(List<Risk> risks, Map<String, String> things) {
        this.risks = risks;
        this.things = things;
    }

    /**
     * The chapter, also when no hazard is described.
     *
     * @param things the names of what may safeguard, by tag, in the order of the cell
     */
    public static Chapter chapter(List<Risk> risks, Map<String, String> things) {
        return new RiskChapter(risks, things).chapter();
    }

    private Chapter chapter() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Paragraph(
                "Each hazard is judged twice: as if nothing were done against it, and with all measures taken. The risk graph of"
                        + " ISO 13849-1, Annex A, leads from the first judgement to the required performance level PL_r of the"
                        + " safety functions through which the safeguards act. People judged severity, frequency and"
                        + " possibility of avoiding; the program follows the graph and nothing more. The meaning of the letters"
                        + " is published; which level they lead to is held here from memory, and the register of fixed values"
                        + " names who confirmed it."));
        if (risks.isEmpty()) {
            blocks.add(new Paragraph("No hazard is described for this cell."));
        } else {
            blocks.add(legend());
            blocks.add(overview());
            risks.forEach(risk -> blocks.add(section(risk)));
            blocks.add(new Section("", "Residual risks", List.of(residual())));
            blocks.add(new Section("", "Safeguards and the hazards they serve", List.of(serving())));
        }
        return new Chapter("risks", "Hazards and risks", blocks);
    }

    private static Table legend() {
        return new Table(
                "What the letters mean",
                List.of(Column.text("Judged", 3), Column.text("Letter", 1), Column.text("Meaning", 6)),
                List.of(
                        meaning("Severity of the injury", "S1"),
                        meaning("", "S2"),
                        meaning("Frequency or length of exposure", "F1"),
                        meaning("", "F2"),
                        meaning("Possibility of avoiding it", "P1"),
                        meaning("", "P2")));
    }

    private static List<String> meaning(String judged, String letter) {
        return List.of(judged, letter, words(letter));
    }

    private static String words(String letter) {
        return MEANINGS.getOrDefault(letter, NONE);
    }

    private Table overview() {
        return new Table(
                "The hazards, and how many measures are taken against each",
                List.of(
                        Column.text("Hazard", 4),
                        Column.text("Task", 5),
                        Column.text("Hazard zones", 4),
                        Column.text("Before", 3),
                        Column.text("PL_r", 2),
                        Column.text("Measures", 4),
                        Column.text("After", 3)),
                risks.stream().map(RiskChapter::row).toList());
    }

    private static List<String> row(Risk risk) {
        Hazard hazard = risk.hazard();
        return List.of(
                risk.tag(),
                hazard.task().characters(),
                tags(hazard.zones()),
                letters(hazard.before()),
                Workings.shown(risk.required()),
                Hazard.SORTS.stream().map(sort -> counted(hazard, sort)).collect(Collectors.joining(", ")),
                letters(hazard.after()));
    }

    /** A number is not parted from its word at the end of a line. */
    private static String counted(Hazard hazard, String sort) {
        return hazard.measures().stream().filter(measure -> measure.is(sort)).count() + "\u00a0" + sort;
    }

    private Section section(Risk risk) {
        Hazard hazard = risk.hazard();
        List<Block> blocks = List.of(
                new Facts(List.of(
                        new Fact("Task", hazard.task().characters()),
                        new Fact("Hazard zones", tags(hazard.zones())),
                        judged("Before any measure", hazard.before()),
                        required(risk),
                        judged("After all measures", hazard.after()),
                        new Fact(
                                "What remains",
                                hazard.residual().isEmpty()
                                        ? "nothing is stated to remain"
                                        : hazard.residual().stream()
                                                .map(residual -> residual.risk().characters())
                                                .collect(Collectors.joining("; "))))),
                measures(hazard));
        return new Section(risk.tag(), Text.capital(hazard.hazard().characters()), blocks);
    }

    /** The level, the way to it in the graph, how that is known, and what was recorded. */
    private static Fact required(Risk risk) {
        Stream<String> standings = risk.required().references().stream().map(reference -> Drawing.origin(reference));
        return new Fact(
                "Required (PL_r)",
                Workings.shown(risk.required()),
                Stream.of(
                                Drawing.of(risk.required()).remarks().stream(),
                                standings,
                                Stream.of(Workings.briefly(risk.required(), risk.recorded())))
                        .flatMap(texts -> texts)
                        .filter(text -> !text.isEmpty())
                        .distinct()
                        .collect(Collectors.joining("; ")));
    }

    private static Fact judged(String label, Exposure exposure) {
        return new Fact(
                label,
                letters(exposure),
                exposure.parameters()
                        .map(Stated::characters)
                        .map(RiskChapter::words)
                        .collect(Collectors.joining("; ")));
    }

    /** In the order of the three steps, whatever the order they were written in. */
    private Table measures(Hazard hazard) {
        return new Table(
                "What is done against it",
                List.of(Column.text("Step", 3), Column.text("Measure", 6), Column.text("Carried out by", 4)),
                Hazard.SORTS.stream()
                        .flatMap(sort -> hazard.measures().stream().filter(measure -> measure.is(sort)))
                        .map(measure -> List.of(
                                STEPS.getOrDefault(measure.sort().characters(), NONE),
                                measure.measure().characters(),
                                carriedOutBy(measure)))
                        .toList());
    }

    private static String carriedOutBy(Measure measure) {
        return measure.by().isEmpty() ? NONE : tags(measure.by());
    }

    private static List<Column> residualColumns() {
        return List.of(
                Column.text("What remains", 5),
                Column.text("What people are told about it", 6),
                Column.text("Where it stands", 3));
    }

    private static List<String> row(Residual residual) {
        return List.of(
                residual.risk().characters(),
                residual.instruction().characters(),
                residual.onSheets() ? "posted at the cell" : "in this file only");
    }

    private Block residual() {
        List<List<String>> rows = risks.stream()
                .flatMap(risk -> risk.hazard().residual().stream()
                        .map(one -> Stream.concat(Stream.of(risk.tag()), row(one).stream())
                                .toList()))
                .toList();
        List<Column> columns = new ArrayList<>(List.of(Column.text("Hazard", 3)));
        columns.addAll(residualColumns());
        return rows.isEmpty()
                ? new Paragraph("Nothing is stated to remain of any hazard.")
                : new Table("All that remains, after all measures", columns, rows);
    }

    private Table serving() {
        return new Table(
                "What safeguards, and against which hazards (with the required performance level of each)",
                List.of(Column.text("Tag", 3), Column.text("Name", 8), Column.text("Hazards", 6)),
                things.entrySet().stream()
                        .map(thing -> List.of(thing.getKey(), thing.getValue(), served(thing.getKey())))
                        .filter(row -> !row.get(2).isEmpty())
                        .toList());
    }

    private String served(String tag) {
        return risks.stream()
                .filter(risk -> risk.hazard().servedBy(tag))
                .map(risk -> risk.tag() + " (" + Workings.shown(risk.required()) + ")")
                .collect(Collectors.joining(", "));
    }

    private static String letters(Exposure exposure) {
        return exposure.parameters().map(Stated::characters).collect(Collectors.joining(", "));
    }

    private static String tags(List<Stated<String>> tags) {
        return tags.stream().map(Stated::characters).collect(Collectors.joining(", "));
    }
}
