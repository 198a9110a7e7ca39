package org.cellfile.subject.sheet;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cellfile.dossier.Sheet.Kind;
import org.cellfile.dossier.Sign;
import org.cellfile.dossier.Text;
import org.cellfile.source.Stated;
import org.cellfile.subject.energy.Energies;
import org.cellfile.subject.energy.Energy;

/**
 * Isolating every energy before somebody works in the cell, for those who may. The order is the sequence of 29 CFR 1910.147(d) and
 * (e): prepare and shut down, isolate and lock, release what is stored, verify, give back (published: the text of the regulation in a
 * reprint). No part tells of the emergency stop, which does nothing at a cell without energy; whom to call stands on it.
 */
@AutoService(SheetSort.class)
public final class EnergyIsolation implements IsolationSheet {

    static final String ID = "energy-isolation";

    static final String VERIFY = "verify";

    static final String RESTORE = "restore";

    /** The step that ends the part by which one sees that no energy is left. */
    static final String START = "start";

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
        return cell.energies().isPresent();
    }

    @Override
    public List<Part> parts(PostedCell cell, Wording wording) {
        Energies energies = cell.energies().orElseThrow();
        return List.of(
                isolate(energies, cell, wording),
                verify(energies, wording),
                restore(wording),
                EverySheet.never(cell, wording),
                EverySheet.emergencyWithoutEnergy(cell, wording));
    }

    private static Part isolate(Energies energies, PostedCell cell, Wording wording) {
        Part part = wording.part("isolate", Kind.ACTION, true).with(Sign.LOCK_OUT);
        part = wording.tell(part, "only", cell.names(energies.may()));
        part = wording.tell(part, "tell");
        for (Stated<String> step : energies.shutDown()) {
            part = part.line(Text.sentence(wording.text(step)));
        }
        for (Energy energy : energies.sources()) {
            part = part.line(energy.tag().characters(), isolated(energy, cell, wording));
        }
        return part;
    }

    /** How one energy is isolated, locked and released. */
    private static String isolated(Energy energy, PostedCell cell, Wording wording) {
        StringBuilder told = new StringBuilder(wording.say(
                "isolate.energy",
                Text.capital(wording.text(energy.name())),
                wording.text(energy.amount()),
                wording.text(energy.at())));
        Stream.of(Optional.of(energy.isolate()), Optional.of(energy.lock()), energy.released())
                .flatMap(Optional::stream)
                .forEach(step -> told.append(' ').append(Text.sentence(wording.text(step))));
        if (!energy.only().isEmpty()) {
            told.append(' ').append(wording.say("isolate.only-some", cell.names(energy.only())));
        }
        return told.toString();
    }

    private static Part verify(Energies energies, Wording wording) {
        Part part = wording.part(VERIFY, Kind.ACTION, true).with(Sign.VERIFY);
        for (Energy energy : energies.sources()) {
            part = part.line(
                    energy.tag().characters(),
                    wording.say(
                            "verify.energy",
                            Text.capital(wording.text(energy.name())),
                            Text.sentence(wording.text(energy.verify()))));
        }
        return wording.tell(part, START);
    }

    private static Part restore(Wording wording) {
        Part part = wording.part(RESTORE, Kind.ACTION, true);
        return wording.tell(wording.tell(wording.tell(part, "out"), "own-lock"), "tell");
    }
}
