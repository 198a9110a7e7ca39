package org.cellfile.standard;

import java.util.List;
import java.util.Optional;
import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Unit;
import org.cellfile.trace.Clause;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Reference;
import org.cellfile.trace.Standing.ReadInCopy;

/**
 * Values that named persons read in their copies of the standards. They take the place of what is held here from memory or not at
 * all; never of what was published: there the two are compared, and a difference is refused.
 *
 * @param all each for one key
 */
public record CopyValues(List<Read> all) {

    /** Nobody read anything. */
    public static final CopyValues NONE = new CopyValues(List.of());

    /**
     * One value.
     *
     * @param id of the value, as the register of fixed values lists it
     * @param clause in which it was read
     * @param by name of the person
     * @param on the day
     * @param copy which copy it was read in
     * @param place where that is stated
     */
    public record Read(
            String id, CopyKey key, Quantity is, String clause, String by, String on, String copy, String place) {

        /** Where it comes from, beside what is held here. */
        Reference reference(Reference asked, String here) {
            return new Reference(
                    id,
                    asked.name() + key.words(),
                    new Clause(asked.clause().edition(), clause),
                    new ReadInCopy(by, on, copy, place, here));
        }
    }

    public CopyValues {
        all = List.copyOf(all);
    }

    /** An edition with what was read of it; itself where nobody read anything. */
    public Edition into(Edition edition) {
        return all.isEmpty() ? edition : edition.reading(this);
    }

    /** A value held here for a key, or what was read in its place. */
    Fixed or(Fixed ours, CopyKey key) {
        if (!ours.reference().fromMemory()) {
            return ours;
        }
        return of(ours.reference().id(), key)
                .map(read -> new Fixed(
                        isItsOwnSymbol(ours) ? read.is.toString() : ours.symbol(),
                        read.is,
                        read.reference(ours.reference(), beside(ours.quantity(), read.is))))
                .orElse(ours);
    }

    /** Factors and bounds are written into formulas as the figures they are. */
    private static boolean isItsOwnSymbol(Fixed fixed) {
        return fixed.symbol().equals(fixed.quantity().toString());
    }

    /** A value of a safeguard that is not held here. */
    Optional<Fixed> forSafeguard(String symbol, Reference asked, String tag) {
        return of(asked.id(), new CopyKey.OfSafeguard(tag))
                .map(read -> new Fixed(symbol, read.is, read.reference(asked, "not publicly known")));
    }

    private Optional<Read> of(String id, CopyKey key) {
        return all.stream()
                .filter(read -> read.id.equals(id) && read.key.equals(key))
                .findFirst();
    }

    /** The cells that were read of a table of heights. */
    List<Read> cells(Reference table) {
        return all.stream()
                .filter(read -> read.id.equals(table.id()) && read.key instanceof CopyKey.Heights)
                .toList();
    }

    private static Quantity difference(Quantity more, Unit written) {
        return more.dimension().equals(Dimension.LENGTH)
                ? more.plain()
                : more.in(written).plain();
    }

    /** What is held here from memory, beside what was read. */
    private static String beside(Quantity ours, Quantity theirs) {
        int order = theirs.compareTo(ours);
        String side = order > 0 ? " more" : " less";
        String difference = order == 0
                ? "no difference"
                : "theirs is "
                        + (ours.dimension().equals(Dimension.LEVEL)
                                ? "one that asks for" + side
                                : difference(order > 0 ? theirs.minus(ours) : ours.minus(theirs), theirs.unit())
                                        + side);
        return "here from memory " + ours.plain() + ", " + difference;
    }
}
