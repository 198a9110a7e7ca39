package org.cellfile.subject.safeguard;

import java.util.ArrayList;
import java.util.List;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Quantity;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.trace.Given;
import org.cellfile.trace.Term;

/** What the maker of a device asks to be added to the distance. */
record Supplement(Stated<String> name, Stated<Quantity> distance, Stated<String> source) {

    static List<Supplement> read(Section safeguard) {
        return Section.each(
                safeguard.listIfStated("supplements"),
                section -> new Supplement(
                        section.text("name"), section.quantity("distance", Dimension.LENGTH), section.text("source")));
    }

    Fact fact() {
        return new Fact("Supplement", distance.characters() + ", " + name.characters(), source.characters());
    }

    /** All of a device as terms. */
    static List<Term> terms(List<Supplement> supplements) {
        List<Term> terms = new ArrayList<>();
        for (Supplement supplement : supplements) {
            terms.add(new Given(
                    supplements.size() == 1 ? "Z" : "Z_" + (terms.size() + 1),
                    supplement.name.characters() + ", " + supplement.source.characters(),
                    supplement.distance));
        }
        return terms;
    }
}
