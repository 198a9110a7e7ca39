package org.cellfile.subject.safeguard;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.standard.Timing;
import org.cellfile.subject.stopping.StopEvidence;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Given;
import org.cellfile.trace.Greatest;
import org.cellfile.trace.Sum;
import org.cellfile.trace.Term;
import org.cellfile.trace.Withheld;

/** The response time of a safeguard, link by link, down to the slowest of the stops it triggers. */
final class ResponseTime {

    private final List<Term> links = new ArrayList<>();
    private final List<Term> device = new ArrayList<>();
    private final List<Term> machine = new ArrayList<>();
    private final Optional<Derived> overall;
    private final List<StopEvidence> stops;

    ResponseTime(String about, Safeguard safeguard, List<StopEvidence> stops) {
        this.stops = stops;
        for (Safeguard.Link link : safeguard.links()) {
            Given time = new Given(
                    "t_1" + (char) ('a' + links.size()),
                    link.name().characters() + ", " + link.source().characters(),
                    link.time());
            links.add(time);
            (link.ofTheDevice() ? device : machine).add(time);
        }
        Term slowest = slowest();
        machine.add(slowest);
        List<Term> all = new ArrayList<>(links);
        all.add(slowest);
        overall = safeguard.kind().stopsTheHazard()
                ? Optional.of(new Derived(
                        about,
                        "response-time",
                        "overall response time",
                        "T",
                        "sum of the links",
                        new Sum(all),
                        Rounding.up(Quantity.seconds("0.0001"))))
                : Optional.empty();
    }

    /** A safeguard that triggers several stops waits for the slowest. */
    private Term slowest() {
        if (stops.isEmpty()) {
            return new Withheld("t_2", "the stop test is not described");
        }
        if (stops.size() == 1) {
            return stops.get(0).carriedTime("t_2");
        }
        List<Term> times = new ArrayList<>();
        for (StopEvidence stop : stops) {
            times.add(stop.carriedTime("t_2" + (char) ('a' + times.size())));
        }
        return new Greatest(times);
    }

    /** The links before the stop, in signal order. */
    List<Term> links() {
        return links;
    }

    Optional<Derived> overall() {
        return overall;
    }

    /** Whole and by its parts; a brake monitor counts only when every stop has one. */
    Timing timing() {
        if (overall.isEmpty()) {
            return Timing.NONE;
        }
        List<Term> monitors = stops.stream()
                .map(StopEvidence::brakeMonitor)
                .flatMap(Optional::stream)
                .<Term>map(monitor -> monitor)
                .toList();
        boolean all = !stops.isEmpty() && monitors.size() == stops.size();
        return new Timing(
                overall.get(), device, machine, all ? Optional.of(Requirement.greatest(monitors)) : Optional.empty());
    }
}
