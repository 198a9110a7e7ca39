package org.cellfile.subject.safeguard;

import java.util.List;
import java.util.Optional;
import org.cellfile.claim.Claim;
import org.cellfile.claim.Relation;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.standard.ReachStandard;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Given;
import org.cellfile.trace.Greatest;
import org.cellfile.trace.Term;

/**
 * An opening left in a fixed guard, for instance for what is carried in or out.
 *
 * @param lowerEdge its height above the floor; counts for openings wider than the reach through openings is known for
 * @param distance from the opening to the nearest hazard
 * @param guardedBy tag of another safeguard that covers it; then that one's distance counts and none is stated here
 */
record FenceOpening(
        Stated<String> name,
        Aperture aperture,
        Stated<Quantity> lowerEdge,
        Stated<Quantity> distance,
        Stated<Quantity> uncertainty,
        Stated<String> guardedBy) {

    /** The hazard is nearer to an opening than one reaches through it. */
    static final FindingId TOO_CLOSE = new FindingId("installed.opening-too-close");

    /** An opening lets a body through and nothing covers it. */
    static final FindingId PASSES_BODY = new FindingId("installed.opening-passes-body");

    private static final Rounding DISTANCE = Rounding.up(Quantity.millimetres("1"));

    static FenceOpening read(Section section) {
        boolean covered = section.has("guarded-by");
        return new FenceOpening(
                section.text("name"),
                Aperture.read(section),
                section.quantityIfStated("lower-edge", Dimension.LENGTH),
                covered ? none(section, "distance") : section.quantity("distance", Dimension.LENGTH),
                covered ? none(section, "uncertainty") : section.quantity("uncertainty", Dimension.LENGTH),
                section.referenceIfStated("guarded-by", Safeguard.SORT));
    }

    private static Stated<Quantity> none(Section section, String key) {
        return new Stated.Missing<>(section.where(), key);
    }

    Fact fact() {
        return new Fact(
                "Opening",
                name.characters() + ": " + aperture.words(),
                guardedBy
                        .value()
                        .map(tag -> "covered by " + tag)
                        .orElseGet(() -> "hazard " + distance.characters() + " behind it"));
    }

    /**
     * What must hold for it.
     *
     * @param number of the opening in its fence, from 1
     */
    Demands demands(Surroundings around, int number) {
        if (guardedBy.value().isPresent()) {
            return Demands.NONE;
        }
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
            return new Demands(widest.stream().toList(), body.stream().toList(), List.of());
        }
        Term reach = reach(around);
        Derived needed = new Derived(
                around.tag(),
                "reach-opening-" + number,
                "reach through an opening (" + name.characters() + ")",
                "s_" + number,
                around.reach().clause("tables 4 and 7"),
                reach,
                DISTANCE);
        Claim far = new Claim(
                "distance behind the opening `" + name.characters() + "`",
                distance,
                uncertainty.value(),
                Relation.AT_LEAST,
                needed,
                TOO_CLOSE,
                "make the opening smaller, put a tunnel before it, or move the hazard away");
        return new Demands(
                widest.map(limit -> List.of(needed, limit)).orElseGet(() -> List.of(needed)),
                body.map(limit -> List.of(limit, far)).orElseGet(() -> List.of(far)),
                Requirement.covered(
                        around.tag(),
                        aperture.size(),
                        reach,
                        "make the opening smaller, name under `guarded-by` the safeguard that covers it, or, where it begins"
                                + " 1000 mm or more above the floor, state that height as `lower-edge`"));
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
