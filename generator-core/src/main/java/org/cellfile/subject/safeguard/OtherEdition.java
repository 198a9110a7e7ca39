package org.cellfile.subject.safeguard;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cellfile.claim.Claim;
import org.cellfile.finding.Finding;
import org.cellfile.quantity.Quantity;
import org.cellfile.standard.Edition;

/**
 * A safeguard under an edition that is not in force for it, beside what it is under those that are.
 *
 * @param inForce as it counts
 * @param other the edition it is compared under
 * @param under as it would be under that edition
 */
public record OtherEdition(Guarding inForce, Edition other, Guarding under) {

    /** What can be said of the safeguard under the other edition. */
    public enum Standing {
        HOLDS,
        FALLS_SHORT,
        CANNOT_BE_SAID
    }

    /** The safeguards to which an edition makes a difference. */
    public static List<OtherEdition> of(List<Guarding> safeguards, Edition other) {
        return safeguards.stream()
                .map(guarding -> guarding.under(other).map(under -> new OtherEdition(guarding, other, under)))
                .flatMap(Optional::stream)
                .toList();
    }

    /** How many of them have that standing. */
    public static long count(List<OtherEdition> rows, Standing standing) {
        return rows.stream().filter(row -> row.standing() == standing).count();
    }

    /** What holds, or does not, under the other edition. A lower bound that is met says nothing. */
    public Standing standing() {
        if (unmet().findAny().isPresent()) {
            return Standing.FALLS_SHORT;
        }
        return under.cleared() && unknown().findAny().isEmpty() ? Standing.HOLDS : Standing.CANNOT_BE_SAID;
    }

    private Stream<Finding> unmet() {
        return under.requirements().stream().map(Claim::finding).flatMap(Optional::stream);
    }

    private Stream<Finding> unknown() {
        return under.faults().stream()
                .filter(finding -> finding.id().equals(Guarding.NOT_CLEARED)
                        || finding.id().equals(Requirement.NO_RULE));
    }

    /** True when the distance under the other edition is only a lower bound. */
    public boolean lowerBound() {
        return under.governing().bounded();
    }

    /**
     * How much more the other edition asks: the difference of the two distances as they are printed. Empty when one of them is not
     * known, or when the other is a lower bound and asks no more than is in force.
     */
    public Optional<Quantity> more() {
        Optional<Quantity> more = under.separationDistance()
                .rounded()
                .flatMap(after -> inForce.separationDistance()
                        .rounded()
                        .map(before -> after.minus(before).in(after.unit())));
        return lowerBound() ? more.filter(difference -> difference.number().signum() > 0) : more;
    }

    /** What holds, what does not and what cannot be said, in a sentence or more. */
    public String said() {
        if (under.editions().isEmpty()) {
            return "cannot be said: " + other.id() + " has no rule that is publicly known for such a safeguard";
        }
        return switch (standing()) {
            case HOLDS -> "still holds";
            case FALLS_SHORT -> "does not hold: " + sentences(unmet());
            case CANNOT_BE_SAID -> "cannot be said: " + sentences(unknown());
        };
    }

    private String sentences(Stream<Finding> findings) {
        return findings.map(finding -> finding.sentence().replace("`" + under + "`", "`" + inForce.tag() + "`"))
                .distinct()
                .collect(Collectors.joining("; "));
    }
}
