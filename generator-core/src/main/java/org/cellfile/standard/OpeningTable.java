package org.cellfile.standard;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Unit;
import org.cellfile.standard.Asked.Form;
import org.cellfile.standard.ReachStandard.Opening;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Formula;
import org.cellfile.trace.Lookup;
import org.cellfile.trace.Reference;
import org.cellfile.trace.Term;
import org.cellfile.trace.Withheld;

/** A table of reach by shape and size of an opening, in mm, from a resource whose head names its source. */
final class OpeningTable {

    /** The column of a slot so short that less is enough. */
    static final String SHORT_SLOT = "short-slot";

    private final String symbol;
    private final String limb;
    private final Reference reference;
    private final List<Band> bands;
    private final Map<CopyKey, Fixed> ours;

    /**
     * Openings up to a size.
     *
     * @param reach by shape, as it counts: as read in a copy, or as held here; a shape is missing where the body passes, so that no
     *     distance is enough
     * @param shortUpTo up to which length a slot is short; empty where no slot is
     */
    private record Band(
            String part, BigDecimal above, BigDecimal upTo, Map<String, Fixed> reach, Optional<Quantity> shortUpTo) {}

    private OpeningTable(String symbol, String limb, Reference reference, List<Band> bands, Map<CopyKey, Fixed> ours) {
        this.symbol = symbol;
        this.limb = limb;
        this.reference = reference;
        this.bands = bands;
        this.ours = ours;
    }

    /**
     * Reads the resource beside this class: part of the body, above, up to, then a column for each of three shapes, then the
     * length up to which a slot counts as short and the reach through it.
     *
     * @param limb the largest thing that passes, for example {@code an arm}
     * @param apart cells that cite a reference of their own
     * @param copy whose cells stand in place of those held here from memory
     */
    static OpeningTable load(
            String resource,
            String symbol,
            String limb,
            Reference reference,
            Map<CopyKey, Reference> apart,
            CopyValues copy) {
        List<List<String>> lines = HeightTable.lines(resource);
        List<String> shapes = lines.get(0).subList(3, 6);
        Map<CopyKey, Fixed> ours = new HashMap<>();
        List<Band> bands = new ArrayList<>();
        for (List<String> line : lines.subList(1, lines.size())) {
            Map<String, Fixed> reach = new HashMap<>();
            for (int column : List.of(3, 4, 5, 7)) {
                String shape = column < 6 ? shapes.get(column - 3) : SHORT_SLOT;
                CopyKey key = new CopyKey.Opening(Optional.of(shape), Quantity.millimetres(line.get(2)));
                cell(line.get(column)).ifPresent(cell -> {
                    Fixed held = new Fixed(symbol, cell, apart.getOrDefault(key, reference));
                    ours.put(key, held);
                    reach.put(shape, copy.or(held, key));
                });
            }
            bands.add(new Band(
                    line.get(0), new BigDecimal(line.get(1)), new BigDecimal(line.get(2)), reach, cell(line.get(6))));
        }
        return new OpeningTable(symbol, limb, reference, bands, ours);
    }

    private static Optional<Quantity> cell(String text) {
        return text.isEmpty() ? Optional.empty() : Optional.of(Quantity.millimetres(text));
    }

    /** What a copy can tell of it: every cell. */
    List<Asked> asked() {
        return Asked.of(Form.OPENINGS, ours);
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
            return lookup(
                    Objects.requireNonNull(band.reach.get(SHORT_SLOT)),
                    List.of(opening.size(), length.get()),
                    row + "; the slot is " + Formula.shown(length.get()) + " long, not more than "
                            + band.shortUpTo.orElseThrow());
        }
        return Optional.ofNullable(band.reach.get(opening.shape()))
                .map(cell -> lookup(cell, List.of(opening.size()), row))
                .orElseGet(() -> beyond(opening, band.above));
    }

    private Term lookup(Fixed cell, List<Term> keys, String taken) {
        return new Lookup(symbol, cell.quantity(), cell.reference(), keys, taken);
    }

    private static boolean isShort(String shape, Term length, Band band) {
        return shape.equals("slot")
                && band.shortUpTo
                        .flatMap(upTo -> length.value().map(value -> value.compareTo(upTo) <= 0))
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
