package org.cellfile.subject.clearance;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
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
import org.cellfile.quantity.Rounding.Side;
import org.cellfile.subject.identity.Identity;
import org.cellfile.trace.Drawing;

/** How clearances are printed. */
public final class ClearanceChapter {

    private ClearanceChapter() {}

    /**
     * The chapter, also when no clearance is listed.
     *
     * @param deviations the boxes of the deviations about the thing of a tag
     */
    public static Chapter chapter(
            List<ClearanceGap> clearances, Identity identity, Function<String, List<Block>> deviations) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Paragraph(
                "These are distances against crushing between what moves and what is fixed. They are not positions of safeguards:"
                        + " a gap that is wide enough keeps nobody out of a hazard zone and does not replace a separation"
                        + " distance, and a safeguard at its distance says nothing about the gaps behind it. What moves is"
                        + " taken at the end of its movement, for a robot with tool, part and overrun. The hand stands for hand,"
                        + " wrist and fist."));
        if (clearances.isEmpty()) {
            blocks.add(new Paragraph("No clearance is listed for this cell."));
        } else {
            blocks.add(table(clearances, identity.facts().workings()));
            if (clearances.stream().anyMatch(ClearanceGap::isNarrow)) {
                blocks.add(new Paragraph(
                        "Where the margin is below zero, the gap alone does not protect anybody: a measure named"
                                + " below, or a deviation that a named person has stated, stands in its place."));
            }
            clearances.forEach(
                    clearance -> blocks.add(section(clearance, identity, deviations.apply(clearance.tag()))));
        }
        return new Chapter("clearances", "Clearances against crushing", blocks);
    }

    private static Table table(List<ClearanceGap> clearances, Workings workings) {
        return new Table(
                "Least and measured gaps",
                List.of(
                        Column.text("Tag", 9),
                        Column.text("Between", 9),
                        Column.text("And", 9),
                        Column.text("Body part", 6),
                        Column.figures("Least", 9),
                        Column.figures("Measured", 9),
                        Column.figures("Uncertainty", 9),
                        Column.figures("Margin", 9)),
                clearances.stream()
                        .map(gap -> List.of(
                                gap.tag(),
                                gap.clearance().moving().characters(),
                                gap.clearance().fixed().characters(),
                                gap.clearance().part().characters(),
                                workings.inUnits(gap.leastGap()),
                                workings.inUnits(gap.clearance().gap(), Side.DOWN),
                                workings.inUnits(gap.clearance().uncertainty(), Side.UP),
                                workings.inUnits(gap.margin())))
                        .toList());
    }

    private static Section section(ClearanceGap gap, Identity identity, List<Block> deviations) {
        Clearance clearance = gap.clearance();
        List<Fact> facts = new ArrayList<>(List.of(
                new Fact("Hazard zone", clearance.zone().characters()),
                new Fact(
                        "Part of the body",
                        clearance.part().characters(),
                        String.join("; ", Drawing.of(gap.leastGap()).remarks())),
                new Fact(
                        "Measured gap",
                        clearance.gap().characters(),
                        clearance.gap().where().position() + "; measured by " + identity.nameOf(clearance.by()) + " on "
                                + clearance.on().characters() + " with "
                                + clearance.instrument().characters()),
                new Fact(
                        "Uncertainty",
                        clearance.uncertainty().characters(),
                        clearance.uncertainty().where().position())));
        clearance
                .measure()
                .value()
                .ifPresent(measure -> facts.add(new Fact(
                        "Measure",
                        measure,
                        gap.isNarrow()
                                ? "named in place of a gap that is wide enough; not recomputed here"
                                : "named besides the gap; not recomputed here")));
        List<Block> blocks = new ArrayList<>(List.of(new Facts(facts)));
        blocks.addAll(deviations);
        blocks.add(identity.facts().workings().rows("Gap needed, and what is left", gap.derived(), gap.recorded()));
        return new Section(
                gap.tag(),
                Text.capital(clearance.moving().characters()) + " and "
                        + clearance.fixed().characters(),
                blocks);
    }
}
