package org.cellfile.subject.safeguard;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cellfile.claim.Claim;
import org.cellfile.claim.Relation;
import org.cellfile.claim.Workings;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Quantity;
import org.cellfile.source.Stated;
import org.cellfile.standard.Position;
import org.cellfile.standard.PositioningStandard.ParallelField;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Given;

/**
 * A field that is approached along its plane.
 *
 * @param height above the floor
 * @param what that is the height of
 * @param spaceBelow what closes the space below it, if something does
 */
record LevelField(Stated<Quantity> height, String what, Stated<String> spaceBelow) {

    /** The field lies lower than its resolution allows. */
    static final FindingId TOO_LOW = new FindingId("installed.field-too-low");

    /** The field lies higher than the edition allows. */
    static final FindingId TOO_HIGH = new FindingId("installed.field-too-high");

    /** The field is so high that somebody may crawl under it. */
    static final FindingId CRAWLING_UNDER = new FindingId("field.crawling-under");

    /** What closes the space below a field, for print. */
    static Optional<Fact> below(Stated<String> spaceBelow) {
        return spaceBelow.value().map(closed -> new Fact("Space below", "closed: " + closed));
    }

    /**
     * Its position under an edition that has a rule for it.
     *
     * @param first derived values to be read before its own
     */
    Optional<Positioning> position(
            Surroundings around, Given resolution, List<Supplement> supplements, List<Derived> first) {
        return around.positioning()
                .parallel(new ParallelField(
                        around.approach(), resolution, new Given("H", what, height), Supplement.terms(supplements)))
                .map(position -> Positioning.with(position, first, claims(position), crawling(around.tag(), position)));
    }

    private List<Claim> claims(Position position) {
        List<Claim> claims = new ArrayList<>();
        position.limit("least-height")
                .ifPresent(limit -> claims.add(new Claim(
                        what,
                        height,
                        Relation.AT_LEAST,
                        limit,
                        TOO_LOW,
                        "raise the field, or use a finer resolution")));
        position.limit("greatest-height")
                .ifPresent(limit -> claims.add(new Claim(
                        what,
                        height,
                        Relation.AT_MOST,
                        limit,
                        TOO_HIGH,
                        "lower the field; above this height people walk under it")));
        return claims;
    }

    private List<Finding> crawling(String tag, Position position) {
        return position.limit("crawling-height").stream()
                .filter(limit -> spaceBelow.value().isEmpty()
                        && height.value()
                                .flatMap(stated -> limit.value().map(value -> stated.compareTo(value) > 0))
                                .orElse(false))
                .map(limit -> Finding.warns(
                        CRAWLING_UNDER,
                        tag,
                        height.where(),
                        "the field of `" + tag + "` lies at " + height.characters() + ", above "
                                + Workings.shown(limit) + ", so that somebody may crawl under it ("
                                + limit.clause() + ")",
                        "assess it in the risk assessment, and state what closes the space below as `space-below`"))
                .toList();
    }
}
