package org.cellfile.subject.complement;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.subject.hazard.Zone;
import org.cellfile.subject.identity.Robot;
import org.cellfile.subject.safeguard.Kinds;
import org.cellfile.subject.safeguard.Safeguard;

/**
 * A device that complements the safeguards, as installed. It has no {@code protects}.
 *
 * @param robot the tag of the one it belongs to; missing where that is not said, or where it belongs to the cell
 */
public record ComplementaryDevice(
        Stated<String> tag,
        Stated<String> name,
        Stated<String> model,
        Stated<String> position,
        Stated<String> robot,
        Sort sort) {

    public static final String SORT = "complementary device";

    /** Those of which each robot may have its own. */
    private static final Set<String> OF_A_ROBOT = Set.of("mode-selector", "pendant", "enabling-device");

    static final Set<String> YES_OR_NO = Set.of("yes", "no");

    /** Reads a device; empty when its sort is not known, which was then reported. */
    public static Optional<ComplementaryDevice> read(Section section) {
        Stated<String> tag = section.tag(SORT);
        if (section.has("protects")) {
            List<Stated<String>> zones = section.references("protects", Zone.SORT);
            Stated<String> at = zones.isEmpty() ? tag : zones.get(0);
            section.report(Safeguard.neverGuards(tag, at, "names what it protects"));
        }
        return section.word("sort", Kinds.COMPLEMENTARY).value().map(sort -> {
            ComplementaryDevice device = new ComplementaryDevice(
                    tag,
                    section.text("name"),
                    section.text("model"),
                    section.text("position"),
                    OF_A_ROBOT.contains(sort)
                            ? section.referenceIfStated("robot", Robot.SORT)
                            : new Stated.Missing<>(section.where(), "robot"),
                    sort(sort, section));
            section.close();
            return device;
        });
    }

    private static Sort sort(String sort, Section section) {
        return switch (sort) {
            case "emergency-stop" -> EmergencyStop.read(section);
            case "enabling-device" -> EnablingDevice.read(section);
            case "mode-selector" -> ModeSelector.read(section);
            case "pendant" -> Pendant.read(section);
            case "reset" -> Reset.read(section);
            default -> throw new IllegalArgumentException(sort);
        };
    }
}
