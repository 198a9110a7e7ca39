package org.cellfile.subject.safeguard;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cellfile.claim.Claim;
import org.cellfile.claim.Relation;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.standard.ReachStandard;
import org.cellfile.subject.hazard.Zone;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Given;
import org.cellfile.trace.Greatest;
import org.cellfile.trace.Term;
import org.cellfile.trace.Withheld;

/**
 * An opening left in a fixed guard, for instance for what is carried in or out.
 *
 * @param lowerEdge its height above the floor; counts for openings wider than the reach through openings is known for
 * @param installed the distance from the opening to the nearest hazard; empty where another safeguard covers it, as that one's counts
 * @param guardedBy tag of another safeguard that covers it
 * @param leadsTo tags of the hazard zones behind it; empty for all that the fence protects
 */
record FenceOpening(
        Stated<String> name,
        Aperture aperture,
        Stated<Quantity> lowerEdge,
        Optional<Safeguard.Installed> installed,
        Stated<String> guardedBy,
        List<Stated<String>> leadsTo) {

    /** The hazard is nearer to an opening than one reaches through it. */
    static final FindingId TOO_CLOSE = new FindingId("installed.opening-too-close");

    /** An opening lets a body through and nothing covers it. */
    static final FindingId PASSES_BODY = new FindingId("installed.opening-passes-body");

    /** An opening is said to reach above the fence that it is in. */
    static final FindingId ABOVE_IT = new FindingId("fixed-fence.opening-above-it");

    private static final Rounding DISTANCE = Rounding.up(Quantity.millimetres("1"));

    static FenceOpening read(Section section, String fence, Stated<Quantity> height) {
        FenceOpening opening = new FenceOpening(
                section.text("name"),
                Aperture.read(section),
                section.quantityIfStated("lower-edge", Dimension.LENGTH),
                section.has("guarded-by")
                        ? Optional.empty()
                        : Optional.of(Safeguard.Installed.read(section.section("installed"))),
                section.referenceIfStated("guarded-by", Safeguard.SORT),
                section.referencesIfStated("leads-to", Zone.SORT));
        opening.above(fence, height).ifPresent(section::report);
        return opening;
    }

    /** The upper edge is at least the size above the lower one, whichever way a slot lies. */
    private Optional<Finding> above(String fence, Stated<Quantity> height) {
        return lowerEdge
                .value()
                .flatMap(
                        lower -> aperture.size()
                                .value()
                                .map(size -> lower.plus(size).in(lower.unit()).plain())
                                .filter(upper -> height.value()
                                        .filter(top -> upper.compareTo(top) > 0)
                                        .isPresent())
                                .map(
                                        upper -> Finding.refuses(
                                                ABOVE_IT,
                                                fence,
                                                lowerEdge.where(),
                                                "the opening `" + name.characters() + "` of `" + fence + "` begins at "
                                                        + lowerEdge.characters()
                                                        + " and ends no lower than " + upper
                                                        + ", above the fence, which is "
                                                        + height.characters() + " high",
                                                "measure both from the floor people stand on; what is above the fence is no opening in it")));
    }

    Fact fact() {
        List<String> notes = new ArrayList<>();
        lowerEdge.value().ifPresent(lower -> notes.add("from " + lowerEdge.characters() + " above the floor"));
        guardedBy.value().ifPresent(tag -> notes.add("covered by " + tag));
        if (!leadsTo.isEmpty()) {
            notes.add("leads to " + leadsTo.stream().map(Stated::characters).collect(Collectors.joining(", ")));
        }
        return new Fact("Opening", name.characters() + ": " + aperture.words(), String.join("; ", notes));
    }

    /**
     * Where its distance was measured; empty where another safeguard covers it.
     *
     * @param number of the opening in its fence, from 1
     */
    Optional<Place> place(int number) {
        return installed.map(measured -> new Place("opening", number, String.valueOf(number), name, leadsTo, measured));
    }

    Device.LeftOpen leftOpen() {
        return new Device.LeftOpen(name, guardedBy, leadsTo);
    }

    /**
     * What must hold for it.
     *
     * @param number of the opening in its fence, from 1
     */
    Demands demands(Surroundings around, int number) {
        return place(number).map(place -> demands(around, place)).orElse(Demands.NONE);
    }

    private Demands demands(Surroundings around, Place place) {
        int number = place.number();
        Safeguard.Installed measured = place.installed();
        Optional<Derived> widest = aperture.shape()
                .value()
                .flatMap(around.reach()::widestWithoutBody)
                .map(limit -> Requirement.bound(around.tag(), "widest-opening-" + number, limit, Rounding.Side.DOWN));
        Optional<Claim> body = widest.map(limit -> new Claim(
                "opening `" + name.characters() + "`",
                aperture.size(),
                Relation.AT_MOST,
                limit,
                PASSES_BODY,
                "make it smaller, or name under `guarded-by` the safeguard that covers it"));
        if (body.flatMap(Claim::finding).isPresent()) {
            Margin unknown =
                    Margin.at(around.tag(), place, new Withheld("s_" + number, "a body passes, whatever the distance"));
            return new Demands(
                    Stream.concat(widest.stream(), unknown.derived().stream()).toList(),
                    body.stream().toList(),
                    List.of(),
                    List.of(unknown));
        }
        Term reach = reach(around);
        Derived needed = new Derived(
                around.tag(),
                "reach-opening-" + number,
                "reach through an opening (" + name.characters() + ")",
                "s_" + number,
                around.reach().clause("tables 4 and 7"),
                reach,
                DISTANCE.beside(measured.distance().value()));
        Margin margin = Margin.at(around.tag(), place, needed);
        Claim far = new Claim(
                "distance behind the opening `" + name.characters() + "`",
                measured.distance(),
                measured.uncertainty().value(),
                Relation.AT_LEAST,
                needed,
                TOO_CLOSE,
                "make the opening smaller, put a tunnel before it, or move the hazard away");
        return new Demands(
                Stream.of(Stream.of(needed), widest.stream(), margin.derived().stream())
                        .flatMap(parts -> parts)
                        .toList(),
                body.map(limit -> List.of(limit, far)).orElseGet(() -> List.of(far)),
                Requirement.covered(
                        around.tag(),
                        aperture.size(),
                        reach,
                        "make the opening smaller, name under `guarded-by` the safeguard that covers it, or, where it begins"
                                + " 1000 mm or more above the floor, state that height as `lower-edge`"),
                List.of(margin));
    }

    /**
     * With arms or legs, whichever reach farther. Through an opening wider than table 4 knows, the arm counts as reaching over
     * the lower edge (safety-products.de, safety distances; safetyfenceguarding.com, reaching through openings).
     */
    private Term reach(Surroundings around) {
        Term arms = aperture.reach(
                "s_r", "opening", opening -> around.reach().through(opening, edition -> over(around, edition)));
        Term legs = aperture.reach("s_l", "opening", around.reach()::throughWithLegs);
        return Greatest.of(arms, legs);
    }

    private Optional<Term> over(Surroundings around, ReachStandard edition) {
        return lowerEdge.value().isEmpty()
                ? Optional.empty()
                : edition.over(
                        around.approach().zoneLowest(),
                        around.approach().zoneHighest(),
                        new Given("b", "lower edge of the opening", lowerEdge));
    }
}
