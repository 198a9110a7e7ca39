package org.cellfile.standard;

import com.google.auto.service.AutoService;
import java.util.Map;
import java.util.Objects;
import org.cellfile.quantity.Quantity;
import org.cellfile.trace.Clause;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Reference;
import org.cellfile.trace.Standing;
import org.cellfile.trace.Standing.FromMemory;
import org.cellfile.trace.Standing.Published;

/** ISO 13850:2015; the clause numbers are from memory. */
@AutoService(Edition.class)
public final class Iso13850Ed2015 extends FixedValues implements EmergencyStopStandard {

    private static final String ID = "ISO 13850:2015";
    private static final Standing TWO_PAGES =
            new Published("IDEC, ISO 13850; LegalClarity, ISO 13850 emergency stop requirements for machinery");

    /** Both ends are one rule, so that one confirmation is for both. */
    private final Reference height = rule(
            "actuator-height",
            "actuators 0.6 m to 1.7 m above the level people stand on",
            "cl. 4.3.2",
            new FromMemory(""));

    private final Map<String, Fixed> heights = rows(
            "bound",
            Map.of(
                    "least", new Fixed("h_min", Quantity.millimetres("600"), height),
                    "greatest", new Fixed("h_max", Quantity.millimetres("1700"), height)));

    private final Reference stopCategory =
            rule("stop-category", "the machine stops by stop category 0 or 1", "cl. 4.1.3", new FromMemory(""));

    private final Reference latching =
            rule("latching", "the stop stays in effect until it is reset by hand", "cl. 4.1.4", TWO_PAGES);

    private final Reference availability =
            rule("availability", "the emergency stop function is available at all times", "cl. 4.1.1.2", TWO_PAGES);

    private final Reference colours =
            rule("colours", "red actuator, on a yellow background as far as practicable", "cl. 4.3.6", TWO_PAGES);

    private final Fixed functionLevel = fixed(
            "PL_min",
            Quantity.level("c"),
            "function-level",
            "least performance level of an emergency stop function",
            new Clause(ID, "cl. 4.1.5"),
            new FromMemory(""));

    private Reference rule(String id, String name, String place, Standing standing) {
        return reference(id, name, new Clause(ID, place), standing);
    }

    /** As its values are held here. */
    public Iso13850Ed2015() {
        this(CopyValues.NONE);
    }

    private Iso13850Ed2015(CopyValues copy) {
        super("iso-13850-2015", copy);
    }

    @Override
    public Iso13850Ed2015 reading(CopyValues copy) {
        return new Iso13850Ed2015(copy);
    }

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Emergency stop function: principles for design";
    }

    @Override
    public Fixed leastHeight() {
        return bound("least");
    }

    @Override
    public Fixed greatestHeight() {
        return bound("greatest");
    }

    private Fixed bound(String which) {
        return Objects.requireNonNull(heights.get(which), which);
    }

    @Override
    public Reference stopCategory() {
        return stopCategory;
    }

    @Override
    public Reference latching() {
        return latching;
    }

    @Override
    public Reference availability() {
        return availability;
    }

    @Override
    public Fixed functionLevel() {
        return functionLevel;
    }

    @Override
    public Reference colours() {
        return colours;
    }
}
