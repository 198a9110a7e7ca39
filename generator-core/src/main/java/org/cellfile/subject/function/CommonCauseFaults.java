package org.cellfile.subject.function;

import java.util.HashMap;
import java.util.Map;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.finding.Nearest;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.quantity.Unit;
import org.cellfile.source.Stated;
import org.cellfile.standard.Category;
import org.cellfile.standard.ControlStandard;
import org.cellfile.trace.Derived;

/** What the measures against failures of common cause must be. */
final class CommonCauseFaults {

    /** The edition lists no such measure. */
    static final FindingId UNKNOWN = new FindingId("subsystem.measure-not-listed");

    static final FindingId TWICE = new FindingId("subsystem.measure-twice");
    static final FindingId TOO_FEW = new FindingId("subsystem.common-cause-too-low");

    /** Measures are stated of what they do not count for. */
    static final FindingId NOT_ASKED = new FindingId("subsystem.common-cause-not-asked");

    private final SubsystemLevel level;
    private final Subsystem subsystem;
    private final ControlStandard standard;
    private final Category category;
    private final HeldAgainst held;

    CommonCauseFaults(SubsystemLevel level, Category category, HeldAgainst held) {
        this.level = level;
        this.subsystem = level.subsystem();
        this.standard = level.standard();
        this.category = category;
        this.held = held;
    }

    void hold() {
        measures();
        if (category.tested()) {
            Derived least = held.bound(standard.leastScore(), Rounding.up(Quantity.of("1", Unit.POINT)));
            level.commonCause()
                    .ifPresent(score -> held.atLeast(
                            score,
                            least,
                            TOO_FEW,
                            subsystem.category().where(),
                            "take more of the measures of the list at the machine and state how each was taken"));
            if (subsystem.commonCause().isEmpty()) {
                held.rule(standard.leastScore().reference());
                held.refuse(
                        TOO_FEW,
                        subsystem.category().where(),
                        "no measure against failures of common cause is stated for `" + held.tag() + "`, and "
                                + category + " asks for "
                                + standard.leastScore().quantity() + " of them",
                        standard.leastScore().reference(),
                        "state under `common-cause` each measure that was taken, and how");
            }
        } else {
            notAsked(
                    subsystem, category + " has one channel and no test, which no common cause strikes together", held);
        }
    }

    /** Measures that count for nothing. */
    static void notAsked(Subsystem subsystem, String because, HeldAgainst held) {
        if (!subsystem.commonCause().isEmpty()) {
            held.found(Finding.warns(
                    NOT_ASKED,
                    held.tag(),
                    subsystem.commonCause().get(0).measure().where(),
                    "nothing rests on `common-cause` of `" + held.tag() + "`: " + because,
                    "take it out, or state the category that the structure has"));
        }
    }

    private void measures() {
        Map<String, Stated<String>> met = new HashMap<>();
        for (Subsystem.CommonCause one : subsystem.commonCause()) {
            Stated<String> measure = one.measure();
            if (measure.value().isEmpty()) {
                continue;
            }
            if (!standard.commonCauseMeasures().contains(measure.characters())) {
                held.refuse(
                        UNKNOWN,
                        measure.where(),
                        "`" + measure.characters() + "` of `" + held.tag()
                                + "` is not in the list of measures against failures of common cause of "
                                + standard.id(),
                        "measures in it: " + Nearest.listed(measure.characters(), standard.commonCauseMeasures()));
            }
            Stated<String> before = met.putIfAbsent(measure.characters(), measure);
            if (before != null) {
                held.refuse(
                        TWICE,
                        measure.where(),
                        "the measure `" + measure.characters() + "` of `" + held.tag() + "` stands at "
                                + before.where().position() + " as well",
                        "state it once, with all that was done for it: it scores once");
            }
        }
    }
}
