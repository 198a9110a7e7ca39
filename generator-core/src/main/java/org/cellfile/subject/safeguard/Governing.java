package org.cellfile.subject.safeguard;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.subject.safeguard.Guarding.Under;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Withheld;

/**
 * What the editions in force together ask of a safeguard: each must hold, so that the greatest distance and the least time govern.
 * Where one of them is known in part only, no more than a lower bound of the distance is known.
 */
public final class Governing {

    /** Why a value that rests on the distance is withheld. */
    static final String BOUNDED = "only a lower bound of the separation distance is known";

    private final String about;
    private final List<Under> editions;
    private final Rounding rounding;
    private final Derived distance;
    private final Optional<Derived> longestTime;

    /**
     * @param about tag under which the values stand
     * @param editions those in force that have a rule for the safeguard
     * @param installed as measured, in whose unit the distance is printed
     */
    Governing(String about, List<Under> editions, Safeguard.Installed installed) {
        this.about = about;
        this.editions = editions;
        // In the unit the installed distance was measured in, so that the two can be compared at a glance.
        rounding = Rounding.up(Quantity.millimetres("1"))
                .beside(installed.distance().value());
        distance = governingDistance();
        longestTime = governingTime();
    }

    private Derived governingDistance() {
        List<Derived> each =
                editions.stream().map(under -> under.positioning().distance()).toList();
        if (alone(each)) {
            return each.get(0).at(rounding);
        }
        return new Derived(
                about,
                bounded() ? "lower-bound" : "separation-distance",
                bounded() ? "lower bound of the separation distance" : "separation distance",
                bounded() ? "S_low" : "S",
                "the greatest of the editions in force",
                each.isEmpty()
                        ? Withheld.noRule("S", "none of the editions in force has a rule for it")
                        : Requirement.greatest(each),
                rounding);
    }

    private Optional<Derived> governingTime() {
        List<Derived> each = editions.stream()
                .map(under -> under.positioning().longestTime())
                .flatMap(Optional::stream)
                .toList();
        if (each.isEmpty() || alone(each)) {
            return each.stream().findFirst();
        }
        return Optional.of(new Derived(
                about,
                "longest-response-time",
                each.get(0).words(),
                "T_max",
                "the least of the editions in force",
                Requirement.least(each),
                each.get(0).rounding()));
    }

    /** True when one edition answers for itself, under the tag of the safeguard. */
    private boolean alone(List<Derived> each) {
        return each.size() == 1 && each.get(0).about().equals(about);
    }

    /** What the installed distance is held against: the separation distance, or the lower bound of it that is known. */
    public Derived distance() {
        return distance;
    }

    /** The longest overall response time the installed distance allows; empty where no time counts. */
    public Optional<Derived> longestTime() {
        return longestTime;
    }

    /** Where only a lower bound is known, the distance itself: nobody's own figure for it is held against the bound. */
    public Optional<Derived> unknownDistance() {
        return bounded()
                ? Optional.of(new Derived(
                        about,
                        "separation-distance",
                        "separation distance",
                        "S",
                        "the editions in force",
                        new Withheld("S", BOUNDED),
                        rounding))
                : Optional.empty();
    }

    /** True when the installed distance must be more than the separation distance, not just as much. */
    public boolean strict() {
        return editions.stream()
                .filter(under -> under.positioning().distance().value().equals(distance.value()))
                .anyMatch(under -> under.positioning().position().strict());
    }

    /** True when of the separation distance only a lower bound is known. */
    public boolean bounded() {
        return open().findAny().isPresent();
    }

    /** The editions that are known in part only. */
    Stream<Under> open() {
        return editions.stream()
                .filter(under -> under.positioning().position().open().isPresent());
    }
}
