package org.cellfile.claim;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Text;
import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.quantity.Unit;
import org.cellfile.source.Stated;
import org.cellfile.standard.Editions;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Drawing;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Given;

/** Derived values as they are printed: in one unit, or lengths and speeds in millimetres and inches. */
public final class Workings {

    private final boolean bothUnits;

    /**
     * @param bothUnits true when lengths and speeds are printed in millimetres and inches
     */
    public Workings(boolean bothUnits) {
        this.bothUnits = bothUnits;
    }

    /** The full working of a value of a thing, with what was recorded beside it. */
    public Block.Working of(Derived derived, Recorded recorded) {
        Drawing drawing = Drawing.of(derived);
        List<Block.Step> steps = drawing.leaves().stream()
                .map(leaf -> new Block.Step(leaf.symbol(), leaf.value(), leaf.name(), leaf.origin()))
                .toList();
        return new Block.Working(
                derived.tag(),
                derived.words(),
                derived.symbol(),
                derived.expression().symbols(),
                derived.expression().figures(),
                drawing.result(),
                drawing.rounded(),
                derived.clause(),
                steps,
                remarks(derived, drawing),
                agreement(derived, recorded));
    }

    private List<String> remarks(Derived derived, Drawing drawing) {
        List<String> remarks = new ArrayList<>(drawing.remarks());
        rounding(derived)
                .ifPresent(rounding -> remarks.add("in the other unit "
                        + rounding.round(derived.value().orElseThrow()) + ", " + rounding
                        + ", from the unrounded value"));
        return remarks;
    }

    /** The step at which a length or speed in that unit is printed in the other one. */
    private static Optional<Quantity> second(Unit unit) {
        boolean inches = unit.symbol().startsWith("in") || unit.symbol().equals("ft");
        if (unit.dimension().equals(Dimension.LENGTH)) {
            return Optional.of(inches ? Quantity.of("0.1", Unit.MILLIMETRE) : Quantity.of("0.01", Unit.INCH));
        }
        if (unit.dimension().equals(Dimension.SPEED)) {
            return Optional.of(
                    inches
                            ? Quantity.of("0.1", Unit.MILLIMETRE_PER_SECOND)
                            : Quantity.of("0.01", Unit.INCH_PER_SECOND));
        }
        return Optional.empty();
    }

    /** How it is rounded in its second unit; to the same side. */
    private Optional<Rounding> rounding(Derived derived) {
        return bothUnits
                ? derived.rounded()
                        .map(Quantity::unit)
                        .flatMap(Workings::second)
                        .map(derived.rounding()::at)
                : Optional.empty();
    }

    /** The rounded value in the units asked for, or a dash when it could not be derived. */
    public String inUnits(Derived derived) {
        String second = rounding(derived)
                .flatMap(rounding -> derived.value().map(rounding::round))
                .map(value -> " (" + value + ")")
                .orElse("");
        return shown(derived) + second;
    }

    /** A stated value in the units asked for: as written, and in the other unit on the side given. */
    public String inUnits(Stated<Quantity> stated, Rounding.Side side) {
        String second = stated.value()
                .filter(value -> bothUnits)
                .flatMap(value -> second(value.unit()).map(step -> " (" + new Rounding(side, step).round(value) + ")"))
                .orElse("");
        return stated.characters() + second;
    }

    /** What the editions that values rest on want every reader to know, a paragraph each. */
    public static List<Block.Paragraph> remarks(List<Derived> derived) {
        return derived.stream()
                .flatMap(one -> one.references().stream())
                .map(reference -> reference.clause().edition())
                .distinct()
                .map(Editions::of)
                .flatMap(Optional::stream)
                .flatMap(edition ->
                        edition.remark().stream().map(remark -> new Block.Paragraph(edition.id() + ": " + remark)))
                .toList();
    }

    /** Several values whose working is short, a row each. */
    public Block.Table rows(String caption, List<Derived> derived, Recorded recorded) {
        return rows(caption, derived, recorded, 7);
    }

    /** The same with long workings. */
    public Block.Table wideRows(String caption, List<Derived> derived, Recorded recorded) {
        return rows(caption, derived, recorded, 11);
    }

    private Block.Table rows(String caption, List<Derived> derived, Recorded recorded, int share) {
        return new Block.Table(
                caption,
                List.of(
                        Block.Column.text("Value", 5),
                        Block.Column.text("Working", share),
                        Block.Column.figures("Result", 3),
                        Block.Column.text("Recorded", 5)),
                derived.stream()
                        .map(one -> List.of(
                                Text.capital(one.words())
                                        + (byItsClause(one) || !one.about().equals(recorded.about())
                                                ? ", " + one.clause()
                                                : ""),
                                line(one),
                                inUnits(one),
                                recorded.of(one)
                                        .map(stated -> brief(one, stated))
                                        .orElse("–")))
                        .toList());
    }

