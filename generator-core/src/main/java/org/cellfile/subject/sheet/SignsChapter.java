package org.cellfile.subject.sheet;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Block.Column;
import org.cellfile.dossier.Block.Paragraph;
import org.cellfile.dossier.Block.Table;
import org.cellfile.dossier.Chapter;
import org.cellfile.dossier.Text;
import org.cellfile.source.Stated;
import org.cellfile.subject.complement.EmergencyStop;
import org.cellfile.subject.complement.ModeSelector;
import org.cellfile.subject.energy.Energies;
import org.cellfile.subject.energy.Energy;
import org.cellfile.subject.safeguard.Guarding;
import org.cellfile.subject.safeguard.Safeguard;

/** Which registered signs are to be bought and posted at the cell, and where. Those on the sheets are drawings and stand for none. */
public final class SignsChapter {

    /** Numbers seen in public: an encyclopedia article about ISO 7010 in a mirror. */
    private static final Set<String> SEEN = Set.of("M002", "E003", "E004");

    private SignsChapter() {}

    /** A registered sign and the places at which this cell needs it. */
    private record Posted(String number, String meaning, List<String> places) {}

    public static Chapter chapter(PostedCell cell) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Paragraph(
                "The signs on posted sheets are drawings of this program in the shapes and colours of ISO 3864. They"
                        + " take the place of no registered sign. The signs below are numbered in ISO 7010, one line for each that"
                        + " is to hang; where follows from what this file states. Each number is to be looked up in the register before it is ordered,"
                        + " and the risk assessment may ask for more."));
        blocks.add(new Table(
                "Signs to buy and to post",
                List.of(
                        Column.text("Number", 2),
                        Column.text("What it says", 5),
                        Column.text("Where", 10),
                        Column.text("Source of the number", 4)),
                signs(cell).stream()
                        .flatMap(sign -> new LinkedHashSet<>(sign.places)
                                .stream()
                                        .map(place -> List.of(
                                                sign.number,
                                                sign.meaning,
                                                place,
                                                SEEN.contains(sign.number)
                                                        ? "published, at second hand"
                                                        : "from memory")))
                        .toList()));
        return new Chapter("signs", "Signs to be posted", blocks);
    }

    private static List<Posted> signs(PostedCell cell) {
        List<Safeguard> safeguards =
                cell.safeguards().stream().map(Guarding::safeguard).toList();
        List<String> guarded = safeguards.stream().map(SignsChapter::at).toList();
        List<String> doors = safeguards.stream()
                .filter(safeguard -> safeguard.kind().closedByHand())
                .map(SignsChapter::at)
                .toList();
        List<String> selectors = devices(cell, ModeSelector.class);
        List<String> zones = cell.zones().stream()
                .map(zone -> zone.zone().name().characters())
                .toList();
        return List.of(
                new Posted("W018", "Warning: starts by itself", guarded),
                new Posted("W019", "Warning: crushing", zones),
                new Posted("W012", "Warning: electricity", isolated(cell, true)),
                new Posted("P004", "No thoroughfare", guarded),
                new Posted("P031", "Do not alter the state of the switch", isolated(cell, false)),
                new Posted(
                        "M021",
                        "Disconnect before maintenance",
                        Stream.concat(doors.stream(), isolated(cell, false).stream())
                                .toList()),
                new Posted("M002", "Read the instructions", selectors),
                new Posted("E020", "Emergency stop push-button", devices(cell, EmergencyStop.class)),
                new Posted(
                        "E003",
                        "First aid",
                        cell.rescue().stream()
                                .map(rescue -> rescue.firstAid().characters())
                                .toList()),
                new Posted("E004", "Emergency telephone", cell.rescue().isPresent() ? selectors : List.of()));
    }

    private static String at(Safeguard safeguard) {
        return at(safeguard.name(), safeguard.position());
    }

    /** What stands there, by which the place is found; the place with it, unless its name tells that. */
    private static String at(Stated<String> thing, Stated<String> place) {
        String name = Text.capital(thing.characters());
        return name.contains(place.characters()) ? name : name + ": " + place.characters();
    }

    private static List<String> devices(PostedCell cell, Class<?> sort) {
        return cell.devices(sort)
                .filter(device -> !(device.sort() instanceof EmergencyStop stop && stop.handHeld()))
                .map(device -> at(device.name(), device.position()))
                .toList();
    }

    private static List<String> isolated(PostedCell cell, boolean electricalOnly) {
        return cell.energies().map(Energies::sources).orElseGet(List::of).stream()
                .filter(energy -> !electricalOnly || energy.is(Energy.ELECTRICAL))
                .map(energy -> at(energy.name(), energy.at()))
                .toList();
    }
}
