package org.cellfile.subject.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.cellfile.claim.Workings;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Block.Box;
import org.cellfile.dossier.Block.Column;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.dossier.Block.Facts;
import org.cellfile.dossier.Block.Paragraph;
import org.cellfile.dossier.Block.Section;
import org.cellfile.dossier.Block.Table;
import org.cellfile.dossier.Block.Tone;
import org.cellfile.dossier.Chapter;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.quantity.Rounding.Side;
import org.cellfile.quantity.Unit;
import org.cellfile.source.Stated;
import org.cellfile.subject.identity.Identity;
import org.cellfile.subject.mode.Mode;
import org.cellfile.subject.register.Bypass;
import org.cellfile.subject.register.Registers;

/** How the plan is printed. */
public final class PlanChapter {

    private static final Rounding TENTHS = Rounding.up(Quantity.millimetres("0.1"));
    private static final Rounding HUNDREDTHS = Rounding.up(Quantity.of("0.01", Unit.INCH));

    private PlanChapter() {}

    /** The chapter of a cell that has a plan. */
    public static Chapter chapter(Layout layout, List<Mode> modes, Registers registers, Identity identity) {
        Workings workings = identity.facts().workings();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Paragraph(
                "The plan was drawn from the coordinates that the cell's files state. Which points are nearest to each other was"
                        + " found by geometry and read to the tenth of a millimetre; every distance was computed from their"
                        + " coordinates. A plan shows what somebody drew: it replaces no look at the cell, and what is not drawn"
                        + " was not examined."));
        registers.bypasses().stream().filter(Bypass::open).forEach(bypass -> blocks.add(inPlace(bypass)));
        blocks.add(about(layout.plan(), identity));
        blocks.add(distances(layout, workings));
        blocks.add(workings.rows("How the distances were come by", "Safeguard", layout.distances()));
        if (!layout.distances().isEmpty()) {
            blocks.add(Workings.symbols(layout.distances()));
        }
        blocks.addAll(new PlanDrawing(layout).measured(workings));
        blocks.addAll(PerimeterTables.of(layout, workings));
        blocks.add(new Section(
                "", "Views, gaps, emergency stops and resets on the plan", StandingThings.of(layout, workings)));
        blocks.addAll(ModePlans.sections(layout, modes));
        return new Chapter("plan", "Plan of the cell", blocks);
    }

    /** A bypass is on no plan, and the reader has to know that the cell is not as drawn. */
    private static Box inPlace(Bypass bypass) {
        return new Box(
                Tone.CAUTION,
                "Not as drawn while `" + bypass.tag().characters() + "` is in place",
                List.of(new Facts(List.of(
                        new Fact(
                                "Bypassed",
                                bypass.of().stream().map(Stated::characters).collect(Collectors.joining(", ")),
                                bypass.what().characters()),
                        new Fact("In its place", bypass.compensation().characters()),
                        new Fact("Until", bypass.until().characters())))));
    }

    private static Facts about(Plan plan, Identity identity) {
        return new Facts(List.of(
                new Fact("Drawing", plan.drawing().characters()),
                new Fact("Origin and axes", plan.axes().characters()),
                new Fact(
                        "Points on drawings and in tables",
                        "in " + (plan.pointsIn().equals(Unit.INCH) ? "inches" : "millimetres")
                                + ", first to the right, then upwards"),
                new Fact("Points in workings", "in millimetres, as they were read"),
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
                                        .map(apart -> apart.in(layout.plan().pointsIn()))
                                        .map(apart ->
                                                (apart.unit().equals(Unit.INCH) ? HUNDREDTHS : TENTHS).round(apart))
                                        .map(Quantity::toString)
                                        .orElse("–"),
                                workings.inUnits(distance.counted()),
                                workings.inUnits(distance.guarding().separationDistance())
                                        + (distance.isTooShort() ? ", not kept" : "")))
                        .toList());
    }
}
