package org.cellfile.subject.safeguard;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.cellfile.claim.Recorded;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Quantity;
import org.cellfile.read.Recordings;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.subject.hazard.Zone;
import org.cellfile.subject.identity.Identity;
import org.cellfile.subject.identity.Instrument;
import org.cellfile.subject.identity.Person;
import org.cellfile.subject.stopping.StopTest;

/**
 * A safeguard as installed.
 *
 * @param protects tags of hazard zones
 * @param triggers what it does to the machine
 * @param stopTests the stops it triggers, the slowest of which it waits for; none for kinds that stop nothing
 * @param links the parts of its response time before the stop, in signal order
 */
public record Safeguard(
        Stated<String> tag,
        Kind kind,
        Stated<String> name,
        Stated<String> model,
        Stated<String> serial,
        Stated<String> position,
        List<Stated<String>> protects,
        Stated<String> triggers,
        List<Stated<String>> stopTests,
        List<Link> links,
        Device device,
        Installed installed,
        Recorded recorded) {

    public static final String SORT = "safeguard";

    /** Something is said to protect a hazard zone that never does. */
    public static final FindingId NEVER_GUARDS = new FindingId("complementary.never-guards");

    /**
     * A part of the response time.
     *
     * @param part {@code device} for what is the protective device's own; everything else counts as the machine's
     */
    public record Link(Stated<String> name, Stated<Quantity> time, Stated<String> part, Stated<String> source) {
        static Link read(Section section) {
            return new Link(
                    section.text("link"),
                    section.quantity("time", Dimension.TIME),
                    section.wordIfStated("part", Set.of("device", "control")),
                    section.text("source"));
        }

        boolean ofTheDevice() {
            return part.value().filter("device"::equals).isPresent();
        }
    }

    /**
     * The distance as measured at the machine.
     *
     * @param uncertainty by which the true distance may be shorter
     */
    public record Installed(
            Stated<Quantity> distance,
            Stated<Quantity> uncertainty,
            Stated<String> from,
            Stated<String> to,
            Stated<String> by,
            Stated<LocalDate> on,
            Stated<String> instrument) {
        static Installed read(Section section) {
            Installed installed = new Installed(
                    section.quantity("distance", Dimension.LENGTH),
                    section.quantity("uncertainty", Dimension.LENGTH),
                    section.text("from"),
                    section.text("to"),
                    section.reference("by", Person.SORT),
                    section.date("on"),
                    section.reference("instrument", Instrument.SORT));
            section.close();
            return installed;
        }

        /** How it was measured, for print. */
        Fact fact(String label, String name, Identity identity) {
            return new Fact(
                    label,
                    name + distance.characters() + " less " + uncertainty.characters() + " uncertainty",
                    "from " + from.characters() + " to " + to.characters() + "; measured by " + identity.nameOf(by)
                            + " on " + on.characters() + " with " + instrument.characters());
        }
    }

    /** Every distance measured at it: its own, then those of its places. */
    public List<Installed> measured() {
        return Stream.concat(Stream.of(installed), device.places().stream().map(Place::installed))
                .toList();
    }

    /** The same for print. */
    List<Fact> measured(Identity identity) {
        return Stream.concat(
                        Stream.of(installed.fact("Installed distance", "", identity)),
                        device.places().stream()
                                .map(place -> place.installed()
                                        .fact(
                                                "Distance at the " + place.sort(),
                                                place.name().characters() + ": ",
                                                identity)))
                .toList();
    }

    /** Reads a safeguard; empty when its kind is not known, which was then reported. */
    public static Optional<Safeguard> read(Section section) {
        Stated<String> tag = section.tag(SORT);
        Stated<String> word = section.textIfStated("kind");
        if (Kinds.COMPLEMENTARY.contains(word.characters())) {
            section.report(neverGuards(tag, word, "is listed as a safeguard of the kind `" + word.characters() + "`"));
            return Optional.empty();
        }
        Optional<Kind> known = section.word("kind", Kinds.ids()).value().flatMap(Kinds::of);
        if (known.isEmpty()) {
            return Optional.empty();
        }
        Kind kind = known.get();
        Safeguard safeguard = new Safeguard(
                tag,
                kind,
                section.text("name"),
                section.text("model"),
                section.text("serial"),
                section.text("position"),
                section.references("protects", Zone.SORT),
                kind.stopsTheHazard() ? section.text("triggers") : nothing(section, "triggers"),
                kind.stopsTheHazard() ? section.references("stop-tests", StopTest.SORT) : List.of(),
                kind.stopsTheHazard() ? Section.each(section.list("response"), Link::read) : List.of(),
                kind.read(section, tag.characters()),
                Installed.read(section.section("installed")),
                Recordings.read(section, tag.characters()));
        section.close();
        return Optional.of(safeguard);
    }

    /**
     * The finding about a device that complements safeguards and is taken for one.
     *
     * @param tag of the device
     * @param at the characters that say so
     */
    public static Finding neverGuards(Stated<String> tag, Stated<String> at, String said) {
        return Finding.refuses(
                NEVER_GUARDS,
                tag.characters(),
                at.where(),
                "`" + tag.characters() + "` " + said + ", and such a device never guards a hazard zone",
                "list it under `complementary`, with its `sort` and without `protects`, and name a safeguard that keeps"
                        + " people from the zone");
    }

    private static Stated<String> nothing(Section section, String key) {
        return new Stated.Missing<>(section.where(), key);
    }
}
