package org.cellfile.subject.function;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cellfile.standard.EmergencyStopStandard;
import org.cellfile.standard.LeastCategory;
import org.cellfile.standard.RobotStandard;
import org.cellfile.standard.Standards;
import org.cellfile.subject.complement.ComplementaryDevice;
import org.cellfile.subject.complement.EmergencyStop;
import org.cellfile.subject.complement.EnablingDevice;
import org.cellfile.subject.hazard.Zone;
import org.cellfile.subject.safeguard.Safeguard;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Reference;

/**
 * What the standards in force ask of a safety function, whatever the hazard.
 *
 * @param levels least performance levels
 * @param categories least categories of everything that carries it out
 * @param toRead levels that are not publicly known, and that only a copy can tell
 */
public record Minimums(List<Fixed> levels, List<LeastCategory> categories, List<Reference> toRead) {

    /** Nothing. */
    public static final Minimums NONE = new Minimums(List.of(), List.of(), List.of());

    /**
     * What there is in the cell beside the control system.
     *
     * @param robots whether there is any
     */
    public record Around(
            Standards standards,
            boolean robots,
            List<Zone> zones,
            List<Safeguard> safeguards,
            List<ComplementaryDevice> devices) {

        private static boolean ofRobot(Zone zone) {
            return zone.robot().value().isPresent();
        }

        /** True when it keeps people from a robot: by a safeguard of its zone, or by what a robot cell has beside these. */
        private boolean ofRobot(SafetyFunction function) {
            return safeguards.stream()
                            .filter(safeguard ->
                                    function.triggeredBy(safeguard.tag().characters()))
                            .flatMap(safeguard -> safeguard.protects().stream())
                            .flatMap(tag -> zones.stream()
                                    .filter(zone ->
                                            tag.value().equals(zone.tag().value())))
                            .anyMatch(Around::ofRobot)
                    || (robots
                            && triggers(function)
                                    .anyMatch(device -> device.sort() instanceof EmergencyStop
                                            || device.sort() instanceof EnablingDevice));
        }

        private Stream<ComplementaryDevice> triggers(SafetyFunction function) {
            return devices.stream()
                    .filter(device -> function.triggeredBy(device.tag().characters()));
        }

        /** What is asked of a function of this cell. */
        public Minimums of(SafetyFunction function) {
            List<RobotStandard> editions = ofRobot(function) ? standards.inForce(RobotStandard.class) : List.of();
            List<Fixed> levels = new ArrayList<>();
            editions.forEach(edition -> edition.functionLevel().ifPresent(levels::add));
            if (triggers(function).anyMatch(device -> device.sort() instanceof EmergencyStop)) {
                standards.inForce(EmergencyStopStandard.class).forEach(edition -> levels.add(edition.functionLevel()));
            }
            return new Minimums(
                    levels,
                    editions.stream()
                            .map(RobotStandard::functionCategory)
                            .flatMap(Optional::stream)
                            .toList(),
                    editions.stream()
                            .map(RobotStandard::levelOfEachFunction)
                            .flatMap(Optional::stream)
                            .toList());
        }
    }

    /** Every rule in words among them. */
    List<Reference> rules() {
        return Stream.concat(categories.stream().map(LeastCategory::reference), toRead.stream())
                .toList();
    }
}
