package org.cellfile.subject.energy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Block.Column;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.dossier.Block.Facts;
import org.cellfile.dossier.Block.Paragraph;
import org.cellfile.dossier.Block.Section;
import org.cellfile.dossier.Block.Table;
import org.cellfile.dossier.Chapter;
import org.cellfile.source.Stated;
import org.cellfile.subject.identity.Identity;

/** How the energies and their isolation are printed. */
public final class EnergyChapter {

    private EnergyChapter() {}

    public static Chapter chapter(Optional<Energies> stated, Identity identity) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Paragraph(
                "Before somebody works in the cell each energy is isolated, locked, released and seen to be gone."
                        + " The steps stand on a posted sheet. Whether they are enough for the work at hand is judged by whoever may"
                        + " isolate, under the rules of the place."));
        stated.ifPresentOrElse(
                energies -> blocks.addAll(of(energies, identity)),
                () -> blocks.add(new Paragraph("Nothing is stated about the energies of this cell.")));
        return new Chapter("energies", "Energies and their isolation", blocks);
    }

    private static List<Block> of(Energies energies, Identity identity) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Facts(List.of(
                new Fact(
                        "Shut down",
                        energies.shutDown().stream().map(Stated::characters).collect(Collectors.joining(" "))),
                new Fact("Who may isolate", names(energies.may(), identity)))));
        blocks.add(sources(energies, identity));
        energies.procedure().ifPresent(procedure -> blocks.add(procedure(procedure, energies, identity)));
        if (!energies.inspections().isEmpty()) {
            blocks.add(inspections(energies, identity));
        }
        return blocks;
    }

    private static Table sources(Energies energies, Identity identity) {
        return new Table(
                "Energies of the cell",
                List.of(
                        Column.text("Energy", 4),
                        Column.text("Isolated at, by, locked by", 8),
                        Column.text("What is stored and how it is released", 5),
                        Column.text("How one sees that it is gone", 6)),
                energies.sources().stream()
                        .map(energy -> List.of(
                                energy.name().characters() + ", "
                                        + energy.amount().characters() + " ("
                                        + energy.kind().characters() + ")"
                                        + (energy.only().isEmpty() ? "" : "; only " + names(energy.only(), identity)),
                                energy.at().characters() + ": "
                                        + energy.isolate().characters() + " "
                                        + energy.lock().characters(),
                                energy.stored().characters()
                                        + energy.released()
                                                .map(release -> ": " + release.characters())
                                                .orElse(""),
                                energy.verify().characters()))
                        .toList());
    }

    private static Section procedure(Procedure procedure, Energies energies, Identity identity) {
        List<Fact> facts = new ArrayList<>();
        Arrays.stream(Procedure.Item.values())
                .filter(item -> procedure.item(item).value().isPresent())
                .forEach(item -> facts.add(new Fact(
                        item.title(),
                        procedure.item(item).characters(),
                        UnitedStates.holds(identity) ? item.source() : "")));
        facts.add(new Fact("Used since", procedure.since().characters()));
        energies.inspected(identity)
                .ifPresent(every -> facts.add(new Fact(
                        "Inspected every",
                        every.toString(),
                        UnitedStates.holds(identity) ? Energies.INSPECTION_SOURCE : "")));
        energies.inspectedBy(identity).ifPresent(day -> facts.add(new Fact("Next inspection by", day.toString())));
        List<Block> blocks = new ArrayList<>();
        if (UnitedStates.holds(identity)) {
            blocks.add(new Paragraph(
                    "An edition of ANSI or a part of 29 CFR is in force for this cell, so the procedure was"
                            + " held item by item against what " + Procedure.SOURCE
                            + " asks for (published: OSHA eTool Lockout-Tagout, required content). Whether what is said is enough is"
                            + " not judged here."));
        }
        blocks.add(new Facts(facts));
        return new Section("", "Rules of the plant", blocks);
    }

    private static Table inspections(Energies energies, Identity identity) {
        return new Table(
                "Inspections of how energies are isolated at "
                        + identity.facts().name().characters(),
                List.of(
                        Column.text("On", 3),
                        Column.text("By", 4),
                        Column.text("Included", 6),
                        Column.text("What was found", 9)),
                energies.inspections().stream()
                        .map(one -> List.of(
                                one.on().characters(),
                                identity.nameOf(one.by()),
                                names(one.with(), identity),
                                one.found().characters()))
                        .toList());
    }

    private static String names(List<Stated<String>> people, Identity identity) {
        return people.stream().map(identity::nameOf).collect(Collectors.joining(", "));
    }
}
