package org.cellfile.subject.hazard;

import java.util.ArrayList;
import java.util.List;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.dossier.Block.Facts;
import org.cellfile.dossier.Block.Section;
import org.cellfile.dossier.Chapter;
import org.cellfile.dossier.Text;
import org.cellfile.subject.identity.Identity;

/** How the hazard zones are printed. */
public final class HazardChapter {

    private HazardChapter() {}

    public static Chapter chapter(List<ZoneExtent> zones, Identity identity) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Paragraph(
                "A hazard zone is the space to which the distances of the safeguards are measured. Where a robot uses its full"
                        + " reach, its zone holds reach, tool, part and the overrun of the stop; elsewhere a named person has"
                        + " signed for what keeps the movement in."));
        zones.forEach(zone -> blocks.add(section(zone, identity)));
        return new Chapter("hazard-zones", "Hazard zones", blocks);
    }

    private static Section section(ZoneExtent extent, Identity identity) {
        Zone zone = extent.zone();
        List<Fact> facts = new ArrayList<>(List.of(
                new Fact("What can hurt", zone.hazard().characters()),
                new Fact(
                        "Heights",
                        zone.lowest().characters() + " to " + zone.highest().characters(),
                        "above the floor people stand on")));
        zone.robot().value().ifPresent(robot -> facts.add(new Fact("Robot", robot)));
        zone.extent()
                .value()
                .ifPresent(value ->
                        facts.add(new Fact("Extent", zone.extent().characters(), "radius around the base axis")));
        zone.limitation()
                .ifPresent(limitation -> facts.add(new Fact(
                        "Kept in by",
                        limitation.by().characters(),
                        "signed for by " + identity.nameOf(limitation.signedBy()) + ", "
                                + limitation.on().characters())));
        List<Block> blocks = new ArrayList<>(List.of(new Facts(facts)));
        extent.derived()
                .forEach(derived -> blocks.add(identity.facts().workings().of(derived, extent.recorded())));
        return new Section(extent.tag(), Text.capital(zone.name().characters()), blocks);
    }
}
