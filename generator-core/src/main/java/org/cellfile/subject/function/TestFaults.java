package org.cellfile.subject.function;

import org.cellfile.claim.Claim;
import org.cellfile.claim.Relation;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.standard.Category;
import org.cellfile.standard.ControlStandard;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Product;

/** What the test of a channel of category 2 must be. */
final class TestFaults {

    static final FindingId NOT_TESTED = new FindingId("subsystem.not-tested");
    static final FindingId TOO_SELDOM = new FindingId("subsystem.tested-too-seldom");
    static final FindingId EQUIPMENT_SHORT = new FindingId("subsystem.test-equipment-fails-too-soon");

    /** A test by equipment of its own is stated of what is not of category 2, or was bought with its figures. */
    static final FindingId NOT_ASKED = new FindingId("subsystem.test-not-asked");

    private final SubsystemLevel level;
    private final Subsystem subsystem;
    private final ControlStandard standard;
    private final Category category;
    private final HeldAgainst held;

    TestFaults(SubsystemLevel level, Category category, HeldAgainst held) {
        this.level = level;
        this.subsystem = level.subsystem();
        this.standard = level.standard();
        this.category = category;
        this.held = held;
    }

    void hold() {
        if (category != Category.TWO) {
            notAsked(subsystem, category + " is not tested by equipment of its own", held);
            return;
        }
        if (subsystem.test().isEmpty()) {
            held.refuse(
                    NOT_TESTED,
                    subsystem.category().where(),
                    "`" + held.tag() + "` is of category 2, and nothing says how its channel is tested",
                    "state under `test` how often it is tested and demanded, or why the test at a demand comes in time, and the"
                            + " `equipment` that tests it");
            return;
        }
        subsystem.test().ifPresent(this::hold);
    }

    /** A test that has no place. */
    static void notAsked(Subsystem subsystem, String because, HeldAgainst held) {
        subsystem
                .test()
                .ifPresent(test -> held.refuse(
                        NOT_ASKED,
                        subsystem.category().where(),
                        "nothing rests on `test` of `" + held.tag() + "`: " + because,
                        "state the category that the structure has, or take the test out; what monitors a part stands under its"
                                + " `coverage`"));
    }

    private void hold(Subsystem.Test test) {
        level.longestTestInterval()
                .ifPresent(longest -> held.claim(new Claim(
                        "time from test to test",
                        test.every(),
                        Relation.AT_MOST,
                        longest,
                        TOO_SELDOM,
                        "test more often, or at each demand before the hazard is reached, and say so under `when-demanded`; if"
                                + " neither can be, the category is another one")));
        level.testEquipment()
                .ifPresent(equipment -> level.mttfdOfChannels().ifPresent(channel -> {
                    Derived least = held.bound(
                            "least of the test equipment of this channel",
                            "MTTF_D,TE,min",
                            new Product(standard.shareOfTestEquipment(), channel),
                            standard.shareOfTestEquipment().reference(),
                            Rounding.up(Quantity.years("0.01")));
                    held.atLeast(
                            equipment,
                            least,
                            EQUIPMENT_SHORT,
                            subsystem
                                    .test()
                                    .flatMap(one -> one.equipment().stream().findFirst())
                                    .orElse(subsystem.tag())
                                    .where(),
                            "have the channel tested by equipment that lasts longer");
                }));
    }
}
