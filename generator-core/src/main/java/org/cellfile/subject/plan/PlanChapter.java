package org.cellfile.subject.plan;

import java.util.ArrayList;
import java.util.List;
import org.cellfile.claim.Workings;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Block.Column;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.dossier.Block.Facts;
import org.cellfile.dossier.Block.Paragraph;
import org.cellfile.dossier.Block.Section;
import org.cellfile.dossier.Block.Table;
import org.cellfile.dossier.Chapter;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding.Side;
import org.cellfile.subject.identity.Identity;
import org.cellfile.subject.mode.Mode;

/** How the plan is printed. */
public final class PlanChapter {

    private PlanChapter() {}

    /** The chapter of a cell that has a plan. */
    public static Chapter chapter(Layout layout, List<Mode> modes, Identity identity) {
        Workings workings = identity.facts().workings();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Paragraph(
                "The plan was drawn from the coordinates that the cell's files state. Which points are nearest to each other was"
                        + " found by geometry and read to the tenth of a millimetre; every distance was computed from their"
                        + " coordinates. A plan shows what somebody drew: it replaces no look at the cell, and what is not drawn"
                        + " was not examined."));
        blocks.add(about(layout.plan(), identity));
        blocks.addAll(new PlanDrawing(layout).measured(workings));
        blocks.add(distances(layout, workings));
        layout.distances().forEach(distance -> blocks.add(working(distance, layout, workings)));
        blocks.addAll(PerimeterTables.of(layout, workings));
        blocks.addAll(ModePlans.sections(layout, modes));
        blocks.addAll(StandingThings.of(layout, workings));
        return new Chapter("plan", "Plan of the cell", blocks);
    }

    private static Facts about(Plan plan, Identity identity) {
        return new Facts(List.of(
                new Fact("Drawing", plan.drawing().characters()),
                new Fact("Origin and axes", plan.axes().characters()),
                new Fact(
                        "Held against the floor",
                        "by " + identity.nameOf(plan.by()) + " on " + plan.on().characters()),
                new Fact("Tolerance between plan and tape", plan.tolerance().characters()),
                new Fact("Uncertainty of the plan", plan.uncertainty().characters())));
    }

    private static Table distances(Layout layout, Workings workings) {
        return new Table(
                "Distances on the plan and at the machine",
                List.of(
                        Column.text("Safeguard", 5),
                        Column.text("Nearest zone", 4),
                        Column.figures("Plan", 3),
                        Column.figures("Machine", 3),
                        Column.figures("Differ by", 3),
                        Column.figures("Counts", 3),
                        Column.figures("Required", 3)),
                layout.distances().stream()
                        .map(distance -> List.of(
                                distance.tag(),
                                distance.zone(),
                                workings.inUnits(distance.distance()),
                                workings.inUnits(
                                        distance.guarding()
                                                .safeguard()
                                                .installed()
                                                .distance(),
                                        Side.DOWN),
                                distance.difference()
                                        .map(Quantity::plain)
                                        .map(Quantity::toString)
                                        .orElse("–"),
                                workings.inUnits(distance.counted()),
                                workings.inUnits(distance.guarding().separationDistance())))
                        .toList());
    }

    private static Section working(PlanDistance distance, Layout layout, Workings workings) {
        List<Block> values = new ArrayList<>(List.of(
                workings.of(distance.distance(), distance.recorded()),
                workings.of(distance.counted(), distance.recorded())));
        layout.standing().stream()
                .filter(room -> room.tag().equals(distance.tag()))
                .flatMap(room -> room.gap().stream())
                .forEach(gap -> values.add(workings.of(gap, distance.recorded())));
        return new Section(
                distance.tag(), distance.guarding().safeguard().name().characters(), values);
    }
}
