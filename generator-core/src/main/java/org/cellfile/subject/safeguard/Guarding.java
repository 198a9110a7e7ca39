package org.cellfile.subject.safeguard;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cellfile.claim.Claim;
import org.cellfile.claim.Recomputed;
import org.cellfile.claim.Recorded;
import org.cellfile.claim.Relation;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Quantity;
import org.cellfile.source.Stated;
import org.cellfile.standard.Approach;
import org.cellfile.standard.Edition;
import org.cellfile.standard.PositioningStandard;
import org.cellfile.standard.Timing;
import org.cellfile.subject.hazard.Zone;
import org.cellfile.subject.identity.Instrument;
import org.cellfile.subject.safeguard.Surroundings.Rules;
import org.cellfile.subject.stopping.StopEvidence;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Given;
import org.cellfile.trace.Greatest;
import org.cellfile.trace.Least;
import org.cellfile.trace.Term;
import org.cellfile.trace.Withheld;

/**
 * A safeguard, recomputed under every edition in force: response time, separation distance, what is left of the installed
 * distance. Where several editions have a rule for it, each must hold and the greatest distance governs.
 */
public final class Guarding implements Recomputed {

    /** The safeguard stands closer to its hazard zone than the separation distance. */
    public static final FindingId TOO_CLOSE = new FindingId("installed.too-close");

    /** The uncertainty of the installed distance is as great as the distance. */
    public static final FindingId UNCERTAIN = new FindingId("safeguard.uncertain-distance");

    /** What an edition asks is not fully known, so that the safeguard cannot be cleared. */
    public static final FindingId NOT_CLEARED = new FindingId("safeguard.not-cleared");

    private final Safeguard safeguard;
    private final String about;
    private final List<Zone> zones;
    private final List<StopEvidence> stops;
    private final Function<Stated<String>, Optional<Instrument>> instruments;
    private final Rules rules;
    private final Optional<Derived> responseTime;
    private final List<Claim> ofTheDevice;
    private final List<Under> editions;
    private final Governing governing;
    private final Budget budget;

    /** The safeguard under one edition that has a rule for it. */
    public record Under(PositioningStandard edition, Positioning positioning) {}

    /**
     * @param about tag under which its values stand; the safeguard's own unless it is recomputed for comparison only
     * @param zones that it protects
     * @param stops that it triggers; none for kinds that stop nothing
     * @param instruments by their tags, with which its distances were measured
     */
    public Guarding(
            Safeguard safeguard,
            String about,
            List<Zone> zones,
            List<StopEvidence> stops,
            Function<Stated<String>, Optional<Instrument>> instruments,
            Rules rules) {
        this.safeguard = safeguard;
        this.about = about;
        this.zones = List.copyOf(zones);
        this.stops = List.copyOf(stops);
        this.instruments = instruments;
        this.rules = rules;
        ResponseTime chain = new ResponseTime(about, safeguard, stops);
        responseTime = chain.overall();
        Derived counted = Margin.counted(about, safeguard.installed());
        ofTheDevice = safeguard.device().requirements(about);
        editions = editions(chain.timing(), counted);
        governing = new Governing(about, editions, safeguard.installed());
        budget = new Budget(about, safeguard.installed(), counted, governing, chain.links());
    }

    private List<Under> editions(Timing timing, Term counted) {
        // What stands in the way by itself is not a matter of positioning editions: it is recomputed once.
        List<PositioningStandard> asked = safeguard.kind().stopsTheHazard()
                ? rules.positioning()
                : rules.positioning().subList(0, 1);
        List<Under> answers = new ArrayList<>();
        for (PositioningStandard edition : asked) {
            String tag = asked.size() == 1 ? about : about + "." + edition.slug();
            safeguard
                    .device()
                    .position(new Surroundings(edition, rules, approach(tag, timing, counted)))
                    .map(positioning -> asked.size() == 1 ? positioning : positioning.numbered(answers.size() + 1))
                    .ifPresent(positioning -> answers.add(new Under(edition, positioning)));
        }
        return answers;
    }

