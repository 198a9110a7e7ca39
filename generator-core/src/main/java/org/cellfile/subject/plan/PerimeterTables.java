package org.cellfile.subject.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.cellfile.claim.Workings;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Block.Column;
import org.cellfile.dossier.Block.Paragraph;
import org.cellfile.dossier.Block.Section;
import org.cellfile.dossier.Block.Table;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding.Side;

/** How the perimeter of the hazard zones and the floor behind their safeguards are printed. */
final class PerimeterTables {

    private PerimeterTables() {}

    static List<Block> of(Layout layout, Workings workings) {
        List<Block> sections = new ArrayList<>();
        if (!layout.perimeters().isEmpty()) {
            sections.add(new Section("", "Perimeter of the hazard zones", perimeters(layout, workings)));
        }
        if (!layout.standing().isEmpty()) {
            sections.add(new Section("", "Floor behind the safeguards", standing(layout, workings)));
        }
        return sections;
    }

    private static List<Block> perimeters(Layout layout, Workings workings) {
        List<Block> blocks = new ArrayList<>(List.of(
                new Paragraph(
                        "Every way from outside to a hazard zone was followed on the plan: it has to cross a safeguard of that zone or"
                                + " be barred. Fences and structures bar every way; a safeguard of another zone bars none. Of all rings"
                                + " of such things round a zone, the one with the narrowest openings is named here. Heights were not"
                                + " examined: that nobody gets over or under is held in the chapter of the safeguards."),
                rings(layout)));
        strip(layout, workings).ifPresent(blocks::add);
        depth(layout, workings).ifPresent(blocks::add);
        openings(layout, workings, blocks);
        steps(layout, workings, blocks);
        return blocks;
    }

    private static Table rings(Layout layout) {
        return new Table(
                "What goes round each hazard zone",
                List.of(Column.text("Hazard zone", 3), Column.text("In the order of going round", 9)),
                layout.perimeters().stream()
                        .flatMap(perimeter ->
                                perimeter.rings().stream().map(ring -> List.of(perimeter.tag(), words(ring, layout))))
                        .toList());
    }

    /** Where no safeguard closes a ring, the plan tells nothing of those that keep hands from reaching over it. */
    private static String words(List<String> ring, Layout layout) {
        boolean guarded = layout.around().safeguards().stream()
                .map(guarding -> guarding.tag())
                .anyMatch(ring::contains);
        return ring.isEmpty()
                ? "nothing"
                : String.join(", ", ring)
                        + (guarded
                                ? ""
                                : "; no safeguard among them: whether somebody reaches over what stands there was not examined");
    }

    private static Optional<Paragraph> strip(Layout layout, Workings workings) {
        Set<String> strips = layout.perimeters().stream()
                .flatMap(perimeter -> perimeter.widestStrip().stream())
                .map(widest -> workings.inUnits(widest) + " (" + widest.clause() + ")")
                .collect(Collectors.toCollection(LinkedHashSet::new));
        return strips.isEmpty()
                ? Optional.empty()
                : Optional.of(new Paragraph(
                        "Fences and posts on both sides of an opening hold a body back; a field or a mat holds nobody, and feet go where a"
                                + " body does not fit. A strip of floor beside one may be no wider than "
                                + String.join(" or ", strips)
                                + ". The standard says this of the gap behind a field; that strips on all sides of it are held to the same"
                                + " is a reading of this program."));
    }

