package org.cellfile.subject.safeguard;

import java.util.List;
import org.cellfile.claim.Claim;
import org.cellfile.claim.Relation;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.quantity.Unit;
import org.cellfile.source.Stated;
import org.cellfile.standard.Position;
import org.cellfile.trace.Clause;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Given;
import org.cellfile.trace.Reference;
import org.cellfile.trace.Standing.Published;
import org.cellfile.trace.Sum;
import org.cellfile.trace.Term;

/**
 * What makers of scanners ask of an upright field so that somebody who walks through it is seen: the field is high enough, and the
 * scanner answers before a body has passed.
 */
final class WalkThrough {

    /** A body has passed the field before the scanner answers. */
    static final FindingId UNSEEN = new FindingId("laser-scanner.response-too-long");

    /** A body 150 mm deep passes in 93.75 ms at 1.6 m/s; the source states 90 ms and lets 80 ms at most be set. */
    private static final Fixed MOST = fixed(
            "t_a",
            "0.080",
            Unit.SECOND,
            "longest-response",
            "longest response time of a scanner that sees who walks through");

    private static final Fixed HIGH =
            fixed("b_min", "900", Unit.MILLIMETRE, "least-upper-edge", "least height of an upright field");

    private WalkThrough() {}

    /** What the makers ask of the field besides its position under an edition. */
    static Demands demands(Surroundings around, UprightField field, Position position) {
        List<Given> own = own(around);
        Demands high = highEnough(around, field, position);
        return own.isEmpty() ? high : Demands.of(List.of(fastEnough(around, own), high));
    }

    private static Demands fastEnough(Surroundings around, List<Given> own) {
        Derived longest = new Derived(
                around.tag(),
                "longest-own-response",
                MOST.reference().name(),
                MOST.symbol(),
                MOST.reference().clause().toString(),
                MOST,
                Rounding.down(Quantity.seconds("0.001")));
        Derived response = new Derived(
                around.tag(),
                "own-response",
                "own response time",
                "t_o",
                "sum of the links",
                new Sum(List.copyOf(own)),
                Rounding.up(Quantity.seconds("0.0001")));
        return new Demands(
                List.of(response, longest),
                List.of(new Claim(
                        "own response time",
                        stated(own, response),
                        Relation.AT_MOST,
                        longest,
                        UNSEEN,
                        "set the scanner to answer after fewer scans")),
                List.of());
    }

    /** Where the edition itself has no rule for so low an edge, that is said already. */
    private static Demands highEnough(Surroundings around, UprightField field, Position position) {
        Derived upper = Requirement.bound(around.tag(), "least-upper-edge", HIGH, Rounding.Side.UP);
        if (position.parts().stream().anyMatch(part -> Requirement.noRule(part.expression()))) {
            return new Demands(List.of(upper), List.of(), List.of());
        }
        return new Demands(
                List.of(upper),
                List.of(new Claim(
                        "upper edge",
                        field.upperEdge(),
                        Relation.AT_LEAST,
                        upper,
                        LevelField.TOO_LOW,
                        "raise the upper edge of the field")),
                List.of());
    }

    /** The links that are marked as the device's own, or else the first, which is where the signal begins; the last is the stop. */
    private static List<Given> own(Surroundings around) {
        List<Term> device = around.approach().timing().device();
        List<Term> machine = around.approach().timing().machine();
        List<Term> links = device.isEmpty() ? machine.subList(0, Math.min(1, machine.size() - 1)) : device;
        return links.stream().map(Given.class::cast).toList();
    }

    /** A single link as it is written; the sum of several, at the first of them. */
    private static Stated<Quantity> stated(List<Given> own, Derived response) {
        Stated<Quantity> first = own.get(0).stated();
        return own.size() == 1
                ? first
                : response.value()
                        .<Stated<Quantity>>map(sum -> new Stated.Written<>(sum, first.where(), sum.toString()))
                        .orElse(first);
    }

    private static Fixed fixed(String symbol, String number, Unit unit, String id, String name) {
        return new Fixed(
                symbol,
                Quantity.of(number, unit),
                new Reference(
                        "upright-scanner-field." + id,
                        name,
                        new Clause("makers' instructions", "upright fields of scanners"),
                        new Published("SICK S300 operating instructions 8010948, p. 43")));
    }
}
