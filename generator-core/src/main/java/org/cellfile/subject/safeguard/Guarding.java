package org.cellfile.subject.safeguard;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cellfile.claim.Claim;
import org.cellfile.claim.Recomputed;
import org.cellfile.claim.Recorded;
import org.cellfile.claim.Relation;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.subject.hazard.Zone;
import org.cellfile.subject.identity.Instrument;
import org.cellfile.subject.stopping.StopEvidence;
import org.cellfile.trace.Case;
import org.cellfile.trace.Case.Branch;
import org.cellfile.trace.Condition;
import org.cellfile.trace.Condition.Comparison;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Difference;
import org.cellfile.trace.Given;
import org.cellfile.trace.Greatest;
import org.cellfile.trace.Least;
import org.cellfile.trace.Sum;
import org.cellfile.trace.Term;
import org.cellfile.trace.Withheld;

/** A safeguard, recomputed: response time, separation distance, what is left of the installed distance. */
public final class Guarding implements Recomputed {

    /** The safeguard stands closer to its hazard zone than the separation distance. */
    public static final FindingId TOO_CLOSE = new FindingId("installed.too-close");

    private final Safeguard safeguard;
    private final List<Zone> zones;
    private final Optional<Instrument> instrument;
    private final Optional<Derived> responseTime;
    private final Positioning positioning;
    private final Derived margin;
    private final Optional<Derived> longestStop;

    /**
     * @param zones that it protects
     * @param stops that it triggers; none for kinds that stop nothing
     * @param instrument its distance was measured with
     */
    public Guarding(
            Safeguard safeguard,
            List<Zone> zones,
            List<StopEvidence> stops,
            Optional<Instrument> instrument,
            Surroundings.Rules rules) {
        this.safeguard = safeguard;
        this.zones = List.copyOf(zones);
        this.instrument = instrument;
        String tag = tag();
        List<Term> links = links();
        responseTime =
                safeguard.kind().stopsTheHazard() ? Optional.of(responseTime(tag, links, stops)) : Optional.empty();
        Given installed =
                new Given("X", "installed distance", safeguard.installed().distance());
        positioning = safeguard
                .device()
                .position(new Surroundings(
                        tag,
                        rules,
                        responseTime.<Term>map(time -> time).orElseGet(() -> new Withheld("T", "it stops nothing")),
                        bound(zones, "a_1", "lowest point of the hazard", Zone::lowest, Least::new),
                        bound(zones, "a_2", "highest point of the hazard", Zone::highest, Greatest::new),
                        installed));
        margin = new Derived(
                tag,
                "margin",
                "margin of the installed distance",
                "M",
                "difference",
                new Difference(installed, positioning.distance()),
                Rounding.down(Quantity.millimetres("1")));
        longestStop = positioning.longestTime().map(longest -> longestStop(tag, longest, links));
    }

    private List<Term> links() {
        List<Term> links = new ArrayList<>();
        for (Safeguard.Link link : safeguard.links()) {
            links.add(new Given(
                    "t_1" + (char) ('a' + links.size()),
                    link.name().characters() + ", " + link.source().characters(),
                    link.time()));
        }
        return links;
    }

    private static Derived responseTime(String tag, List<Term> links, List<StopEvidence> stops) {
        List<Term> all = new ArrayList<>(links);
        all.add(slowest(stops));
        return new Derived(
                tag,
                "response-time",
                "overall response time",
                "T",
                "sum of the links",
                new Sum(all),
                Rounding.up(Quantity.seconds("0.0001")));
    }

    /** A safeguard that triggers several stops waits for the slowest. */
    private static Term slowest(List<StopEvidence> stops) {
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

    private static Derived longestStop(String tag, Derived longest, List<Term> links) {
        Term before = new Sum(links);
        return new Derived(
                tag,
                "longest-stopping-time",
                "longest stopping time the installed distance allows",
                "t_2,max",
                "difference",
                new Case(
                        List.of(new Branch(
                                new Condition(longest, Comparison.LESS, before),
                                new Withheld("t_2,max", "the links before the stop alone take longer"))),
                        new Difference(longest, before)),
                Rounding.down(Quantity.seconds("0.001")));
    }

    private static Term bound(
            List<Zone> zones,
            String symbol,
            String name,
            java.util.function.Function<Zone, org.cellfile.source.Stated<Quantity>> height,
            java.util.function.Function<List<Term>, Term> bound) {
        List<Term> heights = zones.stream()
                .<Term>map(
                        zone -> new Given(symbol, name + " zone `" + zone.tag().characters() + "`", height.apply(zone)))
                .toList();
        if (heights.isEmpty()) {
            return new Withheld(symbol, "no hazard zone is named");
        }
        return heights.size() == 1 ? heights.get(0) : bound.apply(heights);
    }

    public Safeguard safeguard() {
        return safeguard;
    }

    public List<Zone> zones() {
        return zones;
    }

    public Optional<Derived> responseTime() {
        return responseTime;
    }

    public Derived separationDistance() {
        return positioning.distance();
    }

    public Derived margin() {
        return margin;
    }

    public Optional<Derived> longestStop() {
        return longestStop;
    }

    @Override
    public String tag() {
        return safeguard.tag().characters();
    }

    @Override
    public List<Derived> derived() {
        List<Derived> derived = new ArrayList<>();
        responseTime.ifPresent(derived::add);
        derived.addAll(positioning.others());
        derived.add(positioning.distance());
        derived.add(margin);
        positioning.longestTime().ifPresent(derived::add);
        longestStop.ifPresent(derived::add);
        return derived;
    }

    @Override
    public Recorded recorded() {
        return safeguard.recorded();
    }

    @Override
    public List<Claim> requirements() {
        List<Claim> requirements = new ArrayList<>(positioning.requirements());
        requirements.add(new Claim(
                "installed distance",
                safeguard.installed().distance(),
                Relation.AT_LEAST,
                positioning.distance(),
                TOO_CLOSE,
                "move the safeguard away from the hazard zone, or shorten the stop and measure it again; until then a named"
                        + " person may state a deviation"));
        return requirements;
    }

    @Override
    public List<Finding> faults() {
        List<Finding> faults = new ArrayList<>(positioning.faults());
        instrument
                .flatMap(one -> one.notCalibrated(
                        tag(),
                        safeguard.installed().instrument(),
                        safeguard.installed().on()))
                .ifPresent(faults::add);
        return faults;
    }
}
