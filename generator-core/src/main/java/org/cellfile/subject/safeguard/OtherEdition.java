package org.cellfile.subject.safeguard;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cellfile.claim.Claim;
import org.cellfile.dossier.Text;
import org.cellfile.finding.Finding;
import org.cellfile.quantity.Quantity;
import org.cellfile.standard.Edition;
import org.cellfile.standard.Position;

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
        HOLDS("still holds"),
        FALLS_SHORT("does not hold"),
        CANNOT_BE_SAID("cannot be said");

        private final String words;

        Standing(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** The safeguards to which an edition makes a difference. */
    public static List<OtherEdition> of(List<Guarding> safeguards, Edition other) {
        return safeguards.stream()
                .map(guarding -> guarding.under(other).map(under -> new OtherEdition(guarding, other, under)))
                .flatMap(Optional::stream)
                .toList();
    }

    /** How many are compared, and how many of them have each standing. */
    public static String count(List<OtherEdition> rows) {
        return rows.size() + " compared; "
                + Arrays.stream(Standing.values())
                        .map(standing -> standing.words() + ": "
                                + rows.stream()
                                        .filter(row -> row.standing() == standing)
                                        .count())
                        .collect(Collectors.joining("; "));
    }

    /** Sentences about what the distances do not show, each once; before them the tags of the safeguards they are about. */
    public static Map<List<String>, List<String>> remarks(List<OtherEdition> rows) {
        Map<String, List<String>> tags = new LinkedHashMap<>();
        rows.forEach(row -> row.remarks()
                .forEach(remark ->
                        tags.computeIfAbsent(remark, none -> new ArrayList<>()).add(row.inForce.tag())));
        Map<List<String>, List<String>> remarks = new LinkedHashMap<>();
        tags.forEach((remark, about) ->
                remarks.computeIfAbsent(about, none -> new ArrayList<>()).add(remark));
        return remarks;
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

    /** Why it does not hold or cannot be said, where the distances do not show it, and what the edition leaves open. */
    private List<String> remarks() {
        Stream<String> because = switch (standing()) {
            case HOLDS -> Stream.empty();
            case FALLS_SHORT ->
                sentences(unmet().filter(finding -> !finding.id().equals(Guarding.TOO_CLOSE)));
            case CANNOT_BE_SAID -> unsaid();
        };
        return Stream.concat(
                        because.map(reason -> Text.capital(standing().words() + ": " + reason + ".")),
                        positions().flatMap(position -> position.remarks().stream()))
                .distinct()
                .toList();
    }

    private Stream<String> unsaid() {
        if (under.editions().isEmpty()) {
            return Stream.of("no rule for such a safeguard is publicly known");
        }
        return Stream.concat(
                positions().flatMap(position -> position.open().stream()).map(Position.Open::because),
                sentences(unknown().filter(finding -> finding.id().equals(Requirement.NO_RULE))));
    }

    private Stream<Position> positions() {
        return under.editions().stream().map(one -> one.positioning().position());
    }

    private Stream<String> sentences(Stream<Finding> findings) {
        return findings.map(finding -> finding.sentence().replace("`" + under + "`", "`" + inForce.tag() + "`"));
    }
}
