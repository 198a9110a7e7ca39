package org.cellfile.subject.safeguard;

import java.util.Optional;
import java.util.function.Function;
import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Quantity;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.standard.ReachStandard;
import org.cellfile.standard.ReachStandard.Opening;
import org.cellfile.trace.Given;
import org.cellfile.trace.Term;
import org.cellfile.trace.Withheld;

/**
 * Shape and size of an opening.
 *
 * @param size the smallest side of a slot, the side of a square, the diameter of a round opening
 * @param length of a slot, if it is stated
 */
record Aperture(Stated<String> shape, Stated<Quantity> size, Optional<Stated<Quantity>> length) {

    /** Reads the keys it shares with whatever has the opening. Only a slot has a length. */
    static Aperture read(Section section) {
        Stated<String> shape = section.word("shape", ReachStandard.SHAPES);
        boolean slot = shape.value().filter("slot"::equals).isPresent() && section.has("length");
        return new Aperture(
                shape,
                section.positive("opening", Dimension.LENGTH),
                slot ? Optional.of(section.positive("length", Dimension.LENGTH)) : Optional.empty());
    }

    /** How far one reaches through it by a rule; withheld while its shape is not known. */
    Term reach(String symbol, String name, Function<Opening, Term> rule) {
        return shape.value()
                .map(known -> rule.apply(new Opening(
                        known,
                        new Given("e", name, size),
                        length.map(stated -> new Given("l", "length of the slot", stated)))))
                .orElseGet(() -> new Withheld(symbol, "the shape of the opening is not known"));
    }

    /** As stated, for print. */
    String words() {
        return shape.characters() + ", " + size.characters()
                + length.map(stated -> " by " + stated.characters()).orElse("");
    }
}
