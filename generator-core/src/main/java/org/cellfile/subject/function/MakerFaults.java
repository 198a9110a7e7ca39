package org.cellfile.subject.function;

import java.util.Optional;
import org.cellfile.claim.Claim;
import org.cellfile.claim.Relation;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.standard.Category;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Drawing;
import org.cellfile.trace.Term;

/**
 * What its maker states of a subsystem, each held against the other. A maker who states a lower performance level than the frequency
 * of failure allows contradicts nothing: the structure may bound it.
 */
final class MakerFaults {

    /** Its frequency of dangerous failure is too high for the performance level stated with it. */
    static final FindingId BEYOND_FREQUENCY = new FindingId("subsystem.level-beyond-frequency");

    /** Its category does not reach the performance level stated with it. */
    static final FindingId BEYOND_CATEGORY = new FindingId("subsystem.level-beyond-category");

    /** Its frequency of dangerous failure is too high for any performance level. */
    static final FindingId NO_LEVEL = new FindingId("subsystem.no-level");

    private static final Rounding STEP = Rounding.down(Quantity.level("a"));
    private static final String HELP =
            "look again at what the maker states, and in what unit; where the document itself says so, ask the maker, as one of"
                    + " the two figures is wrong";

    private final SubsystemLevel level;
    private final Category category;
    private final HeldAgainst held;

    MakerFaults(SubsystemLevel level, Category category, HeldAgainst held) {
        this.level = level;
        this.category = category;
        this.held = held;
    }

    void hold(Subsystem.Maker maker) {
        Derived byFrequency = highest(
                "highest performance level by its frequency of dangerous failure",
                level.standard().level(level.pfh()));
        if (level.pfh().value().isPresent() && byFrequency.value().isEmpty()) {
            held.found(Finding.refuses(
                            NO_LEVEL,
                            held.tag(),
                            maker.pfh().where(),
                            "the frequency of dangerous failure of `" + held.tag() + "` is "
                                    + maker.pfh().characters() + ", too high for any performance level",
                            HELP)
                    .because(Drawing.of(byFrequency).lines()));
        }
        claim(maker, byFrequency, BEYOND_FREQUENCY);
        level.standard()
                .highestLevel(category)
                .ifPresent(most ->
                        claim(maker, highest("highest performance level of " + category, most), BEYOND_CATEGORY));
        String because = "its frequency of dangerous failure is stated by its maker, with whatever tests it";
        TestFaults.notAsked(level.subsystem(), because, held);
        CommonCauseFaults.notAsked(level.subsystem(), because, held);
    }

    private Derived highest(String words, Term expression) {
        return new Derived(
                held.tag(), "highest-level", words, "PL_max", level.standard().id() + ", 4.5.1", expression, STEP);
    }

    private void claim(Subsystem.Maker maker, Derived highest, FindingId id) {
        held.claim(new Claim(
                "performance level stated by the maker",
                maker.level(),
                Optional.empty(),
                Relation.AT_MOST,
                highest,
                id,
                HELP));
    }
}
