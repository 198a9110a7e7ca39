package org.cellfile.subject.sheet;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.stream.Stream;
import org.cellfile.dossier.Sheet.Kind;
import org.cellfile.dossier.Sign;
import org.cellfile.dossier.Text;
import org.cellfile.source.Stated;
import org.cellfile.subject.energy.Energies;
import org.cellfile.subject.energy.Energy;

/**
 * Isolating every energy before somebody works in the cell, for those who may. The order of its parts is the sequence of 29 CFR
 * 1910.147(d) and (e): prepare and shut down, isolate and lock, release what is stored, verify, give back (published: the text of the
 * regulation in a reprint).
 */
@AutoService(SheetSort.class)
public final class EnergyIsolation implements SheetSort {

    @Override
    public String id() {
        return "energy-isolation";
    }

    @Override
    public boolean tells(PostedCell cell) {
        return cell.energies().isPresent();
    }

    @Override
    public List<Part> parts(PostedCell cell, Wording wording) {
        Energies energies = cell.energies().orElseThrow();
        Stream<Part> release = energies.sources().stream().anyMatch(Energy::stores)
                ? Stream.of(release(energies, wording))
                : Stream.empty();
        return Stream.of(
                        Stream.of(prepare(energies, cell, wording), isolate(energies, cell, wording)),
                        release,
                        Stream.of(
                                verify(energies, wording),
                                restore(wording),
                                EverySheet.never(cell, wording),
                                EverySheet.emergency(cell, wording)))
                .flatMap(parts -> parts)
                .toList();
    }

    private static Part prepare(Energies energies, PostedCell cell, Wording wording) {
        Part part = wording.part("prepare", Kind.ACTION, true);
        part = wording.tell(part, "only", cell.names(energies.may()));
        part = wording.tell(part, "tell");
        for (Stated<String> step : energies.shutDown()) {
            part = part.line(Text.sentence(wording.text(step)));
        }
        return part;
    }

    private static Part isolate(Energies energies, PostedCell cell, Wording wording) {
        Part part = wording.part("isolate", Kind.ACTION, true).with(Sign.LOCK_OUT);
        for (Energy energy : energies.sources()) {
            String only = energy.only().isEmpty() ? "" : " " + wording.say("isolate.only", cell.names(energy.only()));
            part = part.line(
                    energy.tag().characters(),
                    wording.say(
                                    "isolate.energy",
                                    Text.capital(wording.text(energy.name())),
                                    wording.text(energy.amount()),
                                    wording.text(energy.at()),
                                    Text.sentence(wording.text(energy.isolate())),
                                    Text.sentence(wording.text(energy.lock())))
                            + only);
        }
        return part;
    }

    private static Part release(Energies energies, Wording wording) {
        Part part = wording.part("release", Kind.ACTION, true).with(Sign.RELEASE);
        for (Energy energy : energies.sources()) {
            if (energy.stores()) {
                part = part.line(
                        energy.tag().characters(),
                        wording.say(
                                "release.energy",
                                Text.capital(wording.text(energy.stored())),
                                Text.sentence(wording.text(energy.release()))));
            }
        }
        return part;
    }

    private static Part verify(Energies energies, Wording wording) {
        Part part = wording.part("verify", Kind.ACTION, true).with(Sign.VERIFY);
        for (Energy energy : energies.sources()) {
            part = part.line(
                    energy.tag().characters(),
                    wording.say(
                            "verify.energy",
                            Text.capital(wording.text(energy.name())),
                            Text.sentence(wording.text(energy.verify()))));
        }
        return wording.tell(part, "start");
    }

    private static Part restore(Wording wording) {
        Part part = wording.part("restore", Kind.ACTION, true);
        return wording.tell(wording.tell(wording.tell(part, "out"), "own-lock"), "tell");
    }
}
