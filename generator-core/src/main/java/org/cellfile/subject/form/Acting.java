package org.cellfile.subject.form;

import java.util.List;
import org.cellfile.source.Stated;
import org.cellfile.subject.mode.Mode;
import org.cellfile.subject.mode.Mode.State;
import org.cellfile.subject.verification.Tested;

/** Whether a thing acts in a mode. */
final class Acting {

    private Acting() {}

    /** Emergency stops and enabling devices are named by the mode; other things that are no safeguards act in every mode. */
    static State in(Mode mode, Tested thing) {
        return thing.safeguard().map(mode::state).orElseGet(() -> switch (thing.folder()) {
            case "complements/emergency-stop" -> named(mode.emergencyStops(), thing);
            case "complements/enabling-device" -> named(mode.enablingDevices(), thing);
            default -> State.ACTIVE;
        });
    }

    private static State named(List<Stated<String>> tags, Tested thing) {
        return tags.stream().anyMatch(tag -> tag.value().equals(thing.tag().value()))
                ? State.ACTIVE
                : State.NOT_APPLICABLE;
    }
}
