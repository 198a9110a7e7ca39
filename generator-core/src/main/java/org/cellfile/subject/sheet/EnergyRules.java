package org.cellfile.subject.sheet;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cellfile.dossier.Sign;
import org.cellfile.dossier.Text;
import org.cellfile.source.Stated;
import org.cellfile.subject.energy.Energies;
import org.cellfile.subject.energy.Inspection;
import org.cellfile.subject.energy.Procedure;
import org.cellfile.subject.energy.Procedure.Item;

/**
 * The rules beside the steps of isolating energies, where the plant states them: hung beside the steps, since one page does not hold
 * both in type that can be read from where one stands. Together they are the content that 29 CFR 1910.147(c)(4)(ii) asks of a
 * procedure.
 */
@AutoService(SheetSort.class)
public final class EnergyRules implements IsolationSheet {

    static final String ID = "energy-rules";

    @Override
    public String id() {
        return ID;
    }

    @Override
    public Optional<String> mode() {
        return Optional.empty();
    }

    @Override
    public boolean tells(PostedCell cell) {
        return cell.energies().flatMap(Energies::procedure).isPresent();
    }

    @Override
    public List<Part> parts(PostedCell cell, Wording wording) {
        Energies energies = cell.energies().orElseThrow();
        Procedure procedure = energies.procedure().orElseThrow();
        return Stream.of(
                        items("use", Sign.INFORMATION, wording, procedure, Item.INTENDED_USE, Item.SCOPE, Item.PURPOSE),
                        items("who", Sign.INFORMATION, wording, procedure, Item.AUTHORIZATION)
                                .line("names", wording.say("who.names", cell.names(energies.may()))),
                        items("rules", Sign.ACTION, wording, procedure, Item.RULES),
                        items(
                                "locks",
                                Sign.LOCK_OUT,
                                wording,
                                procedure,
                                Item.PLACE,
                                Item.REMOVE,
                                Item.TRANSFER,
                                Item.RESPONSIBLE),
                        inspection(
                                energies,
                                cell,
                                wording,
                                items("enforcement", Sign.INFORMATION, wording, procedure, Item.ENFORCEMENT)),
                        EverySheet.never(cell, wording),
                        EverySheet.emergencyWithoutEnergy(cell, wording))
                .filter(part -> !part.lines().isEmpty())
                .toList();
    }

    private static Part items(String id, Sign sign, Wording wording, Procedure procedure, Item... items) {
        Part part = wording.part(id, sign.kind(), false).with(sign);
        for (Item item : items) {
            Stated<String> stated = procedure.item(item);
            if (stated.value().isPresent()) {
                part = part.line(item.key(), Text.sentence(wording.text(stated)));
            }
        }
        return part;
    }

    private static Part inspection(Energies energies, PostedCell cell, Wording wording, Part part) {
        Optional<Inspection> latest = energies.latest();
        Part longer = part;
        if (latest.isPresent()) {
            longer = wording.tell(
                    longer,
                    "inspected",
                    wording.date(latest.get().on().value().orElseThrow()),
                    cell.identity().nameOf(latest.get().by()));
        }
        Optional<String> next = energies.inspectedBy(cell.identity()).map(wording::date);
        return next.isPresent() ? wording.tell(longer, "next", next.get()) : longer;
    }
}
