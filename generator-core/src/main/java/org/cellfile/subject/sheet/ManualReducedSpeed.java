package org.cellfile.subject.sheet;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.cellfile.dossier.Sheet.Kind;
import org.cellfile.quantity.Quantity;
import org.cellfile.source.Stated;
import org.cellfile.subject.complement.ComplementaryDevice;
import org.cellfile.subject.complement.EnablingDevice;
import org.cellfile.subject.complement.Pendant;
import org.cellfile.subject.mode.Mode;
import org.cellfile.subject.safeguard.Guarding;
import org.cellfile.subject.safeguard.Safeguard;

/**
 * From automatic to manual reduced speed and back: for whoever goes in with the pendant. Only the one with the pendant is inside,
 * slowly, with the enabling device, and comes out before automatic: after a Canadian regulation on teaching robots (published);
 * counting who comes out: common practice.
 */
@AutoService(SheetSort.class)
public final class ManualReducedSpeed implements SheetSort {

    static final String ID = "manual-reduced-speed";

    @Override
    public String id() {
        return ID;
    }

    @Override
    public Optional<String> mode() {
        return Optional.of(Mode.MANUAL_REDUCED_SPEED);
    }

    @Override
    public boolean tells(PostedCell cell) {
        return mode(cell).isPresent();
    }

    @Override
    public List<Part> parts(PostedCell cell, Wording wording) {
        Mode mode = mode(cell).orElseThrow();
        List<Part> parts = new ArrayList<>();
        parts.add(inside(mode, cell, wording));
        parts.add(change(mode, cell, wording));
        parts.add(back(cell, wording));
        parts.add(EverySheet.never(cell, wording));
        parts.add(EverySheet.emergency(cell, wording));
        return parts;
    }

    private Optional<Mode> mode(PostedCell cell) {
        return mode().flatMap(cell::mode);
    }

    /** Who may be inside, how fast the robot goes, and what no longer protects. */
    private static Part inside(Mode mode, PostedCell cell, Wording wording) {
        Part part = wording.part("inside", Kind.HAZARD, false);
        part = mode.inside() == 0
                ? wording.tell(part, "nobody")
                : wording.tell(part, "who", String.valueOf(mode.inside()), wording.text(mode.who()));
        if (mode.inside() > 1) {
            part = wording.tell(part, "each");
        }
        if (mode.speedLimit().value().isPresent()) {
            part = wording.tell(
                    part, "speed", wording.quantity(mode.speedLimit().value().get()));
        }
        for (Map.Entry<Stated<String>, List<Safeguard>> alike :
                suspended(mode, cell).entrySet()) {
            part = part.line(suspended(alike.getValue(), cell, wording));
            if (alike.getKey().value().isPresent()) {
                part = part.line(wording.say("inside.instead", wording.text(alike.getKey())));
            }
        }
        List<Safeguard> acting = stopping(cell)
                .filter(safeguard -> mode.state(safeguard) == Mode.State.ACTIVE)
                .toList();
        if (!acting.isEmpty()) {
            part = wording.tell(part, "acting", Steps.listed(acting, cell, wording));
        }
        return part;
    }

    /** What takes the place of the suspended safeguards, and of which. */
    private static Map<Stated<String>, List<Safeguard>> suspended(Mode mode, PostedCell cell) {
        Map<Stated<String>, List<Safeguard>> suspended = new LinkedHashMap<>();
        stopping(cell)
                .filter(safeguard -> mode.state(safeguard) == Mode.State.SUSPENDED)
                .forEach(safeguard -> suspended
                        .computeIfAbsent(mode.compensation(safeguard), compensation -> new ArrayList<>())
                        .add(safeguard));
        return suspended;
    }

    private static String suspended(List<Safeguard> alike, PostedCell cell, Wording wording) {
        return !Steps.few(alike) && alike.size() == stopping(cell).count()
                ? wording.say("inside.all", String.valueOf(alike.size()))
                : wording.say("inside.suspended", Steps.listed(alike, cell, wording));
    }

    /** Those that stop the robot. What stands in the way by itself does so in every mode, and is not told. */
    private static Stream<Safeguard> stopping(PostedCell cell) {
        return cell.safeguards().stream()
                .map(Guarding::safeguard)
                .filter(safeguard -> safeguard.kind().stopsTheHazard());
    }

    private static Part change(Mode mode, PostedCell cell, Wording wording) {
        Part part = wording.tell(wording.part("change", Kind.ACTION, true), "stop");
        part = Steps.selected(part, mode, cell, wording);
        for (ComplementaryDevice pendant : cell.devices(Pendant.class).toList()) {
            String line = wording.say("change.pendant", wording.text(pendant.position()));
            part = part.oneOf("pendant", Steps.ofRobot(pendant, line, cell, wording));
        }
        part = wording.tell(Steps.stopsReleased(part, cell, wording), "faults");
        String held = mode.holdToRun().characters().equals("yes") ? "change.enabling-and-hold." : "change.enabling.";
        for (ComplementaryDevice device : enabling(mode, cell)) {
            EnablingDevice sort = (EnablingDevice) device.sort();
            boolean three =
                    sort.positions().value().filter(Quantity.count(3)::equals).isPresent();
            String line = wording.say(held + (three ? "3" : "2"));
            part = part.oneOf("enabling", Steps.ofRobot(device, line, cell, wording));
        }
        if (!enabling(mode, cell).isEmpty()) {
            part = wording.tell(part, "near");
        }
        return part;
    }

    private static Part back(PostedCell cell, Wording wording) {
        Part part = Steps.out(wording.part("back", Kind.ACTION, true), wording);
        part = Steps.closed(part, cell, wording);
        part = Steps.reset(part, cell, wording);
        if (cell.mode(Mode.AUTOMATIC).isPresent()) {
            part = Steps.selectedAgain(part, cell.mode(Mode.AUTOMATIC).get(), cell, wording);
        }
        return part.line("start", wording.shared("step.start", wording.shared(AutomaticOperation.ID + ".title")));
    }

    /** Enabling devices of the mode that are worked differently or belong to another robot, one of each. */
    private static List<ComplementaryDevice> enabling(Mode mode, PostedCell cell) {
        Map<String, ComplementaryDevice> alike = new LinkedHashMap<>();
        cell.devices(EnablingDevice.class)
                .filter(device -> mode.enablingDevices().stream()
                        .anyMatch(one -> one.characters().equals(device.tag().characters())))
                .forEach(device -> alike.putIfAbsent(
                        ((EnablingDevice) device.sort()).positions().characters() + " of "
                                + cell.robotOf(device).map(robot -> robot.tag().characters()),
                        device));
        return List.copyOf(alike.values());
    }
}
