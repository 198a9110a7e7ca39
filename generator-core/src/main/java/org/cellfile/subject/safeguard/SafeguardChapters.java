package org.cellfile.subject.safeguard;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.cellfile.claim.Workings;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Block.Column;
import org.cellfile.dossier.Block.Drawing;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.dossier.Block.Facts;
import org.cellfile.dossier.Block.Paragraph;
import org.cellfile.dossier.Block.Section;
import org.cellfile.dossier.Block.Table;
import org.cellfile.dossier.Chapter;
import org.cellfile.dossier.Text;
import org.cellfile.dossier.Words;
import org.cellfile.finding.Deviation;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding.Side;
import org.cellfile.quantity.Unit;
import org.cellfile.source.Stated;
import org.cellfile.subject.identity.Identity;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Lookup;
import org.cellfile.trace.Term;

/** How the safeguards and their distances are printed. */
public final class SafeguardChapters {

    private SafeguardChapters() {}

    /** The safeguards as installed. */
    public static Chapter safeguards(List<Guarding> safeguards, List<Deviation> deviations, Identity identity) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Table(
                "Safeguards of the cell",
                List.of(
                        Column.text("Tag", 4),
                        Column.text("Safeguard", 6),
                        Column.text("Kind", 4),
                        Column.text("Protects", 4)),
                safeguards.stream()
                        .map(guarding -> List.of(
                                guarding.tag(),
                                guarding.safeguard().name().characters(),
                                words(guarding).get("name"),
                                tags(guarding.safeguard().protects())))
                        .toList()));
        safeguards.forEach(guarding -> blocks.add(safeguard(guarding, deviations, identity)));
        return new Chapter("safeguards", "Safeguards", blocks);
    }

    private static Section safeguard(Guarding guarding, List<Deviation> deviations, Identity identity) {
        Safeguard safeguard = guarding.safeguard();
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("Kind", words(guarding).get("name"), words(guarding).get("purpose")));
        facts.add(new Fact(
                "Model",
                safeguard.model().characters(),
                "serial " + safeguard.serial().characters()));
        facts.add(new Fact("Position", safeguard.position().characters()));
        facts.add(new Fact("Protects", tags(safeguard.protects())));
        safeguard.triggers().value().ifPresent(text -> facts.add(new Fact("Triggers", text)));
        facts.addAll(safeguard.device().facts());
        facts.addAll(safeguard.measured(identity));
        List<Block> blocks = new ArrayList<>(List.of(new Facts(facts)));
        blocks.addAll(Deviations.about(guarding.tag(), deviations));
        blocks.add(drawing(guarding));
        return new Section(guarding.tag(), safeguard.name().characters(), blocks);
    }

    private static Drawing drawing(Guarding guarding) {
        Safeguard safeguard = guarding.safeguard();
        Map<String, Object> data = new TreeMap<>(safeguard.device().drawing());
        data.put("tag", guarding.tag());
        data.put("zone", tags(safeguard.protects()));
        data.put("inches", guarding.budget().counted().rounding().step().unit().equals(Unit.INCH));
        // A lower bound drawn to scale would pass for the distance itself.
        if (!guarding.governing().bounded()) {
            guarding.separationDistance().rounded().ifPresent(required -> data.put("required", required.coherent()));
        }
        safeguard.installed().distance().value().ifPresent(value -> data.put("installed", value.coherent()));
        guarding.zones().stream()
                .map(zone -> zone.lowest().value())
                .flatMap(java.util.Optional::stream)
                .map(Quantity::coherent)
                .min(java.math.BigDecimal::compareTo)
                .ifPresent(lowest -> data.put("zoneLowest", lowest));
        guarding.zones().stream()
                .map(zone -> zone.highest().value())
                .flatMap(java.util.Optional::stream)
                .map(Quantity::coherent)
                .max(java.math.BigDecimal::compareTo)
                .ifPresent(highest -> data.put("zoneHighest", highest));
        return new Drawing(
                "kinds/" + safeguard.kind().id() + "/elevation.svg.ftl",
                "Side view of " + guarding.tag() + " and what it protects",
                "Side view: required distance " + required(guarding, new Workings(false)) + ", installed "
                        + safeguard.installed().distance().characters() + ", hazard zone "
                        + tags(safeguard.protects()),
                data);
    }

    /** The distances with their full working. */
    public static Chapter distances(List<Guarding> safeguards, Workings workings) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Paragraph(
                "Every value below was recomputed from the inputs whose place in the cell's files is given beside them. A value"
                        + " that somebody recorded is held against the recomputation. Distances and times are rounded up, margins"
                        + " and allowances down; calculation goes on with the unrounded values."));
        blocks.add(summary(safeguards, workings));
        safeguards.forEach(guarding -> blocks.add(workings(guarding, workings)));
        return new Chapter("distances", "Distances", blocks);
    }

    private static Table summary(List<Guarding> safeguards, Workings workings) {
        return new Table(
                "Required and installed distances",
                List.of(
                        Column.text("Safeguard", 5),
                        Column.figures("Response time", 3),
                        Column.figures("Required", 3),
                        Column.figures("Installed", 3),
                        Column.figures("Counts as", 3),
                        Column.figures("Margin", 3)),
                safeguards.stream()
                        .map(guarding -> List.of(
                                guarding.tag(),
                                guarding.responseTime().map(Workings::shown).orElse("–"),
                                required(guarding, workings),
                                workings.inUnits(
                                        guarding.safeguard().installed().distance(), Side.DOWN),
                                workings.inUnits(guarding.budget().counted()),
                                workings.inUnits(guarding.margin())))
                        .toList());
    }

    private static String required(Guarding guarding, Workings workings) {
        String how = guarding.governing().strict() ? "more than " : "";
        return (guarding.governing().bounded() ? "not less than " : how)
                + workings.inUnits(guarding.separationDistance());
    }

    /** What the editions it rests on leave open, and what they say besides. */
    private static List<Block> remarks(Guarding guarding) {
        List<Block> blocks = new ArrayList<>(Workings.remarks(guarding.derived()));
        for (Guarding.Under under : guarding.editions()) {
            String edition = under.edition().id();
            under.positioning()
                    .position()
                    .open()
                    .ifPresent(open -> blocks.add(new Block.Box(
                            Block.Tone.CAUTION,
                            "Only a lower bound under " + edition,
                            List.of(new Paragraph(Text.capital(open.because()) + ".")))));
            if (!under.positioning().position().remarks().isEmpty()) {
                blocks.add(new Paragraph(edition + ":"));
                blocks.add(new Block.Points(under.positioning().position().remarks()));
            }
        }
        return blocks;
    }

    private static Section workings(Guarding guarding, Workings workings) {
        List<Block> blocks = new ArrayList<>();
        Derived distance = guarding.separationDistance();
        List<Derived> leadingThere = distance.below();
        List<Derived> rest = new ArrayList<>();
        for (Derived derived : guarding.derived()) {
            if (derived.equals(distance) || leadingThere.contains(derived) || lookedUp(derived.expression())) {
                blocks.add(workings.of(derived, guarding.recorded()));
            } else {
                rest.add(derived);
            }
        }
        blocks.addAll(remarks(guarding));
        blocks.add(workings.rows("What bounds it, and what is left", rest, guarding.recorded()));
        return new Section(guarding.tag(), guarding.safeguard().name().characters(), blocks);
    }

    /** True when it was read in a table, so that the row taken has to be printed. */
    private static boolean lookedUp(Term term) {
        return term instanceof Lookup
                || (!(term instanceof Derived) && term.operands().stream().anyMatch(SafeguardChapters::lookedUp));
    }

    /** The fixed wording of a safeguard's kind. */
    public static Words words(Guarding guarding) {
        return Words.of("kinds/" + guarding.safeguard().kind().id());
    }

    private static String tags(List<Stated<String>> tags) {
        return tags.stream().map(Stated::characters).collect(Collectors.joining(", "));
    }
}
