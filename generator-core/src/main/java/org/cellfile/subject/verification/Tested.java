package org.cellfile.subject.verification;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cellfile.dossier.Text;
import org.cellfile.dossier.Words;
import org.cellfile.quantity.Quantity;
import org.cellfile.source.Stated;
import org.cellfile.subject.complement.ComplementaryDevice;
import org.cellfile.subject.complement.EmergencyStop;
import org.cellfile.subject.complement.EnablingDevice;
import org.cellfile.subject.identity.Robot;
import org.cellfile.subject.mode.Mode;
import org.cellfile.subject.safeguard.Safeguard;

/**
 * A thing of the cell whose function is tested.
 *
 * @param kind in words
 * @param folder among the templates, with the protocol of its kind
 * @param testPiece diameter of the rod or body it has to detect; empty for what detects nobody
 * @param features it has beyond others of its kind, and for which there is a test
 * @param safeguard the safeguard it is, if it is one
 * @param device the complementary device it is, if it is one
 */
public record Tested(
        Stated<String> tag,
        Stated<String> name,
        String kind,
        String folder,
        Optional<Quantity> testPiece,
        Set<String> features,
        Optional<Safeguard> safeguard,
        Optional<ComplementaryDevice> device) {

    /** What can be tested. */
    static final List<String> SORTS = List.of(Safeguard.SORT, ComplementaryDevice.SORT, Robot.SORT);

    private static final String ROBOTS = "robots";

    public static Tested of(Safeguard safeguard) {
        String folder = "kinds/" + safeguard.kind().id();
        return new Tested(
                safeguard.tag(),
                safeguard.name(),
                kind(folder),
                folder,
                safeguard.device().testPiece(),
                safeguard.device().features(),
                Optional.of(safeguard),
                Optional.empty());
    }

    public static Tested of(ComplementaryDevice device) {
        return new Tested(
                device.tag(),
                device.name(),
                device.sort().words(),
                "complements/" + device.sort().id(),
                Optional.empty(),
                device.sort().features(),
                Optional.empty(),
                Optional.of(device));
    }

    public static Tested of(Robot robot) {
        return new Tested(
                robot.tag(),
                robot.name(),
                kind(ROBOTS),
                ROBOTS,
                Optional.empty(),
                Set.of(),
                Optional.empty(),
                Optional.empty());
    }

    private static String kind(String folder) {
        return Text.capital(Words.of(folder).get("name"));
    }

    /** What is tested of it. */
    public Protocol protocol() {
        return Protocol.in(folder).with(features);
    }

    /** True when it acts in that mode. What belongs to no mode acts in all. */
    public boolean actsIn(Mode mode) {
        if (safeguard.isPresent()) {
            return mode.state(safeguard.get()) == Mode.State.ACTIVE;
        }
        if (device.filter(one -> one.sort() instanceof EmergencyStop).isPresent()) {
            return mode.stopsBy(device.get());
        }
        if (device.filter(one -> one.sort() instanceof EnablingDevice).isPresent()) {
            return mode.enablingDevices().stream()
                    .anyMatch(one -> one.characters().equals(tag.characters()));
        }
        return true;
    }
}
