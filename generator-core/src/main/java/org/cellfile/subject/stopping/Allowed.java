package org.cellfile.subject.stopping;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.subject.stopping.StopTrend.Allowing;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Difference;
import org.cellfile.trace.Given;
import org.cellfile.trace.Least;
import org.cellfile.trace.Term;

/**
 * How long a stop may take before the first of its safeguards would stand too close. An allowance for a brake that wears which an
 * edition asks for has been taken off there already.
 *
 * @param time empty where it is not known
 * @param because why it is not known, as a sentence without a full stop
 */
public record Allowed(Optional<Derived> time, String because) {

    static Allowed of(String about, List<Allowing> allowing, Optional<WearAllowance> wear) {
        if (allowing.isEmpty()) {
            return unknown("no safeguard triggers this stop, so that none limits its time");
        }
        List<Term> longest = new ArrayList<>();
        for (Allowing one : allowing) {
            Optional<Derived> known =
                    one.longestStop().filter(stop -> stop.value().isPresent());
            if (known.isEmpty()) {
                return unknown("how long the stop may take at the distance of `" + one.safeguard() + "` is not known");
            }
            longest.add(known.get().numbered(longest.size() + 1));
        }
        if (wear.filter(one -> one.time().value().isEmpty()).isPresent()) {
            return unknown("the allowance for wear could not be read");
        }
        Term least = longest.size() == 1 ? longest.get(0) : new Least(longest);
        Term expression = wear.<Term>map(one -> new Difference(
                        least,
                        new Given("t_w", "allowance for wear, " + one.source().characters(), one.time())))
                .orElse(least);
        return new Allowed(
                Optional.of(new Derived(
                        about,
                        "allowed-time",
                        "longest stopping time that all its safeguards allow"
                                + (wear.isPresent() ? ", less the allowance for wear" : ""),
                        "t_a",
                        "the least of its safeguards",
                        expression,
                        Rounding.down(Quantity.seconds("0.001")))),
                "");
    }

    private static Allowed unknown(String because) {
        return new Allowed(Optional.empty(), because);
    }
}
