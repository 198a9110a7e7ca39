package org.cellfile.claim;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.finding.Severity;
import org.cellfile.quantity.Quantity;
import org.cellfile.source.Stated;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Drawing;

/**
 * One stated value held against one derived value.
 *
 * @param what the stated thing in words, for example {@code installed distance}
 * @param stated what somebody wrote; a claim on something missing finds nothing, as that was reported where it is missing
 * @param id of the finding when the claim does not hold
 * @param uncertainty of the stated value, taken off before it is compared; empty where it has none
 * @param help what to do then; never to change a measurement so that a number comes out
 * @param severity of that finding
 */
public record Claim(
        String what,
        Stated<Quantity> stated,
        Optional<Quantity> uncertainty,
        Relation relation,
        Derived derived,
        FindingId id,
        String help,
        Severity severity) {

    /** A claim whose finding refuses. */
    public Claim(
            String what,
            Stated<Quantity> stated,
            Optional<Quantity> uncertainty,
            Relation relation,
            Derived derived,
            FindingId id,
            String help) {
        this(what, stated, uncertainty, relation, derived, id, help, Severity.REFUSES);
    }

    /** A claim on a value that is taken as it is stated; its finding refuses. */
    public Claim(String what, Stated<Quantity> stated, Relation relation, Derived derived, FindingId id, String help) {
        this(what, stated, Optional.empty(), relation, derived, id, help);
    }

    /** The same with a finding that lets a draft through. */
    public Claim barringRelease() {
        return new Claim(what, stated, uncertainty, relation, derived, id, help, Severity.BARS_RELEASE);
    }

    /** A stated value differs from the recomputation. */
    public static final FindingId NOT_EQUAL = new FindingId("claim.not-equal");

    /** A value recorded beside its inputs, which the recomputation must agree with. */
    public static Claim recorded(Stated<Quantity> stated, Derived derived) {
        String agreeing = derived.rounded().map(Quantity::toString).orElse("");
        return new Claim(
                derived.words(),
                stated,
                Relation.EQUAL_TO,
                derived,
                NOT_EQUAL,
                "check the inputs listed above against the machine and the data sheets; if they are right, the value to record is "
                        + agreeing);
    }

    /** True when both sides are known and the claim holds. */
    public boolean holds() {
        return compare().orElse(false);
    }

    private Optional<Boolean> compare() {
        return stated.value()
                .flatMap(written -> derived.value().map(exact -> switch (relation) {
                    case EQUAL_TO -> derived.roundedLike(written).equals(Optional.of(written));
                    case AT_LEAST -> counted(written).compareTo(exact) >= 0;
                    case MORE_THAN -> counted(written).compareTo(exact) > 0;
                    case AT_MOST -> written.compareTo(exact) <= 0;
                }));
    }

    private Quantity counted(Quantity written) {
        return uncertainty.map(written::minus).orElse(written);
    }

    /** The finding when both sides are known and the claim does not hold. */
    public Optional<Finding> finding() {
        if (compare().orElse(true)) {
            return Optional.empty();
        }
        return Optional.of(new Finding(
                id,
                severity,
                derived.about(),
                stated.where(),
                sentence(),
                Drawing.of(derived).lines(),
                help));
    }

    /** What is left of a stated value, in its unit, with two digits more than written at the most. */
    private Quantity shown(Quantity written) {
        Quantity counted = counted(written).in(written.unit());
        int digits = Math.min(counted.number().scale(), written.number().scale() + 2);
        BigDecimal cut = counted.number().setScale(Math.max(digits, 0), RoundingMode.FLOOR);
        return new Quantity(cut, written.unit()).plain();
    }

    private String sentence() {
        String derivedValue = derived.rounded().map(Quantity::toString).orElse("");
        String subject = "the " + (relation == Relation.EQUAL_TO ? "stated " : "") + what + " of `" + derived.about()
                + "` is " + stated.characters()
                + uncertainty
                        .filter(doubt -> !doubt.zero())
                        .flatMap(doubt -> stated.value())
                        .map(written -> " and counts as " + shown(written) + " for its uncertainty")
                        .orElse("");
        return switch (relation) {
            case EQUAL_TO -> subject + ", the derived one " + derivedValue;
            case AT_LEAST -> subject + ", less than the " + derived.words() + " of " + derivedValue;
            case MORE_THAN -> subject + ", not more than the " + derived.words() + " of " + derivedValue;
            case AT_MOST -> subject + ", more than the " + derived.words() + " of " + derivedValue;
        };
    }
}
