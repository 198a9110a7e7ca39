package org.cellfile.claim;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.finding.Nearest;
import org.cellfile.quantity.Quantity;
import org.cellfile.source.SourceFile;
import org.cellfile.source.Span;
import org.cellfile.source.Stated;
import org.cellfile.trace.Derived;

/**
 * The values somebody recorded beside the inputs of one thing, under {@code stated}.
 *
 * @param about tag of the thing
 * @param where the section they stand in, or in which they would stand
 * @param values by the name of the derived value; {@code iso-13855-2010.intrusion} where it belongs to one of several editions
 */
public record Recorded(String about, Span where, Map<String, Stated<Quantity>> values) {

    /** A value is recorded that the program does not derive for this thing. */
    public static final FindingId NOT_DERIVED = new FindingId("claim.not-derived");

    /** The recorded value is of another sort than the derived one. */
    public static final FindingId DIMENSION = new FindingId("claim.another-dimension");

    public Recorded {
        values = new TreeMap<>(values);
    }

    /** Nothing recorded, for what is recomputed for comparison only. */
    public static Recorded none(String about) {
        return new Recorded(about, SourceFile.unread("").whole(), Map.of());
    }

    /** What was recorded for a part of the thing, as in {@code trend.drift}; under the names alone. */
    public Recorded part(String part) {
        Map<String, Stated<Quantity>> ofThePart = new TreeMap<>();
        values.forEach((name, stated) -> {
            if (name.startsWith(part + ".")) {
                ofThePart.put(name.substring(part.length() + 1), stated);
            }
        });
        return new Recorded(about + "." + part, where, ofThePart);
    }

    /** What was recorded for everything but that part. */
    public Recorded without(String part) {
        Map<String, Stated<Quantity>> others = new TreeMap<>(values);
        others.keySet().removeIf(name -> name.startsWith(part + "."));
        return new Recorded(about, where, others);
    }

    /** The claim on each derived value that somebody recorded. */
    public List<Claim> claims(List<Derived> derived) {
        List<Claim> claims = new ArrayList<>();
        for (Derived one : derived) {
            of(one).filter(stated -> sameDimension(stated, one))
                    .ifPresent(stated -> claims.add(Claim.recorded(stated, one)));
        }
        return claims;
    }

    /** What was recorded for a derived value. */
    public Optional<Stated<Quantity>> of(Derived derived) {
        return Optional.ofNullable(values.get(key(derived)));
    }

    /** Its name, after that of the edition where a thing is recomputed under several. */
    private String key(Derived derived) {
        String prefix = about + ".";
        return derived.tag().startsWith(prefix) ? derived.tag().substring(prefix.length()) : derived.name();
    }

    private static boolean sameDimension(Stated<Quantity> stated, Derived derived) {
        return stated.value().isPresent()
                && derived.value().isPresent()
                && stated.value().get().dimension().equals(derived.value().get().dimension());
    }

    /** Recorded values that cannot be held against anything. */
    public List<Finding> orphans(List<Derived> derived) {
        Map<String, Derived> byName = derived.stream().collect(Collectors.toMap(this::key, one -> one, (a, b) -> a));
        List<Finding> findings = new ArrayList<>();
        values.forEach((name, stated) -> {
            Derived one = byName.get(name);
            if (one == null) {
                findings.add(Finding.refuses(
                        NOT_DERIVED,
                        about,
                        stated.where(),
                        "`" + name + "` is stated for `" + about + "`, for which no such value is derived",
                        "values that can be stated here: " + Nearest.listed(name, byName.keySet())));
            } else if (stated.value().isPresent() && one.value().isPresent() && !sameDimension(stated, one)) {
                findings.add(Finding.refuses(
                        DIMENSION,
                        about,
                        stated.where(),
                        "the stated " + one.words() + " of `" + about + "` is "
                                + stated.value().get().dimension().words() + ", the derived one "
                                + one.value().get().dimension().words(),
                        "write it with a unit like the one of "
                                + one.rounded().map(Quantity::toString).orElse("")));
            }
        });
        return findings;
    }
}
