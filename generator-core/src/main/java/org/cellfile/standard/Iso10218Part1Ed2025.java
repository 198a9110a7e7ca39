package org.cellfile.standard;

import com.google.auto.service.AutoService;
import java.util.Optional;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Unit;
import org.cellfile.trace.Clause;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Reference;
import org.cellfile.trace.Standing;
import org.cellfile.trace.Standing.FromMemory;
import org.cellfile.trace.Standing.Published;

/** ISO 10218-1:2025; no clause number is known here. */
@AutoService(Edition.class)
public final class Iso10218Part1Ed2025 extends FixedValues implements RobotStandard {

    private static final String ID = "ISO 10218-1:2025";

    private final Fixed manualReducedSpeed = fixed(
            "v_max",
            Quantity.of("250", Unit.MILLIMETRE_PER_SECOND),
            "manual-reduced-speed",
            "highest speed of the tool centre point in manual reduced speed",
            new Clause(ID, "manual reduced speed"),
            new FromMemory("as in ISO 10218-1:2011"));

    private final Fixed enablingPositions = fixed(
            "n_3",
            Quantity.count(3),
            "enabling-positions",
            "positions of an enabling device, only the middle one of which permits motion",
            new Clause(ID, "enabling devices"),
            new FromMemory("as in ISO 10218-1:2011"));

    private final Reference lockableModes = reference(
            "lockable-modes",
            "the mode selector can be locked in each position, or selects by means that amount to it",
            new Clause(ID, "mode selection"),
            new FromMemory("as in ISO 10218-1:2011"));

    private final Reference levelOfEachFunction = reference(
            "function-level",
            "performance level of each safety function of a robot, set function by function",
            new Clause(ID, "safety functions"),
            new Standing.NotPublic("requires"));

    private final Reference nobodyInsideAtHighSpeed = reference(
            "nobody-inside-at-high-speed",
            "manual high speed is used from outside the safeguards only",
            new Clause(ID, "manual high speed"),
            new Published("robot-safety.net, does T2 mode become history"));

    /** As its values are held here. */
    public Iso10218Part1Ed2025() {
        this(CopyValues.NONE);
    }

    private Iso10218Part1Ed2025(CopyValues copy) {
        super("iso-10218-1-2025", copy);
    }

    @Override
    public Iso10218Part1Ed2025 reading(CopyValues copy) {
        return new Iso10218Part1Ed2025(copy);
    }

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Safety requirements for industrial robots, part 1: robots";
    }

    @Override
    public Optional<String> remark() {
        return Optional.of("Its values are from memory, except the rule about manual high speed; what else it asks of a"
                + " robot and its safety functions is not held here.");
    }

    @Override
    public Fixed manualReducedSpeed() {
        return manualReducedSpeed;
    }

    @Override
    public Fixed enablingPositions() {
        return enablingPositions;
    }

    @Override
    public Reference lockableModes() {
        return lockableModes;
    }

    @Override
    public Optional<Fixed> functionLevel() {
        return Optional.empty();
    }

    @Override
    public Optional<LeastCategory> functionCategory() {
        return Optional.empty();
    }

    @Override
    public Optional<Reference> levelOfEachFunction() {
        return Optional.of(levelOfEachFunction);
    }

    @Override
    public Optional<Reference> nobodyInsideAtHighSpeed() {
        return Optional.of(nobodyInsideAtHighSpeed);
    }
}