    private Approach approach(String tag, Timing timing, Term counted) {
        return new Approach(
                tag,
                timing,
                bound("a_1", "lowest point of the hazard", Zone::lowest, Least::new),
                bound("a_2", "highest point of the hazard", Zone::highest, Greatest::new),
                counted);
    }

    private Term bound(
            String symbol, String name, Function<Zone, Stated<Quantity>> height, Function<List<Term>, Term> bound) {
        List<Term> heights = zones.stream()
                .<Term>map(
                        zone -> new Given(symbol, name + " zone `" + zone.tag().characters() + "`", height.apply(zone)))
                .toList();
        if (heights.isEmpty()) {
            return new Withheld(symbol, "no hazard zone is named");
        }
        return heights.size() == 1 ? heights.get(0) : bound.apply(heights);
    }

    /**
     * The same safeguard as it would be if another edition were in force in place of those of its subject; empty when the edition
     * is about something that this safeguard does not depend on.
     */
    public Optional<Guarding> under(Edition other) {
        return rules.with(other, safeguard.kind().stopsTheHazard(), this::restsOn)
                .map(changed ->
                        new Guarding(safeguard, about + "." + other.slug(), zones, stops, instruments, changed));
    }

    private boolean restsOn(Edition edition) {
        return derived().stream()
                .flatMap(derived -> derived.references().stream())
                .anyMatch(reference -> reference.clause().edition().equals(edition.id()));
    }

    /** The editions in force in whose place another one would stand. */
    public List<Edition> editionsReplacedBy(Edition other) {
        return rules.replacedBy(other, safeguard.kind().stopsTheHazard(), this::restsOn);
    }

    public Safeguard safeguard() {
        return safeguard;
    }

    public List<Zone> zones() {
        return zones;
    }

    /** The safeguard under each edition in force that has a rule for it. */
    public List<Under> editions() {
        return editions;
    }

    /** The editions in force that have no rule for such a safeguard. */
    public List<PositioningStandard> silent() {
        return safeguard.kind().stopsTheHazard()
                ? rules.positioning().stream()
                        .filter(edition -> editions.stream()
                                .noneMatch(under -> under.edition().equals(edition)))
                        .toList()
                : List.of();
    }

    public Optional<Derived> responseTime() {
        return responseTime;
    }

    /** What the editions in force ask together. */
    public Governing governing() {
        return governing;
    }

    /** What is installed, and what is left of it. */
    public Budget budget() {
        return budget;
    }

    /** What the installed distance is held against: the separation distance, or the lower bound of it that is known. */
    public Derived separationDistance() {
        return governing.distance();
    }

    public Derived margin() {
        return budget.margin();
    }

    /** What is left of every distance measured at it: of its own, then at its places. */
    public List<Margin> margins() {
        return Stream.concat(
                        Stream.of(budget.own()),
                        editions.stream().flatMap(under -> under.positioning().margins().stream()))
                .toList();
    }

    /** True when what is known of the editions in force is enough to clear it, and it stands far enough. */
    public boolean cleared() {
        return tooClose().holds() && !governing.bounded();
    }

    @Override
    public String tag() {
        return safeguard.tag().characters();
    }

    @Override
    public List<Derived> derived() {
        List<Derived> derived = new ArrayList<>();
        responseTime.ifPresent(derived::add);
        derived.add(budget.counted());
        ofTheDevice.forEach(claim -> derived.add(claim.derived()));
        for (Under under : editions) {
            derived.addAll(under.positioning().others());
            if (!under.positioning().distance().about().equals(about)) {
                derived.add(under.positioning().distance());
                under.positioning().longestTime().ifPresent(derived::add);
            }
        }
        derived.add(governing.distance());
        governing.unknownDistance().ifPresent(derived::add);
        derived.add(budget.margin());
        derived.add(budget.nearest());
        governing.longestTime().ifPresent(derived::add);
        budget.longestStop().ifPresent(derived::add);
        return derived;
    }

    @Override
    public Recorded recorded() {
        return safeguard.recorded();
    }

