package org.cellfile.subject.sheet;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cellfile.source.Stated;
import org.cellfile.subject.complement.ComplementaryDevice;
import org.cellfile.subject.complement.Pendant;
import org.cellfile.subject.due.Due;
import org.cellfile.subject.energy.Energies;
import org.cellfile.subject.energy.Rescue;
import org.cellfile.subject.hazard.Risk;
import org.cellfile.subject.hazard.ZoneExtent;
import org.cellfile.subject.identity.Identity;
import org.cellfile.subject.identity.Instrument;
import org.cellfile.subject.identity.Person;
import org.cellfile.subject.identity.Robot;
import org.cellfile.subject.mode.Mode;
import org.cellfile.subject.plan.Layout;
import org.cellfile.subject.register.OpenPoint;
import org.cellfile.subject.register.Registers;
import org.cellfile.subject.safeguard.Guarding;

/**
 * What posted sheets may tell of: the cell as it was read and recomputed.
 *
 * @param dues what falls due, the earliest first
 * @param energies how they are isolated, where that is stated
 * @param rescue how somebody is freed, where that is stated
 * @param layout its plan, where it has one
 * @param sheets what is stated about the sheets themselves
 */
public record PostedCell(
        Identity identity,
        List<ZoneExtent> zones,
        List<Risk> risks,
        List<Guarding> safeguards,
        List<ComplementaryDevice> devices,
        List<Mode> modes,
        Registers registers,
        List<Due> dues,
        Optional<Energies> energies,
        Optional<Rescue> rescue,
        Optional<Layout> layout,
        Sheets sheets) {

    /** Who answers for the sheets. */
    public String responsible() {
        return identity.nameOf(sheets.responsible());
    }

    /** The names of people, as in {@code A. Okonjo, J. Pellam}. */
    String names(List<Stated<String>> people) {
        return people.stream().map(identity::nameOf).collect(Collectors.joining(", "));
    }

    /** The devices of a sort, as in {@code devices(Reset.class)}. */
    public Stream<ComplementaryDevice> devices(Class<?> sort) {
        return devices.stream().filter(device -> sort.isInstance(device.sort()));
    }

    /**
     * The robot a device belongs to, where there are several; that of its pendant, where it is part of one. Empty where nothing says
     * so.
     */
    Optional<Robot> robotOf(ComplementaryDevice device) {
        if (identity.robots().size() < 2) {
            return Optional.empty();
        }
        return identity.robot(device.robot())
                .or(() -> devices.stream()
                        .filter(other -> other.sort() instanceof Pendant pendant && pendant.enables(device))
                        .findFirst()
                        .flatMap(pendant -> identity.robot(pendant.robot())));
    }

    /** Where people find a device: as the plant tells it in short, else its position. */
    Stated<String> place(Stated<String> tag, Stated<String> position) {
        return sheets.found().stream()
                .filter(found -> found.device().value().equals(tag.value()))
                .findFirst()
                .map(Found::at)
                .orElse(position);
    }

    /** The mode of a sort, as in {@code mode(Mode.MANUAL_REDUCED_SPEED)}. */
    public Optional<Mode> mode(String sort) {
        return modes.stream().filter(mode -> mode.is(sort)).findFirst();
    }

    /**
     * True when what falls due is a test, a measurement, a part, a bypass or a deviation at the machine. When an instrument is to be
     * calibrated again, somebody to prove that he is competent or to be briefed, an open point to be closed or a procedure to be
     * inspected, what was tested and measured before holds on.
     */
    boolean ofTheMachine(Due due) {
        Stream<Stated<String>> others = Stream.of(
                        identity.instruments().stream().map(Instrument::tag),
                        identity.people().stream().map(Person::tag),
                        registers.openPoints().stream().map(OpenPoint::tag),
                        Stream.of(identity.facts().id()))
                .flatMap(tags -> tags);
        return !SheetSorts.ids().contains(due.tag())
                && others.noneMatch(tag -> tag.characters().equals(due.tag()));
    }

    /** True when the procedure of isolating energies is to be inspected by then. */
    boolean ofTheIsolation(Due due) {
        return due.tag().equals(identity.facts().id().characters());
    }
}