    private static Optional<Paragraph> depth(Layout layout, Workings workings) {
        Set<String> depths = layout.perimeters().stream()
                .flatMap(perimeter -> perimeter.leastDepthToStepOver().stream())
                .map(least -> workings.inUnits(least) + " (" + least.clause() + ")")
                .collect(Collectors.toCollection(LinkedHashSet::new));
        return depths.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Paragraph(
                                "Nobody steps over a field or a mat that is at least " + String.join(" or ", depths)
                                        + " deep from the floor people come from to the floor beyond. The standard says this of mats; that fields are"
                                        + " held to the same is a reading of this program. What is less deep bars no way here."));
    }

    /** Only where a deviation stands for it, as else nothing is printed. */
    private static void steps(Layout layout, Workings workings, List<Block> blocks) {
        List<List<String>> rows = layout.perimeters().stream()
                .flatMap(perimeter -> perimeter.steppedAcross().stream()
                        .map(step -> List.of(
                                perimeter.tag(),
                                String.join(", ", step.drawn().over()),
                                step.drawn().way().from().toString(),
                                step.drawn().way().to().toString(),
                                workings.inUnits(step.depth()),
                                perimeter
                                        .leastDepthToStepOver()
                                        .map(workings::inUnits)
                                        .orElse("–"))))
                .toList();
        if (!rows.isEmpty()) {
            blocks.add(new Table(
                    "Fields and mats that are stepped over",
                    List.of(
                            Column.text("Hazard zone", 3),
                            Column.text("Field or mat", 3),
                            Column.text("From", 3),
                            Column.text("To", 3),
                            Column.figures("Depth", 2),
                            Column.figures("Nobody steps over from", 3)),
                    rows));
            layout.perimeters()
                    .forEach(perimeter -> perimeter
                            .steppedAcross()
                            .forEach(step -> blocks.add(workings.of(step.depth(), perimeter.recorded()))));
        }
    }

    private static void openings(Layout layout, Workings workings, List<Block> blocks) {
        List<List<String>> rows = layout.perimeters().stream()
                .flatMap(perimeter ->
                        perimeter.openings().stream().map(opening -> row(layout.plan(), perimeter, opening, workings)))
                .toList();
        if (rows.isEmpty()) {
            blocks.add(new Paragraph("Nothing of these rings stands apart from the next."));
            return;
        }
        blocks.add(new Table(
                "Openings in the perimeter",
                List.of(
                        Column.text("Hazard zone", 3),
                        Column.text("From", 4),
                        Column.text("To", 4),
                        Column.figures("Width", 2),
                        Column.figures("Nobody gets through up to", 3)),
                rows));
        blocks.add(new Paragraph(
                "An opening through which nobody gets still lets arms and legs in: hold its width and its distance from the hazard"
                        + " against the reach through openings."));
        layout.perimeters().stream()
                .forEach(perimeter -> perimeter
                        .openings()
                        .forEach(opening -> blocks.add(workings.of(opening.width(), perimeter.recorded()))));
    }

    private static List<String> row(Plan plan, Perimeter perimeter, Perimeter.Opening opening, Workings workings) {
        return List.of(
                perimeter.tag(),
                opening.drawn().from() + " "
                        + plan.words(opening.drawn().between().from()),
                opening.drawn().to() + " "
                        + plan.words(opening.drawn().between().to()),
                workings.inUnits(opening.width()),
                workings.inUnits(perimeter.limit(opening)));
    }

    private static List<Block> standing(Layout layout, Workings workings) {
        String widths = layout.standing().stream()
                .map(room -> room.widest().rounded().map(Quantity::toString).orElse("–"))
                .distinct()
                .collect(Collectors.joining(", "));
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Paragraph(
                "Behind every safeguard that people pass the plan was searched for floor on which nothing detects them: floor that no"
                        + " field, no mat and no structure covers and that is wider than " + widths
                        + ". The hazard zone counts as such floor too, as its machine may wait elsewhere."));
        List<List<String>> places = layout.standing().stream()
                .filter(room -> !room.places().isEmpty())
                .map(room -> List.of(
                        room.tag(),
                        room.places().stream()
                                .map(place -> place.words(layout.plan()) + " before " + place.zone())
                                .collect(Collectors.joining("; ")),
                        room.measure().orElse("none stated")))
                .toList();
        blocks.add(
                places.isEmpty()
                        ? new Paragraph("There is none.")
                        : new Table(
                                "Floor on which somebody stands undetected",
                                List.of(
                                        Column.text("Behind", 3),
                                        Column.text("Place, and floor that one gets to from there", 5),
                                        Column.text("Measure", 6)),
                                places));
        List<List<String>> gaps = layout.standing().stream()
                .flatMap(room -> room.gap().stream()
                        .map(gap -> List.of(
                                room.tag(),
                                workings.inUnits(gap),
                                room.guarding()
                                        .safeguard()
                                        .device()
                                        .behind()
                                        .map(behind -> workings.inUnits(behind.gap(), Side.DOWN))
                                        .orElse("–"))))
                .toList();
        if (!gaps.isEmpty()) {
            blocks.add(new Table(
                    "Gap behind a field on the plan and at the machine",
                    List.of(Column.text("Safeguard", 5), Column.figures("Plan", 3), Column.figures("Machine", 3)),
                    gaps));
        }
        return blocks;
    }
}
