package org.cellfile.subject.safeguard;

import java.util.List;
import java.util.Optional;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.source.Stated;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Difference;
import org.cellfile.trace.Given;
import org.cellfile.trace.Sum;
import org.cellfile.trace.Term;
import org.cellfile.trace.Withheld;

/**
 * What is left of a measured distance: of the safeguard's own, or of that at one of its places.
 *
 * @param place where it was measured; empty for the safeguard's own distance
 * @param counted the measured distance less its uncertainty
 * @param margin of the counted distance over the one needed
 * @param nearest distance still allowed, as it would be measured
 */
public record Margin(
        Optional<Place> place, Safeguard.Installed installed, Derived counted, Derived margin, Derived nearest) {

    private static final Quantity STEP = Quantity.millimetres("1");

    /** The installed distance of a safeguard less its uncertainty. */
    static Derived counted(String about, Safeguard.Installed installed) {
        return counted(about, "", "installed distance less its uncertainty", "X", installed);
    }

    /**
     * What is left of the installed distance of a safeguard.
     *
     * @param about tag under which the values stand
     */
    static Margin own(String about, Safeguard.Installed installed, Derived counted, Governing governing) {
        return new Margin(
                Optional.empty(),
                installed,
                counted,
                new Derived(
                        about,
                        "margin",
                        "margin of the installed distance",
                        "M",
                        "difference",
                        governing.bounded()
                                ? new Withheld("M", Governing.BOUNDED)
                                : new Difference(counted, governing.distance()),
                        down(installed)),
                new Derived(
                        about,
                        "nearest-position",
                        "nearest position still allowed, as measured",
                        "X_min",
                        "sum",
                        governing.bounded()
                                ? new Withheld("X_min", Governing.BOUNDED)
                                : Sum.of(governing.distance(), uncertainty(installed)),
                        up(installed)));
    }

    /**
     * What is left at a place of a safeguard.
     *
     * @param about tag under which the values stand
     * @param needed distance there
     */
    static Margin at(String about, Place place, Term needed) {
        Safeguard.Installed installed = place.installed();
        String where = " at an " + place.sort() + " (" + place.name().characters() + ")";
        Derived counted = counted(
                about,
                "-" + place.key(),
                "distance" + where + " less its uncertainty",
                "X_" + place.index(),
                installed);
        return new Margin(
                Optional.of(place),
                installed,
                counted,
                new Derived(
                        about,
                        "margin-" + place.key(),
                        "margin" + where,
                        "M_" + place.index(),
                        "difference",
                        new Difference(counted, needed),
                        down(installed)),
                new Derived(
                        about,
                        "nearest-position-" + place.key(),
                        "least distance still allowed" + where + ", as measured",
                        "X_min," + place.index(),
                        "sum",
                        Sum.of(needed, uncertainty(installed)),
                        up(installed)));
    }

    private static Derived counted(
            String about, String suffix, String words, String symbol, Safeguard.Installed installed) {
        return new Derived(
                about,
                "counted-distance" + suffix,
                words,
                symbol,
                "difference",
                new Difference(new Given("X_m", "installed distance", installed.distance()), uncertainty(installed)),
                down(installed));
    }

    private static Given uncertainty(Safeguard.Installed installed) {
        return new Given("u", "uncertainty of its measurement", installed.uncertainty());
    }

    private static Rounding down(Safeguard.Installed installed) {
        return Rounding.down(STEP).beside(installed.distance().value());
    }

    private static Rounding up(Safeguard.Installed installed) {
        return Rounding.up(STEP).beside(installed.distance().value());
    }

    /** The values in the order to be read. */
    List<Derived> derived() {
        return List.of(counted, margin, nearest);
    }

    /** What it is about: the tag of the safeguard, with the name of the place where there is one. */
    public String about(String safeguard) {
        return place.map(one -> one.about(safeguard)).orElse(safeguard);
    }

    /**
     * Tags of the hazard zones it counts for.
     *
     * @param protectedOnes all that its safeguard protects
     */
    List<Stated<String>> zones(List<Stated<String>> protectedOnes) {
        return place.map(Place::leadsTo).filter(zones -> !zones.isEmpty()).orElse(protectedOnes);
    }
}
