package org.cellfile.standard;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Unit;
import org.cellfile.standard.ReachStandard.Opening;
import org.cellfile.trace.Formula;
import org.cellfile.trace.Lookup;
import org.cellfile.trace.Reference;
import org.cellfile.trace.Term;
import org.cellfile.trace.Withheld;

/** A table of reach by shape and size of an opening, in mm, from a resource whose head names its source. */
final class OpeningTable {

    private final String symbol;
    private final String limb;
    private final Reference reference;
    private final List<String> shapes;
    private final List<Band> bands;

    /**
     * Openings up to a size.
     *
     * @param reach for each shape; empty where the body passes, so that no distance is enough
     * @param shortSlot what is enough for a slot that is short
     */
    private record Band(
            String part,
            BigDecimal above,
            BigDecimal upTo,
            List<Optional<Quantity>> reach,
            Optional<ShortSlot> shortSlot) {}

    private record ShortSlot(Quantity upTo, Quantity reach) {}

    private OpeningTable(String symbol, String limb, Reference reference, List<String> shapes, List<Band> bands) {
        this.symbol = symbol;
        this.limb = limb;
        this.reference = reference;
        this.shapes = shapes;
        this.bands = bands;
    }

    /**
     * Reads the resource beside this class: part of the body, above, up to, then a column for each of three shapes, then the
     * length up to which a slot counts as short and the reach through it.
     *
     * @param limb the largest thing that passes, for example {@code an arm}
     */
    static OpeningTable load(String resource, String symbol, String limb, Reference reference) {
        List<List<String>> lines = HeightTable.lines(resource);
        List<Band> bands = lines.stream().skip(1).map(OpeningTable::band).toList();
        return new OpeningTable(symbol, limb, reference, lines.get(0).subList(3, 6), bands);
    }

    private static Band band(List<String> line) {
        return new Band(
                line.get(0),
                new BigDecimal(line.get(1)),
                new BigDecimal(line.get(2)),
                line.subList(3, 6).stream().map(OpeningTable::cell).toList(),
                cell(line.get(6)).flatMap(upTo -> cell(line.get(7)).map(reach -> new ShortSlot(upTo, reach))));
    }

    private static Optional<Quantity> cell(String text) {
        return text.isEmpty() ? Optional.empty() : Optional.of(Quantity.millimetres(text));
    }

    /** The reach through an opening; withheld when the opening is larger than the table covers. */
    Term reach(Opening opening) {
        if (opening.size().value().isEmpty()) {
            return new Withheld(symbol, "the opening is not known");
        }
        BigDecimal size = opening.size().value().get().coherent();
        for (Band band : bands) {
            if (size.compareTo(band.upTo) <= 0) {
                return reach(opening, band);
            }
        }
        return beyond(opening, bands.get(bands.size() - 1).upTo);
    }

    private Term reach(Opening opening, Band band) {
        String row = symbol + ": " + opening.shape() + " opening e = " + Formula.shown(opening.size()) + ", row "
                + band.part + ", above " + band.above + " mm up to " + band.upTo + " mm";
        Optional<Term> length = opening.length().filter(known -> isShort(opening.shape(), known, band));
        if (length.isPresent()) {
            ShortSlot slot = band.shortSlot.orElseThrow();
            return new Lookup(
                    symbol,
                    slot.reach,
                    reference,
                    List.of(opening.size(), length.get()),
                    row + "; the slot is " + Formula.shown(length.get()) + " long, not more than " + slot.upTo);
        }
        return band.reach
                .get(shapes.indexOf(opening.shape()))
                .<Term>map(cell -> new Lookup(symbol, cell, reference, List.of(opening.size()), row))
                .orElseGet(() -> beyond(opening, band.above));
    }

    private static boolean isShort(String shape, Term length, Band band) {
        return shape.equals("slot")
                && band.shortSlot
                        .flatMap(slot -> length.value().map(value -> value.compareTo(slot.upTo) <= 0))
                        .orElse(false);
    }

    private Term beyond(Opening opening, BigDecimal end) {
        return Withheld.noRule(
                symbol,
                reference.clause() + " ends at an opening of " + new Quantity(end, Unit.MILLIMETRE)
                        + ", and this one is " + Formula.shown(opening.size())
                        + ", through which more than " + limb + " may pass");
    }
}
