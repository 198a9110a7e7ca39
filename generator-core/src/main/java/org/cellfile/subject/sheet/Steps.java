package org.cellfile.subject.sheet;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cellfile.dossier.Text;
import org.cellfile.source.Stated;
import org.cellfile.subject.complement.ComplementaryDevice;
import org.cellfile.subject.complement.EmergencyStop;
import org.cellfile.subject.complement.ModeSelector;
import org.cellfile.subject.complement.Reset;
import org.cellfile.subject.identity.Robot;
import org.cellfile.subject.mode.Mode;
import org.cellfile.subject.safeguard.Guarding;
import org.cellfile.subject.safeguard.Safeguard;

/** Steps that stand on several sheets, in the same words wherever they stand. What the cell does not have has no step. */
final class Steps {

    /** More than these are counted, not named: a line has to be read at a glance. */
    private static final int MOST_NAMED = 3;

    private static final String START = "automatic-operation.start.";

    private Steps() {}

    /** Look in from outside: nobody is there. */
    static Part nobody(Part part, Wording wording) {
        return part.line("nobody", wording.shared(START + "nobody"));
    }

    /** Everybody comes out and is counted. */
    static Part out(Part part, Wording wording) {
        return part.line("out", wording.shared("step.out"));
    }

    /** Every door is closed. */
    static Part closed(Part part, PostedCell cell, Wording wording) {
        List<Safeguard> doors = doors(cell);
        if (doors.isEmpty()) {
            return part;
        }
        return few(doors)
                ? part.line("closed", wording.shared(START + "closed", places(doors, cell, wording)))
                : part.line("all-closed", wording.shared(START + "all-closed", String.valueOf(doors.size())));
    }

    /** Every emergency stop is released. */
    static Part stopsReleased(Part part, PostedCell cell, Wording wording) {
        long stops = cell.devices(EmergencyStop.class).count();
        if (stops == 0) {
            return part;
        }
        return part.line(
                "stops",
                stops == 1 ? wording.shared("step.stop") : wording.shared("step.stops", String.valueOf(stops)));
    }

    /** That mode is selected, and nobody else can select another. */
    static Part selected(Part part, Mode mode, PostedCell cell, Wording wording) {
        Part longer = part;
        for (ComplementaryDevice device : selectors(mode, cell).toList()) {
            ModeSelector selector = (ModeSelector) device.sort();
            String line = wording.shared(
                    "step.selector." + selector.lockedBy().characters(),
                    wording.text(device.position()),
                    wording.text(mode.name()));
            longer = longer.oneOf("selector", ofRobot(device, line, cell, wording));
        }
        return longer;
    }

    /** The same once more on a sheet that has told where the selector is. */
    static Part selectedAgain(Part part, Mode mode, PostedCell cell, Wording wording) {
        List<ComplementaryDevice> selectors = selectors(mode, cell).toList();
        if (selectors.size() != 1) {
            return selected(part, mode, cell, wording);
        }
        ModeSelector selector = (ModeSelector) selectors.get(0).sort();
        return part.line(
                "selector",
                wording.shared("step.again." + selector.lockedBy().characters(), wording.text(mode.name())));
    }

    /** Those with which that mode can be selected. */
    static Stream<ComplementaryDevice> selectors(Mode mode, PostedCell cell) {
        return cell.devices(ModeSelector.class)
                .filter(device -> ((ModeSelector) device.sort())
                        .modes().stream()
                                .anyMatch(one ->
                                        one.characters().equals(mode.tag().characters())))
                .filter(device ->
                        ((ModeSelector) device.sort()).lockedBy().value().isPresent());
    }

    /** Each reset, from outside, where it is. */
    static Part reset(Part part, PostedCell cell, Wording wording) {
        Part longer = part;
        for (ComplementaryDevice device : cell.devices(Reset.class).toList()) {
            longer = longer.oneOf(
                    "reset",
                    wording.shared("step.reset", wording.text(device.name()), wording.text(device.position())));
        }
        return longer;
    }

    /** A line about a device, with the robot it belongs to before it where the cell has several such devices. */
    static String ofRobot(ComplementaryDevice device, String line, PostedCell cell, Wording wording) {
        return cell.devices(device.sort().getClass()).count() < 2
                ? line
                : cell.robotOf(device)
                        .map(robot -> ofRobot(robot, line, wording))
                        .orElse(line);
    }

    /** Words about a robot, with its name before them. */
    static String ofRobot(Robot robot, String words, Wording wording) {
        return wording.shared(
                "step.of-robot",
                Text.capital(wording.text(robot.name())),
                robot.tag().characters(),
                words);
    }

    /** What people open and have to close again. */
    static List<Safeguard> doors(PostedCell cell) {
        return cell.safeguards().stream()
                .map(Guarding::safeguard)
                .filter(safeguard -> safeguard.kind().closedByHand())
                .toList();
    }

    /** Few safeguards by what and where they are, many counted by their kinds. */
    static String listed(Collection<Safeguard> safeguards, PostedCell cell, Wording wording) {
        if (!few(safeguards)) {
            return counted(safeguards, wording);
        }
        Map<String, List<Safeguard>> kinds = safeguards.stream()
                .collect(Collectors.groupingBy(
                        safeguard -> safeguard.kind().id(), LinkedHashMap::new, Collectors.toList()));
        return kinds.entrySet().stream()
                .map(kind -> wording.shared("kind." + kind.getKey()) + " " + places(kind.getValue(), cell, wording))
                .collect(Collectors.joining("; "));
    }

    /** Safeguards counted by their kinds. */
    static String counted(Collection<Safeguard> safeguards, Wording wording) {
        Map<String, Long> kinds = safeguards.stream()
                .collect(Collectors.groupingBy(
                        safeguard -> safeguard.kind().id(), LinkedHashMap::new, Collectors.counting()));
        return kinds.entrySet().stream()
                .map(kind -> wording.shared("kind." + kind.getKey())
                        + (kind.getValue() == 1 ? "" : " (" + kind.getValue() + ")"))
                .collect(Collectors.joining(", "));
    }

    /** True when they are named, and not counted. */
    static boolean few(Collection<?> things) {
        return things.size() <= MOST_NAMED;
    }

    /** The tag of each with the place where it is. */
    static String places(Collection<Safeguard> safeguards, PostedCell cell, Wording wording) {
        return safeguards.stream()
                .map(safeguard -> place(safeguard.tag(), safeguard.position(), cell, wording))
                .collect(Collectors.joining(", "));
    }

    /** A tag as it stands on the device, with the place where people find it. */
    static String place(Stated<String> tag, Stated<String> position, PostedCell cell, Wording wording) {
        return tag.characters() + " (" + wording.text(cell.place(tag, position)) + ")";
    }
}
