package org.cellfile.subject.verification;

import java.util.Optional;
import org.cellfile.quantity.Quantity;
import org.cellfile.source.Stated;
import org.cellfile.subject.complement.ComplementaryDevice;
import org.cellfile.subject.identity.Robot;
import org.cellfile.subject.safeguard.Safeguard;

/**
 * A thing of the cell whose function is tested.
 *
 * @param folder among the templates, with the protocol of its kind
 * @param testPiece diameter of the rod or body it has to detect; empty for what detects nobody
 * @param safeguard the safeguard it is, if it is one
 */
public record Tested(
        Stated<String> tag,
        Stated<String> name,
        String folder,
        Optional<Quantity> testPiece,
        Optional<Safeguard> safeguard) {

    public static Tested of(Safeguard safeguard) {
        return new Tested(
                safeguard.tag(),
                safeguard.name(),
                "kinds/" + safeguard.kind().id(),
                safeguard.device().testPiece(),
                Optional.of(safeguard));
    }

    public static Tested of(ComplementaryDevice device) {
        return new Tested(
                device.tag(), device.name(), "complements/" + device.sort().id(), Optional.empty(), Optional.empty());
    }

    public static Tested of(Robot robot) {
        return new Tested(robot.tag(), robot.name(), "robots", Optional.empty(), Optional.empty());
    }

    /** What is tested of it. */
    public Protocol protocol() {
        return Protocol.in(folder);
    }
}
