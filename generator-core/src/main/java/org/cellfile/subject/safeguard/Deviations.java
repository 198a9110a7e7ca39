package org.cellfile.subject.safeguard;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Block.Box;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.dossier.Block.Facts;
import org.cellfile.dossier.Block.Tone;
import org.cellfile.dossier.Chapter;
import org.cellfile.finding.Deviation;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.subject.due.Due;
import org.cellfile.subject.identity.Identity;
import org.cellfile.subject.identity.Person;

/** The departures a cell states. */
public final class Deviations {

    /** A deviation names a finding it cannot cover. */
    public static final FindingId NOT_POSSIBLE = new FindingId("deviation.not-possible");

    private Deviations() {}

    /**
     * Reads them; those that are incomplete were reported and are left out.
     *
     * @param sorts of the things that can fall short
     */
    public static List<Deviation> read(Section top, Identity identity, List<String> sorts) {
        List<Deviation> deviations = new ArrayList<>();
        for (Section section : top.listIfStated("deviations")) {
            Stated<String> tag = section.tag("deviation");
            Stated<String> finding = section.text("finding");
            Stated<String> of = section.referenceTogether("of", sorts);
            Stated<String> reason = section.statement("reason");
            Stated<String> interim = section.statement("interim-measure");
            Stated<String> responsible = section.reference("responsible", Person.SORT);
            Stated<LocalDate> until = section.date("until");
            section.close();
            if (finding.value().isPresent() && !finding.characters().startsWith(Deviation.INSTALLED)) {
                section.report(Finding.refuses(
                        NOT_POSSIBLE,
                        tag.characters(),
                        finding.where(),
                        "no deviation can cover `" + finding.characters() + "`",
                        "a deviation is for what is installed and falls short (findings that begin with `"
                                + Deviation.INSTALLED + "`); what is read or recomputed has to be put right"));
            } else {
                until.value()
                        .ifPresent(day -> deviations.add(new Deviation(
                                tag.characters(),
                                finding.characters(),
                                of.characters(),
                                reason.characters(),
                                interim.characters(),
                                identity.nameOf(responsible),
                                day,
                                section.where())));
            }
        }
        return List.copyOf(deviations);
    }

    /** Their ends. */
    public static List<Due> dues(List<Deviation> deviations) {
        return deviations.stream()
                .map(deviation -> new Due(
                        deviation.until(),
                        deviation.tag(),
                        "put " + deviation.of() + " right: the deviation ends",
                        "deviation, answered for by " + deviation.responsible(),
                        deviation.where()))
                .toList();
    }

    /** The boxes of those about the thing of a tag, to stand beside it. */
    public static List<Block> about(String tag, List<Deviation> deviations) {
        return deviations.stream()
                .filter(deviation -> deviation.of().equals(tag))
                .<Block>map(Deviations::box)
                .toList();
    }

    /** The box in which a deviation is printed. */
    public static Box box(Deviation deviation) {
        return new Box(
                Tone.DEVIATION,
                "Deviation " + deviation.tag() + ": " + deviation.of(),
                List.of(new Facts(List.of(
                        new Fact("Falls short in", deviation.finding()),
                        new Fact("Reason", deviation.reason()),
                        new Fact("Interim measure", deviation.interimMeasure()),
                        new Fact("Responsible", deviation.responsible()),
                        new Fact("Holds until", deviation.until().toString())))));
    }

    /** The chapter that gathers them. */
    public static Chapter chapter(List<Deviation> deviations) {
        List<Block> blocks = new ArrayList<>();
        if (deviations.isEmpty()) {
            blocks.add(new Block.Paragraph("No deviation is stated for this cell."));
        } else {
            blocks.add(new Block.Paragraph(
                    "Where the installed cell falls short of what was recomputed, a named person has stated a deviation with an"
                            + " interim measure and an end date. While a deviation stands, this file is a draft."));
            deviations.forEach(deviation -> blocks.add(box(deviation)));
        }
        return new Chapter("deviations", "Deviations", blocks);
    }
}
