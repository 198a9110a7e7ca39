package org.cellfile.subject.safeguard;

import java.util.List;
import org.cellfile.claim.Claim;
import org.cellfile.claim.Relation;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.standard.ReachStandard;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Term;
import org.cellfile.trace.Withheld;

/**
 * An end of a fixed guard, around which somebody can reach.
 *
 * @param distance from the end to the nearest hazard
 * @param support up to where the arm is held back
 */
record FenceEnd(Stated<String> name, Stated<Quantity> distance, Stated<Quantity> uncertainty, Stated<String> support) {

    /** The hazard is nearer to an end of the guard than one reaches around it. */
    static final FindingId REACHED_AROUND = new FindingId("installed.reached-around");

    static FenceEnd read(Section section) {
        return new FenceEnd(
                section.text("name"),
                section.quantity("distance", Dimension.LENGTH),
                section.quantity("uncertainty", Dimension.LENGTH),
                section.word("support", ReachStandard.SUPPORTS));
    }

    Fact fact() {
        return new Fact(
                "End",
                name.characters() + ": hazard " + distance.characters() + " from it",
                "the arm is held back up to the " + support.characters());
    }

    /**
     * What must hold for it.
     *
     * @param number of the end of its fence, from 1
     */
    Demands demands(Surroundings around, int number) {
        Term reach = support.value()
                .map(around.reach()::around)
                .orElseGet(() -> new Withheld("s_r", "what holds the arm back is not known"));
        Derived needed = new Derived(
                around.tag(),
                "reach-around-" + number,
                "reach around an end (" + name.characters() + ")",
                "s_a" + number,
                around.reach().clause("table 3"),
                reach,
                Rounding.up(Quantity.millimetres("1")));
        return new Demands(
                List.of(needed),
                List.of(new Claim(
                        "distance from the end `" + name.characters() + "`",
                        distance,
                        uncertainty.value(),
                        Relation.AT_LEAST,
                        needed,
                        REACHED_AROUND,
                        "lengthen the fence, or turn its end towards the machine")),
                Requirement.covered(
                        around.tag(), support, reach, "lengthen the fence so that nobody reaches around it"));
    }
}
