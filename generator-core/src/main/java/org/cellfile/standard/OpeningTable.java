package org.cellfile.standard;

import java.math.BigDecimal;
import java.util.List;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Unit;
import org.cellfile.trace.Formula;
import org.cellfile.trace.Lookup;
import org.cellfile.trace.Reference;
import org.cellfile.trace.Term;
import org.cellfile.trace.Withheld;

/** A table of reach by shape and size of an opening, in mm, from a resource whose head names its source. */
final class OpeningTable {

    private static final String SYMBOL = "s_r";

    private final Reference reference;
    private final List<String> shapes;
    private final List<Band> bands;

    /** Openings up to a size, with the reach for each shape. */
    private record Band(String part, BigDecimal above, BigDecimal upTo, List<BigDecimal> reach) {}

    private OpeningTable(Reference reference, List<String> shapes, List<Band> bands) {
        this.reference = reference;
        this.shapes = shapes;
        this.bands = bands;
    }

    /** Reads the resource beside this class: part of the body, above, up to, then a column for each shape. */
    static OpeningTable load(String resource, Reference reference) {
        List<List<String>> lines = HeightTable.lines(resource);
        List<Band> bands = lines.stream()
                .skip(1)
                .map(line -> new Band(
                        line.get(0),
                        new BigDecimal(line.get(1)),
                        new BigDecimal(line.get(2)),
                        line.stream().skip(3).map(BigDecimal::new).toList()))
                .toList();
        return new OpeningTable(reference, lines.get(0).subList(3, lines.get(0).size()), bands);
    }

    /** The reach through an opening; withheld when the opening is larger than the table covers. */
    Term reach(String shape, Term opening) {
        if (opening.value().isEmpty()) {
            return new Withheld(SYMBOL, "the opening is not known");
        }
        BigDecimal size = opening.value().get().coherent();
        for (Band band : bands) {
            if (size.compareTo(band.upTo) <= 0) {
                Quantity cell = new Quantity(band.reach.get(shapes.indexOf(shape)), Unit.MILLIMETRE);
                String taken = SYMBOL + ": " + shape + " opening e = " + Formula.shown(opening) + ", row " + band.part
                        + ", above " + band.above + " mm up to " + band.upTo + " mm";
                return new Lookup(SYMBOL, cell, reference, List.of(opening), taken);
            }
        }
        BigDecimal end = bands.get(bands.size() - 1).upTo;
        return Withheld.noRule(
                SYMBOL,
                reference.clause() + " ends at an opening of " + end + " mm, and this one is " + Formula.shown(opening)
                        + ", through which more than an arm may pass");
    }
}
