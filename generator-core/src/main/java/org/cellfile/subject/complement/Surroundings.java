package org.cellfile.subject.complement;

import java.util.List;
import java.util.Optional;
import org.cellfile.source.Stated;
import org.cellfile.standard.EmergencyStopStandard;
import org.cellfile.standard.RobotStandard;

/**
 * What a complementary device is held against.
 *
 * @param emergencyStops the edition in force; none is guessed when the cell names none
 * @param robots the edition in force
 * @param devices all that the cell lists
 */
public record Surroundings(
        Optional<EmergencyStopStandard> emergencyStops,
        Optional<RobotStandard> robots,
        List<ComplementaryDevice> devices) {

    /** The device with that tag. */
    Optional<ComplementaryDevice> named(Stated<String> tag) {
        return devices.stream()
                .filter(device -> device.tag().value().equals(tag.value()))
                .findFirst();
    }
}