    /**
     * The same of several things in one table, each thing named once. What is taken over unchanged has no working; what the
     * symbols mean stands in {@link #symbols}.
     */
    public Block.Table rows(String caption, String sort, List<? extends Recomputed> things) {
        List<List<String>> rows = new ArrayList<>();
        for (Recomputed thing : things) {
            String tag = thing.tag();
            for (Derived one : worked(thing)) {
                rows.add(List.of(
                        tag,
                        line(one),
                        inUnits(one),
                        thing.recorded()
                                .of(one)
                                .map(stated -> brief(one, stated))
                                .orElse("–")));
                tag = "";
            }
        }
        return new Block.Table(
                caption,
                List.of(
                        Block.Column.text(sort, 4),
                        Block.Column.text("Working", 11),
                        Block.Column.figures("Result", 3),
                        Block.Column.text("Recorded", 4)),
                rows);
    }

    /** What the symbols of such a table mean, each with its clause. */
    public static Block.Paragraph symbols(List<? extends Recomputed> things) {
        Map<String, String> meanings = new LinkedHashMap<>();
        things.stream().flatMap(thing -> worked(thing).stream()).forEach(one -> {
            String clause = byItsClause(one) ? " (" + one.clause() + ")" : "";
            meanings.merge(
                    one.symbol() + ": " + one.words(), clause, (first, second) -> first.isEmpty() ? second : first);
        });
        return new Block.Paragraph(meanings.entrySet().stream()
                .map(meaning -> meaning.getKey() + meaning.getValue())
                .collect(Collectors.joining("; ", "", ".")));
    }

    private static List<Derived> worked(Recomputed thing) {
        return thing.derived().stream()
                .filter(one -> !(one.expression() instanceof Given || one.expression() instanceof Fixed)
                        || thing.recorded().of(one).isPresent())
                .toList();
    }

    /** Which comparison decided on a value, where comparisons did. */
    public static Optional<String> reason(Derived derived) {
        List<String> reasons = Drawing.of(derived).remarks();
        return reasons.isEmpty()
                ? Optional.empty()
                : Optional.of(reasons.get(reasons.size() - 1).replaceFirst(", so .* is taken$", ""));
    }

    /** True when a clause gives it, or a factor of it, and not only the values below it. */
    private static boolean byItsClause(Derived derived) {
        return derived.expression() instanceof Fixed
                || derived.expression().operands().stream().anyMatch(Fixed.class::isInstance);
    }

    /** A working in one line: symbol, formula and figures, each only where it says more than the one before. */
    public static String line(Derived derived) {
        return Stream.of(
                        derived.symbol(),
                        derived.expression().symbols(),
                        derived.expression().figures())
                .distinct()
                .collect(Collectors.joining(" = "));
    }

    /** The same in few words; empty when nothing was recorded. */
    public static String briefly(Derived derived, Recorded recorded) {
        return recorded.of(derived)
                .map(stated -> "recorded " + brief(derived, stated))
                .orElse("");
    }

    private static String brief(Derived derived, Stated<Quantity> stated) {
        if (derived.value().isEmpty()) {
            return stated.characters() + " (" + stated.where().position() + "), not held against anything";
        }
        return stated.characters() + " (" + stated.where().position() + "), "
                + (Claim.recorded(stated, derived).holds() ? "agrees" : "does not agree");
    }

    /** What was recorded, and that the recomputation agrees with it; empty when nothing was recorded. */
    public static String agreement(Derived derived, Recorded recorded) {
        Optional<Stated<Quantity>> stated = recorded.of(derived);
        if (stated.isEmpty()) {
            return "";
        }
        if (derived.value().isEmpty()) {
            return "recorded " + stated.get().characters() + " ("
                    + stated.get().where().position() + "); there is nothing to hold it against";
        }
        boolean agrees = Claim.recorded(stated.get(), derived).holds();
        return "recorded " + stated.get().characters() + " ("
                + stated.get().where().position() + "); "
                + (agrees ? "recomputed, agrees with the recorded value" : "the recomputation does not agree with it");
    }

    /** The rounded value, or a dash when it could not be derived. */
    public static String shown(Derived derived) {
        return derived.rounded().map(Quantity::toString).orElse("–");
    }
}
