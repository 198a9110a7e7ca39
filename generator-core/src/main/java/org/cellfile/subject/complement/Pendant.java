package org.cellfile.subject.complement;

import java.util.List;
import java.util.function.Predicate;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.finding.FindingId;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;

/** A pendant, with the devices it carries. */
public record Pendant(Stated<String> enablingDevice, Stated<String> emergencyStop) implements Sort {

    /** A pendant and what it is said to carry do not fit together. */
    public static final FindingId PARTS = new FindingId("complementary.pendant-parts");

    static Pendant read(Section section) {
        return new Pendant(
                section.reference("enabling-device", ComplementaryDevice.SORT),
                section.reference("emergency-stop", ComplementaryDevice.SORT));
    }

    /** True when it carries that enabling device. */
    public boolean enables(ComplementaryDevice device) {
        return enablingDevice.value().equals(device.tag().value());
    }

    /** True when the device is a pendant with that emergency stop. */
    static boolean carries(ComplementaryDevice device, String emergencyStop) {
        return device.sort() instanceof Pendant pendant
                && pendant.emergencyStop.characters().equals(emergencyStop);
    }

    @Override
    public String id() {
        return "pendant";
    }

    @Override
    public String words() {
        return "Pendant";
    }

    @Override
    public List<Fact> facts() {
        return List.of(
                new Fact("enabling device", enablingDevice.characters()),
                new Fact("emergency stop", emergencyStop.characters()));
    }

    @Override
    public Demands demands(String tag, Surroundings around) {
        Demands demands = new Demands(tag);
        part(enablingDevice, EnablingDevice.class::isInstance, "an enabling device", around, demands);
        part(
                emergencyStop,
                sort -> sort instanceof EmergencyStop stop && stop.handHeld(),
                "an emergency stop carried by hand",
                around,
                demands);
        return demands;
    }

    private static void part(
            Stated<String> part, Predicate<Sort> fits, String due, Surroundings around, Demands demands) {
        around.named(part)
                .filter(device -> !fits.test(device.sort()))
                .ifPresent(device -> demands.fault(
                        PARTS,
                        part,
                        "names `" + part.characters() + "` where " + due + " is due",
                        "`" + part.characters() + "` is described at "
                                + device.tag().where().position(),
                        "name the device that the pendant carries; an emergency stop on it is `mounted: hand-held`"));
    }
}