    private Claim tooClose() {
        return new Claim(
                "installed distance",
                safeguard.installed().distance(),
                safeguard.installed().uncertainty().value(),
                governing.strict() ? Relation.MORE_THAN : Relation.AT_LEAST,
                governing.distance(),
                TOO_CLOSE,
                safeguard.device().whenTooClose(governing.distance()));
    }

    @Override
    public List<Claim> requirements() {
        List<Claim> requirements = new ArrayList<>(ofTheDevice);
        editions.forEach(under -> requirements.addAll(under.positioning().requirements()));
        if (uncertainty().isEmpty()) {
            requirements.add(tooClose());
        }
        return requirements;
    }

    /** No safeguard stands closer than at its hazard: then the uncertainty is wrong, or the measurement worth nothing. */
    private Optional<Finding> uncertainty() {
        Safeguard.Installed installed = safeguard.installed();
        boolean greater = installed
                .distance()
                .value()
                .flatMap(distance -> installed.uncertainty().value().map(doubt -> doubt.compareTo(distance) >= 0))
                .orElse(false);
        return greater
                ? Optional.of(
                        Finding.refuses(
                                UNCERTAIN,
                                tag(),
                                installed.uncertainty().where(),
                                "the uncertainty of the installed distance of `" + tag() + "`, "
                                        + installed.uncertainty().characters() + ", is not less than the distance, "
                                        + installed.distance().characters(),
                                "correct the uncertainty if it was mistyped; otherwise measure with an instrument that suits the distance"))
                : Optional.empty();
    }

    @Override
    public List<Finding> faults() {
        List<Finding> faults = new ArrayList<>();
        uncertainty().ifPresent(faults::add);
        editions.forEach(under -> faults.addAll(under.positioning().faults()));
        editions.forEach(under -> withheld(under).forEach(faults::add));
        notCalibrated(tag(), safeguard.installed()).ifPresent(faults::add);
        safeguard
                .device()
                .places()
                .forEach(place ->
                        notCalibrated(place.about(tag()), place.installed()).ifPresent(faults::add));
        if (editions.isEmpty()) {
            faults.add(
                    Finding.refuses(
                            Requirement.NO_RULE,
                            tag(),
                            safeguard.tag().where(),
                            "no edition in force has a rule that is publicly known for `" + tag() + "` ("
                                    + String.join(
                                            ", ",
                                            silent().stream()
                                                    .map(PositioningStandard::id)
                                                    .toList()) + ")",
                            "name under `standards` an edition that has one, or protect the zone by another kind of safeguard"));
        }
        governing.open().forEach(under -> faults.add(notCleared(under)));
        return faults;
    }

    private Optional<Finding> notCalibrated(String what, Safeguard.Installed measured) {
        return instruments
                .apply(measured.instrument())
                .flatMap(one -> one.notCalibrated(what, measured.instrument(), measured.on()));
    }

    /** What keeps an edition from a distance although all it needs is stated, unless the kind has said it of its own figures. */
    private Stream<Finding> withheld(Under under) {
        Set<String> said =
                under.positioning().faults().stream().map(Finding::sentence).collect(Collectors.toSet());
        return Requirement.withoutRuleBelow(under.positioning().distance()).stream()
                .filter(because -> said.stream().noneMatch(sentence -> sentence.contains(because)))
                .map(because -> Finding.refuses(
                        Requirement.NO_RULE,
                        tag(),
                        safeguard.tag().where(),
                        (safeguard.kind().stopsTheHazard()
                                        ? under.edition().id() + " gives no distance for `"
                                        : "there is no distance for `")
                                + tag() + "`: " + because,
                        "change what the edition has no rule for; no distance is guessed in its place"));
    }

    private Finding notCleared(Under under) {
        var open = under.positioning().position().open().orElseThrow();
        return Finding.refuses(
                NOT_CLEARED,
                tag(),
                safeguard.installed().distance().where(),
                "`" + tag() + "` cannot be cleared under " + under.edition().id() + ": " + open.because(),
                open.help());
    }

    @Override
    public String toString() {
        return about;
    }
}
