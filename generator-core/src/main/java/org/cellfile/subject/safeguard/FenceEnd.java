package org.cellfile.subject.safeguard;

import java.util.List;
import java.util.stream.Stream;
import org.cellfile.claim.Claim;
import org.cellfile.claim.Relation;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.finding.FindingId;
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
 * @param installed the distance from the end to the nearest hazard
 * @param support up to where the arm is held back
 */
record FenceEnd(Stated<String> name, Safeguard.Installed installed, Stated<String> support) {

    /** The hazard is nearer to an end of the guard than one reaches around it. */
    static final FindingId REACHED_AROUND = new FindingId("installed.reached-around");

    static FenceEnd read(Section section) {
        return new FenceEnd(
                section.text("name"),
                Safeguard.Installed.read(section.section("installed")),
                section.word("support", ReachStandard.SUPPORTS));
    }

    Fact fact() {
        return new Fact("End", name.characters(), "the arm is held back up to the " + support.characters());
    }

    /**
     * Where its distance was measured.
     *
     * @param number of the end of its fence, from 1
     */
    Place place(int number) {
        return new Place("end", number, "a" + number, name, List.of(), installed);
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
                Rounding.up(Quantity.millimetres("1"))
                        .beside(installed.distance().value()));
        Margin margin = Margin.at(around.tag(), place(number), needed);
        return new Demands(
                Stream.concat(Stream.of(needed), margin.derived().stream()).toList(),
                List.of(new Claim(
                        "distance from the end `" + name.characters() + "`",
                        installed.distance(),
                        installed.uncertainty().value(),
                        Relation.AT_LEAST,
                        needed,
                        REACHED_AROUND,
                        "lengthen the fence, or turn its end towards the machine")),
                Requirement.covered(
                        around.tag(), support, reach, "lengthen the fence so that nobody reaches around it"),
                List.of(margin));
    }
}
