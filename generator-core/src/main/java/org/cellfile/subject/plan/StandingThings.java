package org.cellfile.subject.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cellfile.claim.Recomputed;
import org.cellfile.claim.Workings;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Block.Column;
import org.cellfile.dossier.Block.Paragraph;
import org.cellfile.dossier.Block.Table;
import org.cellfile.quantity.Rounding.Side;
import org.cellfile.source.Stated;
import org.cellfile.subject.complement.Reset;
import org.cellfile.trace.Drawing;

/** How what stands at the cell and what it sees, hides and leaves free is printed. */
final class StandingThings {

    private static final String NOTHING = "–";

    private StandingThings() {}

    static List<Block> of(Layout layout, Workings workings) {
        List<Block> blocks = new ArrayList<>();
        fields(layout, blocks);
        coverage(layout, workings, blocks);
        gaps(layout, workings, blocks);
        doors(layout, blocks);
        emergencyStops(layout, workings, blocks);
        resets(layout, workings, blocks);
        List<Recomputed> worked = new ArrayList<>(layout.gaps());
        worked.addAll(layout.emergencyStops());
        worked.addAll(layout.resets());
        if (!worked.isEmpty()) {
            blocks.add(workings.rows("How these distances were come by", "About", worked));
        }
        return blocks;
    }

    private static void add(List<Block> blocks, String caption, List<Column> columns, List<List<String>> rows) {
        if (!rows.isEmpty()) {
            blocks.add(new Table(caption, columns, rows));
        }
    }

    private static void fields(Layout layout, List<Block> blocks) {
        add(
                blocks,
                "Fields, and what their scanners see of them",
                List.of(
                        Column.text("Safeguard", 4),
                        Column.text("Scanner stands at", 4),
                        Column.figures("Drawn", 3),
                        Column.figures("Seen", 3),
                        Column.text("Not seen", 8)),
                layout.fields().stream()
                        .map(field -> List.of(
                                field.guarding().tag(),
                                layout.plan().words(field.at()),
                                Straight.area(field.drawn()),
                                Straight.area(field.seen()),
                                orNothing(field.parts().stream()
                                        .map(part -> Straight.place(layout.plan(), part.floor()) + " " + part.because())
                                        .collect(Collectors.joining("; ")))))
                        .toList());
    }

    private static void coverage(Layout layout, Workings workings, List<Block> blocks) {
        add(
                blocks,
                "Floor from which the way in is shorter than the separation distance",
                List.of(
                        Column.text("Hazard zone", 4),
                        Column.text("Scanners", 4),
                        Column.figures("Within", 3),
                        Column.figures("Floor", 3),
                        Column.text("Reached from outside undetected", 7)),
                layout.coverage().stream()
                        .map(one -> List.of(
                                one.zone(),
                                one.scanners().stream()
                                        .map(scanner -> scanner.tag())
                                        .collect(Collectors.joining(", ")),
                                workings.inUnits(one.distance()),
                                Straight.area(one.needed()),
                                one.open().empty() ? "nothing of it" : Straight.place(layout.plan(), one.open())))
                        .toList());
    }

    private static void gaps(Layout layout, Workings workings, List<Block> blocks) {
        add(
                blocks,
                "Gaps between robots and what stands fixed",
                List.of(
                        Column.text("Structure", 4),
                        Column.text("Robot's space", 3),
                        Column.figures("Plan", 3),
                        Column.figures("Body needs", 3),
                        Column.figures("Machine", 3),
                        Column.text("Instead of the gap", 6)),
                layout.gaps().stream()
                        .map(gap -> List.of(
                                gap.tag(),
                                gap.zone(),
                                workings.inUnits(gap.gap()),
                                gap.needed().map(workings::inUnits).orElse(NOTHING),
                                gap.measured()
                                        .map(one ->
                                                workings.inUnits(one.clearance().gap(), Side.DOWN))
                                        .orElse(NOTHING),
                                instead(gap)))
                        .toList());
    }

    private static String instead(PlanGap gap) {
        Optional<String> clearance = gap.measured()
                .map(one -> "clearance " + one.tag() + ", for the "
                        + one.clearance().part().characters());
        return clearance.or(() -> gap.structure().measure().value()).orElse(NOTHING);
    }

    private static void doors(Layout layout, List<Block> blocks) {
        add(
                blocks,
                "Doors that turn",
                List.of(
                        Column.text("Door", 4),
                        Column.text("Turns about", 4),
                        Column.text("Stands open at", 4),
                        Column.text("Sweeps floor of", 6)),
                layout.swings().stream()
                        .map(swing -> List.of(
                                swing.guarding().tag(),
                                layout.plan().words(swing.hinge()),
                                layout.plan().words(swing.open()),
                                swing.struck(layout)
                                        .map(struck ->
                                                struck.tag() + ": " + Straight.place(layout.plan(), struck.floor()))
                                        .orElse("no robot and no structure")))
                        .toList());
    }

    private static void emergencyStops(Layout layout, Workings workings, List<Block> blocks) {
        add(
                blocks,
                "Emergency stops at the operator places",
                List.of(
                        Column.text("Operator place", 4),
                        Column.text("Name", 5),
                        Column.text("Nearest that is reached", 5),
                        Column.figures("Plan", 3),
                        Column.figures("At most", 3)),
                layout.emergencyStops().stream()
                        .map(reach -> List.of(
                                reach.tag(),
                                reach.place().name().characters(),
                                reach.device().orElse("none"),
                                reach.distance().map(workings::inUnits).orElse(NOTHING),
                                workings.inUnits(reach.most(), Side.DOWN)))
                        .toList());
    }

    private static void resets(Layout layout, Workings workings, List<Block> blocks) {
        add(
                blocks,
                "Resets: what is in view, and who reaches them",
                List.of(
                        Column.text("Reset", 4),
                        Column.text("Sees", 4),
                        Column.text("Not in view", 6),
                        Column.text("Reached from inside", 6)),
                layout.resets().stream()
                        .map(reset -> List.of(
                                reset.tag(),
                                ((Reset) reset.device().sort())
                                        .sees().stream().map(Stated::characters).collect(Collectors.joining(", ")),
                                reset.hidden().isEmpty()
                                        ? "nothing that holds a person"
                                        : reset.hidden().stream()
                                                .map(part -> part.zone() + ": "
                                                        + Straight.place(layout.plan(), part.floor()))
                                                .collect(Collectors.joining("; ")),
                                reset.fromInside()
                                        .map(far -> "yes, at " + workings.inUnits(far))
                                        .or(() -> reset.arm().map(arm -> "no, not within " + workings.inUnits(arm)))
                                        .orElse("no")))
                        .toList());
        if (!layout.resets().isEmpty()) {
            blocks.add(new Paragraph("Hidden floor counts where a circle of "
                    + layout.widestOpening().quantity()
                    + " has room, which is the widest opening through which nobody gets ("
                    + Drawing.origin(layout.widestOpening().reference()) + "); that it also holds nobody who"
                    + " hides is this program's own reading. Structures that nobody sees over hide; fences do not."));
        }
    }

    private static String orNothing(String text) {
        return text.isEmpty() ? "nothing" : text;
    }
}
