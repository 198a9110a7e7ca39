package org.cellfile.standard;

import com.google.auto.service.AutoService;
import org.cellfile.quantity.Quantity;
import org.cellfile.trace.Clause;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Reference;
import org.cellfile.trace.Standing;
import org.cellfile.trace.Standing.FromMemory;
import org.cellfile.trace.Standing.Published;

/** ISO 13850:2015; the clause numbers are from memory. */
@AutoService(Edition.class)
public final class Iso13850Ed2015 implements EmergencyStopStandard {

    private static final Standing TWO_PAGES =
            new Published("IDEC, ISO 13850; LegalClarity, ISO 13850 emergency stop requirements for machinery");

    /** Both ends are one rule, so that one confirmation is for both. */
    private static final Reference HEIGHT = rule(
            "actuator-height",
            "actuators 0.6 m to 1.7 m above the level people stand on",
            "cl. 4.3.2",
            new FromMemory(""));

    private static final Reference STOP_CATEGORY =
            rule("stop-category", "the machine stops by stop category 0 or 1", "cl. 4.1.3", new FromMemory(""));

    private static final Reference LATCHING =
            rule("latching", "the stop stays in effect until it is reset by hand", "cl. 4.1.4", TWO_PAGES);

    private static final Reference COLOURS =
            rule("colours", "red actuator, on a yellow background as far as practicable", "cl. 4.3.6", TWO_PAGES);

    private static Reference rule(String id, String name, String place, Standing standing) {
        return new Reference("iso-13850-2015." + id, name, new Clause("ISO 13850:2015", place), standing);
    }

    @Override
    public String id() {
        return "ISO 13850:2015";
    }

    @Override
    public String title() {
        return "Emergency stop function: principles for design";
    }

    @Override
    public Fixed leastHeight() {
        return new Fixed("h_min", Quantity.millimetres("600"), HEIGHT);
    }

    @Override
    public Fixed greatestHeight() {
        return new Fixed("h_max", Quantity.millimetres("1700"), HEIGHT);
    }

    @Override
    public Reference stopCategory() {
        return STOP_CATEGORY;
    }

    @Override
    public Reference latching() {
        return LATCHING;
    }

    @Override
    public Reference colours() {
        return COLOURS;
    }
}
